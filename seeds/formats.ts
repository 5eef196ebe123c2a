import type { Line, Period } from '#match/match'

/** How a squad's matches are played. Sizes and lengths are the demo club's own: common practice, no source. */
export type MatchFormat = {
  readonly name: string
  readonly lines: Readonly<Record<Line, number>>
  readonly periods: readonly Period[]
  /** So many players are asked to come to a match. */
  readonly called: number
  /** Changes happen at these parts of a period. */
  readonly stintsInPeriod: number
}

export const formats = {
  underTen: {
    name: '7v7',
    lines: { keeper: 1, back: 2, middle: 2, forward: 2 },
    periods: [
      { start: 0, end: 1500 },
      { start: 1800, end: 3300 },
    ],
    called: 10,
    stintsInPeriod: 3,
  },
  underTwelve: {
    name: '9v9',
    lines: { keeper: 1, back: 3, middle: 3, forward: 2 },
    periods: [
      { start: 0, end: 1800 },
      { start: 2400, end: 4200 },
    ],
    called: 13,
    stintsInPeriod: 3,
  },
} as const satisfies Record<string, MatchFormat>
