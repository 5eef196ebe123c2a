import type { Seconds } from '#common/time'
import type { LengthAsked } from '#pitch/length-of-practice'

/** Why the length of a practice is asked for, and what is proposed. */
export function lengthQuestion({ why, stopped, proposed }: LengthAsked): string {
  if (why === 'notKnown')
    return 'The register was tapped, and no stop; how long it was is not written anywhere. Who was there is written for so long.'
  const late = `The stop was tapped ${hoursText(stopped ?? 0)} after the beginning, long after everything else: it seems to have been forgotten.`
  return proposed === null
    ? `${late} How long was it really?`
    : `${late} Proposed is the end of the last turn, or the length stated for this practice where that is later.`
}

/** Whole minutes, rounded up so that the last turn is in it; null: nothing is proposed. */
export function proposedMinutes({ proposed }: LengthAsked): number | null {
  return proposed === null ? null : Math.ceil(proposed / 60)
}

function hoursText(seconds: Seconds): string {
  const minutes = Math.round(seconds / 60)
  const [days, hours] = [Math.floor(minutes / 1440), Math.floor(minutes / 60)]
  if (days > 0) return days === 1 ? 'more than a day' : `${new Intl.NumberFormat('en').format(days)} days`
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`
}
