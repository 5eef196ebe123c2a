import 'server-only'
import { z } from 'zod'
import { isDay } from '#common/time'
import { practicePlanShape } from '#exchange/practice-plan-json'
import { pairKinds } from '#planning/player-pair'

/** A plan as the page sends it. Its figures and sentences are worked out anew: what it says of itself counts for nothing. */
export const planInput = z.strictObject({
  squadId: z.uuid(),
  sessionId: z.uuid(),
  /** The version that stood there when the page was opened; 0: none. */
  knownVersion: z.int().min(0),
  plan: practicePlanShape,
})
export type PlanInput = z.infer<typeof planInput>

const day = z.string('choose a day').refine(isDay, 'write a day of the calendar, such as 2026-03-31')
const player = z.uuid('choose one of the players')

export const newPairInput = z.object({
  squadId: z.uuid(),
  kind: z.enum(pairKinds, 'choose apart or together'),
  oneId: player,
  otherId: player,
  firstDay: day,
  lastDay: day,
})
export type NewPairInput = z.infer<typeof newPairInput>

export const endPairInput = z.object({ squadId: z.uuid(), pairId: z.uuid(), lastDay: day })
export type EndPairInput = z.infer<typeof endPairInput>
