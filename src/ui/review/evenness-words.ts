import { changeOf, type Evenness, type JudgedColumn, type Widest } from '#fairness/evenness'
import { wholeMinutes } from '#ui/figures/minutes'
import { words } from '#ui/words'

const doing = (column: JudgedColumn, kind: Evenness['kind']): string => {
  if (column === 'played') return 'playing'
  if (column === 'keep') return 'time in goal'
  return kind === 'match' && column === 'rest' ? 'time off' : words.doing[column]
}

/** "11 of 14 within the band. Widest: 22 min less attacking, while here; answered." */
export function evennessSentence(evenness: Evenness): string {
  const { said, written } = evenness
  if (written.held === 0) return 'None was held.'
  if (!said) return words.notEnoughWritten
  if (said.members === 0) return 'Nobody has played yet.'
  const within =
    said.withinBand === said.members
      ? `All ${said.members} within the band.`
      : `${said.withinBand} of ${said.members} within the band.`
  const widest = said.widest && widestText(said.widest, evenness.kind)
  return widest ? `${within} Widest: ${widest}.` : within
}

const answeredWords = { answered: '; answered', open: '; not answered yet', notFlagged: '' } as const

function widestText({ column, part, seconds, answered }: Widest, kind: Evenness['kind']): string | null {
  const minutes = wholeMinutes(seconds)
  if (minutes === 0) return null
  const side = minutes < 0 ? 'less' : 'more'
  return `${Math.abs(minutes)} min ${side} ${doing(column, kind)}, ${words.cause[part]}${answeredWords[answered]}`
}

/** What the term before said: "In Autumn term: 9 of 14 within the band." Null when there was none, or nothing to say then. */
export function beforeSentence(before: Evenness | null, termName: string | null): string | null {
  if (!before || termName === null || before.written.held === 0) return null
  if (!before.said) return `In ${termName}: ${lower(words.notEnoughWritten)}`
  return before.said.members === 0
    ? null
    : `In ${termName}: ${before.said.withinBand} of ${before.said.members} within the band.`
}

/** How the index moved: "Jain index of time played: 0.02 closer to even than in Autumn term." */
export function changeSentence(
  evenness: { readonly before: Evenness | null; readonly now: Evenness },
  termName: string | null,
): string | null {
  const change = changeOf(evenness.before, evenness.now)
  if (!change || termName === null) return null
  const jain = Math.round(change.jainPlayed * 100) / 100
  if (jain === 0) return `Jain index of time played: as in ${termName}.`
  const side = jain > 0 ? 'closer to even' : 'further from even'
  return `Jain index of time played: ${Math.abs(jain).toFixed(2)} ${side} than in ${termName}.`
}

function lower(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1)
}
