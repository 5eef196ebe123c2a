import 'server-only'
import type { ZodType } from 'zod'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { plainIssue } from '#server/plain-issue'
import type { QrCode } from '#server/qr-code'

/** A link that is shown once, right after it was made, with its code to scan. */
export type ShownLink = { readonly href: string; readonly code: QrCode }

/** What a form's action answers. `typed` is what the person had typed, so that nothing is lost by a refusal. */
export type FormReply =
  | { readonly status: 'idle' }
  | { readonly status: 'done'; readonly message: string; readonly link?: ShownLink }
  | {
      readonly status: 'refused'
      readonly problems: readonly Problem[]
      readonly typed: Readonly<Record<string, string>>
    }

/** Pages send a few dozen; what is long travels in `json`. */
const mostFields = 1000

/**
 * A form as an object: fields that come more than once are lists; a field named `json` is parsed and laid over the rest.
 * Anybody can send anything to an action, so it may be no form at all.
 */
export function readForm(form: unknown): Result<Record<string, unknown>, Problem> {
  if (!(form instanceof FormData)) return refuse({ path: '', message: notAForm })
  const fields = new Map<string, FormDataEntryValue | FormDataEntryValue[]>()
  let count = 0
  for (const [name, value] of form) {
    count += 1
    if (count > mostFields)
      return refuse({ path: '', message: `A form can have ${mostFields} fields at most. Reload the page.` })
    // React's own bookkeeping rides along in the same form.
    if (name.startsWith('$ACTION_') || name === 'json') continue
    if (isNoText(name) || isNoText(value)) return refuse({ path: name, message: noText })
    const earlier = fields.get(name)
    if (earlier === undefined) fields.set(name, value)
    else if (Array.isArray(earlier)) earlier.push(value)
    else fields.set(name, [earlier, value])
  }
  const json = readJson(form.get('json'))
  return json.ok ? accept({ ...Object.fromEntries(fields), ...json.value }) : json
}

const notAForm = 'What was sent is not the form of this page. Reload the page and send it again.'
const notJson = 'is not JSON; reload the page and send the form again'
const noText = 'holds a character that no text has and that cannot be kept; write it again'

function readJson(text: FormDataEntryValue | null): Result<object, Problem> {
  if (typeof text !== 'string') return accept({})
  try {
    const value: unknown = JSON.parse(text)
    if (typeof value !== 'object' || value === null || Array.isArray(value))
      return refuse({ path: 'json', message: notJson })
    return escapedNoText.test(text) && jsonHasNoText(text)
      ? refuse({ path: '', message: `Something that was typed ${noText}.` })
      : accept(value)
  } catch {
    return refuse({ path: 'json', message: notJson })
  }
}

/** A zero, or half of a character that takes two: as JSON writes it. */
const escapedNoText = /\\u(?:0000|d[89a-f])/i

/** PostgreSQL keeps no such character in a text. */
function isNoText(value: unknown): boolean {
  return typeof value === 'string' && (value.includes('\u0000') || /\p{Surrogate}/u.test(value))
}

function jsonHasNoText(text: string): boolean {
  let found = false
  JSON.parse(text, (key, value) => {
    found ||= isNoText(key) || isNoText(value)
    return value
  })
  return found
}

/** Passwords are typed anew: they are not sent back to lie about in a page. */
const neverSentBack = new Set(['password', 'oldPassword'])

/** The texts of a form, to be shown again. Files cannot be; they are chosen anew. */
export function typedOf(form: unknown): Readonly<Record<string, string>> {
  if (!(form instanceof FormData)) return {}
  const texts: [string, string][] = []
  for (const [name, value] of form) {
    if (texts.length === mostFields) break
    if (typeof value === 'string' && !name.startsWith('$ACTION_') && !neverSentBack.has(name))
      texts.push([name, value])
  }
  return Object.fromEntries(texts)
}

/** The value a schema makes of the fields, or every problem with its path. */
export function parseFields<Value>(schema: ZodType<Value>, fields: unknown): Result<Value, Problem> {
  const parsed = schema.safeParse(fields, { error: plainIssue })
  if (parsed.success) return accept(parsed.data)
  return refuse(
    ...parsed.error.issues.map((issue) => ({ path: issue.path.join('.'), message: issue.message })),
  )
}

const mostProblems = 100
const mostLetters = 1000

/** The problems as far as anybody reads them: the answer to a bad file must not be larger than the file. */
export function fewProblems(problems: readonly Problem[]): readonly Problem[] {
  const told = problems.slice(0, mostProblems).map(({ path, message }) => ({
    path: cut(path),
    message: cut(message),
  }))
  const left = problems.length - told.length
  return left > 0 ? [...told, { path: '', message: `And ${left} more. Correct these first.` }] : told
}

function cut(text: string): string {
  return text.length > mostLetters ? `${text.slice(0, mostLetters)} …` : text
}
