import type { AttendanceEntry } from '#exchange/attendance/attendance-entry'
import type {
  AttendancePlan,
  PlannedPlayer,
  PlannedSession,
  SessionQuestion,
} from '#exchange/attendance/attendance-plan'
import { candidateChoices, matchSentence } from '#exchange/players/say-player'
import { leaveOut, type Saying, say, sayLeftOut, sayPassedOver, sayWrong } from '#exchange/saying'
import type { RowReading } from '#exchange/table/row-reading'

const asMember = { value: 'new', label: 'It is a new player of the squad' }
const asGuest = { value: 'guest', label: 'It is a guest' }

/** What a row of an attendance list will do: who it is, at the first row of a player, and what it says. */
export function sayAttendanceRow(
  row: RowReading<AttendanceEntry>,
  plan: AttendancePlan,
  nameOf: (playerId: string) => string,
): Saying {
  if (row.result.kind === 'passedOver') return sayPassedOver(row.result.why)
  if (row.result.kind === 'problem') {
    return plan.openRows.includes(row.line) ? sayWrong(row.result.problems) : sayLeftOut
  }
  const doubled = plan.doubledRows.find(({ line }) => line === row.line)
  if (doubled) return say('passed', `The same as line ${doubled.sameAs}; counted once.`)
  const marks = sayMarks(row.result.entry)
  const player = plan.players.find(({ line }) => line === row.line)
  if (!player) return say('same', marks)
  const who = sayPlayer(player, nameOf)
  return { ...who, says: `${who.says} ${who.tone === 'ask' || who.tone === 'wrong' ? '' : marks}`.trim() }
}

function sayMarks({ marks }: AttendanceEntry): string {
  if (marks.length === 0) return 'Nothing is marked.'
  const counts = new Map<string, number>()
  for (const { meaning } of marks) counts.set(meaning, (counts.get(meaning) ?? 0) + 1)
  const [only] = marks
  if (marks.length === 1 && only) return `${only.session.day}: ${meaningWords[only.meaning]}.`
  return `${[...counts].map(([meaning, times]) => `${times} × ${meaningWords[meaning as keyof typeof meaningWords]}`).join(', ')}.`
}

export const meaningWords = {
  here: 'here',
  late: 'late',
  left: 'left early',
  notPlaying: 'here, not playing',
  out: 'out for today',
  away: 'away',
  nothing: 'says nothing',
} as const

function sayPlayer({ name, outcome }: PlannedPlayer, nameOf: (playerId: string) => string): Saying {
  switch (outcome.kind) {
    case 'known':
      return say('same', `${nameOf(outcome.playerId)}.`, [leaveOut])
    case 'new':
      return say('new', `New player: ${name}, member from ${outcome.firstDay}.`, [
        asMember,
        asGuest,
        leaveOut,
      ])
    case 'guest':
      return say('new', `New guest: ${name}.`, [asMember, asGuest, leaveOut])
    case 'problem':
      return sayWrong(outcome.problems)
    case 'leftOut':
      return sayLeftOut
    case 'question':
      return say('ask', sentenceOf(outcome), [
        ...candidateChoices(outcome.candidates),
        asMember,
        asGuest,
        leaveOut,
      ])
  }
}

function sentenceOf({ why, candidates }: Extract<PlannedPlayer['outcome'], { kind: 'question' }>): string {
  if (why === 'notKnown') return 'The book has nobody of this name in the squad. Who is it?'
  if (why === 'oneForTwoNames')
    return 'More than one player of the file can only be this one of the book. Who is it?'
  return matchSentence(why, candidates)
}

/** What will become of a day of the list. */
export function saySession(session: PlannedSession): Saying {
  const { outcome, register, away } = session
  const there = `${new Set(register.map(({ player }) => player)).size} there, ${away.length} away`
  switch (outcome.kind) {
    case 'new':
      return say('new', `New: ${there}${sayLength(outcome.lengthSeconds)}.`, [leaveOut])
    case 'fill':
      return say('change', `A register for one that the book has without: ${there}.`, [leaveOut])
    case 'same':
      return say('same', 'The book says the same already.', [leaveOut])
    case 'question':
      return say('ask', sessionSentences[outcome.why], [leaveOut])
    case 'problem':
      return sayWrong(outcome.problems)
    case 'leftOut':
      return sayLeftOut
  }
}

function sayLength(lengthSeconds: number | null): string {
  return lengthSeconds === null ? '' : `, ${Math.round(lengthSeconds / 60)} minutes long`
}

const sessionSentences: Readonly<Record<SessionQuestion, string>> = {
  otherRegister:
    'The book has another register for it, which stays. Leave the day out here, or correct it on its own page.',
  severalThatDay:
    'There is more than one that it can be. Write their titles in the file, or leave the day out.',
  cancelled: 'In the book it was called off. Leave the day out.',
  outsideSeasons: 'The day is in no season of the club. Correct the year, or leave the day out.',
  afterToday: 'The day has not come yet. Correct it, or leave the day out.',
  nobodyThere: 'Nobody is marked as there. Leave the day out.',
}
