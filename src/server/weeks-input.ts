import 'server-only'
import { z } from 'zod'
import { day, nameOf } from '#server/club-input'
import { place } from '#server/session-input'
import type { Weekday } from '#squad/weekly-days'

/** Both days belong to it; an empty last day is the first again. */
const span = { firstDay: day, lastDay: z.union([z.literal(''), day]).default('') }

function withLastDay<Of extends { firstDay: string; lastDay: string }>(
  sent: Of,
  context: z.RefinementCtx,
): Of {
  const lastDay = sent.lastDay === '' ? sent.firstDay : sent.lastDay
  if (lastDay < sent.firstDay)
    context.addIssue({
      code: 'custom',
      path: ['lastDay'],
      message: `is before the first day, ${sent.firstDay}; write that day or a later one`,
    })
  return { ...sent, lastDay }
}

const ofSquad = { squadId: z.uuid() }
const closedDays = { ...span, name: nameOf('of these days, such as Half term') }

export const closedDaysInput = z.object({ ...ofSquad, ...closedDays }).transform(withLastDay)
export type ClosedDaysInput = z.infer<typeof closedDaysInput>

export const clubClosedDaysInput = z.object(closedDays).transform(withLastDay)
export type ClubClosedDaysInput = z.infer<typeof clubClosedDaysInput>

export const removeClosedDaysInput = z.object({ ...ofSquad, closedId: z.uuid() })

export const removeClubClosedDaysInput = z.object({ closedId: z.uuid() })

export const awayInput = z.object({ ...ofSquad, playerId: z.uuid(), ...span }).transform(withLastDay)
export type AwayInput = z.infer<typeof awayInput>

export const removeAwayInput = z.object({ ...ofSquad, playerId: z.uuid(), awayId: z.uuid() })
export type RemoveAwayInput = z.infer<typeof removeAwayInput>

const metresRight = 'write metres from 5 to 200, such as 40 or 32.5'
const metres = z
  .string()
  .trim()
  .regex(/^\d{1,3}([.,]\d)?$/, metresRight)
  .transform((text) => Number(text.replace(',', '.')))
  .refine((length) => length >= 5 && length <= 200, metresRight)

export const groundInput = z.object({
  ...ofSquad,
  place: place.min(1, 'write the place as practices have it'),
  lengthM: metres,
  widthM: metres,
})
export type GroundInput = z.infer<typeof groundInput>

export const removeGroundInput = z.object({ ...ofSquad, place })
export type RemoveGroundInput = z.infer<typeof removeGroundInput>

const minutesRight = 'write whole minutes, 1 to 600'
const weekly = {
  weekday: z
    .string('choose a day of the week')
    .regex(/^[1-7]$/, 'choose a day of the week')
    .transform((text) => Number(text) as Weekday),
  ...span,
  startsAt: z
    .string()
    .regex(/^$|^([01]\d|2[0-3]):[0-5]\d$/, 'write a time of day such as 17:30, or none')
    .default('')
    .transform((text) => text || null),
  place: place.default(''),
  lengthMinutes: z
    .string()
    .trim()
    .regex(/^\d{1,3}$/, minutesRight)
    .transform(Number)
    .refine((minutes) => minutes >= 1 && minutes <= 600, minutesRight),
}

/** What is asked for before anything is added. */
export const weeklyShape = z.object(weekly).transform(withLastDay)
export type Weekly = z.infer<typeof weeklyShape>

/** The same with the days that were shown, parted by commas. */
export const weeklyInput = z
  .object({ ...ofSquad, ...weekly, days: z.string().max(2000) })
  .transform(withLastDay)
export type WeeklyInput = z.infer<typeof weeklyInput>
