import 'server-only'
import { z } from 'zod'
import { isDay } from '#common/time'
import { nameProblem } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import { lineWishes } from '#match/format/line-wish'

/** A year typed too short is a day of antiquity, and would pass for one. */
const earliestDay = '1990-01-01'

const day = z
  .string('choose a day')
  .refine(isDay, 'write a day of the calendar, such as 2026-03-31')
  .refine((text) => text >= earliestDay, `is before ${earliestDay}; look at the year`)

const dayOrNone = z.preprocess((text) => (text === '' || text === undefined ? null : text), day.nullable())

const name = z
  .string()
  .transform(tidyName)
  .superRefine((text, context) => {
    const message = text === '' ? 'is empty; write the player’s name' : nameProblem(text)
    if (message) context.addIssue({ code: 'custom', message })
  })

/** A box of a form: sent when it is ticked, and not sent at all when it is not. */
const ticked = z.preprocess((value) => value === 'on', z.boolean())

const yesOrNo = z.enum(['yes', 'no'], 'choose one of the two').transform((answer) => answer === 'yes')

const ofPlayer = { squadId: z.uuid(), playerId: z.uuid() }

export const newPlayerInput = z.object({
  squadId: z.uuid(),
  name,
  keeps: ticked,
  wantsToKeep: ticked,
  firstDay: day,
  /** Empty: nobody of that name is known; `another`: one more of that name; else the known player who joins. */
  who: z.union([z.literal(''), z.literal('another'), z.uuid()]).default(''),
})
export type NewPlayerInput = z.infer<typeof newPlayerInput>

export const aboutPlayerInput = z.object({ ...ofPlayer, name, wantsToKeep: ticked })
export type AboutPlayerInput = z.infer<typeof aboutPlayerInput>

export const keepsInput = z.object({ ...ofPlayer, keeps: yesOrNo, day })
export type KeepsInput = z.infer<typeof keepsInput>

const wish = z.enum(lineWishes, 'choose one of the four')

export const linesInput = z.object({ ...ofPlayer, back: wish, middle: wish, forward: wish })
export type LinesInput = z.infer<typeof linesInput>

/** `heldFrom`: the first day of the membership that is changed; empty for a new one. */
export const membershipInput = z.object({
  ...ofPlayer,
  heldFrom: dayOrNone,
  firstDay: day,
  lastDay: dayOrNone,
})
export type MembershipInput = z.infer<typeof membershipInput>

const duePercentRight = 'write a whole number of per cent, 0 to 99'

/** `duePercent` counts for fewer turns only. */
export const agreementInput = z
  .object({
    ...ofPlayer,
    kind: z.enum(
      ['fewerTurns', 'sameSide', 'sameFirstPartner', 'planShownEarly', 'neverWaitsAlone'],
      'choose what was agreed',
    ),
    duePercent: z.string().trim().default(''),
    firstDay: day,
    lastDay: dayOrNone,
  })
  .superRefine(({ kind, duePercent }, context) => {
    if (kind === 'fewerTurns' && !/^\d{1,2}$/.test(duePercent))
      context.addIssue({ code: 'custom', path: ['duePercent'], message: duePercentRight })
  })
export type AgreementInput = z.infer<typeof agreementInput>

export const endAgreementInput = z.object({ ...ofPlayer, agreementId: z.uuid(), lastDay: day })
export type EndAgreementInput = z.infer<typeof endAgreementInput>
