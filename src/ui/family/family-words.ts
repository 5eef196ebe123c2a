import type { FamilySentence, FamilyTopic } from '#fairness/family-sentences'
import type { ThemeMeeting } from '#themes/theme-meetings'
import { words } from '#ui/words'

type Kind = 'practice' | 'match'

const turnsAt: Readonly<Record<FamilyTopic, string>> = {
  attack: 'turns at attacking',
  defend: 'turns at defending',
  keep: 'turns in goal',
  played: 'time on the pitch',
}

const timeAt: Readonly<Record<FamilyTopic, string>> = {
  attack: 'time attacking',
  defend: 'time defending',
  keep: 'time in goal',
  played: 'time on the pitch',
}

/** Matches are counted in time, practices in turns. */
function topicText(topic: FamilyTopic, kind: Kind): string {
  return kind === 'match' ? timeAt[topic] : turnsAt[topic]
}

/** One of the three sentences, for the family to read. */
export function familySentenceText(sentence: FamilySentence, kind: Kind): string {
  const topic = topicText(sentence.topic, kind)
  const few = kind === 'match' ? 'less' : 'fewer'
  switch (sentence.says) {
    case 'even':
      return evenText(sentence, kind)
    case 'fewer': {
      const missed = kind === 'match' ? 'matches' : 'practices'
      return [
        `Your child has had ${few} ${topic} than an even turn-taking would give.`,
        sentence.isPartMissed ? `Part of this is ${missed} missed.` : '',
        sentence.nextStep
          ? `The coach has seen this; next step: ${sentence.nextStep}.`
          : 'The coach has not written a next step yet.',
      ]
        .filter(Boolean)
        .join(' ')
    }
    case 'more': {
      const more = sentence.moreOf ? ` and will get more ${topicText(sentence.moreOf, kind)}` : ''
      return `Your child has had more ${topic} than an even turn-taking would give${more}.`
    }
  }
}

function evenText({ topic, isPartMissed }: Extract<FamilySentence, { says: 'even' }>, kind: Kind): string {
  const have = kind === 'match' ? 'has' : 'have'
  const whose = isPartMissed
    ? `In the ${words.kinds[kind].toLowerCase()} your child came to, `
    : 'Your child’s '
  return `${whose}${topicText(topic, kind)} ${have} been about even.`
}

/** What the page rests on, its first line. */
export function restsOnText({ held, written }: { readonly held: number; readonly written: number }): string {
  if (held === 0) return 'No practice or match has been held yet.'
  const sessions = held === 1 ? 'practice or match' : 'practices and matches'
  if (written === held) return `From all ${held} ${sessions} held.`
  const rest = held - written
  return `From ${written} of the ${held} ${sessions} held. The other ${rest} ${rest === 1 ? 'was' : 'were'} not written down.`
}

export const doingLabel: Readonly<Record<FamilyTopic, string>> = {
  attack: 'Attacking',
  defend: 'Defending',
  keep: 'In goal',
  played: 'On the pitch',
}

/** How a child met a theme. */
export function metText(meeting: ThemeMeeting): string {
  if (meeting.missed === 'away') return 'Not yet. Your child was away when it was practised.'
  if (meeting.missed === 'noTurn') return 'Not yet. Your child has not had a turn at it.'
  return `Played in ${meeting.practicesPlayed} of ${words.practices(meeting.practices)}.`
}
