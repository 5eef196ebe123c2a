import { z } from 'zod'
import { nameProblem } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import type { PitchEvent, SharedDeed } from '#pitch/pitch-event'

/** Lower case, so that one id has one spelling. */
export const lowerUuid = z.uuid().toLowerCase()

/** Milliseconds since 1970 that a phone's clock may show: from 1970 to the end of 2099. */
const epochMs = z
  .int()
  .min(0)
  .max(Date.UTC(2100, 0, 1) - 1)

/** As the book takes a name; a phone's own spaces go. */
const guestName = z
  .string()
  .max(1000)
  .transform(tidyName)
  .superRefine((name, context) => {
    const problem = name === '' ? 'a guest has a name' : nameProblem(name)
    if (problem) context.addIssue({ code: 'custom', message: problem })
  })

/** Deeds of practices and of matches, by their form alone. */
export const sharedDeeds = {
  register: z.strictObject({
    kind: z.literal('register'),
    playerId: lowerUuid,
    state: z.enum(['here', 'notPlaying', 'out', 'gone']),
    secondAnswer: z.boolean().optional(),
  }),
  guest: z.strictObject({ kind: z.literal('guest'), playerId: lowerUuid, name: guestName }),
  undo: z.strictObject({ kind: z.literal('undo'), undoes: lowerUuid, secondAnswer: z.boolean().optional() }),
} satisfies { readonly [Kind in SharedDeed['kind']]: z.ZodType<Extract<SharedDeed, { kind: Kind }>> }

/** One event of a batch, by its form alone. */
export function eventShapeOf<Done>(deed: z.ZodType<Done>): z.ZodType<PitchEvent<Done>> {
  return z.strictObject({
    id: z.uuid({ version: 'v7' }).toLowerCase(),
    deviceId: lowerUuid,
    at: epochMs,
    deed,
  })
}
