import type { Seconds } from '#common/time'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import { changeOfPlan } from '#touchline/change-of-plan'
import { isAbleAt } from '#touchline/is-able'
import type { PlacedPlayer } from '#touchline/match-deed'
import { periodLengths } from '#touchline/match-promises'
import type { MatchState } from '#touchline/match-state'

/** Time on that is still to come if all goes as planned from now on; playing time of the match. */
export type ProjectedSpell = {
  readonly playerId: PlayerId
  readonly line: Line
  readonly start: Seconds
  readonly end: Seconds
}

/** Who will be on from now to the end of the planned periods. Where nothing is planned, who is on stays on. */
export function projectedSpells(state: MatchState): readonly ProjectedSpell[] {
  const { period, second, places, players } = state
  if (state.status === 'ended') return []
  const keeps = (id: PlayerId) => players.some((one) => one.id === id && one.keeps)
  const spells: ProjectedSpell[] = []
  const add = (on: readonly PlacedPlayer[], start: Seconds, end: Seconds) => {
    for (const { playerId, line } of on) if (start < end) spells.push({ playerId, line, start, end })
  }
  let on: readonly PlacedPlayer[] = state.on.length > 0 ? state.on : (state.nextKickOff?.on ?? [])
  let start = 0
  for (const [index, length] of periodLengths(state).entries()) {
    const end = start + length
    const isRunning = index === period?.period
    if (end > second || isRunning) {
      let from = Math.max(start, second)
      for (const set of state.sets) {
        const at = start + set.second
        if (set.period !== index || set.settledBy !== null || at >= end) continue
        if (isRunning ? at <= second : at < from) continue
        add(on, from, at)
        const before = set.second === 0 ? null : set.before
        const isAble = (id: PlayerId) => players.some((one) => one.id === id && isAbleAt(one, set.due))
        on = changeOfPlan({ on: set.on, before }, { on, places, keeps, isAble }).after
        from = at
      }
      add(on, from, end)
    }
    start = end
  }
  return joined(spells)
}

/** Whatever goes on from one set to the next is one spell. */
function joined(spells: readonly ProjectedSpell[]): readonly ProjectedSpell[] {
  const kept: ProjectedSpell[] = []
  for (const spell of spells) {
    const last = kept.findLastIndex(
      ({ playerId, line, end }) => playerId === spell.playerId && line === spell.line && end === spell.start,
    )
    const before = kept[last]
    if (before) kept[last] = { ...before, end: spell.end }
    else kept.push(spell)
  }
  return kept
}

/** What the clock of a period will show at a second of playing time; what ends a period belongs to the next. */
export function clockAt(
  state: MatchState,
  second: Seconds,
): { readonly period: number; readonly second: Seconds } {
  let start = 0
  const lengths = periodLengths(state)
  for (const [period, length] of lengths.entries()) {
    if (second < start + length || period === lengths.length - 1) return { period, second: second - start }
    start += length
  }
  return { period: 0, second }
}
