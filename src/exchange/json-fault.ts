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

const space = /[ \t\n\r]*/y
// Source: RFC 8259, sections 3, 6 and 7.
const text = /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y
const scalar = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y

/** Finds where a text that `JSON.parse` has refused stops being JSON (RFC 8259); null when it is JSON after all. */
export function findJsonFault(source: string): JsonFault | null {
  const open: ('{' | '[')[] = []
  let expect: Expectation = 'value'
  let offset = 0
  const take = (pattern: RegExp): boolean => {
    pattern.lastIndex = offset
    const found = pattern.exec(source)
    if (found) offset += found[0].length
    return found !== null
  }
  for (;;) {
    take(space)
    const next = source[offset]
    if (expect === 'after' && open.length === 0) {
      return next === undefined ? null : { offset, expected: 'the end' }
    }
    const step = stepOver(next, expect, open, take)
    if (step === null) return { offset, expected: expect === 'after' ? afterValue(open) : wanted[expect] }
    if (step.isMark) offset += 1
    expect = step.expect
  }
}

function stepOver(
  next: string | undefined,
  expect: Expectation,
  open: ('{' | '[')[],
  take: (pattern: RegExp) => boolean,
): { readonly expect: Expectation; readonly isMark: boolean } | null {
  const mark = (then: Expectation) => ({ expect: then, isMark: true })
  const inside = open.at(-1)
  if (expect === 'colon') return next === ':' ? mark('value') : null
  if (expect === 'after' && next === ',') return mark(inside === '{' ? 'key' : 'value')
  const closes = (next === '}' && inside === '{') || (next === ']' && inside === '[')
  if (closes && (expect === 'after' || expect === 'firstKey' || expect === 'firstElement')) {
    open.pop()
    return mark('after')
  }
  if (expect === 'after') return null
  if (expect === 'key' || expect === 'firstKey') return take(text) ? { expect: 'colon', isMark: false } : null
  if (next === '{' || next === '[') {
    open.push(next)
    return mark(next === '{' ? 'firstKey' : 'firstElement')
  }
  return take(text) || take(scalar) ? { expect: 'after', isMark: false } : null
}

function afterValue(open: readonly ('{' | '[')[]): string {
  return open.at(-1) === '{' ? 'a comma or }' : 'a comma or ]'
}
