import type { PitchEvent } from '#pitch/pitch-event'
import { shortName } from '#pitch/short-name'
import type { TappedDeed } from '#touchline/tapped-event'

/** What others tapped as a helper may see it: the places are the same, names are short, and no plan is argued for. */
export function tappedForHelper<Done extends TappedDeed>(event: PitchEvent<Done>): PitchEvent<Done> {
  const { deed } = event
  if (deed.kind === 'guest') return { ...event, deed: { ...deed, name: shortName(deed.name) } }
  if (deed.kind === 'replan') return { ...event, deed: { ...deed, sentence: '' } }
  return event
}
