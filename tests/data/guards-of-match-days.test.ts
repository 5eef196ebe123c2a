import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import { lineWish, matchFormat, session, sessionPlan, squad } from '../support/guarded-rows'

/** A text of JSON of more than so many bytes. */
const long = (bytes: number) => `{"a":"${'x'.repeat(bytes)}"}`
const goals = (ourGoals: number | null, theirGoals: number | null, kind = 'match') =>
  session({ id: newId(), kind, ourGoals, theirGoals })

describe('what belongs to match days is refused where it cannot be', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['a format without a name', 'MatchFormat_text_check', () => matchFormat({ name: '' })],
    [
      'a format with a name of 81 letters',
      'MatchFormat_text_check',
      () => matchFormat({ name: 'x'.repeat(81) }),
    ],
    ['a key of 81 letters', 'MatchFormat_text_check', () => matchFormat({ takenFrom: 'x'.repeat(81) })],
    ['a format that is a list', 'MatchFormat_definition_check', () => matchFormat({ definition: '[]' })],
    [
      'a format of more than 64 kibibytes',
      'MatchFormat_definition_check',
      () => matchFormat({ definition: long(65536) }),
    ],
    ['a format that no club has', 'Squad_clubId_matchFormatId_fkey', () => squad({ matchFormatId: newId() })],
    ['a wish to keep goal', 'LineWish_line_check', () => lineWish({ line: 'keeper' })],
    ['two wishes of one line', 'LineWish_pkey', () => `${lineWish({})}; ${lineWish({ wish: 'notYet' })}`],
    ['goals of one side only', 'Session_goals_check', () => goals(3, null)],
    ['goals of a practice', 'Session_goals_check', () => goals(3, 1, 'practice')],
    ['fewer goals than none', 'Session_goals_check', () => goals(-1, 1)],
    ['a hundred goals', 'Session_goals_check', () => goals(1, 100)],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })

  it('and the same rows are taken where they can be', async () => {
    const id = newId()
    const good = [
      matchFormat({ name: 'x'.repeat(80), takenFrom: 'x'.repeat(80) }),
      `${matchFormat({ id })}; ${squad({ matchFormatId: id })}`,
      sessionPlan({ sessionId: ids.match }),
      lineWish({}),
      goals(0, 99),
      goals(null, null),
      goals(null, null, 'practice'),
    ]
    for (const statement of good) expect([statement, await ask(statement)]).toEqual([statement, null])
    expect(ids.match).not.toBe(ids.practice)
  })
})
