import type { UndoStep } from '#pitch/undo-steps'
import type { MatchDeed } from '#touchline/match-deed'

type Step = UndoStep<MatchDeed>

/** What one tap brings about is stamped in one go, a millisecond apart; no two taps of a thumb are that close. */
const togetherMs = 6

/** The steps that one tap on Undo takes back: the last one and what it brought with it. */
export function matchStepsTogether(undoable: readonly Step[]): readonly Step[] {
  const steps: Step[] = []
  for (const step of undoable) {
    const last = steps.at(-1)
    if (last && !isBroughtBy(last, step)) break
    steps.push(step)
  }
  return steps
}

/** `later` came with `earlier`; a plan that was found better afterwards goes with the one it betters. */
function isBroughtBy({ event: later }: Step, { event: earlier }: Step): boolean {
  if (later.deviceId !== earlier.deviceId) return false
  const isBetter = later.deed.kind === 'replan' && earlier.deed.kind === 'replan'
  return isBetter || Math.abs(later.at - earlier.at) <= togetherMs
}

/** What takes these steps back. */
export function matchUndoDeeds(steps: readonly Step[]): readonly MatchDeed[] {
  const needsAnswer = new Map(
    steps.flatMap(({ event, also, needsSecondAnswer }) =>
      [event.id, ...also].map((id) => [id, needsSecondAnswer] as const),
    ),
  )
  return [...needsAnswer].map(([undoes, isAsked]) => ({
    kind: 'undo',
    undoes,
    ...(isAsked ? { secondAnswer: true } : {}),
  }))
}
