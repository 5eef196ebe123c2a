import { z } from 'zod'
import { rotationColumns } from '#rotation/problem'

export const planRequestFormat = 'turnbook/plan-request@1'

// Which numbers and texts make sense is checked afterwards, so that one wrong kind of value hides no other fault.
const text = z.string()
const number = z.number()
const week = number.nullable().optional()

const span = z.strictObject({ from: text, to: text })

const columns = z.strictObject(
  Object.fromEntries(rotationColumns.map((column) => [column, number.optional()])) as Record<
    (typeof rotationColumns)[number],
    z.ZodOptional<z.ZodNumber>
  >,
)

const practice = z.strictObject({
  id: text,
  date: text,
  lengthSeconds: number.nullable().optional(),
  ground: z.strictObject({ lengthM: number, widthM: number }).nullable().optional(),
  held: z.strictObject({ theme: text, design: text.nullable().optional() }).nullable().optional(),
})

const theme = z.strictObject({
  id: text,
  name: text.optional(),
  parent: text.nullable().optional(),
  share: number.optional(),
  firstWeek: week,
  lastWeek: week,
  after: text.nullable().optional(),
  leastWeeksBetween: week,
  mostWeeksBetween: week,
})

const round = z.strictObject({
  turnCount: number,
  turnSeconds: number,
  gapSeconds: number.optional(),
  stations: z.array(
    z.strictObject({ attack: number.optional(), defend: number.optional(), keep: number.optional() }),
  ),
  freeGame: z.boolean().optional(),
})

const design = z.strictObject({
  id: text,
  name: text.optional(),
  themes: z.array(text),
  lengthM: number,
  widthM: number,
  rounds: z.array(round),
})

const player = z.strictObject({
  id: text,
  keeps: z.boolean().optional(),
  came: number.optional(),
  held: number.optional(),
  away: z.array(span).optional(),
  gap: columns.optional(),
  fair: columns.optional(),
  playedSeconds: number.optional(),
  themeSeconds: z.record(text, number).optional(),
})

export const planRequestShape = z.strictObject({
  format: z.literal(planRequestFormat),
  term: span,
  policy: z
    .strictObject({ toleranceSeconds: number.optional(), toleranceShare: number.optional() })
    .optional(),
  practices: z.array(practice),
  closed: z.array(span).optional(),
  themes: z.array(theme),
  blocks: z.array(z.strictObject({ theme: text, firstWeek: number, lastWeek: number })).optional(),
  designs: z.array(design),
  met: z
    .array(z.strictObject({ date: text, themes: z.array(text), design: text.nullable().optional() }))
    .optional(),
  players: z.array(player),
  designRest: number.optional(),
  gentle: z.strictObject({ least: number.optional(), most: number.optional() }).optional(),
  alternatives: z.boolean().optional(),
  draws: number.nullable().optional(),
  seed: number.optional(),
  timeLimitMs: number.optional(),
  workLimit: number.nullable().optional(),
})

export type PlanRequestJson = z.output<typeof planRequestShape>
