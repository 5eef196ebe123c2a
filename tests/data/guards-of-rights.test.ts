import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import { insert } from '../support/guarded-rows'

const request = (columns: object) =>
  insert('ChildRequest', {
    id: newId(),
    playerId: ids.player,
    kind: 'copy',
    receivedOn: '2026-09-10',
    dueOn: '2026-10-12',
    ...columns,
  })
const consent = (columns: object) =>
  insert('Consent', {
    id: newId(),
    playerId: ids.player,
    kind: 'messages',
    wording: 'Yes.',
    givenOn: '2026-09-10',
    recordedAt: 'now()',
    ...columns,
  })
const club = (change: string) => `update "Club" set ${change} where id = '${ids.club}'`

describe('of a family’s rights, what cannot be is refused', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    [
      'a request of more letters than are read',
      'ChildRequest_text_check',
      () => request({ text: 'x'.repeat(2001) }),
    ],
    ['a request due before it came', 'ChildRequest_days_check', () => request({ dueOn: '2026-09-09' })],
    ['more time without a reason', 'ChildRequest_days_check', () => request({ extendedTo: '2026-12-10' })],
    [
      'less time',
      'ChildRequest_days_check',
      () => request({ extendedTo: '2026-10-01', extendedWhy: 'Because.' }),
    ],
    ['an answer without an end', 'ChildRequest_answer_check', () => request({ answer: 'Here it is.' })],
    ['an end without a time', 'ChildRequest_answer_check', () => request({ outcome: 'done' })],
    ['a consent to nothing', 'Consent_text_check', () => consent({ wording: '' })],
    ['a consent for nothing', 'Consent_text_check', () => consent({ kind: '' })],
    [
      'a consent taken back before it was given',
      'Consent_days_check',
      () => consent({ withdrawnOn: '2026-09-09' }),
    ],
    ['names kept for no month', 'Club_retention_check', () => club('"retentionMonths" = 0')],
    ['names kept for a century', 'Club_retention_check', () => club('"retentionMonths" = 1200')],
    [
      'a contact of more letters than are read',
      'Club_askWhom_check',
      () => club(`"askWhom" = repeat('x', 301)`),
    ],
    ['a holiday that is no day', 'Club_holidays_check', () => club(`holidays = '25 December'`)],
    [
      'holidays without a space between',
      'Club_holidays_check',
      () => club(`holidays = '2026-12-252026-12-26'`),
    ],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })

  it('but each is taken as it is meant', async () => {
    expect(await ask(request({ extendedTo: '2026-12-10', extendedWhy: 'Three seasons.' }))).toBeNull()
    expect(await ask(consent({ withdrawnOn: '2026-09-10' }))).toBeNull()
    expect(await ask(club(`"retentionMonths" = 120, holidays = '2026-12-25 2026-12-26'`))).toBeNull()
  })

  it.each([
    ['changed', `update "Erasure" set cause = 'retention'`],
    ['removed', 'delete from "Erasure"'],
  ])('an erasure is never %s', async (_what, statement) => {
    expect(await ask(statement)).toMatchObject({ code: '23001', constraint: 'Erasure_append_only' })
  })
})
