import 'server-only'
import { z } from 'zod'
import { adaptationsShape, designRoundsShape, designSidesShape } from '#exchange/design-json'
import { longestName } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import type { DesignRound } from '#practice/design'
import { areaUnits } from '#practice/design-sheet'

const mostNoteLetters = 2000

const atMost = (letters: number) => (text: string, context: z.RefinementCtx) => {
  const length = [...text].length
  if (length > letters)
    context.addIssue({ code: 'custom', message: `has ${length} letters; ${letters} at most would be right` })
}

const metres = z
  .number('is no number; write a length such as 30')
  .min(0, 'cannot be below 0')
  .max(1000, 'is far longer than any pitch; 30 m is usual for a small group')

const draft = z.strictObject({
  name: z.string().transform(tidyName).superRefine(atMost(longestName)),
  themeId: z.uuid('choose a theme of the list, or none').nullable(),
  areaLengthM: metres,
  areaWidthM: metres,
  areaUnit: z.enum(areaUnits),
  isMirrored: z.boolean(),
  hasHeading: z.boolean(),
  note: z.string().trim().superRefine(atMost(mostNoteLetters)),
  rounds: designRoundsShape.transform((rounds) => rounds.map(tidyRound)),
  sides: designSidesShape,
  adaptations: adaptationsShape,
})

/** Rules of play are typed one a line; empty lines are none. */
function tidyRound(round: DesignRound): DesignRound {
  if (!round.conditions) return round
  const conditions = round.conditions.map((words) => words.trim()).filter((words) => words !== '')
  return { ...round, conditions }
}

const ofSquad = { squadId: z.uuid() }

export const newDesignInput = z.object({
  ...ofSquad,
  design: draft,
  /** Said on purpose: more children than this squad has, or keepers it has not. */
  isForOthers: z.boolean(),
})
export type NewDesignInput = z.infer<typeof newDesignInput>

export const designInput = newDesignInput.extend({
  designId: z.uuid(),
  /** What stood there when the page was opened. */
  version: z.string().max(100),
})
export type DesignInput = z.infer<typeof designInput>

export const designOfSquad = z.object({ ...ofSquad, designId: z.uuid() })
export type DesignOfSquad = z.infer<typeof designOfSquad>

export const putAwayInput = designOfSquad.extend({ what: z.enum(['putAway', 'takeOut']) })
export type PutAwayInput = z.infer<typeof putAwayInput>
