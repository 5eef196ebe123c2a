import type { LuckOrHabit, PlayerLuck } from '#fairness/luck/luck-or-habit'
import { howOften } from '#ui/luck/how-often'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

/** "A fair draw would give gaps like these about one time in three." */
export function squadSentence({ pValue }: { readonly pValue: number }): string {
  return `A fair draw would give gaps like these, or wider ones, ${howOften(pValue)}.`
}

/** What follows from it for the squad; it never says why. */
export function squadMeaning({ pValue }: { readonly pValue: number }): string {
  if (pValue >= 0.95) return 'Turns were shared out more evenly than luck would do it.'
  if (pValue > 0.05) return 'So luck is enough to explain them.'
  return 'So luck alone hardly explains them: something comes back again and again. There can be many good reasons for that, and the book knows none of them.'
}

/** "From 214 turns in 8 practices." */
export function restsOn({ turns, practices }: Pick<LuckOrHabit, 'turns' | 'practices'>): string {
  return `From ${words.turns(turns)} in ${words.practices(practices)} written down as they happened.`
}

const doing = { attack: 'attacking', defend: 'defending', keep: 'in goal', rest: 'waiting' } as const

/** "attacking: 4 turns; a fair draw gives about 11". */
export function playerSentence({ role, turns, drawnTurns }: PlayerLuck): string {
  return `${doing[role]}: ${words.turns(turns)}; a fair draw gives about ${Math.round(drawnTurns)}`
}

/** Why single players are not spoken of. */
export function tooFewSentence(part: number | null): string {
  const said = part === null ? 'None' : `${Math.round(part * 100)} %`
  return `Nothing is said of single players: that needs more than half of a term’s turns written down as they happened. ${said} of them were.`
}

/** How the answer was found, in numbers. */
export function wayText({ way, draws, asWide, pValue }: NonNullable<LuckOrHabit['squad']>): string {
  const wide = `${asWide} gave gaps as wide`
  if (way === 'everyDraw')
    return `Of all ${counted(draws, 'draw')} there could be, ${wide}: a chance of ${percent(pValue)}.`
  const most = asWide === 0 ? 'at most ' : ''
  return `Of ${counted(draws, 'draw')} made at random (no more than it takes to say), ${wide}: a chance of ${most}${percent(pValue)}.`
}

/** "12 %"; small ones with their decimals. */
export function percent(chance: number): string {
  const part = chance * 100
  if (part < 0.1) return 'under 0.1 %'
  return `${part < 10 ? part.toFixed(1) : Math.round(part)} %`
}
