import { readSeasonLog } from '#exchange/season-log'
import type { SeasonLog } from '#fairness/season-log'
import { randomSeason, type SeasonSize } from './random-season'
import type { SeasonJson } from './season-json'

/** A season read the way the command reads it. Throws with every problem when it is refused. */
export function seasonLogOf(season: SeasonJson): SeasonLog {
  const log = readSeasonLog(JSON.parse(JSON.stringify(season)))
  if (!log.ok) throw new Error(log.reasons.map(({ path, message }) => `${path}: ${message}`).join('\n'))
  return log.value
}

/** A season by chance as the trade's own types: practices, matches, players. The same seed gives the same season. */
export function randomSeasonLog(seed: number, size?: SeasonSize): SeasonLog {
  return seasonLogOf(randomSeason(seed, size))
}
