import 'server-only'

/** One JSON line on standard error. Never names, never what was typed: ids and codes only. */
export function logFault(event: string, error: unknown, ids: Readonly<Record<string, string>> = {}): void {
  const fault =
    error instanceof Error ? { message: error.message, stack: error.stack } : { message: String(error) }
  process.stderr.write(`${JSON.stringify({ at: new Date().toISOString(), event, ...ids, ...fault })}\n`)
}
