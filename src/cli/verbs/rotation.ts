import type { Verb } from '#cli/verb'
import { jsonText, parseJsonText } from '#exchange/json-text'
import { impossibleJson, rotationJson } from '#exchange/rotation-json'
import { readRotationRequest } from '#exchange/rotation-request'
import { solveRotation } from '#solver/solve-rotation'

export const verb: Verb = {
  name: 'rotation',
  summary: 'a request in, the fairest rotation found and its proof out',
  help: 'Reads turnbook/rotation-request@1 and writes turnbook/rotation@1, or turnbook/impossible@1 with exit code 3. Needs no database.',
  options: [],
  run: async (call) => {
    const json = parseJsonText(await call.readInput())
    if (!json.ok) return { kind: 'refused', problems: json.reasons }
    const began = performance.now()
    const request = readRotationRequest(json.value)
    if (!request.ok) return { kind: 'refused', problems: request.reasons }
    const { problem, settings } = request.value
    const impossible = impossibleJson(request.value)
    if (impossible) return { kind: 'impossible', output: jsonText(impossible) }
    const rotation = await solveRotation(problem, { ...settings, began })
    const elapsedMs = Math.round(performance.now() - began)
    return { kind: 'done', output: jsonText(rotationJson(problem, rotation, elapsedMs)) }
  },
}
