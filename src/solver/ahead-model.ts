import type { AheadProblem } from '#ahead/problem'
import { addChoices, type ChoiceColumns } from '#solver/ahead-choice-rows'
import { addCounts } from '#solver/ahead-count-rows'
import { addEven } from '#solver/ahead-even-rows'
import { type AheadFrame, addShapeColumns } from '#solver/ahead-frame'
import { addGaps, type OutsideColumns } from '#solver/ahead-gap-rows'
import { addLeans, type LeanColumns } from '#solver/ahead-lean-rows'
import { aheadShapes } from '#solver/ahead-shapes'
import { addThemes } from '#solver/ahead-theme-rows'
import { LinearModel } from '#solver/linear-model'

export type AheadModel = {
  readonly linear: LinearModel
  readonly choices: ChoiceColumns
  readonly leans: LeanColumns
  readonly outside: OutsideColumns
}

/** Practices by bin, in any order. */
export type Bins = AheadFrame['bins']

/**
 * The weeks ahead as one linear model, in minutes. Who gets more of what is decided bin by bin: with a bin for each
 * practice the model is exact; with fewer it is smaller, lets through more than can be played, and gives a bound.
 * `isPlain`: without the rows that only lift the bound.
 */
export function aheadModel(
  problem: AheadProblem,
  bins: Bins,
  { isPlain = false }: { readonly isPlain?: boolean } = {},
): AheadModel {
  const linear = new LinearModel()
  const shapes = aheadShapes(problem)
  const choices = addChoices(linear, problem)
  const shapeColumns = addShapeColumns(linear, shapes, choices)
  const frame: AheadFrame = { problem, linear, shapes, choices, shapeColumns, bins }
  const even = addEven(frame)
  const leans = addLeans(frame, even)
  const outside = addGaps(frame, leans)
  const themes = addThemes(frame, { even, leans })
  if (!isPlain) addCounts(frame, themes)
  return { linear, choices, leans, outside }
}

/** A bin for each practice. */
export function exactBins({ practices }: Pick<AheadProblem, 'practices'>): Bins {
  return practices.map((_, practice) => [practice])
}

/** All practices in one bin. */
export function oneBin({ practices }: Pick<AheadProblem, 'practices'>): Bins {
  return [practices.map((_, practice) => practice)]
}
