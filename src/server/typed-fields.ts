import 'server-only'
import { z } from 'zod'

type Text = string | undefined
const isEmpty = (text: Text) => (text ?? '').trim() === ''
/** With a point or a comma. */
export const numberOf = (text: Text) => Number((text ?? '').trim().replace(',', '.'))

/** A whole number, as it is typed. */
export const whole = (least: number, most: number, what: string) => {
  const right = `write a whole number of ${what}, ${least} to ${most}`
  return z
    .string(right)
    .trim()
    .regex(/^\d{1,4}$/, right)
    .transform(Number)
    .pipe(z.int(right).min(least, right).max(most, right))
}

/** Empty: null. */
export const wholeOrEmpty = (least: number, most: number, what: string) => {
  const right = `write a whole number of ${what}, ${least} to ${most}, or leave it empty`
  return z
    .string()
    .optional()
    .transform((text) => (isEmpty(text) ? null : numberOf(text)))
    .pipe(z.int(right).min(least, right).max(most, right).nullable())
}

/** Typed in minutes, kept in seconds; empty: null, where that may be. */
export const minutesOf = (least: number, most: number, { orEmpty }: { readonly orEmpty: boolean }) => {
  const right = `write minutes, ${least} to ${most}${orEmpty ? ', or leave it empty' : ''}`
  return z
    .string()
    .optional()
    .transform((text) => (isEmpty(text) ? (orEmpty ? null : Number.NaN) : numberOf(text)))
    .pipe(z.number(right).min(least, right).max(most, right).nullable())
    .transform((minutes) => (minutes === null ? null : Math.round(minutes * 60)))
}

/** Kept as a part of one; empty: null. */
export const percent = z
  .string()
  .optional()
  .transform((text) => (isEmpty(text) ? null : numberOf(text)))
  .pipe(
    z
      .number('write per cent, 0 to 100, or leave it empty')
      .min(0, 'write per cent, 0 to 100, or leave it empty')
      .max(100, 'write per cent, 0 to 100, or leave it empty')
      .nullable(),
  )
  .transform((share) => share && share / 100)

/** A box of a form: sent as `on`, or not at all. */
export const ticked = z
  .string()
  .optional()
  .transform((text) => text === 'on')

/** Words that may be left out. */
export const words = (most: number) =>
  z
    .string()
    .optional()
    .transform((text) => (text ?? '').trim())
    .superRefine((text, context) => {
      const length = [...text].length
      if (length > most)
        context.addIssue({
          code: 'custom',
          message: `has ${length} letters; ${most} at most would be right`,
        })
    })
