import { isReady } from '#server/readiness'
import { shortAnswer } from '#server/short-answer'

/** Whether pages can be served. Why not is in the log: strangers ask here too. */
export async function GET(): Promise<Response> {
  return (await isReady()) ? shortAnswer(200, 'ready') : shortAnswer(503, 'not ready')
}
