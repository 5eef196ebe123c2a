import { shortAnswer } from '#server/short-answer'

/** Whether the server of the pages lives. */
export function GET(): Response {
  return shortAnswer(200, 'alive')
}
