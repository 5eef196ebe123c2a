import type { Hits, Interval } from '#common/statistics/interval'

/** Of the normal distribution: 95 in 100 lie within so many standard deviations on both sides. */
export const within95 = 1.959963984540054

/**
 * Where the true part of hits lies, by Wilson's score interval without correction for continuity; about as often as
 * `deviations` says. Nothing tried: anywhere.
 * Source: E. B. Wilson, "Probable inference, the law of succession, and statistical inference", JASA 22 (1927) 209-212.
 */
export function wilsonInterval({ hits, tries }: Hits, deviations = within95): Interval {
  if (tries <= 0) return { low: 0, high: 1 }
  const [part, square] = [hits / tries, deviations ** 2]
  const scale = 1 + square / tries
  const centre = (part + square / (2 * tries)) / scale
  const reach = (deviations / scale) * Math.sqrt((part * (1 - part)) / tries + square / (4 * tries * tries))
  return {
    low: hits <= 0 ? 0 : Math.max(0, centre - reach),
    high: hits >= tries ? 1 : Math.min(1, centre + reach),
  }
}
