import { andList } from '#common/and-list'
import type { LineUpPlan } from '#lineup/line-up'
import { secondsOf } from '#lineup/line-up-values'
import { sayTime } from '#lineup/say-clock'
import type { PlayerId } from '#squad/player'
import type { MatchTail } from '#touchline/match-tail'
import type { LetGo } from '#touchline/rules-left'

const letGoWords: Readonly<Record<LetGo, string>> = {
  ownRules: 'The lengths of time on and off, and the number of changes, could not be kept to.',
  keeperForPeriod: 'The keeper changes during a period.',
  keepers: 'Nobody here is down as keeping goal: somebody has to.',
}

/** What a new plan for the rest comes to, in a coach's words. */
export function sayReplan(tail: MatchTail, lineUp: LineUpPlan, nameOf: (id: PlayerId) => string): string {
  const { problem, played, letGo } = tail
  const totals = problem.players.map((_, index) => (played[index] ?? 0) + secondsOf(problem, lineUp[index]))
  const short = problem.players.flatMap(({ id, leastSeconds }, index) => {
    const lacks = leastSeconds - secondsOf(problem, lineUp[index])
    return lacks > 0 ? [{ name: nameOf(id), lacks }] : []
  })
  return [
    sayTotals(totals),
    ...short.map(({ name, lacks }) => `${name} gets ${sayTime(lacks)} less than was promised.`),
    short.length === 0 ? '' : sayWhy(short.map(({ name }) => name)),
    ...letGo.map((one) => letGoWords[one]),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function sayTotals(totals: readonly number[]): string {
  const minutes = totals.map((seconds) => Math.round(seconds / 60))
  const [least, most] = [Math.min(...minutes), Math.max(...minutes)]
  return least === most
    ? `Planned anew: everyone here ends with ${least} minutes.`
    : `Planned anew: everyone here ends with between ${least} and ${most} minutes.`
}

function sayWhy(names: readonly string[]): string {
  return `Whether ${andList(names)} could have more is not known yet.`
}
