import { z } from 'zod'
import { rotationColumns } from '#rotation/problem'

export const rotationRequestFormat = 'turnbook/rotation-request@1'

// Which numbers and texts make sense is checked afterwards, so that one wrong kind of value hides no other fault.
const ids = z.array(z.string())

export const rotationPlayerShape = z.strictObject({
  id: z.string(),
  keeps: z.boolean().optional(),
  fromTurn: z.number().optional(),
  toTurn: z.number().optional(),
  present: z.array(z.tuple([z.number(), z.number()])).optional(),
  gap: z.partialRecord(z.enum(rotationColumns), z.number()).optional(),
})

export const rotationRoundShape = z.strictObject({
  id: z.string(),
  turnSeconds: z.number(),
  keepersStay: z.boolean().optional(),
  sides: z.strictObject({ attack: ids, defend: ids }).optional(),
  turns: z.array(
    z.strictObject({
      stations: z.array(
        z.strictObject({
          attack: z.number().optional(),
          defend: z.number().optional(),
          keep: z.number().optional(),
        }),
      ),
    }),
  ),
})

export const rotationFixedShape = z.strictObject({
  turn: z.number(),
  station: z.number().optional(),
  role: z.enum(['attack', 'defend', 'keep', 'rest']),
  player: z.string(),
})

export const rotationRequestShape = z.strictObject({
  format: z.literal(rotationRequestFormat),
  players: z.array(rotationPlayerShape),
  rounds: z.array(rotationRoundShape),
  restLimit: z.number().nullable().optional(),
  apart: z.array(z.tuple([z.string(), z.string()])).optional(),
  fixed: z.array(rotationFixedShape).optional(),
  seed: z.number().optional(),
  timeLimitMs: z.number().optional(),
  workLimit: z.number().nullable().optional(),
})

export type RotationRequestJson = z.output<typeof rotationRequestShape>
