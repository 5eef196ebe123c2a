import 'server-only'
import { redirect, unstable_rethrow } from 'next/navigation'
import type { ZodType } from 'zod'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { type Done, type FormAction, sentenceOf } from '#server/action'
import { fewProblems, parseFields, readForm, typedOf } from '#server/form'

/**
 * A door for a form that nobody needs to be signed in for: its body proves who asks, or counts tries. Passwords are never
 * sent back: they are typed anew.
 */
export function openAction<Input>(
  schema: ZodType<Input>,
  body: (input: Input) => Promise<Result<Done, Problem>>,
): FormAction {
  return async (_previous, form) => {
    const result = await run(schema, body, form)
    if (!result.ok) {
      const { password: _, oldPassword: __, ...typed } = typedOf(form)
      return { status: 'refused', problems: fewProblems(result.reasons), typed }
    }
    if ('href' in result.value) redirect(result.value.href)
    return { status: 'done', ...result.value }
  }
}

async function run<Input>(
  schema: ZodType<Input>,
  body: (input: Input) => Promise<Result<Done, Problem>>,
  form: FormData,
): Promise<Result<Done, Problem>> {
  try {
    const fields = readForm(form)
    if (!fields.ok) return fields
    const input = parseFields(schema, fields.value)
    return input.ok ? await body(input.value) : input
  } catch (error) {
    unstable_rethrow(error)
    return refuse({ path: '', message: sentenceOf(error) })
  }
}
