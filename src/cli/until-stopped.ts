import { CouldNot } from '#cli/could-not'

/**
 * Does some work that Ctrl+C, SIGTERM or a closed terminal stops.
 * @param stopped what is so then, as a sentence.
 * @throws CouldNot with that sentence when it was stopped.
 */
export async function untilStopped<Answer>(
  stopped: string,
  work: (signal: AbortSignal) => Promise<Answer>,
): Promise<Answer> {
  const controller = new AbortController()
  const stop = () => controller.abort()
  const names = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const
  for (const name of names) process.on(name, stop)
  try {
    return await work(controller.signal)
  } catch (error) {
    throw controller.signal.aborted ? new CouldNot(stopped) : error
  } finally {
    for (const name of names) process.off(name, stop)
  }
}
