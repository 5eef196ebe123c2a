import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { ask, ids } from '../support/guarded-club'
import {
  event,
  passed,
  player,
  registerLine,
  seat,
  spell,
  turn,
  turnWithSeat,
  voiding,
} from '../support/guarded-rows'

describe('what is written of a session, when it cannot be, is refused', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['a line of no length', 'RegisterLine_time_check', () => registerLine({ toSecond: 100 })],
    ['a line before the start', 'RegisterLine_time_check', () => registerLine({ fromSecond: -1 })],
    [
      'a line voided by somebody, never',
      'RegisterLine_void_check',
      () => registerLine({ voidedById: ids.coach }),
    ],
    [
      'two lines of a player at one time',
      'RegisterLine_one_at_a_time',
      () => registerLine({ fromSecond: 99 }),
    ],
    ['a turn of no length', 'TurnEvent_time_check', () => turn({ endSecond: 300 })],
    ['a turn before the start', 'TurnEvent_time_check', () => turn({ startSecond: -1 })],
    ['a turn without a time', 'TurnEvent_kind_check', () => event({ stationCount: 1 })],
    [
      'a turn that says how many stations it has not',
      'TurnEvent_kind_check',
      () => turn({ stationCount: null }),
    ],
    ['a turn that voids', 'TurnEvent_kind_check', () => turn({ voidsId: ids.turn })],
    ['a turn of one player', 'TurnEvent_kind_check', () => turn({ playerId: ids.player })],
    ['a pass without a player', 'TurnEvent_kind_check', () => passed({ playerId: null })],
    ['a pass with a time', 'TurnEvent_kind_check', () => passed({ startSecond: 1 })],
    ['a pass with a theme', 'TurnEvent_kind_check', () => passed({ themeId: ids.theme })],
    ['a pass of less than nothing', 'TurnEvent_length_check', () => passed({ lengthSeconds: -1 })],
    ['a void of nothing', 'TurnEvent_kind_check', () => event({ kind: 'void' })],
    ['a void with a role', 'TurnEvent_kind_check', () => voiding(ids.turn, { role: 'keep' })],
    ['a void of a void', 'TurnEvent_voids_event', () => voiding(ids.theVoid)],
    ['a second void', 'TurnEvent_clubId_voidsId_key', () => voiding(ids.voided)],
    [
      'a void of another session’s turn',
      'TurnEvent_voids_event',
      () => voiding(ids.turn, { sessionId: ids.otherPractice }),
    ],
    [
      'a void written before its turn',
      'TurnEvent_voids_event',
      () => `${turn({ id: ids.club, seq: 99 })}; ${voiding(ids.club)}`,
    ],
    ['a place in the order taken twice', 'TurnEvent_clubId_sessionId_seq_key', () => turn({ seq: 1 })],
    ['a place in the order before the first', 'TurnEvent_seq_check', () => turn({ seq: 0 })],
    ['two turns at one time', 'TurnEvent_one_at_a_time', () => turn({ startSecond: 44 })],
    ['a turn around another', 'TurnEvent_one_at_a_time', () => turn({ startSecond: 0, endSecond: 3000 })],
    ['a turn of a match', 'TurnEvent_of_practice', () => turn({ sessionId: ids.match })],
    ['a turn with fewer than no stations', 'TurnEvent_stationCount_check', () => turn({ stationCount: -1 })],
    ['a round without a title', 'TurnEvent_round_check', () => turn({ round: '' })],
    [
      'a player in two places of a turn',
      'TurnSeat_pkey',
      () => `${turnWithSeat({})}; insert into "TurnSeat" select * from "TurnSeat"`,
    ],
    ['a place for two', 'TurnSeat_one_player', () => twoInOnePlace()],
    ['a place at a station that is not there', 'TurnSeat_of_turn', () => turnWithSeat({ station: 2 })],
    ['a place in a pass', 'TurnSeat_of_turn', () => seat(ids.passed)],
    ['a place in a turn written before', 'TurnSeat_of_turn', () => seat(ids.turn, { playerId: ids.other })],
    ['a place before the first', 'TurnSeat_place_check', () => turnWithSeat({ place: 0 })],
    ['a spell of no length', 'MatchSpell_time_check', () => spell({ endSecond: 60 })],
    ['two spells of a player at one time', 'MatchSpell_one_at_a_time', () => spell({ startSecond: 59 })],
    ['a spell of a practice', 'MatchSpell_of_match', () => spell({ sessionId: ids.practice })],
    ['a spell voided by somebody, never', 'MatchSpell_void_check', () => spell({ voidedById: ids.coach })],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })
})

function twoInOnePlace(): string {
  const id = newId()
  const other = newId()
  return `${player({ id: other })}; ${turn({ id })}; ${seat(id)}; ${seat(id, { playerId: other })}`
}
