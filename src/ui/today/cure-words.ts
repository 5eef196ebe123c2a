import { countWord } from '#common/count-word'
import type { Situation } from '#exposure/column'
import type { CureGroup } from '#fairness/flags/flag-rule'
import type { CureToday } from '#fairness/flags/group-by-cure'
import type { SidePlace } from '#fairness/flags/round-cure'
import { capital } from '#ui/capital'
import { listed } from '#ui/plural'

const sizes: Readonly<Record<Situation, { readonly own: number; readonly other: number }>> = {
  outnumbering: { own: 2, other: 1 },
  level: { own: 2, other: 2 },
  outnumbered: { own: 1, other: 2 },
}

const groupWords: Readonly<Record<CureGroup, string>> = {
  attack: 'More attacking for',
  defend: 'More defending for',
  situation: 'Other numbers for',
  theme: 'A turn in the theme for',
  waiting: 'Less waiting for',
  goal: 'Look at who keeps goal:',
  match: 'Matches: look at',
  note: 'Have a word with',
}

type Names = (playerId: string) => string

/**
 * What to do today in one sentence: "One round of two against one with Ann, Bo and Cy attacking clears five of seven."
 * Whoever is too far behind for one day is said to be helped on, not cleared.
 */
export function cureWords(cure: CureToday, nameOf: Names): string {
  const names = listed(cure.playerIds.map(nameOf))
  if (cure.kind === 'round') {
    const { rounds, clears, starts, of } = cure
    const isOne = rounds === 1
    const given = isOne ? 'One round' : `${capital(countWord(rounds))} rounds`
    const cleared = `${isOne ? 'clears' : 'clear'} ${countWord(clears.length)} of ${countWord(of)}`
    const begun = `${isOne ? 'makes' : 'make'} a start on ${countWord(starts.length)} more`
    const done = starts.length > 0 ? `${cleared} and ${begun}` : cleared
    return `${given} of ${placeWords(cure.place, names)} ${done}.`
  }
  if (cure.startIn === null) return `${groupWords[cure.group]} ${names}.`
  const flags = `${countWord(cure.flags.length)} of ${countWord(cure.of)}`
  return `One round of ${placeWords(cure.startIn, names)} makes a start on ${flags}.`
}

/** "two against one with Ann and Bo attacking": attackers first, whichever side they are on. */
function placeWords({ role, situation }: SidePlace, names: string): string {
  const { own, other } = sizes[situation]
  const [attackers, defenders] = role === 'attack' ? [own, other] : [other, own]
  const doing = role === 'attack' ? 'attacking' : 'defending'
  return `${countWord(attackers)} against ${countWord(defenders)} with ${names} ${doing}`
}
