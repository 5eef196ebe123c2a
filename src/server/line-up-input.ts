import 'server-only'
import { z } from 'zod'
import { matchPlanShape } from '#exchange/match-plan-json'

/** A line-up as the page sends it. Its figures and sentences are worked out anew: what it says of itself counts for nothing. */
export const lineUpInput = z.strictObject({
  squadId: z.uuid(),
  sessionId: z.uuid(),
  /** The version that stood there when the page was opened; 0: none. */
  knownVersion: z.int().min(0),
  plan: matchPlanShape,
})
export type LineUpInput = z.infer<typeof lineUpInput>
