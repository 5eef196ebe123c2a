import type { Seconds } from '#common/time'

const day = 24 * 3600

/**
 * Why what was tapped is no practice or match; null when it can be one. A phone whose clock was years off, with another
 * beside it, or a stop tapped days later, would make one that no book should hold.
 */
export function whyTooLong(
  { lastSecond }: { readonly lastSecond: Seconds },
  what: 'practice' | 'match',
): string | null {
  if (lastSecond <= day) return null
  const days = new Intl.NumberFormat('en').format(Math.floor(lastSecond / day))
  const time = days === '1' ? 'more than a day' : `${days} days`
  return `From the first to the last of what was tapped it is ${time}, and a ${what} is a day at most: the clock of a phone was wrong, or the ${what === 'match' ? 'end' : 'stop'} was tapped much later. Take back at the pitch page what has the wrong time, or type the ${what} in by hand.`
}
