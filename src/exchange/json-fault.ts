/** Where a text stops being JSON: offset from 0, and what could stand there. */
export type JsonFault = { readonly offset: number; readonly expected: string }

type Expectation = 'value' | 'firstElement' | 'firstKey' | 'key' | 'colon' | 'after'

const wanted: Readonly<Record<Exclude<Expectation, 'after'>, string>> = {
  value: 'a value',
  firstElement: 'a value or ]',
  firstKey: 'a key in double quotes or }',
  key: 'a key in double quotes',
  colon: 'a colon',
}

// Source: RFC 8259, sections 2, 6 and 7.
const space = /[ \t\n\r]*/y
const scalar = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y
const escaped = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y

/** Finds where a text that `JSON.parse` has refused stops being JSON (RFC 8259); null when it is JSON after all. */
export function findJsonFault(source: string): JsonFault | null {
  const open: ('{' | '[')[] = []
  let expect: Expectation = 'value'
  let offset = 0
  for (;;) {
    offset = endOf(space, source, offset) ?? offset
    if (expect === 'after' && open.length === 0) {
      return offset === source.length ? null : { offset, expected: 'the end' }
    }
    const step = stepOver(source, offset, expect, open)
    if (step === null) return { offset, expected: expect === 'after' ? afterValue(open) : wanted[expect] }
    offset = step.offset
    expect = step.expect
  }
}

type Step = { readonly expect: Expectation; readonly offset: number }

/** Over one mark, text, number or word that is expected at the offset; null where it is not one. */
function stepOver(source: string, offset: number, expect: Expectation, open: ('{' | '[')[]): Step | null {
  const next = source[offset]
  const inside = open.at(-1)
  const mark = (then: Expectation): Step => ({ expect: then, offset: offset + 1 })
  if (expect === 'colon') return next === ':' ? mark('value') : null
  if (expect === 'after' && next === ',') return mark(inside === '{' ? 'key' : 'value')
  const closes = (next === '}' && inside === '{') || (next === ']' && inside === '[')
  if (closes && (expect === 'after' || expect === 'firstKey' || expect === 'firstElement')) {
    open.pop()
    return mark('after')
  }
  if (expect === 'after') return null
  const textEnd = next === '"' ? endOfText(source, offset) : null
  if (expect === 'key' || expect === 'firstKey')
    return textEnd === null ? null : { expect: 'colon', offset: textEnd }
  if (next === '{' || next === '[') {
    open.push(next)
    return mark(next === '{' ? 'firstKey' : 'firstElement')
  }
  const end = textEnd ?? endOf(scalar, source, offset)
  return end === null ? null : { expect: 'after', offset: end }
}

// By hand: one expression over a whole long text would exhaust the stack.
function endOfText(source: string, start: number): number | null {
  for (let offset = start + 1; offset < source.length; offset += 1) {
    const next = source.charAt(offset)
    if (next === '"') return offset + 1
    if (next < ' ') return null
    if (next === '\\') {
      const end = endOf(escaped, source, offset)
      if (end === null) return null
      offset = end - 1
    }
  }
  return null
}

function endOf(pattern: RegExp, source: string, offset: number): number | null {
  pattern.lastIndex = offset
  const found = pattern.exec(source)
  return found === null ? null : offset + found[0].length
}

function afterValue(open: readonly ('{' | '[')[]): string {
  return open.at(-1) === '{' ? 'a comma or }' : 'a comma or ]'
}
