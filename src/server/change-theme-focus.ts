import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { lockClub } from '#data/clubs'
import { listEveryDesign } from '#data/designs'
import { inClub } from '#data/in-club'
import { saveThemeDesigns } from '#data/theme-designs'
import { changeTheme, listThemes } from '#data/themes'
import { type Done, saved } from '#server/action'
import { getTheme } from '#server/change-theme'
import type { ThemeFocusInput } from '#server/programme-input'

/**
 * What a theme is about, and which designs serve it besides those that are about it. The club's, for every squad.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function changeThemeFocusOf(
  viewer: Viewer,
  { squadId, themeId, roles, situations, designIds }: ThemeFocusInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    await lockClub(tx)
    const theme = getTheme(await listThemes(tx), themeId)
    const designs = new Map((await listEveryDesign(tx)).map((design) => [design.id, design]))
    if (designIds.some((id) => !designs.has(id)))
      return refuse({ path: '', message: 'One of these designs is no longer there. Reload the page.' })
    await changeTheme(tx, themeId, { focus: { roles, situations } })
    const serving = designIds.filter((id) => designs.get(id)?.themeId !== themeId)
    await saveThemeDesigns(tx, { themeId, designIds: serving })
    const by = { personId: viewer.personId, at: now }
    const detail = { what: 'focus', designs: serving.length }
    await recordAudit(tx, { action: 'changeTheme', objectKind: 'theme', objectId: themeId, detail, by })
    return saved(`Saved what ${theme.name} is about.`)
  })
}
