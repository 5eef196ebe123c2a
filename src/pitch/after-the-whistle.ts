import type { Seconds } from '#common/time'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { type ClockWait, clockWaits, longestWait } from '#pitch/clock-waits'
import { presenceOfPlayers } from '#pitch/pitch-presence'
import type { Choice, PitchState } from '#pitch/pitch-state'
import { type PlanDifference, planDifferences } from '#pitch/plan-differences'
import { type RunningTotal, runningTotals } from '#pitch/running-totals'
import type { PitchSide, SidePoints } from '#pitch/side-points'
import { joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'

/** How often a player attacked in a turn whose size the attackers chose, of the choice turns it had a place in. */
export type ChooserCount = {
  readonly playerId: PlayerId
  readonly chose: number
  readonly choiceTurns: number
}

export type WhistlePlayer = RunningTotal & {
  readonly name: string
  readonly isGuest: boolean
  /** By the clock, gaps between balls included; null: it never waited. */
  readonly longestWait: ClockWait | null
  readonly passes: number
}

/** One practice looked back on. Points and choices belong to the sides and to this practice alone. */
export type AfterTheWhistle = {
  readonly points: readonly SidePoints[]
  readonly pointsInAll: readonly { readonly side: PitchSide; readonly points: number }[]
  readonly choices: readonly Choice[]
  readonly choosers: readonly ChooserCount[]
  /** `share`: of the whole length; null where that is not known. */
  readonly ballInPlay: { readonly seconds: Seconds; readonly share: number | null }
  readonly longestWait: ClockWait | null
  /** Everyone who was there, in the register's order. */
  readonly players: readonly WhistlePlayer[]
  readonly differences: readonly PlanDifference[]
}

/** `lengthSeconds`: of the practice, as far as was known before it; null: not known. */
export function afterTheWhistle(
  state: PitchState,
  known: { readonly lengthSeconds: Seconds | null } = { lengthSeconds: null },
): AfterTheWhistle {
  const book = bookOfPitch(state, known)
  const live = book.turns.reduce((sum, turn) => sum + turn.end - turn.start, 0)
  const lastEnd = book.turns.at(-1)?.end ?? 0
  const presence = joinPresence(presenceOfPlayers(state.players, book.lastSecond))
  const waits = clockWaits([{ parts: book.turns }], presence, lastEnd)
  const seen = new Set(book.register.map(({ playerId }) => playerId))
  const totals = runningTotals(state, lastEnd).filter(({ playerId }) => seen.has(playerId))
  return {
    points: state.points,
    pointsInAll: pointsInAll(state.points),
    choices: state.choices,
    choosers: choosersOf(state),
    ballInPlay: {
      seconds: live,
      share: book.lengthSeconds === null ? null : live / book.lengthSeconds,
    },
    longestWait: longestWait(waits),
    players: totals.map((total) => {
      const { name = '', isGuest = false } =
        state.players.find(({ playerId }) => playerId === total.playerId) ?? {}
      const own = waits.get(total.playerId)
      return {
        ...total,
        name,
        isGuest,
        longestWait: own ? longestWait(new Map([[total.playerId, own]])) : null,
        passes: state.passes.filter(({ playerId }) => playerId === total.playerId).length,
      }
    }),
    differences: planDifferences(state, lastEnd),
  }
}

function pointsInAll(points: readonly SidePoints[]): AfterTheWhistle['pointsInAll'] {
  const sums = new Map<PitchSide, number>()
  for (const { side, points: won } of points) sums.set(side, (sums.get(side) ?? 0) + won)
  return [...sums].map(([side, won]) => ({ side, points: won }))
}

function choosersOf(state: PitchState): readonly ChooserCount[] {
  const counts = new Map<PlayerId, { chose: number; choiceTurns: number }>()
  for (const { turn, by } of state.choices) {
    const parts = state.played.find(({ index }) => index === turn)?.parts ?? []
    const inRole = (role: 'attack' | 'defend' | 'keep') =>
      parts.flatMap(({ stations }) => stations.flatMap((station) => station[role]))
    const attacking = new Set(inRole('attack'))
    if (by !== 'attack') continue
    for (const playerId of new Set([...attacking, ...inRole('defend'), ...inRole('keep')])) {
      const own = counts.get(playerId) ?? { chose: 0, choiceTurns: 0 }
      own.choiceTurns += 1
      own.chose += attacking.has(playerId) ? 1 : 0
      counts.set(playerId, own)
    }
  }
  return [...counts].map(([playerId, own]) => ({ playerId, ...own }))
}
