import { candidateChoices, matchSentence } from '#exchange/players/say-player'
import type {
  MemberDays,
  PlayerChange,
  PlayerNote,
  RosterOutcome,
  RosterQuestion,
} from '#exchange/roster/roster-plan'
import { leaveOut, type Saying, say, sayLeftOut, sayPassedOver, sayWrong } from '#exchange/saying'

const somebodyNew = { value: 'new', label: 'It is a new player' }

/** What a row of a roster will do, for the person who imports it. `nameOf`: the book's name of a player. */
export function sayRosterOutcome(outcome: RosterOutcome, nameOf: (playerId: string) => string): Saying {
  switch (outcome.kind) {
    case 'new':
      return say(
        'new',
        `New player: ${outcome.entry.name}, ${sayDays(outcome.days)}.${sayKeeping(outcome)}`,
        [leaveOut],
      )
    case 'again':
      return say('change', `The player of line ${outcome.line} again, ${sayDays(outcome.days)}.`, [leaveOut])
    case 'known':
      return sayKnown(outcome, nameOf(outcome.playerId))
    case 'doubled':
      return say('passed', `The same player as line ${outcome.line}; counted once.`)
    case 'question':
      return sayQuestion(outcome.question)
    case 'problem':
      return sayWrong(outcome.problems)
    case 'passedOver':
      return sayPassedOver(outcome.why)
    case 'leftOut':
      return sayLeftOut
  }
}

function sayDays({ firstDay, lastDay }: MemberDays): string {
  return lastDay === null ? `member from ${firstDay}` : `member from ${firstDay} to ${lastDay}`
}

function sayKeeping({ entry }: Extract<RosterOutcome, { kind: 'new' }>): string {
  return `${entry.keeps === false ? ' Not in goal.' : ''}${entry.wantsToKeep === true ? ' Wants to keep goal.' : ''}`
}

function sayKnown({ changes, notes }: Extract<RosterOutcome, { kind: 'known' }>, name: string): Saying {
  const told = notes.map((note) => noteSentences[note]).join(' ')
  if (changes.length === 0)
    return say('same', told === '' ? `${name}, as the book has it.` : `${name} is in the book. ${told}`, [
      leaveOut,
    ])
  return say('change', `${name}: ${changes.map(sayChange).join('; ')}. ${told}`.trim(), [leaveOut])
}

function sayChange(change: PlayerChange): string {
  switch (change.kind) {
    case 'joins':
      return sayDays(change.days)
    case 'ends':
      return `last day ${change.lastDay}`
    case 'keeps':
      return change.to ? 'may keep goal from now on' : 'not in goal from now on'
    case 'wantsToKeep':
      return change.to ? 'wants to keep goal' : 'no longer wants to keep goal'
  }
}

const noteSentences: Readonly<Record<PlayerNote, string>> = {
  otherFirstDay: 'The book has another first day, which stays.',
  otherLastDay: 'The book has another last day, which stays.',
  leftBefore: 'The player has left; give a first day in the file for a new start.',
}

function sayQuestion(question: RosterQuestion): Saying {
  if (question.why === 'sameNameTwice') {
    const same = { value: 'leaveOut', label: `It is the player of line ${question.line}: leave this row out` }
    return say('ask', `The name of line ${question.line} again, with other details. Is it the same player?`, [
      somebodyNew,
      same,
    ])
  }
  const choices = [...candidateChoices(question.candidates), somebodyNew, leaveOut]
  if (question.why === 'oneForTwoRows') {
    return say(
      'ask',
      'More than one row of the file has this name, and the book has one player. Who is it?',
      choices,
    )
  }
  return say('ask', matchSentence(question.why, question.candidates), choices)
}
