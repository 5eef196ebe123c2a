import type { MatchPlan, MatchPlanPlayer } from '#lineup/match-plan'
import { nothingMet } from '#lineup/met-seconds'
import { noRules } from '#lineup/problem'
import { noWishes } from '#match/format/line-wish'
import type { MatchFormat } from '#match/format/match-format'

/**
 * A match's plan as a helper may see it: who is on when, and where. What a player is owed and promised, what it likes,
 * who is kept apart or together and what the coach holds fast is left out, and so is the proof, which speaks of it. Only
 * what is named here goes out: whatever a plan comes to hold stays with the coach.
 */
export function matchPlanForHelper({ format, places, marks, players, rules, spells }: MatchPlan): MatchPlan {
  const { keeperForPeriod, mayReturn } = rules
  return {
    format: formatForHelper(format),
    places,
    marks,
    players: players.map(playerForHelper),
    rules: { ...noRules, keeperForPeriod, mayReturn },
    leastShare: null,
    apart: [],
    together: [],
    locks: [],
    spells,
    proof: { sentence: '', goals: noProofs },
  }
}

const nothing = { value: 0, bound: 0, proven: false }
const noProofs: MatchPlan['proof']['goals'] = {
  promise: nothing,
  minutes: nothing,
  goal: nothing,
  starts: nothing,
  lines: nothing,
  changes: nothing,
}

function playerForHelper({ playerId, keeps, from, to }: MatchPlanPlayer): MatchPlanPlayer {
  return {
    playerId,
    keeps,
    from,
    to,
    owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
    wishes: noWishes,
    metSeconds: nothingMet,
    playedToday: 0,
  }
}

/** A phone that is told of no promise warns of none. */
export function formatForHelper(format: MatchFormat): MatchFormat {
  return {
    ...format,
    leastTime: { share: 0, periods: null, late: [], wherePossible: true },
    mostSecondsADay: null,
    source: null,
    note: '',
  }
}
