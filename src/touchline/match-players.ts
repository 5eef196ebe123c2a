import type { Seconds } from '#common/time'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import { bookStartOf, type PlayedPeriod } from '#touchline/match-clock'
import type { MatchPlayer } from '#touchline/match-state'
import type { WalkedSpell } from '#touchline/spell-book'
import type { WalkedPlayer } from '#touchline/walked-register'

/** A spell in playing time of the match. */
type TimedSpell = {
  readonly line: Line
  readonly start: Seconds
  readonly end: Seconds
  readonly isOn: boolean
}

/** What the match has been for each player so far. `second`: playing time now. */
export function matchPlayers(
  people: readonly WalkedPlayer[],
  match: {
    readonly periods: readonly PlayedPeriod[]
    readonly spells: readonly WalkedSpell[]
    readonly second: Seconds
    readonly keeps: (id: PlayerId) => boolean
  },
): readonly MatchPlayer[] {
  const { periods, spells, second, keeps } = match
  const startOf = new Map(periods.map(({ period, start }) => [period, start]))
  const first = periods[0]?.period
  return people.map((player) => {
    const own = spells.filter(({ playerId }) => playerId === player.id)
    const timed = own.map(({ line, period, from, to }): TimedSpell => {
      const start = startOf.get(period) ?? 0
      return { line, start: start + from, end: to === null ? second : start + to, isOn: to === null }
    })
    const now = timed.find(({ isOn }) => isOn)
    const secondsIn: Record<Line, Seconds> = { keeper: 0, back: 0, middle: 0, forward: 0 }
    for (const { line, start, end } of timed) secondsIn[line] += end - start
    const lastEnd = timed.reduce((latest, { end }) => Math.max(latest, end), 0)
    return {
      ...player,
      line: now?.line ?? null,
      placedSince: now?.start ?? Math.max(lastEnd, player.since),
      seconds: timed.reduce((sum, { start, end }) => sum + end - start, 0),
      secondsIn,
      secondsThere: secondsThere(player, periods, second),
      started: own.some(({ period, from }) => period === first && from === 0),
      hasComeOff: timed.length > 0 && !now,
      keeps: keeps(player.id),
    }
  })
}

function secondsThere(player: WalkedPlayer, periods: readonly PlayedPeriod[], second: Seconds): Seconds {
  let there = 0
  for (const period of periods) {
    const start = bookStartOf({ periods }, period)
    const end = start + (period.length ?? second - period.start)
    for (const { from, to, state } of player.segments)
      if (state === 'here') there += Math.max(0, Math.min(to ?? end, end) - Math.max(from, start))
  }
  return there
}
