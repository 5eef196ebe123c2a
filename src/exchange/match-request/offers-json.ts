import type { Proof } from '#common/proof'
import { formatPath, type JsonPath } from '#exchange/json-path'
import { spellsJson } from '#exchange/match-request/line-up-answer'
import type { MatchRequest } from '#exchange/match-request/match-request'
import { proofJson } from '#exchange/proof-json'
import type { LetGo, LineUpOffer } from '#lineup/draft/line-up-solver'
import { type LineUp, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import type { LineUpFault } from '#lineup/rule'
import { ruleWords } from '#lineup/rule-words'
import { sayTime } from '#lineup/say-clock'
import { sayTradeOff } from '#lineup/say-trade-off'

/** `before`: the one that it is held against. */
export function tradeOffJson({ problem }: MatchRequest, before: LineUp, offer: LineUpOffer) {
  const { changes, fewer, players, seconds, short, isProven, lineUp } = offer
  const worse = lineUpGoals.filter((goal) => lineUp.proofs[goal].value > before.proofs[goal].value + 1e-6)
  return {
    changes,
    fewer,
    players,
    seconds,
    short,
    worse,
    proven: isProven,
    spells: spellsJson(problem, lineUp.plan),
    sentence: sayTradeOff({ ...offer, worse }),
  }
}

/** One thing to let go and what comes of it, as the solver tells it. */
type Way = {
  readonly letGo: LetGo
  readonly short: Proof
  readonly plan: LineUpPlan
}

export function wayOutJson(request: MatchRequest, { letGo, short, plan }: Way) {
  const rule = ruleOf(letGo.what)
  const missed =
    short.value === 0
      ? 'everyone gets what is promised'
      : `${sayTime(Math.round(short.value))} of what is promised ${Math.round(short.value) === 60 ? 'is' : 'are'} missed${short.proven ? ', and no fewer can be' : ''}`
  return {
    rule,
    path: formatPath(placeOf(request, letGo)),
    short: proofJson(short),
    spells: spellsJson(request.problem, plan),
    sentence: `Without ${ruleWords[rule]} there is a line-up: ${missed}.`,
  }
}

type Rule = Extract<
  LineUpFault['rule'],
  | 'mostChanges'
  | 'leastSpell'
  | 'longestSpell'
  | 'longestOff'
  | 'keeperForPeriod'
  | 'mostKeeperPeriods'
  | 'mostSubstitutions'
  | 'mayReturn'
  | 'apart'
  | 'fixed'
>

/** The names of rules in a file carry no unit. */
function ruleOf(what: Way['letGo']['what']): Rule {
  switch (what) {
    case 'leastSpellSeconds':
      return 'leastSpell'
    case 'longestSpellSeconds':
      return 'longestSpell'
    case 'longestOffSeconds':
      return 'longestOff'
    default:
      return what
  }
}

function placeOf({ json, problem }: MatchRequest, letGo: Way['letGo']): JsonPath {
  if (letGo.what === 'apart') return ['apart', letGo.pair]
  if (letGo.what !== 'fixed') return ['rules', ruleOf(letGo.what)]
  const id = problem.players[letGo.player]?.id
  const index = (json.fixed ?? []).findIndex(({ player }) => player === id)
  return index < 0 ? ['fixed'] : ['fixed', index]
}
