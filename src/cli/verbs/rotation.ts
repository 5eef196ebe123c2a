import { requestOf } from '#cli/request-of'
import type { Verb } from '#cli/verb'
import { jsonText } from '#exchange/json-text'
import { impossibleJson, rotationJson } from '#exchange/rotation-json'
import { readRotationRequest } from '#exchange/rotation-request'
import { solveRotation } from '#solver/solve-rotation'

export const verb: Verb = {
  name: 'rotation',
  summary: 'a request in, the fairest rotation found and its proof out',
  help: 'Reads turnbook/rotation-request@1 and writes turnbook/rotation@1, or turnbook/impossible@1 with exit code 3. Needs no database.',
  options: [],
  run: async (call) => {
    const { request, began } = await requestOf(call, readRotationRequest)
    const { problem, settings } = request
    const impossible = impossibleJson(request)
    if (impossible) return { kind: 'impossible', output: jsonText(impossible) }
    const rotation = await solveRotation(problem, { ...settings, began })
    const elapsedMs = Math.round(performance.now() - began)
    return { kind: 'done', output: jsonText(rotationJson(problem, rotation, elapsedMs)) }
  },
}
