import { areaOnPitch, isOfAge, type PublishedPitch } from '#practice/published-guidance'

/** Space for each child against what is published for an age. */
export type AreaVerdict = {
  readonly verdict: 'tighter' | 'within' | 'wider' | 'nothingPublished'
  /** One sentence for the coach, with the bodies named. */
  readonly sentence: string
}

type Span = { readonly least: number; readonly most: number }

/**
 * What a child's space in a practice is against the pitches published for the age, all bodies together: tighter than the
 * smallest, wider than the largest, or between. `area`: square metres each, keepers included, least and most of the rounds.
 */
export function areaVerdict(
  area: Span,
  at: { readonly age: number; readonly pitches: readonly PublishedPitch[] },
): AreaVerdict {
  const ofAge = at.pitches.filter(({ ages }) => isOfAge(ages, at.age))
  const has = `Each child has ${spanText(area)}`
  if (ofAge.length === 0)
    return {
      verdict: 'nothingPublished',
      sentence: `${has}; no youth pitch published for under ${at.age} is known here to hold it against.`,
    }
  const each = ofAge.map(areaOnPitch)
  const match = {
    least: Math.min(...each.map(({ least }) => least)),
    most: Math.max(...each.map(({ most }) => most)),
  }
  const bodies = [...new Set(ofAge.map(({ source }) => source.body))].join(' and ')
  const pitches = `the pitches published by ${bodies} for under ${at.age} (${spanText(match)} each)`
  const verdict = area.most < match.least ? 'tighter' : area.least > match.most ? 'wider' : 'within'
  return { verdict, sentence: `${has}: ${says[verdict](pitches)}.` }
}

const says = {
  tighter: (pitches: string) =>
    `tighter than a match on ${pitches}, so more of the ball and less running than a match has`,
  within: (pitches: string) => `as in a match on ${pitches}, at least in some rounds`,
  wider: (pitches: string) =>
    `wider than a match on ${pitches}, so more running and less of the ball than a match has`,
}

function spanText({ least, most }: Span): string {
  const [from, to] = [Math.round(least), Math.round(most)]
  return from === to ? `${to} m²` : `${from} to ${to} m²`
}

/** The pitch that gives a child least space, whatever the age; null: none is known. */
export function tightestPublished(pitches: readonly PublishedPitch[]): PublishedPitch | null {
  const [first = null, ...rest] = pitches
  return rest.reduce(
    (tightest, pitch) =>
      tightest && areaOnPitch(tightest).least <= areaOnPitch(pitch).least ? tightest : pitch,
    first,
  )
}
