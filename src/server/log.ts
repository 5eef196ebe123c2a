import 'server-only'
import { pino } from 'pino'
import { faultWords } from '#server/fault-words'

/**
 * One JSON line for each thing that happened, on standard error: the command's own output stays clean. Never a name,
 * never what was typed: ids, codes and counts only.
 */
export const log = pino(
  {
    base: null,
    messageKey: 'event',
    timestamp: () => `,"at":"${new Date().toISOString()}"`,
    // Nothing of the kind is meant to get here. What does all the same is blanked.
    redact: {
      paths: ['cookie', 'password', 'authorization', 'code', 'secret', 'token', 'email', 'name'].flatMap(
        (field) => [field, `*.${field}`],
      ),
      censor: '…',
    },
  },
  { write: (line) => process.stderr.write(line) },
)

/** Something that should not have happened. */
export function logFault(event: string, error: unknown, ids: Readonly<Record<string, string>> = {}): void {
  log.error({ ...ids, ...faultWords(error) }, event)
}
