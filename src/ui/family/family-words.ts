import type { FamilyDoing, FamilyTheme } from '#family/family-page'
import type { FamilySentence, FamilyTopic } from '#family/family-sentences'
import type { MatchesPlayed } from '#family/matches-played'
import type { ComingWhen } from '#family/next-practice'
import type { Line } from '#match/match'
import { formatDay } from '#ui/format-day'
import { listed } from '#ui/plural'
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
          : 'The coach had not said a next step when this page was confirmed.',
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

/** Of practices or matches too little is written down. */
export function tooFewText({ kind, held, written }: { kind: Kind; held: number; written: number }): string {
  const sessions = kind === 'practice' ? words.practices(held) : words.matches(held)
  return `${written} of ${sessions} ${written === 1 ? 'is' : 'are'} written down. That is too few to say more.`
}

export const doingLabel: Readonly<Record<Kind, Readonly<Record<FamilyDoing, string>>>> = {
  practice: {
    attack: 'Attacking',
    defend: 'Defending',
    keep: 'In goal',
    played: 'Playing',
    waiting: 'Waiting for a turn',
  },
  match: {
    attack: 'Attacking',
    defend: 'Defending',
    keep: 'Of that, in goal',
    played: 'On the pitch',
    waiting: 'Off the pitch',
  },
}

/** "about 55 min"; zero is under five. */
export function aboutText(minutes: number): string {
  return minutes === 0 ? 'under 5 min' : `about ${minutes} min`
}

const lineAt: Readonly<Record<Line, string>> = {
  keeper: 'in goal',
  back: 'at the back',
  middle: 'in the middle',
  forward: 'up front',
}

/** "Your child was on the pitch in 9 matches and was on from the start in 6 of them. Your child has played at the back." */
export function matchesPlayedText({ matches, starts, lines }: MatchesPlayed): string {
  const each = matches > 1 ? ' each time' : ''
  const some = `was on from the start in ${starts} of them`
  const all = starts === 0 ? `came on later${each}` : `was on from the start${each}`
  const started = starts > 0 && starts < matches ? some : all
  const said = `Your child was on the pitch in ${words.matches(matches)} and ${started}.`
  return lines.length > 0
    ? `${said} Your child has played ${listed(lines.map((line) => lineAt[line]))}.`
    : said
}

/** How a child met a theme. */
export function metText(theme: Pick<FamilyTheme, 'missed' | 'practices' | 'practicesPlayed'>): string {
  if (theme.missed === 'away') return 'Not yet. Your child was away when it was practised.'
  if (theme.missed === 'noTurn') return 'Not yet. Your child has not had a turn at it.'
  return `Played in ${theme.practicesPlayed} of ${words.practices(theme.practices)}.`
}

/** What comes next; "Thu, 11 June 2026, 17:30, Mill Field". */
export function comingText(
  coming: { readonly themeName: string | null; readonly when: ComingWhen | null } | null,
): string {
  if (!coming) return 'No practice is planned yet.'
  const theme = coming.themeName
    ? `The next practice is about: ${coming.themeName}.`
    : 'The theme of the next practice is not chosen yet.'
  if (!coming.when) return theme
  const { day, startsAt, place } = coming.when
  return `${theme} It is on ${[formatDay(day), startsAt, place].filter(Boolean).join(', ')}.`
}

export const nothingConfirmed =
  'There is nothing to read yet. The coach looks at this page first. What the coach confirms, you can read here from 8:00 on the next morning.'

export const leftSquad = 'Your child is in no squad this season. So there is nothing to read here.'

/** When the page changes; said on every page. */
export function confirmedText({
  confirmedBy,
  confirmedOn,
}: {
  confirmedBy: string
  confirmedOn: string
}): string {
  return `${confirmedBy} confirmed this page on ${formatDay(confirmedOn)}. It changes when the coach confirms it again.`
}

export const lastLine = 'This page counts turns. It does not say how good anyone is.'

/** What the words of the page mean, in the order in which they come up. */
export const meanings: readonly { readonly word: string; readonly means: string }[] = [
  { word: 'Turn', means: 'One go with the ball. It ends in a goal, or when the ball goes out.' },
  { word: 'Attacking', means: 'Your child’s side had the ball and tried to score.' },
  { word: 'Defending', means: 'Your child’s side tried to stop a goal and win the ball.' },
  { word: 'In goal', means: 'Your child kept the goal.' },
  { word: 'Waiting', means: 'Others had the ball. All children wait now and then.' },
  {
    word: 'About even',
    means: 'Close to what your child would get if all took turns. A small difference does not count.',
  },
  {
    word: 'Even turn-taking',
    means: 'All who were there take turns in the same way. Days away do not count against your child.',
  },
  { word: 'Theme', means: 'What a practice was about, such as two against one.' },
  {
    word: 'Not written down',
    means: 'Nobody wrote what was played that day. It does not mean nothing was played.',
  },
]

/** How to ask or object. */
export const askLead =
  'You may ask what is kept about your child, say that something is wrong, or say that you do not want it kept.'
export const askNobody = 'Ask the coach, or anyone at the club.'
