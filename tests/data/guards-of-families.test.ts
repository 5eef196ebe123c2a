import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import { insert, session } from '../support/guarded-rows'

const page = (columns: object) =>
  insert('FamilyPage', {
    id: newId(),
    playerId: ids.player,
    squadId: ids.squad,
    seasonId: ids.season,
    page: '{}',
    confirmedAt: '2026-09-10T18:00:00Z',
    showsFrom: '2026-09-11T07:00:00Z',
    ...columns,
  })
const note = (text: string) =>
  insert('FamilyNote', { playerId: ids.player, squadId: ids.squad, text, writtenAt: 'now()' })

describe('of pages for families, what cannot be is refused', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['a page that is a list', 'FamilyPage_page_check', () => page({ page: '[]' })],
    [
      'a page larger than any season',
      'FamilyPage_page_check',
      () => page({ page: JSON.stringify({ note: 'x'.repeat(300_000) }) }),
    ],
    [
      'a page seen before it is confirmed',
      'FamilyPage_time_check',
      () => page({ showsFrom: '2026-09-10T17:59:59Z' }),
    ],
    ['a note without a word', 'FamilyNote_text_check', () => note('')],
    ['a note longer than is read', 'FamilyNote_text_check', () => note('x'.repeat(601))],
    ['a place longer than is read', 'Session_place_check', () => session({ place: 'x'.repeat(121) })],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })

  it('but each is taken as it is meant', async () => {
    expect(await ask(page({}))).toBeNull()
    expect(await ask(note('x'.repeat(600)))).toBeNull()
    expect(await ask(session({ place: 'Lower Mill Field' }))).toBeNull()
  })
})
