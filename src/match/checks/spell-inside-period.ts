import type { MatchFault } from '#match/checks/match-fault'
import type { Match } from '#match/match'

/** Every spell lies inside one period. */
export function checkSpellInsidePeriod(match: Pick<Match, 'periods' | 'spells'>): readonly MatchFault[] {
  return match.spells.flatMap((own, spell) =>
    match.periods.some((period) => period.start <= own.start && own.end <= period.end)
      ? []
      : [{ rule: 'spellOutsidePeriod', spell } as const],
  )
}
