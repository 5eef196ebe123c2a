import 'server-only'
import { z } from 'zod'
import { nameOf, timeZone } from '#server/club-input'

/** What the set-up page sends. The code is read in any case, with or without its dashes. */
export const setUpInput = z.object({
  code: z
    .string('write the code that the start printed')
    .max(200, 'is longer than the code that the start printed')
    .transform((text) => text.toUpperCase().replaceAll(/[^0-9A-Z]/g, '')),
  clubName: nameOf('of the club'),
  timeZone,
  name: nameOf('that others know you by'),
  email: z.string('write your e-mail address').max(1000, 'is no e-mail address; it is too long'),
  password: z.string('write a password').max(1000, 'can be 256 letters at most'),
})
export type SetUpInput = z.infer<typeof setUpInput>
