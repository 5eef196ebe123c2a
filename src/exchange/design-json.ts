import { z } from 'zod'
import { type Adaptation, adaptationKinds, type DesignChange } from '#practice/adaptation'
import type { DesignRound, DesignSides } from '#practice/design'
import { practiceLimits } from '#practice/practice-size'

/** What is larger is a mistake, or meant to be a burden. Sizes of a practice are those of practice-size.ts. */
export const designLimits = {
  sizes: 12,
  endings: 12,
  conditions: 12,
  adaptations: 20,
  changes: 12,
  letters: 300,
  title: 120,
} as const

const places = z.int().min(0).max(practiceLimits.places)
const text = z.string().max(designLimits.letters)
const title = z.string().max(designLimits.title)
const points = z.number().min(0).max(99)

const shape = z.strictObject({ attack: places, defend: places, keep: places })

const ending = z.strictObject({
  id: z.string().min(1).max(80),
  words: title,
  side: z.enum(['attack', 'defend']),
  points,
})

/** Form only: what makes no sense in it is for `designFaults` of #practice/design-faults to say. */
export const designRoundShape: z.ZodType<DesignRound> = z.strictObject({
  title,
  turnCount: z.int().min(0).max(practiceLimits.turnCount),
  turnSeconds: z.int().min(0).max(practiceLimits.turnSeconds),
  gapSeconds: z.int().min(0).max(practiceLimits.gapSeconds),
  stations: z.array(shape).max(practiceLimits.areas, `at most ${practiceLimits.areas} areas`),
  isUntilDead: z.boolean().optional(),
  keepersStay: z.boolean().optional(),
  choice: z
    .strictObject({
      by: z.enum(['attack', 'coach']),
      sizes: z.array(z.strictObject({ shape, points })).max(designLimits.sizes),
    })
    .nullable()
    .optional(),
  endings: z.array(ending).max(designLimits.endings).optional(),
  conditions: z.array(text).max(designLimits.conditions).optional(),
  isFreeGame: z.boolean().optional(),
})

export const designRoundsShape = z
  .array(designRoundShape)
  .max(practiceLimits.rounds, `at most ${practiceLimits.rounds} rounds`)

export const designSidesShape: z.ZodType<DesignSides | null> = z
  .strictObject({ names: z.tuple([title, title]), swap: z.enum(['never', 'eachRound']) })
  .nullable()

const round = z
  .int()
  .min(0)
  .max(practiceLimits.rounds - 1)
  .nullable()
const more = z.int().min(-practiceLimits.places).max(practiceLimits.places)
const times = z.number().min(0.1).max(10)

const change: z.ZodType<DesignChange> = z.discriminatedUnion('what', [
  z.strictObject({ what: z.literal('area'), lengthTimes: times, widthTimes: times }),
  z.strictObject({ what: z.literal('places'), round, attack: more, defend: more, keep: more }),
  z.strictObject({ what: z.literal('areas'), round, by: z.int().min(-9).max(9) }),
  z.strictObject({ what: z.literal('turns'), round, secondsTimes: times, countTimes: times }),
  z.strictObject({ what: z.literal('ending'), round, ending }),
  z.strictObject({ what: z.literal('condition'), round, words: text }),
])

export const adaptationsShape: z.ZodType<readonly Adaptation[]> = z
  .array(
    z.strictObject({
      id: z.string().min(1).max(80),
      kind: z.enum(adaptationKinds),
      title,
      makes: z.enum(['harder', 'easier']),
      forWhom: z.enum(['attack', 'defend', 'keep', 'all']),
      why: text,
      changes: z.array(change).max(designLimits.changes),
    }),
  )
  .max(designLimits.adaptations)
