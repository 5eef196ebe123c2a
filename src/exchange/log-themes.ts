import { leadsBack } from '#common/line-from'
import type { Problem } from '#common/problem'
import type { LogBook, LogTheme } from '#exchange/log-entries'
import { longestCode, longestName } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import type { LoggedTheme, SeasonLog } from '#fairness/season-log'

type Planned = { readonly planned: readonly LogTheme[]; readonly problems: readonly Problem[] }

/**
 * What the themes of a log are. Two squads' files may use one code for two themes, so a code counts only when no other
 * name stands with it; then comes the name. A theme that only a turn mentions is called what its id is.
 */
export function planLogThemes(log: SeasonLog, known: LogBook['themes']): Planned {
  const listed = new Set(log.themes.map(({ id }) => id))
  const mentioned = new Set(log.practices.flatMap(({ turns }) => turns.map(({ themeId }) => themeId)))
  const bare = [...mentioned].filter((id) => id !== null && !listed.has(id))
  const all = [...log.themes, ...bare.map((id) => ({ id: id as string, name: null, parentId: null }))]
  const problems: Problem[] = []
  const planned = all.map((logged, index): LogTheme => {
    const found = findTheme(logged, known)
    if (found) return { kind: 'known', code: logged.id, themeId: found.id }
    const name = tidyName(logged.name ?? logged.id)
    const lengths = [name, logged.id].map((text) => [...text].length)
    if (
      lengths.some((length) => length === 0) ||
      (lengths[0] ?? 0) > longestName ||
      (lengths[1] ?? 0) > longestCode
    ) {
      const message = `its name or id is empty or too long; a name of 1 to ${longestName} characters would be right`
      problems.push({
        path: index < log.themes.length ? `themes[${index}]` : `theme ${JSON.stringify(logged.id)}`,
        message,
      })
    }
    return { kind: 'new', code: logged.id, name, parentCode: logged.parentId }
  })
  return { planned, problems: [...problems, ...circleProblems(log.themes)] }
}

function findTheme(logged: LoggedTheme, known: LogBook['themes']): LogBook['themes'][number] | undefined {
  const name = logged.name === null ? null : tidyName(logged.name)
  const fits = (theme: LogBook['themes'][number]) => name === null || theme.name === name
  return (
    known.find((theme) => theme.id === logged.id) ??
    known.find((theme) => theme.code === logged.id && fits(theme)) ??
    (name === null ? undefined : known.find((theme) => theme.name === name))
  )
}

/** A theme that stands, step by step, under itself could not be kept. */
function circleProblems(themes: readonly LoggedTheme[]): readonly Problem[] {
  const parentOf = new Map(themes.map(({ id, parentId }) => [id, parentId]))
  return themes.flatMap(({ id }, index) =>
    leadsBack(id, (own) => parentOf.get(own) ?? null)
      ? [
          {
            path: `themes[${index}].parent`,
            message: 'leads back to the theme itself; another parent, or null, would be right',
          },
        ]
      : [],
  )
}
