import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { UndoStep } from '#pitch/undo-steps'

/** Taps so close together on one phone are one thing to whoever tapped: who left, and the places that changed by it. */
const togetherMs = 1500
const follows: readonly Deed['kind'][] = ['replan', 'change', 'begin', 'stop']

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

/** `later` came with `earlier`, in the same moment and by itself. */
function isBroughtBy(later: PitchEvent, earlier: PitchEvent): boolean {
  return (
    later.deviceId === earlier.deviceId &&
    follows.includes(later.deed.kind) &&
    Math.abs(later.at - earlier.at) <= togetherMs
  )
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
