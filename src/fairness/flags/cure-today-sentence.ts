import type { CureGroup } from '#fairness/flags/flag-rule'
import type { CureToday } from '#fairness/flags/group-by-cure'

const sideWords = {
  attack: { outnumbering: 'two against one', level: 'two against two', outnumbered: 'one against two' },
  defend: { outnumbering: 'one against two', level: 'two against two', outnumbered: 'two against one' },
} as const

const countWords = [
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
const inWords = (count: number) => countWords[count] ?? String(count)

const groupWords = {
  attack: 'more attacking',
  defend: 'more defending',
  situation: 'more time in that situation',
  theme: 'a turn in that theme',
  waiting: 'less waiting',
  goal: 'another keeper',
  match: 'more even time in matches',
  note: 'a quiet word',
} satisfies Record<CureGroup, string>

/** "One round of two against one with these three attacking clears five of seven." */
export function cureTodaySentence(cure: CureToday): string {
  const players = inWords(cure.playerIds.length)
  if (cure.kind === 'group') {
    return capital(`${players} ${cure.playerIds.length === 1 ? 'needs' : 'need'} ${groupWords[cure.group]}.`)
  }
  const { role, situation } = cure.place
  const rounds = `${inWords(cure.rounds)} round${cure.rounds === 1 ? '' : 's'}`
  const doing = role === 'attack' ? 'attacking' : 'defending'
  const who = cure.playerIds.length === 1 ? 'this one' : `these ${players}`
  const verb = cure.rounds === 1 ? 'clears' : 'clear'
  return capital(
    `${rounds} of ${sideWords[role][situation]} with ${who} ${doing} ${verb} ${inWords(cure.clears.length)} of ${inWords(cure.of)}.`,
  )
}

const capital = (sentence: string) => sentence.charAt(0).toUpperCase() + sentence.slice(1)
