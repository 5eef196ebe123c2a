import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import type { LineUpDraft } from '#lineup/draft/line-up-draft'
import type { LineUpEngine } from '#lineup/draft/line-up-solver'
import { choiceOfLetGo, rulesLetGo } from '#lineup/draft/rules-let-go'
import { sayAgainst, sayWhatItGives } from '#lineup/draft/say-what-it-gives'
import { placesInstead, smallerPromise, withoutOwnRules } from '#lineup/draft/ways-out-of-match'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp } from '#lineup/line-up'
import { problemOfMatch } from '#lineup/problem-of-match'
import { sayTradeOff } from '#lineup/say-trade-off'
import type { NameOf } from '#ui/line-up/line-up-types'
import type { FindChoices } from '#ui/line-up/use-choices'

/** How long the exact solver may look for what helps, and at one choice. */
const searchMs = 4_000
const choiceMs = 2_500

type Asked = { readonly draft: LineUpDraft; readonly engine: LineUpEngine; readonly nameOf: NameOf }

/** What helps where there is no line-up, or where a promise is missed: each solved, with what it gives. */
export function findWaysOut({ draft, engine, nameOf }: Asked): FindChoices {
  const { request, problem, clash, made } = draft
  const missed = made?.proofs.promise.value ?? null
  return async ({ found, progress, signal }) => {
    const letGo = rulesLetGo(request, nameOf)
    const tell = async (choice: LineUpChoice) => {
      const solved = await solveChoice(choice, engine, signal)
      const helps = solved && (missed === null || solved.lineUp.proofs.promise.value < missed - 1)
      if (helps) found({ ...choice, says: `${sayWhatItGives(solved)}.`, isProven: isProven(solved.lineUp) })
      return helps
    }
    const places = made ? smallerPromise(request, problem) : placesInstead(request, clash)
    let done = 0
    for (const choice of places) {
      await tell(choice)
      progress(++done, places.length + 1)
    }
    if (letGo.length === 0) return
    const helping = await engine.waysOut(problem, { missed, timeLimitMs: searchMs, signal })
    const choices = helping.flatMap((way) => choiceOfLetGo(letGo, way) ?? [])
    const breaks = letGo.filter(({ key }) => key === 'changesAtBreaksOnly')
    let helped = 0
    for (const choice of [...choices, ...breaks]) {
      if (signal.aborted) return
      if (await tell(choice)) helped += 1
      progress(++done, places.length + choices.length + breaks.length)
    }
    if (helped === 0 && letGo.length > 1) await tell(withoutOwnRules(request))
  }
}

/** What could be traded: fewer changes against evenness, then what each rule costs. */
export function findTrades({ draft, engine, nameOf }: Asked): FindChoices {
  const { request, problem, made } = draft
  return async ({ found, progress, signal }) => {
    if (!made) return
    const letGo = rulesLetGo(request, nameOf)
    const offers = await engine.tradeOffs(problem, { lineUp: made, timeLimitMs: searchMs, signal })
    for (const offer of offers) {
      const worse = (['goal', 'starts', 'lines'] as const).filter(
        (goal) => offer.lineUp.proofs[goal].value > made.proofs[goal].value + 1e-6,
      )
      const rules = { ...request.rules, mostChanges: offer.changes }
      found({
        key: `changes ${offer.changes}`,
        words: '',
        request: { ...request, rules },
        says: sayTradeOff({ ...offer, worse }),
        isProven: offer.isProven,
      })
    }
    progress(1, 1 + letGo.length)
    for (const [index, choice] of letGo.entries()) {
      if (signal.aborted) return
      const solved = await solveChoice(choice, engine, signal)
      const says = solved && `${sayAgainst(solved, { problem, lineUp: made })}.`
      if (solved && says) found({ ...choice, says, isProven: isProven(solved.lineUp) })
      progress(index + 2, 1 + letGo.length)
    }
  }
}

async function solveChoice(choice: LineUpChoice, { solve }: LineUpEngine, signal: AbortSignal) {
  const problem = problemOfMatch(choice.request)
  if (findLineUpClash(problem).length > 0) return null
  const end = await solve(problem, { start: null, timeLimitMs: choiceMs, signal })
  return end.kind === 'impossible' || !end.best ? null : { problem, lineUp: end.best }
}

function isProven({ proofs }: LineUp): boolean {
  return proofs.promise.proven && proofs.minutes.proven
}
