import { findOverlaps } from '#common/overlap'
import type { MatchFault } from '#match/checks/match-fault'
import type { Spell } from '#match/match'

/** Spells of one player must not overlap; they may touch. */
export function checkSpellOverlap(spells: readonly Spell[]): readonly MatchFault[] {
  return findOverlaps(spells.map(({ playerId, start, end }) => ({ of: playerId, from: start, to: end }))).map(
    ({ later, earlier }) => ({ rule: 'spellsOverlap', spell: later, other: earlier }),
  )
}
