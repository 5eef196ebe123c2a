const lineWidth = 110

/**
 * JSON with two spaces a level, in which whatever fits on a line stands on one: the way the project's formatter leaves
 * it, so that a generated file passes the checks untouched.
 */
export function printJson(value: unknown): string {
  return `${printed(value, { indent: 0, taken: 0 })}\n`
}

/** `taken`: characters of the line that are used up before the value. */
function printed(value: unknown, at: { readonly indent: number; readonly taken: number }): string {
  const flat = flatJson(value)
  // A comma may follow.
  if (at.taken + flat.length + 1 <= lineWidth && at.indent > 0) return flat
  if (Array.isArray(value))
    return block(
      ['[', ']'],
      value.map((entry) => ['', entry] as const),
      at.indent,
    )
  if (isObject(value)) {
    return block(
      ['{', '}'],
      Object.entries(value).map(([key, entry]) => [`${JSON.stringify(key)}: `, entry] as const),
      at.indent,
    )
  }
  return flat
}

function block(
  [open, close]: readonly [string, string],
  entries: readonly (readonly [string, unknown])[],
  indent: number,
): string {
  const inner = ' '.repeat(indent + 2)
  const lines = entries.map(([key, entry]) => {
    const taken = inner.length + key.length
    return `${inner}${key}${printed(entry, { indent: indent + 2, taken })}`
  })
  return `${open}\n${lines.join(',\n')}\n${' '.repeat(indent)}${close}`
}

function flatJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flatJson).join(', ')}]`
  if (!isObject(value)) return JSON.stringify(value)
  const fields = Object.entries(value).map(([key, entry]) => `${JSON.stringify(key)}: ${flatJson(entry)}`)
  return fields.length === 0 ? '{}' : `{ ${fields.join(', ')} }`
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null
}
