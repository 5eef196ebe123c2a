import { type DoneEvent, isOut, type StandingEvents } from '#pitch/standing-events'
import type { RedoStep, UndoStep } from '#pitch/undo-steps'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchSetAside } from '#touchline/match-set-aside'

/** Taps beside a match that stand and do something, the last first. One step takes back what two phones said alike. */
export function matchUndoSteps(
  { standing }: StandingEvents<MatchDeed>,
  setAside: readonly MatchSetAside[],
): readonly UndoStep<MatchDeed>[] {
  const idle = new Set(setAside.map(({ id }) => id))
  const alike = new Map<string, string[]>()
  for (const event of standing) {
    const what = sameness(event)
    if (what !== null) alike.set(what, [...(alike.get(what) ?? []), event.id])
  }
  const told = new Set<string>()
  return standing.toReversed().flatMap((event): UndoStep<MatchDeed>[] => {
    const what = sameness(event)
    if (idle.has(event.id) || (what !== null && told.has(what))) return []
    if (what !== null) told.add(what)
    const ids = what === null ? [] : (alike.get(what) ?? [])
    return [
      {
        event: event as UndoStep<MatchDeed>['event'],
        also: ids.filter((id) => id !== event.id),
        needsSecondAnswer: isOut(event as UndoStep<MatchDeed>['event']),
      },
    ]
  })
}

/** Taps that were taken back, the last first. */
export function matchRedoSteps({ undone }: StandingEvents<MatchDeed>): readonly RedoStep<MatchDeed>[] {
  return undone.toReversed() as readonly RedoStep<MatchDeed>[]
}

/** The same text for taps of which only one stands; null: it stands by itself. */
function sameness({ deed }: DoneEvent<MatchDeed>): string | null {
  switch (deed.kind) {
    case 'kickOff':
    case 'periodEnd':
      return `${deed.kind} ${deed.period}`
    case 'fullTime':
      return deed.kind
    case 'changeMade':
    case 'changeDropped':
      return `change ${deed.due}`
    case 'register':
      return deed.state === 'out' ? `out ${deed.playerId}` : null
    default:
      return null
  }
}
