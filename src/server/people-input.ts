import 'server-only'
import { z } from 'zod'
import { viewerRoles } from '#access/viewer'
import { isDay } from '#common/time'
import { longestName } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import { address } from '#server/sign-in/address'

const name = z
  .string()
  .transform(tidyName)
  .superRefine((text, context) => {
    const length = [...text].length
    const message =
      text === ''
        ? 'is empty; write the name'
        : length > longestName
          ? `has ${length} characters; at most ${longestName} can be kept`
          : /[\p{L}\p{N}\p{S}]/u.test(text)
            ? null
            : 'has no letter in it; write the name'
    if (message) context.addIssue({ code: 'custom', message })
  })

/** As a sign-in's, or none. */
const email = z
  .string()
  .default('')
  .transform((text, context) => {
    if (text.trim() === '') return null
    const read = address.safeParse(text)
    if (read.success) return read.data
    context.addIssue({
      code: 'custom',
      message: 'is no e-mail address; write one such as name@example.org, or leave it empty',
    })
    return z.NEVER
  })

const day = z
  .string('choose a day')
  .refine(isDay, 'write a day of the calendar, such as 2026-03-31')
  .refine((text) => text >= '1990-01-01', 'is before 1990; look at the year')

const role = z.enum(viewerRoles, 'choose one of the roles')
const ticked = z.preprocess((value) => value === 'on', z.boolean())

export const newPersonInput = z.object({ name, role, email })
export type NewPersonInput = z.infer<typeof newPersonInput>

export const ofPersonInput = z.object({ personId: z.uuid() })
export type OfPersonInput = z.infer<typeof ofPersonInput>

export const changePersonInput = newPersonInput.extend({ personId: z.uuid() })
export type ChangePersonInput = z.infer<typeof changePersonInput>

export const squadLineInput = z.object({
  personId: z.uuid(),
  squadId: z.uuid('choose a squad'),
  kind: z.enum(['coach', 'cover', 'helps'], 'choose one of the list'),
  firstDay: day,
  lastDay: z.preprocess((text) => (text === '' || text === undefined ? null : text), day.nullable()),
})
export type SquadLineInput = z.infer<typeof squadLineInput>

export const endSquadLineInput = z.object({ personId: z.uuid(), lineId: z.uuid(), lastDay: day })
export type EndSquadLineInput = z.infer<typeof endSquadLineInput>

export const guardianOfInput = z.object({ personId: z.uuid(), playerId: z.uuid('choose a child') })
export type GuardianOfInput = z.infer<typeof guardianOfInput>

export const withholdInput = guardianOfInput.extend({ withholdsComing: ticked })
export type WithholdInput = z.infer<typeof withholdInput>

/** `how`: handed over by whoever makes it, or mailed to the address that is written down. */
const how = z.enum(['show', 'mail']).default('show')

export const personLinkInput = z.object({ personId: z.uuid(), kind: z.enum(['join', 'recover']), how })
export type PersonLinkInput = z.infer<typeof personLinkInput>

export const revokePersonLinkInput = z.object({ personId: z.uuid(), linkId: z.uuid() })
export type RevokePersonLinkInput = z.infer<typeof revokePersonLinkInput>

export const familyLinkInput = z.object({ playerId: z.uuid(), personId: z.uuid(), how })
export type FamilyLinkInput = z.infer<typeof familyLinkInput>

export const revokeFamilyLinkInput = z.object({ playerId: z.uuid(), linkId: z.uuid() })
export type RevokeFamilyLinkInput = z.infer<typeof revokeFamilyLinkInput>
