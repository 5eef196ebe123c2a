import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { SetAside } from '#pitch/set-aside'

/** What is tapped at a practice or beside a match. An undo reads the same in both. */
type AnyDeed = { readonly kind: string }
type Undo = Extract<Deed, { kind: 'undo' }>

/** An event with a deed of one kind. */
export type EventOf<Kind extends Done['kind'], Done extends AnyDeed = Deed> = Omit<PitchEvent, 'deed'> & {
  readonly deed: Extract<Done, { readonly kind: Kind }>
}
/** Anything but an undo. */
export type DoneEvent<Done extends AnyDeed = Deed> = Omit<PitchEvent, 'deed'> & {
  readonly deed: Exclude<Done, { readonly kind: 'undo' }>
}

export type StandingEvents<Done extends AnyDeed = Deed> = {
  /** What nothing has undone, undos left out; in order. */
  readonly standing: readonly DoneEvent<Done>[]
  /** What is undone, with the undos that stand; in order. */
  readonly undone: readonly { readonly event: DoneEvent<Done>; readonly by: readonly string[] }[]
  /** Undos that undo nothing. */
  readonly setAside: readonly SetAside[]
}

/**
 * What stands of events in order. An undo works on its target whichever phone's clock says that it came first; an undo
 * of what has not arrived waits for it; an undo that is undone is as if never tapped.
 */
export function eventsThatStand<Done extends AnyDeed = Deed>(
  events: readonly PitchEvent<Done>[],
): StandingEvents<Done> {
  const byId = new Map(events.map((event) => [event.id, event]))
  const undosOf = new Map<string, UndoEvent[]>()
  const setAside: SetAside[] = []
  for (const event of events) {
    if (!isUndo(event)) continue
    const target = byId.get(event.deed.undoes)
    if (!target) setAside.push({ id: event.id, why: 'unknownEvent' })
    else if (isOut(target) && event.deed.secondAnswer !== true) setAside.push({ id: event.id, why: 'isOut' })
    else {
      const others = undosOf.get(target.id)
      if (others) others.push(event)
      else undosOf.set(target.id, [event])
    }
  }
  const undoersOf = undoersThatStand(undosOf)
  const done = events.filter((event): event is PitchEvent<Done> & DoneEvent<Done> => !isUndo(event))
  return {
    standing: done.filter(({ id }) => undoersOf(id).length === 0),
    undone: done.flatMap((event) => {
      const by = undoersOf(event.id)
      return by.length > 0 ? [{ event, by }] : []
    }),
    setAside,
  }
}

/**
 * The undos of an event that are not undone themselves. Undos that undo each other in a ring: the first in order is read
 * as if the others were not there. A list of what is being looked into, not a function that calls itself: a chain of
 * undos may be as long as there are taps, and a stack of calls may not.
 */
function undoersThatStand(
  undosOf: ReadonlyMap<string, readonly UndoEvent[]>,
): (id: string) => readonly string[] {
  const known = new Map<string, string[]>()
  return (id) => {
    const found = known.get(id)
    if (found) return found
    const open = [{ id, looked: 0, standing: [] as string[] }]
    known.set(id, [])
    for (let now = open.at(-1); now; now = open.at(-1)) {
      const undo = undosOf.get(now.id)?.[now.looked]
      const undoers = undo && known.get(undo.id)
      if (!undo) {
        known.set(now.id, now.standing)
        open.pop()
      } else if (undoers) {
        if (undoers.length === 0) now.standing.push(undo.id)
        now.looked += 1
      } else {
        known.set(undo.id, [])
        open.push({ id: undo.id, looked: 0, standing: [] })
      }
    }
    return known.get(id) ?? []
  }
}

type UndoEvent = Omit<PitchEvent, 'deed'> & { readonly deed: Undo }

function isUndo(event: PitchEvent<AnyDeed>): event is UndoEvent {
  return event.deed.kind === 'undo'
}

/** The events with a deed of one kind, in their order. */
export function eventsOf<Kind extends Done['kind'], Done extends AnyDeed = Deed>(
  events: readonly PitchEvent<Done>[],
  kind: Kind,
): readonly EventOf<Kind, Done>[] {
  return events.filter(({ deed }) => deed.kind === kind) as unknown as readonly EventOf<Kind, Done>[]
}

/** Whether somebody is out for today by this. */
export function isOut({ deed }: PitchEvent<AnyDeed>): boolean {
  return deed.kind === 'register' && 'state' in deed && deed.state === 'out'
}
