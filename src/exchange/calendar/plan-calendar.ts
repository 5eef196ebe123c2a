import { hasDay } from '#common/dated'
import type { CalendarEntry } from '#exchange/calendar/calendar-entry'
import type {
  CalendarChange,
  CalendarNote,
  CalendarOutcome,
  CalendarPlan,
  CalendarPlanning,
  KnownCalendarSession,
} from '#exchange/calendar/calendar-plan'
import { matchCalendarSession, titleKey } from '#exchange/calendar/match-session'
import type { RowReading } from '#exchange/table/row-reading'

type NumberedEntry = { readonly line: number; readonly entry: CalendarEntry }

/** What the rows of a calendar do to a squad's book, row by row; nothing is written. */
export function planCalendar(
  rows: readonly RowReading<CalendarEntry>[],
  planning: CalendarPlanning,
): CalendarPlan {
  const { answers, sessions } = planning
  const entries = rows.flatMap((row): NumberedEntry[] =>
    row.result.kind === 'understood' && answers.get(row.line) !== 'leaveOut'
      ? [{ line: row.line, entry: row.result.entry }]
      : [],
  )
  const doubled = doubledRows(entries)
  const taken = new Set(
    entries.flatMap(({ line, entry }) => {
      const answer = answers.get(line)
      const match = matchCalendarSession(entry, sessions, new Set())
      if (answer !== undefined) return [answer]
      return match.kind === 'one' && match.by !== 'day' ? [match.session.id] : []
    }),
  )
  const plan = rows.map((row): CalendarPlan[number] => {
    if (answers.get(row.line) === 'leaveOut') return { line: row.line, outcome: { kind: 'leftOut' } }
    if (row.result.kind !== 'understood') return { line: row.line, outcome: row.result }
    const double = doubled.get(row.line)
    return { line: row.line, outcome: double ?? outcomeOf(row.line, row.result.entry, { planning, taken }) }
  })
  return askAboutShared(plan, answers)
}

function outcomeOf(
  line: number,
  entry: CalendarEntry,
  { planning, taken }: { readonly planning: CalendarPlanning; readonly taken: ReadonlySet<string> },
): CalendarOutcome {
  const { sessions, answers } = planning
  const wrong = problemsOfEntry(entry, planning)
  if (wrong.length > 0) return { kind: 'problem', problems: wrong }
  const notes: readonly CalendarNote[] = entry.goals && !planning.countsGoals ? ['goalsNotCounted'] : []
  const answer = answers.get(line)
  if (answer === 'new') return newOutcome(entry, notes, planning)
  if (answer !== undefined) {
    const chosen = sessions.find(({ id, isCancelled }) => id === answer && !isCancelled)
    return chosen
      ? knownOutcome(entry, { session: chosen, isNamed: true, notes, planning })
      : problem('What was chosen for this row is no longer in the book. Choose again.')
  }
  const match = matchCalendarSession(entry, sessions, taken)
  if (match.kind === 'one')
    return knownOutcome(entry, { session: match.session, isNamed: match.by === 'code', notes, planning })
  if (match.kind === 'none') return newOutcome(entry, notes, planning)
  const why = match.kind === 'cancelled' ? 'cancelled' : 'perhapsSame'
  return { kind: 'question', why, candidates: match.candidates }
}

function problemsOfEntry({ day, goals }: CalendarEntry, planning: CalendarPlanning): readonly string[] {
  if (!planning.seasons.some((season) => hasDay(season, day)))
    return [`No season of the club has ${day}. Look at the year, or let the club add that season first.`]
  return goals && planning.countsGoals && day > planning.today
    ? [`This match is still to come on ${day}, and the row has a result. Take it out, or correct the day.`]
    : []
}

/** A new one that the book would hold to be a second of the same is refused, as its form would. */
function newOutcome(
  entry: CalendarEntry,
  notes: readonly CalendarNote[],
  { sessions }: CalendarPlanning,
): CalendarOutcome {
  const isThere = sessions.some(
    (session) =>
      !session.isCancelled &&
      session.day === entry.day &&
      session.kind === entry.kind &&
      session.title.toLowerCase() === entry.title.toLowerCase() &&
      session.startsAt === entry.startsAt,
  )
  if (!isThere) return { kind: 'new', entry, notes }
  return problem(`The book has this ${entry.kind} on that day already. Give the row another title or time.`)
}

