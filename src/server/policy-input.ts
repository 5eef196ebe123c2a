import 'server-only'
import { z } from 'zod'
import { isDay } from '#common/time'

const number = (least: number, most: number, unit: string) => {
  const right = `write a number of ${unit}, ${least} to ${most}`
  return z
    .string(right)
    .trim()
    .min(1, right)
    .transform((text) => Number(text.replace(',', '.')))
    .pipe(z.number(right).min(least, right).max(most, right))
}

const whole = (least: number, most: number, unit: string) => {
  const right = `write a whole number of ${unit}, ${least} to ${most}`
  return number(least, most, unit).pipe(z.int(right))
}

const part = number(0, 100, 'per cent').transform((percent) => percent / 100)

/** The form of a change of the club's rules, as policy settings. */
export const policyInput = z
  .object({
    /** Empty: the whole club. */
    ageLimit: z.preprocess(
      (text) => (text === '' || text === undefined ? null : typeof text === 'string' ? Number(text) : text),
      z.int('choose an age of the list').max(99, 'choose an age of the list').nullable(),
    ),
    effectiveFrom: z.string().refine(isDay, 'write a day of the calendar, such as 2026-03-31'),
    toleranceMinutes: number(0, 120, 'minutes'),
    tolerancePercent: part,
    middleAttackPercent: part,
    restLimitTurns: whole(1, 20, 'turns'),
    goalPercent: part,
    leastMatchPercent: part,
    writtenPercent: part,
    sessionsBeforeFlags: whole(0, 50, 'sessions'),
    matchesBeforeRoles: whole(0, 50, 'matches'),
  })
  .transform((form) => ({
    ageLimit: form.ageLimit,
    effectiveFrom: form.effectiveFrom,
    policy: {
      toleranceSeconds: Math.round(form.toleranceMinutes * 60),
      toleranceShare: form.tolerancePercent,
      middleAttackShare: form.middleAttackPercent,
      restLimitTurns: form.restLimitTurns,
      goalShareLimit: form.goalPercent,
      leastMatchShare: form.leastMatchPercent,
      writtenShareNeeded: form.writtenPercent,
      sessionsBeforeFlags: form.sessionsBeforeFlags,
      matchesBeforeRoles: form.matchesBeforeRoles,
    },
  }))

export type PolicyInput = z.infer<typeof policyInput>
