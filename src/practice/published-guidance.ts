/** Where a published figure is from. Rules of governing bodies are data: they change, and local rules come first. */
export type Source = {
  /** Who publishes it. */
  readonly body: string
  /** What it is, as it can be looked up. */
  readonly title: string
  /** Season or year it was published for. */
  readonly season: string
  /** Where it was read: a reprint where the body's own page was not. */
  readonly readAt: string
}

/** Ages in whole years by the name of the group: under-tens are 10. Both included. */
export type AgeRange = { readonly from: number; readonly to: number }

/** A youth pitch as a body publishes it; where it gives one size, least and most are the same. */
export type PublishedPitch = {
  readonly source: Source
  readonly ages: AgeRange
  /** Players on a side, the keeper included where there is one. */
  readonly aSide: number
  readonly hasKeeper: boolean
  readonly lengthM: { readonly least: number; readonly most: number }
  readonly widthM: { readonly least: number; readonly most: number }
}

/** Advice on heading the ball in practice for an age group. */
export type HeadingAdvice = {
  readonly source: Source
  readonly ages: AgeRange
  /** Headers for each player in a practice; 0: none at all. */
  readonly mostHeaders: number
  readonly words: string
}

/** A usual caution that no figure of a design sets off. */
export type WelfareAdvice = {
  readonly subject: 'heat' | 'concussion' | 'load'
  readonly source: Source
  readonly words: string
}

/** Everything published that a design is held against. */
export type PublishedGuidance = {
  readonly pitches: readonly PublishedPitch[]
  readonly heading: readonly HeadingAdvice[]
  readonly welfare: readonly WelfareAdvice[]
}

export function isOfAge(ages: AgeRange, age: number): boolean {
  return ages.from <= age && age <= ages.to
}

/** Square metres for each child on the pitch, least and most. */
export function areaOnPitch({ aSide, lengthM, widthM }: PublishedPitch): {
  readonly least: number
  readonly most: number
} {
  const children = 2 * aSide
  return {
    least: (lengthM.least * widthM.least) / children,
    most: (lengthM.most * widthM.most) / children,
  }
}
