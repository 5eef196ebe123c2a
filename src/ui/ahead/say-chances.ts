import type { Chances, WayChances } from '#ahead/chance/chances'
import type { HardestToLose, LostPractice } from '#ahead/chance/hardest-to-lose'
import { wholeMinutes } from '#ui/figures/minutes'

/** How many are likely to end inside: of roles and situations, then of themes, under the plan and as so far. */
export function chancesSentences({ plan, carryOn }: Chances): readonly string[] {
  const all = plan.players.length
  const likely = (way: WayChances, of: 'seats' | 'themes') =>
    way.players.filter((player) => player[of].word === 'likely').length
  const said = (of: 'seats' | 'themes', where: string) => {
    const soFar = carryOn ? `, and ${likely(carryOn, of)} if all goes on as so far` : ''
    return `${where}, ${likely(plan, of)} of ${all} ${likely(plan, of) === 1 ? 'is' : 'are'} likely to end the term inside the tolerance with this plan${soFar}.`
  }
  return [said('seats', 'In roles and situations'), said('themes', 'In the themes')]
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
  sessionOf: (practice: number) => string,
): string {
  if (!hardest) return 'No practice would be hard to lose: the others can make up for any one of them.'
  const name = sessionOf(hardest.lost.practice)
  return `${name} would be hardest to lose: ${costOf(hardest.lost, hardest.by)}.`
}

function costOf(lost: LostPractice, by: NonNullable<HardestToLose['hardest']>['by']): string {
  if (by === 'seconds')
    return `over everyone about ${wholeMinutes(lost.moreOutside.mean)} min more would end outside the tolerance`
  const fewer = by === 'inside' ? lost.fewerInside : lost.fewerInSeats
  const where = by === 'inside' ? '' : ' in roles and situations'
  return `without it, on average, ${oneDecimal(fewer.mean)} fewer would end inside${where}`
}

/** "0.4", "2", never "0": a cost that is named is one. */
function oneDecimal(count: number): string {
  return String(Math.max(0.1, Math.round(count * 10) / 10))
}
