import type { Adaptation, AdaptationFor, AdaptationKind, DesignChange } from '#practice/adaptation'
import { toMetres } from '#practice/area-unit'
import type { AreaShape, DesignRound, Ending, SizeChoice } from '#practice/design'
import { type DesignSheet, plainSheet } from '#practice/design-sheet'
import type { ThemeKey } from '#themes/our-themes'

/** The round with both sides whole, played as two equal halves with the roles swapped. */
export const freeGameTitle = 'Free game'

/** `3v2+1` is three attackers, two defenders and a keeper. */
export function shape(text: string): AreaShape {
  const [attack = 0, defend = 0, keep = 0] = text.split(/[v+]/).map(Number)
  return { attack, defend, keep }
}

/** `turns`: `6x40` is six turns of forty seconds. */
export function round(title: string, turns: string, ...stations: readonly string[]): DesignRound {
  const [turnCount = 0, turnSeconds = 0] = turns.split('x').map(Number)
  const isFreeGame = title === freeGameTitle
  const shapes = stations.map(shape)
  return {
    title,
    turnCount,
    turnSeconds,
    gapSeconds: isFreeGame ? 0 : 20,
    stations: shapes,
    ...(shapes.some(({ keep }) => keep > 0) ? { keepersStay: true } : {}),
    ...(isFreeGame ? { isFreeGame } : {}),
  }
}

/** Goals count one for everybody, as in a match. */
export function freeGame(turns: string, sides: string): DesignRound {
  return { ...round(freeGameTitle, turns, sides), endings: [goal(1)] }
}

export function goal(points: number, words = 'Goal'): Ending {
  return { id: 'goal', words, side: 'attack', points }
}

/** What the defenders get for winning the ball and doing something with it. */
export function won(points: number, words: string): Ending {
  return { id: 'won', words, side: 'defend', points }
}

/** `3v2+1 for 1`: a size that may be picked, and its points. */
export function sizes(by: 'attack' | 'coach', ...texts: readonly string[]): Pick<DesignRound, 'choice'> {
  const all = texts.map((text): SizeChoice => {
    const [size = '', points] = text.split(' for ')
    return { shape: shape(size), points: Number(points) }
  })
  return { choice: { by, sizes: all } }
}

type Made = { readonly [Makes in 'harder' | 'easier']?: AdaptationFor } & {
  readonly why: string
  readonly changes: readonly DesignChange[]
}

/** The id comes from its place in the design. */
export type PlainAdaptation = Omit<Adaptation, 'id'>

/** `{ harder: 'attack', why, changes }`. */
export function adapt(kind: AdaptationKind, title: string, made: Made): PlainAdaptation {
  const makes = made.harder ? 'harder' : 'easier'
  return { kind, title, makes, forWhom: made[makes] ?? 'all', why: made.why, changes: made.changes }
}

export const area = (lengthTimes: number, widthTimes: number): DesignChange => ({
  what: 'area',
  lengthTimes,
  widthTimes,
})
export const turns = (secondsTimes: number, countTimes: number): DesignChange => ({
  what: 'turns',
  round: null,
  secondsTimes,
  countTimes,
})
export const rule = (words: string, ofRound: number | null = null): DesignChange => ({
  what: 'condition',
  round: ofRound,
  words,
})
export const more = (
  roles: Partial<Record<'attack' | 'defend' | 'keep', number>>,
  ofRound: number | null = null,
): DesignChange => ({ what: 'places', round: ofRound, attack: 0, defend: 0, keep: 0, ...roles })
export const counts = (ending: Ending, ofRound: number | null = null): DesignChange => ({
  what: 'ending',
  round: ofRound,
  ending,
})
export const areas = (by: number, ofRound: number | null = null): DesignChange => ({
  what: 'areas',
  round: ofRound,
  by,
})

/** Its id and its theme's are keys. */
export type OurDesign = DesignSheet & { readonly themeId: ThemeKey }

type Parts = Pick<DesignSheet, 'name' | 'areaLengthM' | 'areaWidthM' | 'note' | 'rounds'> &
  Partial<Pick<DesignSheet, 'areaUnit' | 'isMirrored' | 'sides'>> & {
    readonly adaptations: readonly PlainAdaptation[]
  }

/** A design whose id, and its theme's, are keys: who takes it into a club gives it ids there. */
export function design(key: string, theme: ThemeKey, parts: Parts): OurDesign {
  return {
    ...plainSheet,
    ...parts,
    id: key,
    themeId: theme,
    adaptations: parts.adaptations.map((adaptation, index) => ({ ...adaptation, id: `a${index + 1}` })),
  }
}

/** A length and a width as they are written in yards. */
export const yards = (length: number, width: number) =>
  ({
    areaLengthM: toMetres(length, 'yd'),
    areaWidthM: toMetres(width, 'yd'),
    areaUnit: 'yd',
  }) as const
