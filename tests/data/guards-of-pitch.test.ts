import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import {
  design,
  helperPass,
  pair,
  passed,
  pitchEvent,
  player,
  sessionPlan,
  turn,
} from '../support/guarded-rows'

const sameId = () => {
  const id = newId()
  return { id, joinedToId: id, guestSince: '2026-09-10' }
}
const copyOfItself = () => {
  const id = newId()
  return { id, copiedFromId: id }
}
/** A text of JSON of more than so many bytes. */
const long = (bytes: number) => `{"a":"${'x'.repeat(bytes)}"}`

describe('what is planned, and tapped at the pitch, is refused where it cannot be', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['a design in feet', 'PracticeDesign_areaUnit_check', () => design({ areaUnit: 'ft' })],
    ['sides that are a list', 'PracticeDesign_sides_check', () => design({ sides: '[]' })],
    ['adaptations that are no list', 'PracticeDesign_adaptations_check', () => design({ adaptations: '{}' })],
    ['a design copied from itself', 'PracticeDesign_copy_check', () => design(copyOfItself())],
    ['a guest joined to itself', 'Player_joined_check', () => player(sameId())],
    [
      'somebody joined who was never a guest',
      'Player_joined_check',
      () => player({ joinedToId: ids.player }),
    ],
    ['a pass that goes on', 'TurnEvent_continues_check', () => passed({ continuesTurn: true })],
    ['a pair of one', 'PlayerPair_two_check', () => pair({ otherId: ids.player })],
    ['a pair that ends before it begins', 'PlayerPair_days_check', () => pair({ lastDay: '2026-09-09' })],
    ['a plan before the first', 'SessionPlan_version_check', () => sessionPlan({ version: 0 })],
    ['a plan that is a list', 'SessionPlan_plan_check', () => sessionPlan({ plan: '[]' })],
    ['a plan of more than a mebibyte', 'SessionPlan_plan_check', () => sessionPlan({ plan: long(1048576) })],
    ['a second plan of a practice', 'SessionPlan_pkey', () => `${sessionPlan({})}; ${sessionPlan({})}`],
    ['an event before the first', 'PitchEvent_seq_check', () => pitchEvent({ seq: 0 })],
    ['a deed that is a text', 'PitchEvent_deed_check', () => pitchEvent({ deed: '"begin"' })],
    [
      'a deed of more than a quarter of a mebibyte',
      'PitchEvent_deed_check',
      () => pitchEvent({ deed: long(262144) }),
    ],
    [
      'two events in one place of the order',
      'PitchEvent_clubId_sessionId_seq_key',
      () => `${pitchEvent({})}; ${pitchEvent({})}`,
    ],
    ['a secret kept as it is', 'HelperPass_hash_check', () => helperPass({ secretHash: 'open sesame' })],
    [
      'a pass that is over when it is made',
      'HelperPass_time_check',
      () => helperPass({ expiresAt: '2026-09-10T12:00:00Z' }),
    ],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })

  it('and the same rows are taken where they can be', async () => {
    const good = [
      design({ areaUnit: 'yd', sides: '{}', adaptations: '[]' }),
      player({ guestSince: '2026-09-10', joinedToId: ids.player }),
      turn({ continuesTurn: true }),
      pair({}),
      sessionPlan({}),
      pitchEvent({}),
      helperPass({}),
    ]
    for (const statement of good) expect([statement, await ask(statement)]).toEqual([statement, null])
  })
})
