import { seededChance } from '#common/chance'
import { dealer } from '#fairness/luck/deal-at-random'
import type { Draw } from '#fairness/luck/draw'
import type { DrawMoments } from '#fairness/luck/draw-moments'
import { countDraws, visitDraws } from '#fairness/luck/every-draw'
import { noise } from '#fairness/noise'

/** How often a fair draw gives gaps as wide as these, all together, and how that was found. */
export type SquadLuck = {
  readonly pValue: number
  readonly way: 'everyDraw' | 'drawnAtRandom'
  /** Draws looked at; so many of them were as wide. */
  readonly draws: number
  readonly asWide: number
}

const mostEveryDraw = 20_000
const mostDraws = 999
/** So many draws as wide are enough to say how often: the answer is then right within some ten per cent of itself. */
const enoughAsWide = 100

/**
 * The squad first: gaps in `columns` (player × 4 + role, each of some spread), each measured by the spread that a fair draw
 * gives it, squared and added up, against the same of dealt draws. Every way to deal where they are few; else draws at random from the
 * seed, ended as soon as enough were as wide. Source of the ending: J. Besag & P. Clifford, "Sequential Monte Carlo
 * p-values", Biometrika 78 (1991) 301-304; from memory.
 */
export function squadLuck(
  draw: Draw,
  {
    moments,
    columns,
    seed,
  }: { readonly moments: DrawMoments; readonly columns: readonly number[]; readonly seed: number },
): SquadLuck {
  const width = (turns: Float64Array) => {
    let sum = 0
    for (const at of columns) {
      const gap = (turns[at] as number) - (moments.mean[at] as number)
      sum += (gap * gap) / (moments.variance[at] as number)
    }
    return sum
  }
  const edge = width(moments.had) * (1 - noise) - noise
  let [draws, asWide] = [0, 0]
  const note = (turns: Float64Array) => {
    draws++
    if (width(turns) >= edge) asWide++
  }
  if (countDraws(draw) <= mostEveryDraw) {
    visitDraws(draw, note)
    return { pValue: asWide / draws, way: 'everyDraw', draws, asWide }
  }
  const deal = dealer(draw, seededChance(seed))
  const turns = new Float64Array(moments.had.length)
  while (draws < mostDraws && asWide < enoughAsWide) {
    deal(turns)
    note(turns)
  }
  // What was written is one of the draws, unless there were enough others.
  const pValue = asWide < enoughAsWide ? (asWide + 1) / (draws + 1) : asWide / draws
  return { pValue, way: 'drawnAtRandom', draws, asWide }
}
