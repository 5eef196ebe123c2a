import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { UndoStep } from '#pitch/undo-steps'
import { swapSentence } from '#ui/pitch/round-deeds'

/** What one tap brings about is stamped in one go, a millisecond apart; no two taps of a thumb are that close. */
const togetherMs = 4

/** The steps that one tap on Undo takes back: the last one and what it brought with it. */
export function stepsTogether(undoable: readonly UndoStep[]): readonly UndoStep[] {
  const steps: UndoStep[] = []
  for (const step of undoable) {
    const last = steps.at(-1)
    if (last && !isBroughtBy(last.event, step.event)) break
    steps.push(step)
  }
  return steps
}

/** `later` came with `earlier`; a rotation that was found fairer afterwards goes with the one it betters. */
function isBroughtBy(later: PitchEvent, earlier: PitchEvent): boolean {
  if (later.deviceId !== earlier.deviceId) return false
  const isBetter =
    later.deed.kind === 'replan' &&
    later.deed.sentence !== swapSentence &&
    (earlier.deed.kind === 'replan' || earlier.deed.kind === 'begin')
  return isBetter || Math.abs(later.at - earlier.at) <= togetherMs
}

/** What takes these steps back. `events`: all there are, for ends of a turn that were said twice. */
export function undoDeeds(steps: readonly UndoStep[], events: readonly PitchEvent[]): readonly Deed[] {
  const ids = new Set(steps.flatMap(({ event, also }) => [event.id, ...also, ...sameEnd(event, events)]))
  const second = new Set(
    steps.filter((step) => step.needsSecondAnswer).flatMap(({ event, also }) => [event.id, ...also]),
  )
  return [...ids].map((undoes) => ({
    kind: 'undo',
    undoes,
    ...(second.has(undoes) ? { secondAnswer: true } : {}),
  }))
}

/** How a turn ended is said after it has ended; taking the end back takes both back. */
function sameEnd({ id, deed }: PitchEvent, events: readonly PitchEvent[]): readonly string[] {
  if (deed.kind !== 'turnEnd') return []
  return events.flatMap((other) =>
    other.id !== id && other.deed.kind === 'turnEnd' && other.deed.start === deed.start ? [other.id] : [],
  )
}
