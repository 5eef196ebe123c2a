import { z } from 'zod'
import { isDay } from '#common/time'
import type { FamilyPage } from '#family/family-page'
import { lines } from '#match/match'

const day = z.string().refine(isDay)
const topic = z.enum(['attack', 'defend', 'keep', 'played'])
const kind = z.enum(['practice', 'match'])
const count = z.int().min(0)

const sentence = z.discriminatedUnion('says', [
  z.strictObject({ says: z.literal('even'), topic, isPartMissed: z.boolean() }),
  z.strictObject({
    says: z.literal('fewer'),
    topic,
    isPartMissed: z.boolean(),
    nextStep: z.string().nullable(),
    waitsUntil: day.nullable(),
  }),
  z.strictObject({ says: z.literal('more'), topic, moreOf: topic.nullable() }),
])

const said = z.strictObject({
  sentences: z.array(sentence),
  did: z.array(
    z.strictObject({
      doing: z.enum(['attack', 'defend', 'keep', 'played', 'waiting']),
      minutes: count,
      turns: count,
    }),
  ),
  minutesThere: count,
  // Pages confirmed before it was told have none.
  matches: z.strictObject({ matches: count, starts: count, lines: z.array(z.enum(lines)) }).nullish(),
})

const attendance = z.enum(['here', 'late', 'left', 'notPlaying', 'out', 'away']).nullable()

/** A confirmed page as it is kept. */
export const familyPageShape: z.ZodType<FamilyPage> = z.strictObject({
  version: z.literal(1),
  upTo: day,
  kinds: z.array(
    z.strictObject({
      kind,
      held: count,
      written: count,
      said: said.nullable(),
      attendance: z.array(z.strictObject({ day, attendance })),
    }),
  ),
  themes: z.array(
    z.strictObject({
      name: z.string(),
      depth: count,
      missed: z.enum(['away', 'noTurn']).nullable(),
      practices: count,
      practicesPlayed: count,
    }),
  ),
  note: z.string(),
})
