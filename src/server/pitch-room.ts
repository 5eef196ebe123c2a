import 'server-only'
import type { ClubTx } from '#data/in-club'
import { measurePitch, type PitchRoom } from '#data/pitch-events'
import type { Session } from '#data/sessions'
import { pitchLimits } from '#exchange/pitch-batch'
import type { PitchAsker } from '#server/pitch-asker'
import type { TappedEvent } from '#touchline/tapped-event'

const whole: PitchRoom = {
  events: pitchLimits.eventsOfPractice,
  bytes: pitchLimits.bytesOfPractice,
  guests: pitchLimits.guests,
}
const ofHelpers: PitchRoom = {
  events: whole.events * pitchLimits.shareOfHelpers,
  bytes: whole.bytes * pitchLimits.shareOfHelpers,
  guests: whole.guests * pitchLimits.shareOfHelpers,
}

/** Of new events those that there is no room for any more, each with a sentence. */
export async function whyNoRoom(
  tx: ClubTx,
  asker: PitchAsker,
  { session, events }: { readonly session: Session; readonly events: readonly TappedEvent[] },
): Promise<ReadonlyMap<string, string>> {
  if (events.length === 0) return new Map()
  const { inAll, byHelpers } = await measurePitch(tx, session.id)
  const rooms = [{ who: '', taken: inAll, most: whole }]
  if (asker.kind === 'helper') rooms.push({ who: ' from helpers', taken: byHelpers, most: ofHelpers })
  const why = new Map<string, string>()
  for (const { id, deed } of events) {
    const own = {
      events: 1,
      bytes: Buffer.byteLength(JSON.stringify(deed)),
      guests: deed.kind === 'guest' ? 1 : 0,
    }
    const full = rooms.flatMap(
      ({ who, taken, most }) => sentenceOf(together(taken, own), most, { who, what: session.kind }) ?? [],
    )
    if (full[0]) why.set(id, full[0])
    else for (const room of rooms) room.taken = together(room.taken, own)
  }
  return why
}

function together(one: PitchRoom, other: PitchRoom): PitchRoom {
  return {
    events: one.events + other.events,
    bytes: one.bytes + other.bytes,
    guests: one.guests + other.guests,
  }
}

function sentenceOf(
  taken: PitchRoom,
  most: PitchRoom,
  { who, what }: { readonly who: string; readonly what: Session['kind'] },
): string | null {
  if (taken.events > most.events) return `At most ${most.events} taps${who} are kept of one ${what}.`
  if (taken.bytes > most.bytes)
    return `At most ${most.bytes / 1_000_000} megabytes of taps${who} are kept of one ${what}.`
  if (taken.guests > most.guests) return `At most ${most.guests} new faces${who} can be added to one ${what}.`
  return null
}
