import type { Seconds } from '#common/time'
import type { PitchState } from '#pitch/pitch-state'
import type { PlayerId } from '#squad/player'

/** What was otherwise than planned before the practice. Rounds and turns are places in the plan's lists, from 0. */
export type PlanDifference =
  /** The last round that was played; null: none was. */
  | { readonly kind: 'stoppedAfterRound'; readonly round: number | null }
  | { readonly kind: 'fewerTurns'; readonly round: number; readonly played: number; readonly planned: number }
  | { readonly kind: 'moreTurns'; readonly round: number; readonly played: number; readonly planned: number }
  /** Planned for, and never there. */
  | { readonly kind: 'missing'; readonly playerId: PlayerId }
  /** There, and not planned for. */
  | { readonly kind: 'extra'; readonly playerId: PlayerId; readonly from: Seconds }
  | { readonly kind: 'late'; readonly playerId: PlayerId; readonly from: Seconds }
  /** It went, or went out for today, before the last turn ended. */
  | { readonly kind: 'left'; readonly playerId: PlayerId; readonly at: Seconds; readonly isOut: boolean }
  /** Places changed during a turn. */
  | { readonly kind: 'changedDuringTurn'; readonly turn: number; readonly at: Seconds }
  /** A new plan was made at the pitch. */
  | { readonly kind: 'plannedAnew'; readonly sentence: string }

/** In the order of the list above; nothing without a plan. `lastEnd`: when the last turn ended. */
export function planDifferences(state: PitchState, lastEnd: Seconds): readonly PlanDifference[] {
  const { plan } = state
  if (!plan) return []
  return [
    ...ofRounds(state),
    ...ofPlayers(state, new Set(plan.players.map(({ playerId }) => playerId)), lastEnd),
    ...state.played.flatMap(({ index, parts }) =>
      parts.slice(1).map(({ start }) => ({ kind: 'changedDuringTurn' as const, turn: index, at: start })),
    ),
    ...(state.sentence === null ? [] : [{ kind: 'plannedAnew' as const, sentence: state.sentence }]),
  ]
}

function ofRounds({ plan, played }: PitchState): readonly PlanDifference[] {
  const planned = plan?.turns ?? []
  const rounds = [...new Set(planned.map(({ round }) => round))]
  const countOf = (round: number) => played.filter((turn) => turn.round === round).length
  const last = rounds.findLast((round) => countOf(round) > 0) ?? null
  const isWhole = rounds.length === 0 || last === rounds.at(-1)
  return [
    ...(isWhole ? [] : [{ kind: 'stoppedAfterRound' as const, round: last }]),
    ...rounds.flatMap((round): readonly PlanDifference[] => {
      const counts = {
        round,
        played: countOf(round),
        planned: planned.filter((turn) => turn.round === round).length,
      }
      if (last === null || round > last || counts.played === counts.planned) return []
      return [{ kind: counts.played < counts.planned ? 'fewerTurns' : 'moreTurns', ...counts }]
    }),
  ]
}

function ofPlayers(
  state: PitchState,
  expected: ReadonlySet<PlayerId>,
  lastEnd: Seconds,
): readonly PlanDifference[] {
  return state.players.flatMap(({ playerId, segments, isLate, isOut }): readonly PlanDifference[] => {
    const here = segments.filter(({ state: how }) => how === 'here')
    const [first] = here
    const last = here.at(-1)
    if (!first || !last) return expected.has(playerId) ? [{ kind: 'missing', playerId }] : []
    const leftAt = last.to !== null && last.to < lastEnd ? last.to : null
    return [
      ...(expected.has(playerId) ? [] : [{ kind: 'extra' as const, playerId, from: first.from }]),
      ...(isLate && expected.has(playerId) ? [{ kind: 'late' as const, playerId, from: first.from }] : []),
      ...(leftAt === null ? [] : [{ kind: 'left' as const, playerId, at: leftAt, isOut }]),
    ]
  })
}
