import type { Problem } from '#common/problem'
import type { SeasonLog } from '#fairness/season-log'

// The book keeps seconds and texts as PostgreSQL does: whole numbers of four bytes, no NUL and no half characters. Its
// manual, chapter 8, numeric and character types.
const mostSeconds = 2_147_483_647
const mostAreas = 1000
const unkeepableText = /\0|\p{Cs}/u

/** What a log may say, and the book cannot keep. */
export function unkeepableProblems(log: SeasonLog): readonly Problem[] {
  return [
    ...log.players.flatMap(({ id, name }, at) => textProblems([id, name], `players[${at}]`)),
    ...log.themes.flatMap(({ id, name }, at) => textProblems([id, name], `themes[${at}]`)),
    ...log.practices.flatMap(({ id, title, lengthSeconds, register, turns }, at) => [
      ...textProblems([id, title, ...turns.map(({ themeId }) => themeId)], `practices[${at}]`),
      ...timeProblems(
        [lengthSeconds ?? 0, ...register.map(({ to }) => to), ...turns.map(({ end }) => end)],
        `practices[${at}]`,
      ),
      ...turns.flatMap(({ stations }, turn) =>
        areaProblems(stations.length, `practices[${at}].turns[${turn}]`),
      ),
    ]),
    ...log.matches.flatMap(({ id, periods, register, spells }, at) => [
      ...textProblems([id], `matches[${at}]`),
      ...timeProblems(
        [...periods.map(({ end }) => end), ...register.map(({ to }) => to), ...spells.map(({ end }) => end)],
        `matches[${at}]`,
      ),
    ]),
  ]
}

function textProblems(texts: readonly (string | null)[], path: string): readonly Problem[] {
  if (!texts.some((text) => text !== null && unkeepableText.test(text))) return []
  return [
    {
      path,
      message: 'has a zero or half a character in one of its texts; a text without them would be right',
    },
  ]
}

function timeProblems(seconds: readonly number[], path: string): readonly Problem[] {
  const most = seconds.reduce((a, b) => Math.max(a, b), 0)
  if (most <= mostSeconds) return []
  return [{ path, message: `goes on to second ${most}; ${mostSeconds} at most would be right` }]
}

function areaProblems(count: number, path: string): readonly Problem[] {
  return count <= mostAreas
    ? []
    : [{ path: `${path}.stations`, message: `are ${count}; ${mostAreas} at most would be right` }]
}
