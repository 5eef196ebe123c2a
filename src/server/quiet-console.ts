import 'server-only'
import { faultWords } from '#server/fault-words'
import { log } from '#server/log'

const levels = { log: 'info', info: 'info', debug: 'debug', warn: 'warn', error: 'error' } as const
const longest = 300

/**
 * From here on what the framework and packages print goes into the log as lines of their own, with what could be
 * somebody's taken out of them.
 */
export function quietConsole(target: Pick<Console, keyof typeof levels> = console): void {
  for (const [name, level] of Object.entries(levels) as [keyof typeof levels, 'info'][]) {
    target[name] = (...said: readonly unknown[]) => log[level](consoleWords(said), 'printed')
  }
}

/** What was printed as it may stand in the log: faults as faults, text scrubbed, anything else by its kind alone. */
export function consoleWords(said: readonly unknown[]): Readonly<Record<string, unknown>> {
  const text = said.flatMap((part) => (typeof part === 'string' ? [scrubbed(part)] : []))
  const thrown = said.find((part) => part instanceof Error)
  return {
    ...(text.length > 0 && { said: text.join(' ').slice(0, longest) }),
    ...(thrown && faultWords(thrown)),
  }
}

/** Text without queries of addresses, e-mail addresses, and words as long as a secret. */
function scrubbed(text: string): string {
  return text
    .replaceAll(/\?\S*/g, '?…')
    .replaceAll(/\S+@\S+/g, '…@…')
    .replaceAll(/[\w+/=~.-]*[\w+/=~-]{24,}/g, '…')
    .trim()
}
