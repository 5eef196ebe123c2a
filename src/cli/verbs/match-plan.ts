import { CouldNot } from '#cli/could-not'
import { matchPlanHelp } from '#cli/match-plan-help'
import type { Verb } from '#cli/verb'
import { jsonText, parseJsonText } from '#exchange/json-text'
import { impossibleMatch } from '#exchange/match-request/impossible-match'
import { lineUpAnswer, matchPlanFormat } from '#exchange/match-request/line-up-answer'
import { type MatchRequest, readMatchRequest } from '#exchange/match-request/match-request'
import { tradeOffJson, wayOutJson } from '#exchange/match-request/offers-json'
import type { LineUp } from '#lineup/line-up'
import type { LineUpClash } from '#lineup/line-up-clash'
import { lineUpTradeOffs } from '#solver/line-up-trade-offs'
import { lineUpWaysOut } from '#solver/line-up-ways-out'
import { NotDecided } from '#solver/not-decided'
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
    const json = parseJsonText(await call.readInput())
    if (!json.ok) return { kind: 'refused', problems: json.reasons }
    const began = performance.now()
    const request = readMatchRequest(json.value)
    if (!request.ok) return { kind: 'refused', problems: request.reasons }
    const answer = await solveLineUp(request.value.problem, within(request.value, began, untilSolved)).catch(
      orCouldNot,
    )
    return answer.kind === 'impossible'
      ? { kind: 'impossible', output: jsonText(await impossible(request.value, answer.clash, began)) }
      : { kind: 'done', output: jsonText(await answered(request.value, answer.lineUp, began)) }
  },
}

/** The settings of a search that is to end at a part of the time allowed. */
function within({ settings }: MatchRequest, began: number, part: number) {
  return { ...settings, began, timeLimitMs: settings.timeLimitMs * part }
}

function orCouldNot(error: unknown): never {
  if (error instanceof NotDecided) throw new CouldNot(`${error.message} Let it take longer, or ask for less.`)
  throw error
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
