import { z } from 'zod'
import { lineWishes } from '#match/format/line-wish'
import { lines } from '#match/match'

const matchRequestFormat = 'turnbook/match-request@1'

// Which numbers and texts make sense is checked afterwards, so that one wrong kind of value hides no other fault.
const pairs = z.array(z.tuple([z.string(), z.string()]))
const wish = z.enum(lineWishes)
const number = z.number()
const limit = number.nullable().optional()

const places = z.strictObject({
  keeper: number.optional(),
  back: number.optional(),
  middle: number.optional(),
  forward: number.optional(),
})

const player = z.strictObject({
  id: z.string(),
  keeps: z.boolean().optional(),
  present: z.array(z.tuple([number, number])).optional(),
  gap: z
    .strictObject({ play: number.optional(), keep: number.optional(), starts: number.optional() })
    .optional(),
  least: number.optional(),
  most: limit,
  lines: z
    .strictObject({ back: wish.optional(), middle: wish.optional(), forward: wish.optional() })
    .optional(),
  met: z
    .strictObject({ back: number.optional(), middle: number.optional(), forward: number.optional() })
    .optional(),
})

const rules = z.strictObject({
  keeperForPeriod: z.boolean().optional(),
  mostKeeperPeriods: limit,
  leastSpell: number.optional(),
  longestSpell: limit,
  longestOff: limit,
  mostChanges: limit,
  mostSubstitutions: limit,
  mayReturn: z.boolean().optional(),
})

export const matchRequestShape = z.strictObject({
  format: z.literal(matchRequestFormat),
  periods: z.array(number),
  places,
  changeEvery: limit,
  marks: z.array(z.array(number)).optional(),
  players: z.array(player),
  fewerWhereTooFew: z.boolean().optional(),
  leastShare: number.optional(),
  rules: rules.optional(),
  apart: pairs.optional(),
  together: pairs.optional(),
  fixed: z
    .array(
      z.strictObject({
        player: z.string(),
        from: number,
        to: number,
        place: z.enum([...lines, 'on', 'off']),
      }),
    )
    .optional(),
  tradeOffs: z.boolean().optional(),
  seed: number.optional(),
  timeLimitMs: number.optional(),
  workLimit: number.nullable().optional(),
})

export type MatchRequestJson = z.output<typeof matchRequestShape>
