import 'server-only'
import { z } from 'zod'
import { isDay } from '#common/time'
import { requestKinds, requestLimits, requestOutcomes } from '#rights/child-request'
import { consentKinds, consentWordingLimit } from '#rights/consent-kind'
import { readHolidays } from '#rights/holidays'

/** A browser sends a line's end as two characters; it was typed as one. */
const words = (most: number) =>
  z
    .string()
    .transform((text) => text.replaceAll('\r\n', '\n').trim())
    .refine((text) => text.length <= most, `is longer than ${most} letters; write it shorter`)

const someWords = (most: number, missing: string) => words(most).refine((text) => text !== '', missing)

const day = z
  .string('choose a day')
  .refine(isDay, 'write a day of the calendar, such as 2026-03-31')
  .refine((text) => text >= '1990-01-01', 'is before 1990-01-01; look at the year')

const kind = z.enum(requestKinds, 'choose what is asked')
const ofChild = { playerId: z.uuid() }
const ofRequest = { requestId: z.uuid() }

export const askInput = z
  .object({ ...ofChild, kind, text: words(requestLimits.text).default('') })
  .superRefine(({ kind: asked, text }, context) => {
    if ((asked === 'correction' || asked === 'question' || asked === 'objection') && text === '')
      context.addIssue({
        code: 'custom',
        path: ['text'],
        message: 'is empty; write what it is about, in your own words',
      })
  })
export type AskInput = z.infer<typeof askInput>

/** `askedById` empty: nobody whom the club has written down. */
export const writeDownInput = z.object({
  ...ofChild,
  kind,
  text: words(requestLimits.text).default(''),
  askedById: z.preprocess((text) => (text === '' || text === undefined ? null : text), z.uuid().nullable()),
  receivedOn: day,
})
export type WriteDownInput = z.infer<typeof writeDownInput>

export const extendInput = z.object({
  ...ofRequest,
  to: day,
  why: someWords(requestLimits.why, 'is empty; write the reason, the family reads it'),
})
export type ExtendInput = z.infer<typeof extendInput>

export const answerInput = z.object({
  ...ofRequest,
  outcome: z.enum(requestOutcomes, 'choose how it ended'),
  answer: someWords(requestLimits.answer, 'is empty; write what the family is told'),
})
export type AnswerInput = z.infer<typeof answerInput>

const months = z.preprocess(
  (text) => (typeof text === 'string' && text.trim() === '' ? null : Number(text)),
  z
    .int('write a whole number of months, or leave it empty')
    .min(1, 'is at least 1')
    .max(120, 'is at most 120')
    .nullable(),
)

export const clubRightsInput = z.object({
  retentionMonths: months,
  askWhom: words(300),
  holidays: z
    .string()
    .max(10_000, 'is too long')
    .transform((text, context) => {
      const read = readHolidays(text)
      if (read.ok) return read.days
      context.addIssue({
        code: 'custom',
        message: `has "${read.wrong}" in it; write days such as 2026-12-25, one a line`,
      })
      return z.NEVER
    }),
  /** Typed again when somebody's time would be over at once. */
  sure: z.preprocess((value) => value === 'on', z.boolean()),
})
export type ClubRightsInput = z.infer<typeof clubRightsInput>

export const eraseInput = z.object({
  ...ofChild,
  /** The child's whole name, so that nobody erases another by a slip. */
  name: z.string().max(200),
})
export type EraseInput = z.infer<typeof eraseInput>

export const consentInput = z.object({
  ...ofChild,
  kind: z.enum(
    consentKinds.map((one) => one.kind),
    'choose what it is for',
  ),
  wording: someWords(consentWordingLimit, 'is empty; write the words that were agreed to'),
  givenById: z.uuid('choose who gave it'),
  givenOn: day,
})
export type ConsentInput = z.infer<typeof consentInput>

export const withdrawInput = z.object({ ...ofChild, consentId: z.uuid(), on: day })
export type WithdrawInput = z.infer<typeof withdrawInput>
