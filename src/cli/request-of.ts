import { InputError, type VerbCall } from '#cli/verb'
import type { Problem } from '#common/problem'
import type { Result } from '#common/result'
import { parseJsonText } from '#exchange/json-text'

/** What a verb is asked as JSON. `began`: when it had come in; its time counts from then. @throws InputError */
export async function requestOf<Request>(
  { readInput }: Pick<VerbCall, 'readInput'>,
  read: (json: unknown) => Result<Request, Problem>,
): Promise<{ readonly request: Request; readonly began: number }> {
  const json = parseJsonText(await readInput())
  if (!json.ok) throw new InputError(json.reasons)
  const began = performance.now()
  const request = read(json.value)
  if (!request.ok) throw new InputError(request.reasons)
  return { request: request.value, began }
}
