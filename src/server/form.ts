import 'server-only'
import type { ZodType } from 'zod'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'

/** What a form's action answers. `typed` is what the person had typed, so that nothing is lost by a refusal. */
export type FormReply =
  | { readonly status: 'idle' }
  | { readonly status: 'done'; readonly message: string }
  | {
      readonly status: 'refused'
      readonly problems: readonly Problem[]
      readonly typed: Readonly<Record<string, string>>
    }

/** A form as an object: fields that come more than once are lists; a field named `json` is parsed and laid over the rest. */
export function readForm(form: FormData): Result<Record<string, unknown>, Problem> {
  const fields: Record<string, unknown> = Object.create(null)
  for (const name of new Set(form.keys())) {
    // React's own bookkeeping rides along in the same form.
    if (name.startsWith('$ACTION_') || name === 'json') continue
    const values = form.getAll(name)
    fields[name] = values.length === 1 ? values[0] : values
  }
  const json = form.get('json')
  if (typeof json !== 'string') return accept({ ...fields })
  try {
    return accept({ ...fields, ...Object(JSON.parse(json)) })
  } catch {
    return refuse({ path: 'json', message: 'is not JSON; reload the page and send the form again' })
  }
}

/** The texts of a form, to be shown again. Files cannot be; they are chosen anew. */
export function typedOf(form: FormData): Readonly<Record<string, string>> {
  const texts = [...form.entries()].filter((entry): entry is [string, string] => typeof entry[1] === 'string')
  return Object.fromEntries(texts.filter(([name]) => !name.startsWith('$ACTION_')))
}

/** The value a schema makes of the fields, or every problem with its path. */
export function parseFields<Value>(schema: ZodType<Value>, fields: unknown): Result<Value, Problem> {
  const parsed = schema.safeParse(fields)
  if (parsed.success) return accept(parsed.data)
  return refuse(
    ...parsed.error.issues.map((issue) => ({ path: issue.path.join('.'), message: issue.message })),
  )
}
