import { matchPlanHelp } from '#cli/match-plan-help'
import type { Verb } from '#cli/verb'
import { parseJsonText } from '#exchange/json-text'
import { impossibleMatch } from '#exchange/match-request/impossible-match'
import { lineUpAnswer, matchPlanFormat } from '#exchange/match-request/line-up-answer'
import { type MatchRequest, readMatchRequest } from '#exchange/match-request/match-request'
import type { LineUp } from '#lineup/line-up'
import { solveLineUp } from '#solver/solve-line-up'

export const verb: Verb = {
  name: 'match-plan',
  summary: 'a match in, the fairest line-up found and its proof out',
  help: matchPlanHelp,
  options: [],
  run: async (call) => {
    const json = parseJsonText(await call.readInput())
    if (!json.ok) return { kind: 'refused', problems: json.reasons }
    const began = performance.now()
    const request = readMatchRequest(json.value)
    if (!request.ok) return { kind: 'refused', problems: request.reasons }
    const { problem, settings } = request.value
    const hasTime = () => performance.now() - began < settings.timeLimitMs
    const answer = await solveLineUp(problem, { ...settings, began })
    if (answer.kind === 'impossible')
      return { kind: 'impossible', output: textOf(impossibleMatch(request.value, answer.clash, hasTime)) }
    return { kind: 'done', output: textOf(answered(request.value, answer.lineUp, began)) }
  },
}

function answered(request: MatchRequest, lineUp: LineUp, began: number) {
  return {
    format: matchPlanFormat,
    ...lineUpAnswer(request, lineUp),
    elapsedMs: Math.round(performance.now() - began),
  }
}

function textOf(json: unknown): string {
  return `${JSON.stringify(json, null, 1)}\n`
}
