import type { Chances, PlayerChances, WayChances } from '#ahead/chance/chances'
import type { HardestToLose, LostPractice } from '#ahead/chance/hardest-in-slices'
import type { AheadProblem } from '#ahead/problem'
import { wishedThemes } from '#ahead/wished-themes'
import { type RotationColumn, rotationColumns } from '#rotation/problem'
import { wholeMinutes } from '#ui/figures/minutes'

/**
 * How many are likely to end inside in roles and situations, and in how many themes a player is on average, with the plan
 * and as so far. Hardly anybody is inside in every theme: each practice missed is one of a theme.
 */
export function chancesSentences(
  { plan, carryOn }: Chances,
  { themes }: Pick<AheadProblem, 'themes'>,
): readonly string[] {
  const all = plan.players.length
  const inSeats = likelyPlayers(plan)
  const seats = `In roles and situations, ${inSeats} of ${all} ${inSeats === 1 ? 'is' : 'are'} likely to end the term inside the band with this plan${carryOn ? `, and ${likelyPlayers(carryOn)} if all goes on as so far` : ''}.`
  const asked = wishedThemes(themes)
  if (asked.length === 0 || all === 0) return [seats]
  const mean = (way: WayChances) =>
    Math.round((way.players.reduce((sum, own) => sum + likelyThemes(own, asked), 0) / all) * 10) / 10
  const soFar = carryOn ? `, and of ${mean(carryOn)} if all goes on as so far` : ''
  return [
    seats,
    `Of the ${asked.length} themes that are asked for, a player is likely to get enough of ${mean(plan)} on average with this plan${soFar}.`,
  ]
}

/** Roles and situations in which a player is not likely to end inside; of several it may be the one or the other. */
export function openColumns({ columns }: Pick<PlayerChances, 'columns'>): readonly RotationColumn[] {
  return rotationColumns.filter((column) => columns[column].word !== 'likely')
}

const likelyPlayers = ({ players }: WayChances) =>
  players.filter(({ seats }) => seats.word === 'likely').length

/** Of how many themes a player is likely to end inside. */
export function likelyThemes({ byTheme }: Pick<PlayerChances, 'byTheme'>, asked: readonly number[]): number {
  return asked.filter((theme) => byTheme[theme]?.word === 'likely').length
}

/** On what the chances rest. */
export function playedSentence({ isExact, played }: Pick<Chances, 'isExact' | 'played'>): string {
  if (played === 1) return 'It is certain who comes, so that nothing is left to chance.'
  const count = played.toLocaleString('en-GB')
  return isExact
    ? `All ${count} ways to come and stay away were gone through: nothing is left to chance.`
    : `The rest of the term was played through ${count} times, drawing by chance who comes; with the plan and as so far the same players came each time.`
}

/** Which practice would be hardest to lose, and what it would cost. */
export function hardestSentence(
  { hardest }: Pick<HardestToLose, 'hardest'>,
  nameOf: (practice: number) => string,
): string {
  if (!hardest) return 'No practice would be hard to lose: the others can make up for any one of them.'
  const name = nameOf(hardest.lost.practice)
  return `${name} would be hardest to lose: ${costOf(hardest.lost, hardest.by)}.`
}

function costOf(lost: LostPractice, by: NonNullable<HardestToLose['hardest']>['by']): string {
  if (by === 'seconds')
    return `over everyone about ${wholeMinutes(lost.moreOutside.mean)} min more would end outside the band`
  const fewer = by === 'inside' ? lost.fewerInside : lost.fewerInSeats
  const where = by === 'inside' ? '' : ' in roles and situations'
  return `without it, on average, ${oneDecimal(fewer.mean)} players fewer would end inside${where}`
}

/** "0.4", "2", never "0": a cost that is named is one. */
function oneDecimal(count: number): string {
  return String(Math.max(0.1, Math.round(count * 10) / 10))
}
