import { sessionMinute } from '#common/session-minute'
import type { PracticeFault } from '#practice/checks/practice-fault'
import { gridSentence, type SentenceParts } from '#practice/grid-refusal'
import type { EntryRefusal } from '#practice/practice-entry'

/** What is wrong with a typed-in practice, and what would be right. */
export function entrySentence(refusal: EntryRefusal, parts: SentenceParts): string {
  switch (refusal.of) {
    case 'grid':
      return gridSentence(refusal.refusal, parts)
    case 'register':
      return `${parts.nameOf(refusal.playerId)} is written to come or go at minute ${sessionMinute(refusal.at)}, and the practice ends at minute ${sessionMinute(refusal.end)}. Write an earlier minute, or make the practice longer.`
    case 'practice':
      return `${parts.columnTitle(refusal.column)}: ${faultSentence(refusal.fault, parts)}`
  }
}

function faultSentence(fault: PracticeFault, { nameOf }: SentenceParts): string {
  switch (fault.rule) {
    case 'turnAfterEnd':
      return `it goes on after minute ${sessionMinute(fault.lengthSeconds)}, where the practice ends. Make the practice longer, or the turns fewer or shorter.`
    case 'turnOutOfOrder':
      return `it begins before what is in front of it has ended (minute ${sessionMinute(fault.lastEnd)}). Make it start then or later.`
    case 'turnWithoutLength':
      return 'its turns have no length. Write how many seconds one lasts.'
    case 'seatedTwice':
      return `${nameOf(fault.playerId)} has two places in one turn. Leave one.`
    case 'seatedWhileAway':
      return `${nameOf(fault.playerId)} has a place but was not there for all of the turn. Empty that cell, or correct when ${nameOf(fault.playerId)} was there.`
  }
}