function knownOutcome(
  entry: CalendarEntry,
  how: {
    readonly session: KnownCalendarSession
    /** By its code or a person's answer: then its title and day may be others. */
    readonly isNamed: boolean
    readonly notes: readonly CalendarNote[]
    readonly planning: CalendarPlanning
  },
): CalendarOutcome {
  const { session, isNamed, planning } = how
  if (entry.kind !== session.kind)
    return problem(`The book has this as a ${session.kind}, and the row says ${entry.kind}. Correct the row.`)
  const isMoved = entry.day !== session.day
  if (isMoved && session.isWritten)
    return problem(
      `This ${session.kind} is written down on ${session.day}, so it cannot move to ${entry.day}. Correct the day, or leave the row out.`,
    )
  const isOtherTitle =
    entry.title !== '' && entry.title !== session.title && titleKey(entry.title) !== titleKey(session.title)
  const takesTitle = isOtherTitle && (isNamed || session.title === '')
  const isOtherPlace = entry.place !== '' && entry.place !== session.place
  const takesPlace = isOtherPlace && !(entry.isSideOnly && session.place !== '')
  const change: CalendarChange = {
    ...(isMoved && { day: entry.day }),
    ...(takesTitle && { title: entry.title }),
    ...(entry.startsAt !== null && entry.startsAt !== session.startsAt && { startsAt: entry.startsAt }),
    ...(takesPlace && { place: entry.place }),
    ...(entry.lengthSeconds !== null &&
      !session.isWritten &&
      entry.lengthSeconds !== session.lengthSeconds && { lengthSeconds: entry.lengthSeconds }),
    ...(entry.goals !== null &&
      planning.countsGoals &&
      !areSame(entry.goals, session.goals) && { goals: entry.goals }),
  }
  const notes = isOtherTitle && !takesTitle ? [...how.notes, 'otherTitle' as const] : how.notes
  return { kind: 'known', session, change, notes }
}

function areSame(one: CalendarEntry['goals'], other: CalendarEntry['goals']): boolean {
  return one?.ours === other?.ours && one?.theirs === other?.theirs
}

/** Rows of one day, kind, title and time: the same twice is counted once, with other details it is a slip. */
function doubledRows(entries: readonly NumberedEntry[]): ReadonlyMap<number, CalendarOutcome> {
  const first = new Map<string, NumberedEntry>()
  const codes = new Map<string, number>()
  const doubled = new Map<number, CalendarOutcome>()
  for (const one of entries) {
    const { day, kind, title, startsAt, code } = one.entry
    const key = JSON.stringify([day, kind, titleKey(title), startsAt])
    const before = first.get(key)
    const lineOfCode = code === null ? undefined : codes.get(code)
    if (code !== null && lineOfCode === undefined) codes.set(code, one.line)
    if (!before && lineOfCode !== undefined) {
      const message = `The code ${code} stands in line ${lineOfCode} too. A code belongs to one session; correct one of the two.`
      doubled.set(one.line, problem(message))
    } else if (!before) first.set(key, one)
    else if (JSON.stringify(before.entry) === JSON.stringify(one.entry))
      doubled.set(one.line, { kind: 'doubled', line: before.line })
    else {
      const message = `Line ${before.line} has the same ${kind} on ${day} with other details. Correct one of the two, or leave one out.`
      doubled.set(one.line, problem(message))
    }
  }
  return doubled
}

/** Rows that came out as one session of the book: a person says which one it is. */
function askAboutShared(plan: CalendarPlan, answers: CalendarPlanning['answers']): CalendarPlan {
  const times = new Map<string, number>()
  for (const { outcome } of plan)
    if (outcome.kind === 'known') times.set(outcome.session.id, (times.get(outcome.session.id) ?? 0) + 1)
  return plan.map((row) => {
    if (row.outcome.kind !== 'known' || (times.get(row.outcome.session.id) ?? 0) < 2) return row
    const { session } = row.outcome
    const outcome: CalendarOutcome = answers.has(row.line)
      ? problem(`Another row was said to be this ${session.kind} too. Choose another answer for one.`)
      : { kind: 'question', why: 'oneForTwoRows', candidates: [session] }
    return { line: row.line, outcome }
  })
}

function problem(message: string): CalendarOutcome {
  return { kind: 'problem', problems: [message] }
}
