import 'server-only'
import type { AppError } from '#common/app-error'
import { log } from '#server/log'

const id = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/gi

/** Somebody asked for what is not theirs: who, for what, of which. What is not there at all is told by the line of the request. */
export function logRefusal(error: AppError): void {
  if (error.code !== 'notAllowed') return
  log.warn(refusalWords(error), 'not allowed')
}

/** Of the text of a refusal its ids, and the role and action that it begins with: what else stands in it may have been typed. */
export function refusalWords({ message }: Pick<AppError, 'message'>) {
  const [, role, action] = /^([a-zA-Z]{1,20}) [0-9a-f-]{36} may not ([a-zA-Z]{1,30}) /.exec(message) ?? []
  return { ...(role && { role, action }), ids: message.match(id) ?? [] }
}
