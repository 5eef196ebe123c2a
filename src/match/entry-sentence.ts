import { sessionMinute } from '#common/session-minute'
import type { MatchFault } from '#match/checks/match-fault'
import { type LineGrid, spansOfGrid } from '#match/line-grid'
import type { MatchEntryRefusal } from '#match/match-entry'
import type { PlayerId } from '#squad/player'

/** What is wrong with a typed-in match, and what would be right. */
export function matchEntrySentence(
  refusal: MatchEntryRefusal,
  { grid, nameOf }: { readonly grid: LineGrid; readonly nameOf: (playerId: PlayerId) => string },
): string {
  switch (refusal.of) {
    case 'periods':
      return 'The match has no periods. Write at least one, with the minutes it began and ended.'
    case 'register':
      return `${nameOf(refusal.playerId)} is written to come or go at minute ${sessionMinute(refusal.at)}, and the match ends at minute ${sessionMinute(refusal.end)}. Write an earlier minute, or correct the periods.`
    case 'grid': {
      const start = spansOfGrid(grid)[refusal.refusal.span]?.start ?? 0
      if (refusal.refusal.reason === 'nobodyPlays') {
        return `Nobody plays from minute ${sessionMinute(start)}. Copy the time before it, or take that change out.`
      }
      const name = nameOf(refusal.refusal.playerId)
      return `${name} plays from minute ${sessionMinute(start)} but was not there for all of that time. Empty that cell, add a change at the minute ${name} came or left, or correct when ${name} was there.`
    }
    case 'match':
      return faultSentence(refusal.fault)
  }
}

function faultSentence(fault: MatchFault): string {
  switch (fault.rule) {
    case 'periodWithoutLength':
      return `Period ${fault.period + 1} does not end after it begins. Write a later end.`
    case 'periodOutOfOrder':
      return `Period ${fault.period + 1} begins before the one before it has ended (minute ${sessionMinute(fault.lastEnd)}). Make it begin then or later.`
    case 'spellWithoutLength':
    case 'spellOutsidePeriod':
    case 'spellsOverlap':
    case 'spellWhileAway':
      return 'The times in the grid do not fit the periods. Reload the page and type the changes again.'
  }
}
