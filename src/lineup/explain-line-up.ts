import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import { equalTimeChangesOf } from '#lineup/equal-time-changes'
import { fairLineUp } from '#lineup/fair-line-up'
import type { LineUp } from '#lineup/line-up'
import { changesInside, secondsOf } from '#lineup/line-up-values'
import { placesInAll } from '#lineup/places-for'
import type { LineUpProblem } from '#lineup/problem'
import { sayClock, sayTime } from '#lineup/say-clock'
import type { PlayerId } from '#squad/player'

/** What a line-up is worth, in a coach's words. */
export function explainLineUp(
  problem: LineUpProblem,
  lineUp: LineUp,
  nameOf: (player: PlayerId) => string,
): string {
  const figures = figuresOf(problem, lineUp)
  return [
    sayMinutes(problem, lineUp, figures),
    sayFewer(problem),
    sayOwed(problem, figures, nameOf),
    sayMissed(problem, lineUp, { figures, nameOf }),
    sayEqualTime(problem, figures),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

type Figures = {
  /** By player, in seconds. */
  readonly played: readonly number[]
  readonly fair: readonly number[]
  readonly changes: number
  /** There for some of it. */
  readonly there: readonly number[]
}

function figuresOf(problem: LineUpProblem, { plan }: LineUp): Figures {
  return {
    played: problem.players.map((_, player) => secondsOf(problem, plan[player])),
    fair: fairLineUp(problem).play,
    changes: changesInside(problem, plan),
    there: problem.players.flatMap(({ isThere }, player) => (isThere.some(Boolean) ? [player] : [])),
  }
}

function sayMinutes(problem: LineUpProblem, { proofs }: LineUp, { played, there, changes }: Figures): string {
  const minutes = there.map((player) => Math.round((played[player] ?? 0) / 60))
  const [least, most] = [Math.min(...minutes), Math.max(...minutes)]
  const range =
    least === most
      ? `everyone plays ${least} minutes`
      : most - least === 1
        ? `everyone plays ${least} or ${most} minutes`
        : `everyone plays between ${least} and ${most} minutes`
  const with_ = `with ${changes === 0 ? 'no change' : counted(changes, 'change')} inside a period`
  const isSame = problem.windows.length > 0 && there.length > 0
  if (!isSame) return ''
  if (!proofs.minutes.proven || !proofs.promise.proven)
    return `A fair plan for ${countWord(there.length)} players: ${range}, ${with_}. Whether a fairer one is possible is not known yet.`
  return `As even as ${countWord(there.length)} players allow: ${range}, ${with_}. Nothing fairer is possible.`
}

/** From when to when fewer play than there are places at most. */
function sayFewer({ windows }: LineUpProblem): string {
  const full = Math.max(0, ...windows.map(({ places }) => placesInAll(places)))
  const fewer = windows.filter(({ places }) => placesInAll(places) < full)
  const [first, last] = [fewer[0], fewer.at(-1)]
  if (!first || !last) return ''
  const least = Math.min(...fewer.map(({ places }) => placesInAll(places)))
  return `Only ${countWord(least)} are on from ${sayClock(first.start)} to ${sayClock(last.end)}, as no more are there.`
}

/** From so many seconds on, what somebody brings from earlier matches is worth a word. */
const wordWorth = 60

function sayOwed(
  problem: LineUpProblem,
  { played, fair, there }: Figures,
  nameOf: (player: PlayerId) => string,
): string {
  const differs = (player: number) => (played[player] ?? 0) - (fair[player] ?? 0)
  const owedOf = (player: number) => problem.players[player]?.owed.playSeconds ?? 0
  const more = there
    .filter((player) => owedOf(player) >= wordWorth && differs(player) >= wordWorth / 2)
    .sort((one, other) => owedOf(other) - owedOf(one))
  const less = there.filter((player) => owedOf(player) <= -wordWorth && differs(player) <= -wordWorth / 2)
  const names = (players: readonly number[]) =>
    players.length > 3
      ? `${countWord(players.length)} players`
      : andList(players.map((player) => nameOf(problem.players[player]?.id ?? '')))
  const minutes = more.map((player) => String(Math.round(owedOf(player) / 60)))
  const isOne = more.length === 1
  const saidMore =
    more.length === 0
      ? ''
      : more.length > 3
        ? `${capital(names(more))} get more: they are owed time from earlier matches.`
        : `${names(more)} ${isOne ? 'gets more, being owed' : 'get more: they are owed'} ${andList(minutes)} ${isOne && minutes[0] === '1' ? 'minute' : 'minutes'}.`
  const saidLess =
    less.length === 0
      ? ''
      : `${capital(names(less))} ${less.length === 1 ? 'gets' : 'get'} less, after more in earlier matches.`
  return [saidMore, saidLess].filter(Boolean).join(' ')
}

function sayMissed(
  problem: LineUpProblem,
  { proofs }: LineUp,
  { figures, nameOf }: { readonly figures: Figures; readonly nameOf: (player: PlayerId) => string },
): string {
  const missed = problem.players.flatMap(({ id, leastSeconds }, player) => {
    const played = figures.played[player] ?? 0
    return played < leastSeconds ? [{ id, played, leastSeconds }] : []
  })
  if (missed.length === 0) return ''
  const said = missed
    .slice(0, 3)
    .map(
      ({ id, played, leastSeconds }) =>
        `${nameOf(id)} gets ${sayTime(played)} of the ${sayTime(leastSeconds)} that were promised.`,
    )
  const others =
    missed.length > 3
      ? [`${capital(countWord(missed.length - 3))} more get less than they were promised.`]
      : []
  const why = proofs.promise.proven
    ? 'With these players and rules the promise cannot be kept better.'
    : 'Whether the promise can be kept better is not known yet.'
  return [...said, ...others, why].join(' ')
}

/** What exactly equal time would take, where everyone is due the same and it takes a change at all. */
function sayEqualTime(problem: LineUpProblem, { played, fair, changes, there }: Figures): string {
  const needed = equalTimeChangesOf(problem)
  if (needed === null || needed === 0) return ''
  const furthest = Math.max(...there.map((player) => Math.abs((played[player] ?? 0) - (fair[player] ?? 0))))
  const players = countWord(there.length)
  if (furthest < 1)
    return changes === needed ? `Exactly equal time for ${players} cannot do with fewer changes.` : ''
  const away = `nobody is more than ${counted(Math.max(1, Math.ceil(furthest / 60 - 1e-9)), 'minute')} from it`
  return `Exactly equal time for ${players} would take at least ${counted(needed, 'change')}; with ${changes} ${away}.`
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`
}

function capital(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1)
}
