import type { PlannablePlayer } from '#planning/plannable-player'
import type { PlanRules } from '#planning/practice-plan'
import type { SeasonOfPlayer } from '#planning/season-gaps'

/** What a player carries in by the rules of a plan: practices alone, or matches as well. */
export function seasonFor(
  player: Pick<PlannablePlayer, 'season'>,
  rules: Pick<PlanRules, 'countsMatches'>,
): SeasonOfPlayer {
  return rules.countsMatches ? player.season.withMatches : player.season.practice
}
