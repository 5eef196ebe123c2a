import { outsideWeight } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import type { ChoiceColumns } from '#solver/ahead-choice-rows'
import type { AheadShape, AheadShapes } from '#solver/ahead-shapes'
import type { LinearModel } from '#solver/linear-model'

export type Entry = readonly [column: number, value: number]

/** A model of the weeks ahead in the making; all times in minutes. */
export type AheadFrame = {
  readonly problem: AheadProblem
  readonly linear: LinearModel
  readonly shapes: AheadShapes
  readonly choices: ChoiceColumns
  /** By practice and shape the column that says whether it is chosen; null: it cannot be. */
  readonly shapeColumns: readonly (readonly (number | null)[])[]
  /** Practices by bin: leans are decided for all of a bin together. */
  readonly bins: readonly (readonly number[])[]
}

/** A column by shape: that of the only offer with it, or one that all with it add up to. */
export function addShapeColumns(
  linear: LinearModel,
  { practices }: AheadShapes,
  choices: ChoiceColumns,
): AheadFrame['shapeColumns'] {
  return practices.map(({ shapes, shapeOf }, practice) =>
    shapes.map((_, shape) => {
      const own = (choices[practice] ?? []).flatMap((column, offer) =>
        column !== null && shapeOf[offer] === shape ? [column] : [],
      )
      if (own.length < 2) return own[0] ?? null
      const sum = linear.addColumn({ upper: 1, isWhole: false })
      linear.addRow({ lower: 0, upper: 0 }, [...own.map((column) => [column, -1] as const), [sum, 1]])
      return sum
    }),
  )
}

/** What some practices come to in a figure that only the shape decides. */
export function overShapes(
  { shapes, shapeColumns }: AheadFrame,
  practices: readonly number[],
  figure: (shape: AheadShape, practice: number) => number,
): readonly Entry[] {
  return practices.flatMap((practice) =>
    (shapes.practices[practice]?.shapes ?? []).flatMap((shape, index) =>
      entry(shapeColumns[practice]?.[index], figure(shape, practice)),
    ),
  )
}

/** The same of a figure that only offers of some meetings have. */
export function overOffers(
  { shapes, choices }: AheadFrame,
  practices: readonly number[],
  {
    meets,
    figure,
  }: { readonly meets: (meeting: number) => boolean; readonly figure: (shape: AheadShape) => number },
): readonly Entry[] {
  return practices.flatMap((practice) => {
    const own = shapes.practices[practice]
    return (choices[practice] ?? []).flatMap((column, offer) => {
      const shape = own?.shapes[own.shapeOf[offer] ?? -1]
      return shape && meets(own.meetingOf[offer] ?? -1) ? entry(column, figure(shape)) : []
    })
  })
}

export function entry(column: number | null | undefined, value = 1): readonly Entry[] {
  return column === null || column === undefined || value === 0 ? [] : [[column, value]]
}

export function scaled(entries: readonly Entry[], by: number): readonly Entry[] {
  return entries.map(([column, value]) => [column, value * by])
}

/** Minutes off that cost once up to the tolerance and ten times beyond, as two columns that add up. */
export function bentCost(linear: LinearModel, tolerance: number): readonly [inside: Entry, outside: Entry] {
  const inside = linear.addColumn({ cost: 1, upper: Math.max(0, tolerance), isWhole: false })
  const outside = linear.addColumn({
    cost: 1 + outsideWeight,
    upper: Number.POSITIVE_INFINITY,
    isWhole: false,
  })
  return [
    [inside, 1],
    [outside, 1],
  ]
}
