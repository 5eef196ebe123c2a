import 'server-only'
import { z } from 'zod'
import { termPlanShape } from '#exchange/term-plan-json'

/** A term's plan as the page sends it. */
export const termPlanInput = z.strictObject({
  squadId: z.uuid(),
  termId: z.uuid(),
  /** The version that stood there when the page was opened; 0: none. */
  knownVersion: z.int().min(0),
  /** Theme and design of the next practices are put onto them too, where everyone sees them. */
  isTold: z.boolean(),
  plan: termPlanShape,
})
export type TermPlanInput = z.infer<typeof termPlanInput>
