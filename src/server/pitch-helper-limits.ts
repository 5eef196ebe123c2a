import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listIdsByHand, type PitchHand } from '#data/pitch-events'
import type { TappedEvent } from '#touchline/tapped-event'

const onlyCoach = 'Only a coach of the squad can change the plan. What was planned stands.'
const staysOut =
  'Only a coach of the squad can take back that somebody is out for today. Until then the player stays out.'

/**
 * Of new events those that are not a helper's to tap, each with a sentence: a new plan, or taking one back, which changes
 * the plan as well; and taking back that somebody is out for today, unless the same hand tapped it. To have again what
 * was taken back is the same.
 */
export async function whyNotForHelper(
  tx: ClubTx,
  {
    sessionId,
    hand,
    events,
    listBefore,
  }: {
    readonly sessionId: string
    readonly hand: Omit<PitchHand, 'at'>
    readonly events: readonly TappedEvent[]
    /** Everything tapped in the session before these. */
    readonly listBefore: () => Promise<readonly TappedEvent[]>
  },
): Promise<readonly (readonly [id: string, why: string])[]> {
  const isUndone = events.some(({ deed }) => deed.kind === 'undo')
  const before = isUndone ? await listBefore() : []
  const own = isUndone ? await listIdsByHand(tx, { sessionId, hand }) : new Set()
  const byId = new Map([...before, ...events].map((event) => [event.id, event] as const))
  const others = new Set(before.map(({ id }) => id).filter((id) => !own.has(id)))
  const whyNot = (event: TappedEvent): string | null => {
    const end = endOfUndos(event, byId)
    if (end?.deed.kind === 'replan') return onlyCoach
    if (end?.deed.kind !== 'register') return null
    if (end.deed.secondAnswer) return staysOut
    const isOut = end.deed.state === 'out'
    return isOut && end !== event && others.has(end.id) ? staysOut : null
  }
  return events.flatMap((event) => {
    const why = whyNot(event)
    return why ? [[event.id, why]] : []
  })
}

/** What an undo, or an undo of an undo, comes down to; of anything else the event itself. Null: it is not here. */
function endOfUndos(event: TappedEvent, byId: ReadonlyMap<string, TappedEvent>): TappedEvent | null {
  const seen = new Set<string>()
  let at: TappedEvent | undefined = event
  while (at?.deed.kind === 'undo' && !seen.has(at.id)) {
    seen.add(at.id)
    at = byId.get(at.deed.undoes)
  }
  return at ?? null
}
