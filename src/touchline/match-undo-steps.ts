import type { DoneEvent, StandingEvents } from '#pitch/standing-events'
import { stepsBack, type UndoStep } from '#pitch/undo-steps'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchSetAside } from '#touchline/match-set-aside'

/** Taps beside a match that stand and do something, the last first. One step takes back what two phones said alike. */
export function matchUndoSteps(
  { standing }: StandingEvents<MatchDeed>,
  setAside: readonly MatchSetAside[],
): readonly UndoStep<MatchDeed>[] {
  const idle = new Set(setAside.map(({ id }) => id))
  return stepsBack(standing, { idle, sameness })
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
