import 'server-only'
import { z } from 'zod'

/** Longest address that a mail server has to take (RFC 5321, 4.5.3.1.3, less its angle brackets). */
const mostLetters = 254

/** An address as it is kept: without spaces around it, in lower case. */
export const address = z
  .string('Write your e-mail address.')
  .trim()
  .toLowerCase()
  .max(mostLetters, `An e-mail address has ${mostLetters} letters at most.`)
  .pipe(z.email('This is no e-mail address. One looks like name@example.org.'))
