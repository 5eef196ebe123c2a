import 'server-only'
import type { ZodType } from 'zod'
import type { Problem } from '#common/problem'
import type { Result } from '#common/result'
import { type Done, type FormAction, replyTo, takeForm } from '#server/action'

/** A door for a form that nobody needs to be signed in for: its body proves who asks, or counts tries. */
export function openAction<Input>(
  schema: ZodType<Input>,
  body: (input: Input) => Promise<Result<Done, Problem>>,
): FormAction {
  const door = { who: async () => null, schema, body: (_nobody: null, input: Input) => body(input) }
  return async (_previous, form) => replyTo(await takeForm(door, form), form)
}
