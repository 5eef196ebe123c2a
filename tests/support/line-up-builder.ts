import type { LineUpPlan } from '#lineup/line-up'
import { type LineUpPlayer, type LineUpProblem, type LineUpRules, noRules, notRunning } from '#lineup/problem'
import { noWishes } from '#match/format/line-wish'
import type { LinePlaces } from '#match/format/match-format'
import type { Line } from '#match/match'

/** K 1, back 1, middle 1: three on. */
export const threeOn: LinePlaces = { keeper: 1, back: 1, middle: 1, forward: 0 }

/** Four players, three on, two periods of two windows of five minutes; every change by name. */
export function smallLineUp(
  changes: {
    readonly rules?: Partial<LineUpRules>
    readonly players?: readonly Partial<LineUpPlayer>[]
    readonly periods?: number
    readonly windows?: number
    readonly seconds?: number
    readonly places?: LinePlaces
    readonly count?: number
  } & Partial<Omit<LineUpProblem, 'rules' | 'players' | 'windows'>> = {},
): LineUpProblem {
  const {
    rules,
    players,
    periods = 2,
    windows = 2,
    seconds = 300,
    places = threeOn,
    count = 4,
    ...rest
  } = changes
  const all = Array.from({ length: periods * windows }, (_, index) => ({
    period: Math.floor(index / windows),
    start: index * seconds,
    end: (index + 1) * seconds,
    places,
  }))
  return {
    windows: all,
    players: Array.from({ length: count }, (_, index) => ({
      id: `p${index + 1}`,
      keeps: true,
      isThere: all.map(() => true),
      owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
      leastSeconds: 0,
      mostSeconds: null,
      wishes: noWishes,
      metSeconds: { back: 0, middle: 0, forward: 0 },
      running: notRunning,
      ...players?.[index],
    })),
    rules: { ...noRules, ...rules },
    apart: [],
    together: [],
    fixed: [],
    hasStart: true,
    ...rest,
  }
}

const letters: Readonly<Record<string, Line | null>> = {
  K: 'keeper',
  B: 'back',
  M: 'middle',
  F: 'forward',
  '-': null,
}

/** A row a player, a letter a window: K, B, M, F, or - for off; spaces between periods as one likes. */
export function planOf(...rows: readonly string[]): LineUpPlan {
  return rows.map((row) =>
    [...row.replaceAll(' ', '')].map((letter) => {
      const line = letters[letter]
      if (line === undefined) throw new Error(`No place is written "${letter}".`)
      return line
    }),
  )
}
