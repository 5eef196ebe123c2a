import type { PlanRules } from '#planning/practice-plan'
import type { SeasonOfPlayer } from '#planning/season-gaps'
import type { PlanningPlayer } from '#ui/planning/planning-types'

/** What a player carries in by the rules of a plan: practices alone, or matches as well. */
export function seasonFor(
  player: Pick<PlanningPlayer, 'season'>,
  rules: Pick<PlanRules, 'countsMatches'>,
): SeasonOfPlayer {
  return rules.countsMatches ? player.season.withMatches : player.season.practice
}
