import { z } from 'zod'
import type { PlannedPractice, TermPlan } from '#ahead/term-plan'
import { isDay } from '#common/time'

/** More practices than a term has are a mistake, or meant to be a burden. */
const mostPlannedPractices = 200

const id = z.string().min(1).max(80)

const planned: z.ZodType<PlannedPractice> = z.strictObject({
  sessionId: id,
  themeId: id,
  designId: id,
  isHeld: z.boolean(),
})

/** A term's plan as it is stored and sent: its form only. Whether it keeps the programme is for `checkAhead` to say. */
export const termPlanShape: z.ZodType<TermPlan> = z.strictObject({
  practices: z
    .array(planned)
    .max(mostPlannedPractices, `at most ${mostPlannedPractices} practices`)
    .refine(
      (practices) => new Set(practices.map(({ sessionId }) => sessionId)).size === practices.length,
      'each practice once',
    ),
  asOf: z.string().refine(isDay, 'a day of the calendar as YYYY-MM-DD').nullable(),
})
