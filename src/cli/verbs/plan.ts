import { bestFirst } from '#ahead/best-first'
import { chancesInSlices } from '#ahead/chance/chances-in-slices'
import { hardestInSlices } from '#ahead/chance/hardest-in-slices'
import { inOneGo } from '#ahead/chance/in-one-go'
import type { SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { problemOfAhead } from '#ahead/problem-of-request'
import { startProgress } from '#cli/backup/start-progress'
import { orCouldNotDecide } from '#cli/or-could-not-decide'
import { planHelp } from '#cli/plan-help'
import { requestOf } from '#cli/request-of'
import type { Verb } from '#cli/verb'
import { jsonText } from '#exchange/json-text'
import { impossiblePlan } from '#exchange/plan-request/impossible-plan'
import { planAlternativesJson } from '#exchange/plan-request/plan-alternatives-json'
import { planAnswer, planFormat } from '#exchange/plan-request/plan-answer'
import { planChancesJson } from '#exchange/plan-request/plan-chances-json'
import { type PlanRequest, readPlanRequest } from '#exchange/plan-request/plan-request'
import { aheadAlternatives } from '#solver/ahead-alternatives'
import { reachableEnds } from '#solver/reachable'
import { solveAhead } from '#solver/solve-ahead'

export const verb: Verb = {
  name: 'plan',
  summary: 'a term’s practices to come in, the best plan found of them and its proof out',
  help: planHelp,
  options: [],
  run: async (call) => {
    const { request, began } = await requestOf(call, readPlanRequest)
    const problem = problemOfAhead(request.request)
    const asked: Asked = { request, problem, began, say: call.say }
    const answer = await solveAhead(problem, within(asked, untilSolved)).catch(orCouldNotDecide)
    if (answer.kind === 'solved')
      return { kind: 'done', output: jsonText(await answered(asked, answer.solved)) }
    const said = impossiblePlan(request, {
      problem,
      clash: answer.clash,
      hasTime: () => hasTime(asked, 1),
    })
    return { kind: 'impossible', output: jsonText(said) }
  },
}

type Asked = {
  readonly request: PlanRequest
  readonly problem: AheadProblem
  readonly began: number
  readonly say: (line: string) => void
}

/** Parts of the time allowed at which the plan, and then the alternatives, must be there; what is reachable has the rest. */
const untilSolved = 0.5
const untilAlternatives = 0.8

/** The settings of a search that is to end at a part of the time allowed. */
function within({ request: { settings }, began }: Asked, part: number) {
  const { seed, workLimit } = settings
  return { seed, workLimit, began, timeLimitMs: settings.timeLimitMs * part }
}

function hasTime({ request: { settings }, began }: Asked, part: number): boolean {
  return performance.now() - began < settings.timeLimitMs * part
}

async function answered(asked: Asked, found: SolvedAhead) {
  const { request, problem, began, say } = asked
  const { draws, seed, alternatives } = request.settings
  // What is held is settled: another theme there is no question.
  const practice = problem.practices.findIndex(({ held }) => held === null)
  const { solved, others } = bestFirst(problem, practice, {
    solved: found,
    others:
      alternatives && practice >= 0 && hasTime(asked, untilAlternatives)
        ? await aheadAlternatives(problem, found, { practice, ...within(asked, untilAlternatives) })
        : [],
  })
  const reachable = hasTime(asked, 1)
    ? await reachableEnds(problem, { start: solved.plan, ...within(asked, 1) })
    : null
  const drawn = draws === null ? null : { seed, draws }
  const progress = startProgress(say)
  const tell = (what: string) => (part: number) =>
    progress.sometimes(`${what}: ${Math.floor(part * 100)} % reckoned`)
  return {
    format: planFormat,
    ...planAnswer(problem, solved, { json: request.json, reachable }),
    alternatives: planAlternativesJson(problem, others, { practice, bound: solved.proof.bound }),
    chances:
      drawn &&
      planChancesJson(
        problem,
        inOneGo(chancesInSlices(problem, solved.plan, drawn), tell('how likely everyone ends inside')),
        inOneGo(hardestInSlices(problem, solved.plan, drawn), tell('which practice is hardest to lose')),
      ),
    elapsedMs: Math.round(performance.now() - began),
  }
}
