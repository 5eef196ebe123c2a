import 'server-only'
import type { Problem } from '#common/problem'
import type { NewSession, Session } from '#data/sessions'
import type { Period } from '#match/match'
import type { ChangeSessionInput, NewSessionInput } from '#server/session-input'
import type { Season } from '#squad/squad'

type Known = {
  /** The season of the day asked for. */
  readonly season: Season | null
  readonly leaderIds: readonly string[]
  readonly designIds: readonly string[]
  /** Those of that day and kind, without cancelled ones. */
  readonly ofDay: readonly Pick<Session, 'title' | 'startsAt'>[]
}

/** Why a session cannot be entered. */
export function problemsOfNewSession(input: NewSessionInput, known: Known): readonly Problem[] {
  const problems: Problem[] = []
  if (!known.season) {
    problems.push({
      path: 'day',
      message: 'No season of the club has this day. Choose a day inside a season.',
    })
  }
  if (input.ledById && !known.leaderIds.includes(input.ledById)) {
    problems.push({
      path: 'ledById',
      message: 'This person neither coaches nor covers the squad. Choose somebody of the list.',
    })
  }
  if (input.designId && !known.designIds.includes(input.designId)) {
    problems.push({
      path: 'designId',
      message: 'This design is no longer there. Choose one of the list, or none.',
    })
  }
  // A form that was sent twice, most often.
  return [...problems, ...doubled(input, known.ofDay)]
}

function doubled(
  { kind, title, startsAt }: Pick<Session, 'kind' | 'title' | 'startsAt'>,
  ofDay: Known['ofDay'],
): readonly Problem[] {
  if (!ofDay.some((other) => other.title === title && other.startsAt === startsAt)) return []
  const message = `There is this ${kind} on this day already. Open it in the list; a second one needs another title or time.`
  return [{ path: 'title', message }]
}

/** Why day, title, time and place of a session cannot be changed to these. `others`: of the day and kind, without itself. */
export function problemsOfChangedSession(
  input: ChangeSessionInput,
  known: {
    readonly session: Session
    readonly isInSeason: boolean
    readonly hasTaps: boolean
    readonly others: Known['ofDay']
  },
): readonly Problem[] {
  const { session, isInSeason, hasTaps, others } = known
  if (session.isCancelled)
    return [{ path: '', message: 'This was cancelled. Enter a new one if it is held after all.' }]
  const isMoved = input.day !== session.day
  if (isMoved && (session.written !== 'notWritten' || hasTaps)) {
    const message = `This ${session.kind} is written down, or was tapped, on its day: the day stays. Enter another one for the other day.`
    return [{ path: 'day', message }]
  }
  if (isMoved && !isInSeason)
    return [
      { path: 'day', message: 'The season of this squad does not have this day. Choose a day inside it.' },
    ]
  return doubled({ ...input, kind: session.kind }, others)
}

/** The session a form asks for. */
export function newSessionOf(
  input: NewSessionInput,
  by: { readonly id: string; readonly personId: string },
): NewSession {
  const isPractice = input.kind === 'practice'
  return {
    id: by.id,
    squadId: input.squadId,
    kind: input.kind,
    day: input.day,
    title: input.title,
    startsAt: input.startsAt,
    place: input.place,
    lengthSeconds: isPractice && input.lengthMinutes ? input.lengthMinutes * 60 : null,
    periods: isPractice ? null : periodsOf(input),
    designId: isPractice ? input.designId : null,
    ledById: input.ledById ?? by.personId,
    code: null,
  }
}

/** Periods of one length with breaks between them; two of twenty-five minutes unless something else was written. */
function periodsOf(input: NewSessionInput): readonly Period[] {
  const { periodCount, periodMinutes, breakMinutes } = input
  const length = (periodMinutes ?? 25) * 60
  const step = length + (breakMinutes ?? 5) * 60
  return Array.from({ length: periodCount ?? 2 }, (_, index) => ({
    start: index * step,
    end: index * step + length,
  }))
}
