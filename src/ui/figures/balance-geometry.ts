import type { Seconds } from '#common/time'

export type Balance = {
  readonly seconds: Seconds
  readonly dueSeconds: Seconds
  readonly toleranceSeconds: Seconds
}

export type BalanceGeometry = {
  /** Where the fair share stands: always the middle. */
  readonly centre: number
  readonly bandFrom: number
  readonly bandTo: number
  readonly dot: number
  /** The share lies beyond the end of the bar, which then ends in an arrow. */
  readonly beyond: 'left' | 'right' | null
}

/** Places on a bar `width` long whose half stands for `spanSeconds`; `inset` is kept free at both ends for the dot. */
export function balanceGeometry(
  { seconds, dueSeconds, toleranceSeconds }: Balance,
  {
    spanSeconds,
    width,
    inset,
  }: { readonly spanSeconds: Seconds; readonly width: number; readonly inset: number },
): BalanceGeometry {
  const centre = width / 2
  const perSecond = spanSeconds > 0 ? (centre - inset) / spanSeconds : 0
  const gap = seconds - dueSeconds
  const within = (x: number) => Math.min(width - inset, Math.max(inset, x))
  return {
    centre,
    bandFrom: within(centre - toleranceSeconds * perSecond),
    bandTo: within(centre + toleranceSeconds * perSecond),
    dot: within(centre + gap * perSecond),
    beyond: Math.abs(gap) <= spanSeconds ? null : gap < 0 ? 'left' : 'right',
  }
}

/** One scale for all bars of a page, so that they can be held against each other: the widest gap fits, the band is never the whole bar. */
export function balanceSpanSeconds(balances: readonly Balance[]): Seconds {
  const widest = balances.map((b) => Math.max(Math.abs(b.seconds - b.dueSeconds), 1.6 * b.toleranceSeconds))
  return Math.max(60, ...widest)
}
