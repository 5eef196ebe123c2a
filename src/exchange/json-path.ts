import type { Problem } from '#common/problem'

/** The steps to a place in a JSON value: keys and places in lists. */
export type JsonPath = readonly PropertyKey[]

/** A path as it is printed: `practices[0].turns[3].start`; `$` for the whole. */
export function formatPath(path: JsonPath): string {
  const text = path
    .map((step) => {
      if (typeof step === 'number') return `[${step}]`
      const key = String(step)
      return /^[A-Za-z_$][\w$]*$/.test(key) ? `.${key}` : `[${quote(key)}]`
    })
    .join('')
  return text === '' ? '$' : text.replace(/^\./, '')
}

export function problemAt(path: JsonPath, message: string): Problem {
  return { path: formatPath(path), message }
}

/** The whole problem in one line. */
export function lineOfProblem(problem: Problem): string {
  return `${problem.path}: ${problem.message}`
}

const longestQuote = 60

/** Somebody's own text inside a message: quoted, in one line, cut where it is long. */
export function quote(text: string): string {
  const cut = text.length > longestQuote ? `${text.slice(0, longestQuote)}…` : text
  return JSON.stringify(cut).replace(/[\u007f-\u009f\u2028\u2029]/g, '?')
}
