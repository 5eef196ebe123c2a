import type {
  CalendarChange,
  CalendarNote,
  CalendarOutcome,
  CalendarQuestion,
  KnownCalendarSession,
} from '#exchange/calendar/calendar-plan'
import {
  leaveOut,
  type Saying,
  type SayingChoice,
  say,
  sayLeftOut,
  sayPassedOver,
  sayWrong,
} from '#exchange/saying'
import { sayGoals } from '#match/goals'

/** What a row of a calendar will do, for the person who imports it. */
export function sayCalendarOutcome(outcome: CalendarOutcome): Saying {
  switch (outcome.kind) {
    case 'new': {
      const { entry, notes } = outcome
      const goals =
        entry.goals && !notes.includes('goalsNotCounted') ? [`${sayGoals(entry.goals)} with ours first`] : []
      const parts = [nameOf(entry), entry.place, ...goals].filter(Boolean)
      return say('new', sentences(`New ${parts.join(', ')}.`, notes), [leaveOut])
    }
    case 'known': {
      const { session, change, notes } = outcome
      const told = changesOf(change)
      if (told.length === 0)
        return say('same', sentences(`${named(session)}, as the book has it.`, notes), [leaveOut])
      return say('change', sentences(`${named(session)}: ${told.join('; ')}.`, notes), [leaveOut])
    }
    case 'doubled':
      return say('passed', `The same as line ${outcome.line}; counted once.`)
    case 'question':
      return say('ask', questions[outcome.why], choicesOf(outcome.why, outcome.candidates))
    case 'problem':
      return sayWrong(outcome.problems)
    case 'passedOver':
      return sayPassedOver(outcome.why)
    case 'leftOut':
      return sayLeftOut
  }
}

type Named = Pick<KnownCalendarSession, 'kind' | 'title' | 'day' | 'startsAt'>

function nameOf({ kind, title, day, startsAt }: Named): string {
  return [title === '' ? kind : `${kind} “${title}”`, `on ${day}`, startsAt ? `at ${startsAt}` : '']
    .filter(Boolean)
    .join(' ')
}

function named(session: Named): string {
  const name = nameOf(session)
  return name.charAt(0).toUpperCase() + name.slice(1)
}

function changesOf(change: CalendarChange): readonly string[] {
  const { day, title, startsAt, place, lengthSeconds, goals } = change
  return [
    ...(day === undefined ? [] : [`moves to ${day}`]),
    ...(title === undefined ? [] : [`title “${title}”`]),
    ...(startsAt ? [`at ${startsAt}`] : []),
    ...(place === undefined ? [] : [`place ${place}`]),
    ...(lengthSeconds ? [`${lengthSeconds / 60} minutes`] : []),
    ...(goals ? [`${sayGoals(goals)}, ours first`] : []),
  ]
}

function sentences(said: string, notes: readonly CalendarNote[]): string {
  return [said, ...notes.map((note) => noteSentences[note])].join(' ')
}

const noteSentences: Readonly<Record<CalendarNote, string>> = {
  goalsNotCounted: 'The result is left out: the club does not count goals.',
  otherTitle: 'The book has another title, which stays.',
}

const questions: Readonly<Record<CalendarQuestion, string>> = {
  perhapsSame: 'The book has one of the kind on that day under another title. Is it the same?',
  oneForTwoRows: 'More than one row of the file speaks of this one in the book. Is it this row?',
  cancelled: 'The book has this one as cancelled. Is it held after all?',
}

function choicesOf(
  why: CalendarQuestion,
  candidates: readonly KnownCalendarSession[],
): readonly SayingChoice[] {
  const known = candidates.map((session) => ({ value: session.id, label: `It is the ${nameOf(session)}` }))
  const another = {
    value: 'new',
    label: why === 'cancelled' ? 'Yes: enter it anew' : 'It is another one: enter it',
  }
  return [...known, another, leaveOut]
}
