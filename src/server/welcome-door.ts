import 'server-only'
import type { ZodType } from 'zod'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Done, FormAction } from '#server/action'
import type { LinkCode } from '#server/link-code'
import { openAction } from '#server/open-action'
import { placeOfRequest } from '#server/place-of-request'
import { takeTry, tooManyTries } from '#server/rate-limit'
import { deadLink } from '#server/spend-link'
import { readWelcome } from '#server/welcome-cookie'

/**
 * A door for whoever holds a link, signed in or not. The code comes by the cookie alone, whatever the form says, and
 * tries are counted.
 */
export function welcomeDoor<Input>(
  schema: ZodType<Input>,
  body: (code: LinkCode, input: Input) => Promise<Result<Done, Problem>>,
): FormAction {
  return openAction(schema, async (input) => {
    const may = await takeTry({ what: 'linkFrom', key: await placeOfRequest() })
    if (!may.ok) return refuse({ path: '', message: tooManyTries(may.seconds) })
    const code = await readWelcome()
    return code ? body(code, input) : refuse({ path: '', message: deadLink })
  })
}
