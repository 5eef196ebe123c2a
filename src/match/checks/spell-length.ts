import type { MatchFault } from '#match/checks/match-fault'
import type { Spell } from '#match/match'

/** Every spell must end after it begins. */
export function checkSpellLength(spells: readonly Spell[]): readonly MatchFault[] {
  return spells.flatMap((own, spell) =>
    own.start < own.end ? [] : [{ rule: 'spellWithoutLength', spell } as const],
  )
}
