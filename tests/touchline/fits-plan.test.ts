import { describe, expect, it } from 'vitest'
import { fitsFirstKickOff, isCastNew } from '#touchline/fits-plan'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import { isWorthChanging } from '#touchline/worth-changing'
import { aMatchPlan, tappedInMatch } from '../support/match-pitch'

const ids = Array.from({ length: 10 }, (_, index) => `00000000-0000-7000-8000-00000000000${index}`)
const planned = aMatchPlan(ids)
const [last = ''] = ids.slice(-1)
/** The last is planned to come at half-time. */
const withLate = {
  ...planned,
  players: planned.players.map((player) => (player.playerId === last ? { ...player, from: 1500 } : player)),
}
const players = ids.map((id) => ({ id, name: id, keeps: true }))
const stateOf = (plan: typeof planned | null, ...deeds: readonly MatchDeed[]) =>
  foldMatch(
    { plan, format: planned.format, players },
    deeds.map((deed, index) => tappedInMatch(index - 60, deed)),
  )
const here = (playerId: string): MatchDeed => ({ kind: 'register', playerId, state: 'here' })

describe('whether a plan fits who is there', () => {
  it('fits when all who were planned came, or nobody has been tapped', () => {
    expect(fitsFirstKickOff(stateOf(planned))).toBe(true)
    expect(fitsFirstKickOff(stateOf(planned, ...ids.map(here)))).toBe(true)
  })

  it('does not fit when one is missing, a new face came, or nothing was planned', () => {
    expect(fitsFirstKickOff(stateOf(planned, ...ids.slice(1).map(here)))).toBe(false)
    const face: MatchDeed = { kind: 'guest', playerId: 'f0000000-0000-7000-8000-000000000000', name: 'Zoe' }
    expect(fitsFirstKickOff(stateOf(planned, ...ids.map(here), face))).toBe(false)
    expect(fitsFirstKickOff(stateOf(null, ...ids.map(here)))).toBe(false)
  })

  it('fits when somebody who is planned to come later is not there yet', () => {
    expect(fitsFirstKickOff(stateOf(withLate, ...ids.slice(0, -1).map(here)))).toBe(true)
  })

  it('a cast is new when somebody can play who could not, or the other way round', () => {
    const before = stateOf(planned, ...ids.map(here))
    expect(isCastNew(before, stateOf(planned, ...ids.map(here), here(last)))).toBe(false)
    const hurt: MatchDeed = { kind: 'register', playerId: last, state: 'notPlaying' }
    expect(isCastNew(before, stateOf(planned, ...ids.map(here), hurt))).toBe(true)
  })
})

describe('whether names that were read out should change', () => {
  const values = { promise: 0, minutes: 0, goal: 0, starts: 0, lines: 0, changes: 0 }

  it('for a promise always, for minutes from one minute on, for nothing else', () => {
    expect(isWorthChanging({ ...values, promise: 30 }, values)).toBe(true)
    expect(isWorthChanging(values, { ...values, promise: 30, minutes: -1e9 })).toBe(false)
    expect(isWorthChanging({ ...values, minutes: 3600 }, values)).toBe(true)
    expect(isWorthChanging({ ...values, minutes: 3599 }, values)).toBe(false)
    expect(isWorthChanging({ ...values, changes: 9 }, values)).toBe(false)
  })
})
