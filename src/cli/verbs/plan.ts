import { bestFirst } from '#ahead/best-first'
import { chancesInSlices } from '#ahead/chance/chances-of'
import { hardestInSlices } from '#ahead/chance/hardest-to-lose'
import type { SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { problemOfAhead } from '#ahead/problem-of-request'
import { startProgress } from '#cli/backup/start-progress'
import { CouldNot } from '#cli/could-not'
import { planHelp } from '#cli/plan-help'
import type { Verb } from '#cli/verb'
import { jsonText, parseJsonText } from '#exchange/json-text'
import { impossiblePlan } from '#exchange/plan-request/impossible-plan'
import { planAlternativesJson } from '#exchange/plan-request/plan-alternatives-json'
import { planAnswer, planFormat } from '#exchange/plan-request/plan-answer'
import { planChancesJson } from '#exchange/plan-request/plan-chances-json'
import { type PlanRequest, readPlanRequest } from '#exchange/plan-request/plan-request'
import { aheadAlternatives } from '#solver/ahead-alternatives'
import { NotDecided } from '#solver/not-decided'
import { reachableEnds } from '#solver/reachable'
import { solveAhead } from '#solver/solve-ahead'

export const verb: Verb = {
  name: 'plan',
  summary: 'a term’s practices to come in, the best plan found of them and its proof out',
  help: planHelp,
  options: [],
  run: async (call) => {
    const json = parseJsonText(await call.readInput())
    if (!json.ok) return { kind: 'refused', problems: json.reasons }
    const began = performance.now()
    const read = readPlanRequest(json.value)
    if (!read.ok) return { kind: 'refused', problems: read.reasons }
    const request = read.value
    const problem = problemOfAhead(request.request)
    const asked: Asked = { request, problem, began, say: call.say }
    const answer = await solveAhead(problem, within(asked, untilSolved)).catch(orCouldNot)
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

function orCouldNot(error: unknown): never {
  if (error instanceof NotDecided) throw new CouldNot(`${error.message} Let it take longer, or ask for less.`)
  throw error
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
        toEnd(chancesInSlices(problem, solved.plan, drawn), tell('how likely everyone ends inside')),
        toEnd(hardestInSlices(problem, solved.plan, drawn), tell('which practice is hardest to lose')),
      ),
    elapsedMs: Math.round(performance.now() - began),
  }
}

/** A reckoning in slices to its end; where that takes long, whoever waits is told how far it is. */
function toEnd<Result>(slices: Generator<number, Result>, tell: (part: number) => void): Result {
  for (;;) {
    const step = slices.next()
    if (step.done) return step.value
    tell(step.value)
  }
}
