import 'server-only'

/** Messages of these are written here, or by the language itself: ids, numbers and names of code, nothing typed. */
const ofOurOwnWords = new Set(['InvariantError', 'TypeError', 'ReferenceError'])
const framesKept = 12

/** A fault as it may stand in a log. */
export type FaultWords = {
  readonly fault: string
  /** Not named `code`: links have codes too, and those are blanked. */
  readonly errorCode?: string
  readonly message?: string
  readonly digest?: string
  readonly frames?: readonly string[]
}

/**
 * What may be logged of something thrown: what kind it is and where it happened. Messages of other programs are left
 * out, since they quote what was typed: a name that is no number, a row that is there twice.
 */
export function faultWords(thrown: unknown): FaultWords {
  if (!(thrown instanceof Error)) return { fault: typeof thrown }
  const { code, digest } = thrown as { code?: unknown; digest?: unknown }
  return {
    fault: wordOf(thrown.name) ?? 'Error',
    ...(wordOf(code) && { errorCode: wordOf(code) }),
    ...(wordOf(digest) && { digest: wordOf(digest) }),
    ...(ofOurOwnWords.has(thrown.name) && { message: thrown.message }),
    frames: framesOf(thrown),
  }
}

/** A short word of code, such as `P2002` or `UND_ERR_SOCKET`; nothing that could be a sentence. */
function wordOf(value: unknown): string | undefined {
  const text = String(value ?? '')
  return /^[\w.:/-]{1,60}$/.test(text) ? text : undefined
}

/** Where it happened. The message stands above that in a stack, in as many lines as it has. */
function framesOf({ stack = '', message }: Error): readonly string[] {
  const end = message === '' ? 0 : stack.indexOf(message) + message.length
  return stack
    .slice(end)
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => /^at .*:\d+:\d+\)?$/.test(line))
    .slice(0, framesKept)
}
