import type { z } from 'zod'
import type { Problem } from '#common/problem'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'

/**
 * Reads a value by its shape. What does not fit comes back as problems, one a fault, and then there is no value.
 * `at`: where the value stands in the whole.
 */
export function readShape<Shape extends z.ZodType>(
  shape: Shape,
  value: unknown,
  at: JsonPath,
): { readonly value: z.output<Shape> | null; readonly problems: readonly Problem[] } {
  const read = shape.safeParse(value, { reportInput: true, error: inOurWords })
  if (read.success) return { value: read.data, problems: [] }
  return { value: null, problems: read.error.issues.flatMap((issue) => problemsOfIssue(issue, at)) }
}

function problemsOfIssue(issue: z.core.$ZodIssue, at: JsonPath): readonly Problem[] {
  const path = [...at, ...issue.path]
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => problemAt([...path, key], 'is not a key of this format; leave it out'))
  }
  return [problemAt(path, `${whatStands(issue.input)}; ${whatWouldBeRight(issue)} would be right`)]
}

function whatStands(input: unknown): string {
  if (input === undefined) return 'is missing'
  if (input === null) return 'is null'
  if (Array.isArray(input)) return 'is a list'
  if (typeof input === 'object') return 'is an object'
  return `is ${typeof input === 'string' ? quote(input) : String(input)}`
}

/** What would be right by a limit or a form that its shape has no words of its own for. */
function inOurWords(issue: z.core.$ZodRawIssue): string | undefined {
  if (issue.code === 'too_small') return `${issue.minimum}${unitOf(issue.origin)} or more`
  if (issue.code === 'too_big') return `${issue.maximum}${unitOf(issue.origin)} or less`
  return issue.code === 'invalid_type' || issue.code === 'invalid_value' ? undefined : 'another value'
}

function unitOf(origin: string | undefined): string {
  if (origin === 'string') return ' letters'
  return origin === 'array' ? ' in the list' : ''
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
}

function whatWouldBeRight(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type') return kinds[issue.expected] ?? issue.expected
  if (issue.code === 'invalid_value') return issue.values.map((value) => quote(String(value))).join(' or ')
  return issue.message
}
