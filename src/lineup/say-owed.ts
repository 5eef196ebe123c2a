import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import type { LineUpFigures, NameOf } from '#lineup/line-up-figures'
import type { LineUpProblem } from '#lineup/problem'

/** From so many seconds on, what somebody brings from earlier matches is worth a word. */
const wordWorth = 60
const mostNames = 3

/** Who gets more, or less, for what it brings from earlier matches: than it is due, and than others there get. */
export function sayOwed(problem: LineUpProblem, figures: LineUpFigures, nameOf: NameOf): string {
  const { played, fair, there, secondsThere } = figures
  const owedOf = (player: number) => problem.players[player]?.owed.playSeconds ?? 0
  const sumOf = (seconds: readonly number[]) => there.reduce((sum, player) => sum + (seconds[player] ?? 0), 0)
  const usual = sumOf(played) / Math.max(1, sumOf(secondsThere))
  // Who keeps goal is due more than the others: an even line-up is then no gift, and nobody who reads it sees one.
  const beyond = (player: number) => {
    const had = played[player] ?? 0
    const differs = [had - (fair[player] ?? 0), had - usual * (secondsThere[player] ?? 0)]
    return owedOf(player) > 0 ? Math.min(...differs) : -Math.max(...differs)
  }
  const isSaid = (player: number) => beyond(player) >= wordWorth / 2
  const more = there
    .filter((player) => owedOf(player) >= wordWorth && isSaid(player))
    .sort((one, other) => owedOf(other) - owedOf(one))
  const less = there.filter((player) => owedOf(player) <= -wordWorth && isSaid(player))
  const names = (players: readonly number[]) =>
    players.length > mostNames
      ? capital(`${countWord(players.length)} players`)
      : andList(players.map((player) => nameOf(problem.players[player]?.id ?? '')))
  const saidLess = `${names(less)} ${less.length === 1 ? 'gets' : 'get'} less, after more in earlier matches.`
  return [more.length > 0 ? sayMore(names(more), more.map(owedOf)) : '', less.length > 0 ? saidLess : '']
    .filter((said) => said !== '')
    .join(' ')
}

function sayMore(names: string, owed: readonly number[]): string {
  if (owed.length > mostNames) return `${names} get more: they are owed time from earlier matches.`
  const minutes = owed.map((seconds) => String(Math.round(seconds / 60)))
  const unit = minutes.at(-1) === '1' ? 'minute' : 'minutes'
  return owed.length === 1
    ? `${names} gets more, being owed ${minutes[0]} ${unit}.`
    : `${names} get more: they are owed ${andList(minutes)} ${unit}.`
}

function capital(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1)
}
