import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { SetAside } from '#pitch/set-aside'
import { type DoneEvent, isOut, type StandingEvents } from '#pitch/standing-events'

/** What can be taken back. */
export type UndoStep<Done = Deed> = {
  readonly event: PitchEvent<Done>
  /** Taps of the same thing, of this phone or another, that would take its place: to be undone with it. */
  readonly also: readonly string[]
  /** Ask a second question before: somebody is out for today. */
  readonly needsSecondAnswer: boolean
}

/** What was taken back; `by`: undos to be undone, all of them, to have it again. */
export type RedoStep<Done = Deed> = {
  readonly event: PitchEvent<Done>
  readonly by: readonly string[]
}

/** Taps that stand and that do something, the last first. */
export function undoSteps({ standing }: StandingEvents, setAside: readonly SetAside[]): readonly UndoStep[] {
  // A turn that nobody was there for does nothing either, but whoever tapped it looks for it here.
  const idle = new Set(
    setAside.filter(({ why }) => why !== 'noTime' && why !== 'nobodyThere').map(({ id }) => id),
  )
  return stepsBack(standing, { idle, sameness })
}

/** The same for taps of any kind. `sameness`: the same text for taps of which only one stands; null: it stands by itself. */
export function stepsBack<Done extends { readonly kind: string }>(
  standing: readonly DoneEvent<Done>[],
  {
    idle,
    sameness,
  }: {
    readonly idle: ReadonlySet<string>
    readonly sameness: (event: DoneEvent<Done>) => string | null
  },
): readonly UndoStep<Done>[] {
  const alike = new Map<string, string[]>()
  for (const event of standing) {
    const what = sameness(event)
    const others = what !== null && alike.get(what)
    if (others) others.push(event.id)
    else if (what !== null) alike.set(what, [event.id])
  }
  const told = new Set<string>()
  return standing
    .toReversed()
    .filter(({ id }) => !idle.has(id))
    .flatMap((event) => {
      const what = sameness(event)
      // One step takes all of them back: a second would find nothing left to do.
      if (what !== null && told.has(what)) return []
      if (what !== null) told.add(what)
      const ids = what === null ? [] : (alike.get(what) ?? [])
      return [{ event, also: ids.filter((id) => id !== event.id), needsSecondAnswer: isOut(event) }]
    })
}

/** Taps that were taken back, the last first. */
export function redoSteps<Done extends { readonly kind: string }>({
  undone,
}: StandingEvents<Done>): readonly RedoStep<Done>[] {
  return undone.toReversed()
}

/** The same text for taps of which only one stands; null: it stands by itself. */
function sameness({ deed }: DoneEvent): string | null {
  switch (deed.kind) {
    case 'turnStart':
      return `turn ${deed.turn}`
    case 'roundDone':
      return `round ${deed.round}`
    case 'register':
      return deed.state === 'out' ? `out ${deed.playerId}` : null
    case 'begin':
    case 'stop':
    case 'asPlanned':
      return deed.kind
    default:
      return null
  }
}
