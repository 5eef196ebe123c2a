import type { PitchEvent } from '#pitch/pitch-event'
import type { SetAside } from '#pitch/set-aside'
import type { DoneEvent, StandingEvents } from '#pitch/standing-events'

/** What can be taken back. */
export type UndoStep = {
  readonly event: PitchEvent
  /** Taps of the same thing, of this phone or another, that would take its place: to be undone with it. */
  readonly also: readonly string[]
  /** Ask a second question before: somebody is out for today. */
  readonly needsSecondAnswer: boolean
}

/** What was taken back; `by`: undos to be undone, all of them, to have it again. */
export type RedoStep = { readonly event: PitchEvent; readonly by: readonly string[] }

/** Taps that stand and that do something, the last first. */
export function undoSteps({ standing }: StandingEvents, setAside: readonly SetAside[]): readonly UndoStep[] {
  // A turn that nobody was there for does nothing either, but whoever tapped it looks for it here.
  const idle = new Set(
    setAside.filter(({ why }) => why !== 'noTime' && why !== 'nobodyThere').map(({ id }) => id),
  )
  return standing
    .filter(({ id }) => !idle.has(id))
    .map((event) => ({
      event,
      also: standing.filter((other) => other.id !== event.id && isSame(event, other)).map(({ id }) => id),
      needsSecondAnswer: event.deed.kind === 'register' && event.deed.state === 'out',
    }))
    .reverse()
}

/** Taps that were taken back, the last first. */
export function redoSteps({ undone }: StandingEvents): readonly RedoStep[] {
  return [...undone].reverse()
}

/** Two taps of which only one stands. */
function isSame({ deed: one }: DoneEvent, { deed: other }: DoneEvent): boolean {
  if (one.kind === 'turnStart') return other.kind === 'turnStart' && one.turn === other.turn
  if (one.kind === 'roundDone') return other.kind === 'roundDone' && one.round === other.round
  if (one.kind === 'register') {
    const isOut = one.state === 'out' && other.kind === 'register' && other.state === 'out'
    return isOut && one.playerId === other.playerId
  }
  return one.kind === other.kind && (one.kind === 'begin' || one.kind === 'stop' || one.kind === 'asPlanned')
}
