import 'server-only'
import { z } from 'zod'
import { isDay } from '#common/time'
import { isTitleTooLong, longestName, longestTitle, nameProblem } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import { mostGoals } from '#match/goals'
import { lineGridLimits } from '#match/line-grid'
import { parseLineMark } from '#match/line-mark'
import { gridLimits } from '#practice/grid'
import { parseMark } from '#practice/grid-mark'

const id = z.string().max(80)
const seconds = (most: number, what: string) =>
  z
    .int(`${what} must be whole seconds`)
    .min(0, `${what} cannot be below 0`)
    .max(most, `${what} can be ${most} seconds at most`)
const dayLong = 24 * 3600

/** A person's name as the database takes it. */
const personName = z
  .string()
  .max(1000, `can be ${longestName} letters at most`)
  .transform(tidyName)
  .superRefine((name, context) => {
    const problem = name === '' ? 'write the name of the guest, or take the row out' : nameProblem(name)
    if (problem) context.addIssue({ code: 'custom', message: problem })
  })

/** Of a practice, a match or a round. */
const sessionTitle = z
  .string()
  .trim()
  .refine((title) => !isTitleTooLong(title), `a title can be ${longestTitle} characters at most`)

const mark = z.string().transform((text, context) => {
  const understood = parseMark(text)
  if (understood === null) context.addIssue({ code: 'custom', message: `“${text}” is none of A, D, K, W` })
  return understood ?? ''
})

const count = (most: number) => z.int().min(0).max(most)

const column = z.strictObject({
  id,
  title: sessionTitle,
  turnCount: z
    .int()
    .min(1, 'a round has at least one turn')
    .max(gridLimits.turnCount, `a round has at most ${gridLimits.turnCount} turns`),
  turnSeconds: seconds(gridLimits.turnSeconds, 'a turn').min(1, 'a turn lasts at least a second'),
  gapSeconds: seconds(gridLimits.gapSeconds, 'the time between turns'),
  startsAt: seconds(dayLong, 'the start').nullable(),
  areas: z.int().min(1).max(gridLimits.areas, `at most ${gridLimits.areas} areas`),
  atATime: z
    .array(z.strictObject({ attack: count(30), defend: count(30), keep: count(30) }))
    .min(1)
    .max(gridLimits.areas)
    .nullable(),
  themeId: z.uuid().nullable(),
  chosenBy: z.enum(['attack', 'defend']).nullable(),
  isFreeGame: z.boolean(),
  continuesWait: z.boolean(),
  continuesTurn: z.boolean(),
})

const segment = z
  .strictObject({
    from: seconds(dayLong, 'a time of the register'),
    to: seconds(dayLong, 'a time of the register').nullable(),
    state: z.enum(['here', 'notPlaying', 'out']),
  })
  .refine(({ from, to }) => to === null || from < to, 'a time of the register must end after it begins')

const register = z
  .array(z.strictObject({ playerId: id, segments: z.array(segment).max(40) }))
  .max(gridLimits.rows, `at most ${gridLimits.rows} players`)

/** What every way of writing sends beside what was typed. */
const writing = {
  squadId: z.uuid(),
  sessionId: z.uuid(),
  /** What stood there when the page was opened. */
  version: z.string().max(200),
  register,
  /** Players who came along for the first time: known in what was typed by an id of the page's own. */
  guests: z.array(z.strictObject({ id, name: personName })).max(20, 'at most 20 guests'),
  /** Whose being out for today is taken back, each after a second answer. */
  takenBack: z.array(id).max(gridLimits.rows),
}

const gridSchema = z.strictObject({
  columns: z.array(column).max(gridLimits.columns, `at most ${gridLimits.columns} rounds or turns`),
  rows: z
    .array(z.strictObject({ playerId: id, marks: z.array(mark).max(gridLimits.columns) }))
    .max(gridLimits.rows, `at most ${gridLimits.rows} players`),
})

export const practiceInput = z.strictObject({
  ...writing,
  way: z.enum(['typedLater', 'roundByRound', 'asPlanned']),
  lengthSeconds: seconds(dayLong, 'the length').min(60, 'a practice lasts at least a minute').nullable(),
  grid: gridSchema,
  /** Passes of players that were corrected away. */
  voidPasses: z.array(z.uuid()).max(200),
})
export type PracticeInput = z.infer<typeof practiceInput>

const lineMark = z.string().transform((text, context) => {
  const understood = parseLineMark(text)
  if (understood === null) context.addIssue({ code: 'custom', message: `“${text}” is none of K, B, M, F, O` })
  return understood ?? ''
})

const matchSeconds = seconds(lineGridLimits.seconds, 'a time of the match')

export const matchInput = z.strictObject({
  ...writing,
  grid: z.strictObject({
    periods: z.array(z.strictObject({ start: matchSeconds, end: matchSeconds })).max(lineGridLimits.periods),
    changes: z.array(matchSeconds).max(lineGridLimits.changes),
    rows: z
      .array(z.strictObject({ playerId: id, marks: z.array(lineMark).max(500) }))
      .max(lineGridLimits.rows, `at most ${lineGridLimits.rows} players`),
  }),
})
export type MatchInput = z.infer<typeof matchInput>

const optional = <Schema extends z.ZodType>(schema: Schema) =>
  z.preprocess((value) => (value === '' || value === undefined ? null : value), schema.nullable())

const wholeMinutes = (least: number, most: number) =>
  z.coerce
    .number(`write whole minutes, ${least} to ${most}`)
    .int(`write whole minutes, ${least} to ${most}`)
    .min(least, `write at least ${least} minutes`)
    .max(most, `write at most ${most} minutes`)

const goalsRight = `write a whole number, 0 to ${mostGoals}`

/** Where a session is held. */
export const place = z.string().trim().max(120, 'a place can be 120 letters at most')

/** When and where a session is held, and what it is called. */
const whenAndWhere = {
  day: z.string().refine(isDay, 'write a day of the calendar, such as 2026-03-31'),
  title: sessionTitle.default(''),
  place: place.default(''),
  startsAt: optional(z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'write a time of day such as 17:30')),
}

/** The form of a new practice or match. */
export const newSessionInput = z.object({
  squadId: z.uuid(),
  ...whenAndWhere,
  lengthMinutes: optional(wholeMinutes(1, 600)),
  /** Who leads it; left out, whoever enters it. */
  ledById: optional(z.uuid('choose somebody of the list')),
  kind: z.enum(['practice', 'match'], 'choose practice or match'),
  designId: optional(z.uuid('choose one of the designs of the list, or none')),
  periodCount: optional(
    z.coerce
      .number()
      .int('write a whole number')
      .min(1, 'a match has at least one period')
      .max(8, 'write at most 8 periods'),
  ),
  periodMinutes: optional(wholeMinutes(1, 90)),
  breakMinutes: optional(wholeMinutes(0, 60)),
})
export type NewSessionInput = z.infer<typeof newSessionInput>

const goals = optional(
  z.coerce.number(goalsRight).int(goalsRight).min(0, goalsRight).max(mostGoals, goalsRight),
)

/** The goals of a match; empty both: none are written. */
export const goalsInput = z.object({ squadId: z.uuid(), sessionId: z.uuid(), ours: goals, theirs: goals })
export type GoalsInput = z.infer<typeof goalsInput>

export const sessionOfSquad = z.object({ squadId: z.uuid(), sessionId: z.uuid() })

export const changeSessionInput = z.object({ squadId: z.uuid(), sessionId: z.uuid(), ...whenAndWhere })
export type ChangeSessionInput = z.infer<typeof changeSessionInput>
