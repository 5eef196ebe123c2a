import { hasDay } from '#common/dated'
import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { LogBook, LogPlan } from '#exchange/log-entries'
import { planLogPlayers } from '#exchange/log-players'
import { planLogThemes } from '#exchange/log-themes'
import { unkeepableProblems } from '#exchange/log-unkeepable'
import { isTitleTooLong, longestCode, longestTitle } from '#exchange/table/name-cells'
import type { SeasonLog } from '#fairness/season-log'

/**
 * What a season log does to a squad's book. Refused as a whole, with every reason: a session the book has already, a day
 * in no season, a player who cannot be told from another, or whom the book has otherwise.
 */
export function planSeasonLog(log: SeasonLog, book: LogBook): Result<LogPlan, Problem> {
  const players = planLogPlayers(log, book.players)
  const themes = planLogThemes(log, book.themes)
  const problems = [
    ...players.problems,
    ...themes.problems,
    ...sessionProblems(log, book),
    ...unkeepableProblems(log),
  ]
  if (problems.length > 0) return { ok: false, reasons: problems }
  return accept({ players: players.planned, themes: themes.planned })
}

function sessionProblems(log: SeasonLog, book: LogBook): readonly Problem[] {
  const taken = new Set(book.sessions.flatMap(({ id, code }) => (code === null ? [id] : [id, code])))
  const sessions = [
    ...log.practices.map((one, index) => ({ ...one, path: `practices[${index}]` })),
    ...log.matches.map((one, index) => ({ ...one, title: null, path: `matches[${index}]` })),
  ]
  return sessions.flatMap(({ id, day, title, path }) => {
    const problems: Problem[] = []
    if (taken.has(id)) {
      const message = `${JSON.stringify(id)} of ${day} is in the squad's book already; a log without it would be right`
      problems.push({ path: `${path}.id`, message })
    }
    if (id === '' || [...id].length > longestCode) {
      problems.push({
        path: `${path}.id`,
        message: `has ${[...id].length} characters; 1 to ${longestCode} would be right`,
      })
    }
    if (title !== null && isTitleTooLong(title)) {
      problems.push({
        path: `${path}.title`,
        message: `has more than ${longestTitle} characters; a shorter one would be right`,
      })
    }
    if (!book.seasons.some((season) => hasDay(season, day))) {
      problems.push({
        path: `${path}.date`,
        message: `${day} is in no season of the club; a day inside one would be right`,
      })
    }
    return problems
  })
}
