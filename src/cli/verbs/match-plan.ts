import { matchPlanHelp } from '#cli/match-plan-help'
import { orCouldNotDecide } from '#cli/or-could-not-decide'
import { requestOf } from '#cli/request-of'
import type { Verb } from '#cli/verb'
import { jsonText } from '#exchange/json-text'
import { impossibleMatch } from '#exchange/match-request/impossible-match'
import { lineUpAnswer, matchPlanFormat } from '#exchange/match-request/line-up-answer'
import { type MatchRequest, readMatchRequest } from '#exchange/match-request/match-request'
import { tradeOffJson, wayOutJson } from '#exchange/match-request/offers-json'
import type { LineUp } from '#lineup/line-up'
import type { LineUpClash } from '#lineup/line-up-clash'
import { lineUpTradeOffs } from '#solver/line-up-trade-offs'
import { lineUpWaysOut } from '#solver/line-up-ways-out'
import { solveLineUp } from '#solver/solve-line-up'

/** Parts of the time allowed at which the line-up, and then the ways out, must be there; offers have the rest. */
const untilSolved = 0.6
const untilWaysOut = 0.8

export const verb: Verb = {
  name: 'match-plan',
  summary: 'a match in, the fairest line-up found and its proof out',
  help: matchPlanHelp,
  options: [],
  run: async (call) => {
    const { request, began } = await requestOf(call, readMatchRequest)
    const answer = await solveLineUp(request.problem, within(request, began, untilSolved)).catch(
      orCouldNotDecide,
    )
    return answer.kind === 'impossible'
      ? { kind: 'impossible', output: jsonText(await impossible(request, answer.clash, began)) }
      : { kind: 'done', output: jsonText(await answered(request, answer.lineUp, began)) }
  },
}

/** The settings of a search that is to end at a part of the time allowed. */
function within({ settings }: MatchRequest, began: number, part: number) {
  return { ...settings, began, timeLimitMs: settings.timeLimitMs * part }
}

async function answered(request: MatchRequest, lineUp: LineUp, began: number) {
  const { problem, settings } = request
  const missed = lineUp.proofs.promise.value
  const waysOut =
    missed > 0 ? await lineUpWaysOut(problem, { ...within(request, began, untilWaysOut), missed }) : []
  const tradeOffs = settings.tradeOffs
    ? await lineUpTradeOffs(problem, lineUp, within(request, began, 1))
    : []
  return {
    format: matchPlanFormat,
    ...lineUpAnswer(request, lineUp),
    tradeOffs: tradeOffs.map((offer) => tradeOffJson(request, lineUp, offer)),
    waysOut: waysOut.map((way) => wayOutJson(request, way)),
    elapsedMs: Math.round(performance.now() - began),
  }
}

async function impossible(request: MatchRequest, clash: readonly LineUpClash[], began: number) {
  const ways = await lineUpWaysOut(request.problem, { ...within(request, began, untilWaysOut), missed: null })
  return impossibleMatch(request, {
    clash,
    waysOut: ways.map((way) => wayOutJson(request, way)),
    hasTime: () => performance.now() - began < request.settings.timeLimitMs,
  })
}
