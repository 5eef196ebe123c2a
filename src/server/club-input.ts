import 'server-only'
import { z } from 'zod'
import { isDay } from '#common/time'
import { longestName, nameProblem } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'

/** A year typed too short is a day of antiquity, and would pass for one. */
const earliestDay = '1990-01-01'
const latestDay = '2199-12-31'

/** What a thing of the club is called. `what`: as in "of the season". */
export const nameOf = (what: string) =>
  z
    .string(`write the name ${what}`)
    .max(1000, `can be ${longestName} letters at most`)
    .transform(tidyName)
    .superRefine((text, context) => {
      const length = [...text].length
      if (text === '') context.addIssue({ code: 'custom', message: `write the name ${what}` })
      else if (length > longestName)
        context.addIssue({ code: 'custom', message: `has ${length} letters; shorten it to ${longestName}` })
      else if (nameProblem(text))
        context.addIssue({ code: 'custom', message: 'has no letter in it; write a name' })
    })

/** Of a season, a holiday and the like. */
export const day = z
  .string('choose a day')
  .refine(isDay, 'write a day of the calendar, such as 2026-03-31')
  .refine((text) => text >= earliestDay && text <= latestDay, 'is far from today; look at the year')

const term = z.object({
  /** Empty: a new one. */
  id: z.union([z.literal(''), z.uuid()]),
  name: nameOf('of the term'),
  firstDay: day,
  lastDay: day,
})

/** More than any club has in a season. */
const mostTerms = 12

const sentSeason = z.looseObject({
  /** Empty: a new one. */
  seasonId: z.union([z.literal(''), z.uuid()]).default(''),
  name: nameOf('of the season'),
  firstDay: day,
  lastDay: day,
})

/**
 * The form of a season, each row of terms in fields of its own, `termName-0` and so on. Rows that are left empty are no
 * terms; whatever is said of a term names its row as it stands in the form.
 */
export const seasonInput = sentSeason.transform(({ seasonId, name, firstDay, lastDay, ...rest }, context) => {
  const textOf = (field: string) => {
    const value = rest[field]
    return typeof value === 'string' ? value : ''
  }
  const rows = Array.from({ length: mostTerms }, (_, index) => ({
    id: textOf(`termId-${index}`),
    name: textOf(`termName-${index}`),
    firstDay: textOf(`termFirstDay-${index}`),
    lastDay: textOf(`termLastDay-${index}`),
  }))
  const terms = rows.flatMap((row, index) => {
    if (Object.values(row).every((text) => text.trim() === '')) return []
    const parsed = term.safeParse(row)
    if (parsed.success) return [{ ...parsed.data, row: index }]
    for (const issue of parsed.error.issues)
      context.addIssue({
        code: 'custom',
        path: ['terms', index, ...issue.path],
        message: issue.message,
      })
    return []
  })
  return { seasonId, name, firstDay, lastDay, terms }
})
export type SeasonInput = z.infer<typeof seasonInput>

const ageRight = 'write a whole number of years, 3 to 99, such as 10 for the under-tens'

export const squadInput = z.object({
  /** Empty: a new one. */
  squadId: z.union([z.literal(''), z.uuid()]).default(''),
  name: nameOf('of the squad'),
  ageLimit: z
    .string(ageRight)
    .trim()
    .regex(/^\d{1,2}$/, ageRight)
    .transform(Number)
    .pipe(z.int(ageRight).min(3, ageRight).max(99, ageRight)),
})
export type SquadInput = z.infer<typeof squadInput>

/** A name of the list that this machine's calendar knows; `UTC` is not in every list. */
export const timeZone = z
  .string('choose a time zone of the list')
  .refine((zone) => isTimeZone(zone), 'is no time zone of the list; choose the town nearest to you')

function isTimeZone(zone: string): boolean {
  return zone === 'UTC' || Intl.supportedValuesOf('timeZone').includes(zone)
}

export const clubSettingsInput = z.object({
  name: nameOf('of the club'),
  timeZone,
})
export type ClubSettingsInput = z.infer<typeof clubSettingsInput>

export const countGoalsInput = z.object({
  countsGoals: z.enum(['yes', 'no'], 'choose yes or no').transform((answer) => answer === 'yes'),
})
export type CountGoalsInput = z.infer<typeof countGoalsInput>

/** A button alone says what is wanted. */
export const takeOurContentInput = z.object({})
