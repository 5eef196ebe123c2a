import type { Situation } from '#exposure/column'
import type { CureGroup } from '#fairness/flags/flag-rule'
import type { CureToday } from '#fairness/flags/group-by-cure'
import { listed } from '#ui/plural'

const numbers = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
]

/** Small numbers as words, the way people say them. */
export function numberWord(count: number): string {
  return numbers[count] ?? String(count)
}

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

/** What to do today in one sentence: "One round of two against one with Ann, Bo and Cy attacking clears five of seven." */
export function cureWords(cure: CureToday, nameOf: Names): string {
  const names = listed(cure.playerIds.map(nameOf))
  if (cure.kind === 'group') return `${groupWords[cure.group]} ${names}.`
  const { own, other } = sizes[cure.place.situation]
  const attacks = cure.place.role === 'attack'
  const [attackers, defenders] = attacks ? [own, other] : [other, own]
  const rounds = cure.rounds === 1 ? 'One round' : `${capital(numberWord(cure.rounds))} rounds`
  const clears = cure.rounds === 1 ? 'clears' : 'clear'
  const doing = attacks ? 'attacking' : 'defending'
  const against = `${numberWord(attackers)} against ${numberWord(defenders)}`
  return `${rounds} of ${against} with ${names} ${doing} ${clears} ${numberWord(cure.clears.length)} of ${numberWord(cure.of)}.`
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1)
}
