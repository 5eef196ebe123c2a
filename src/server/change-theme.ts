import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { changeTheme, listThemes, recordThemes, type StoredTheme } from '#data/themes'
import { nameKey } from '#exchange/table/name-form'
import { type Done, saved } from '#server/action'
import type { MoveThemeInput, NewThemeInput, ThemeInput } from '#server/theme-input'
import { moveTheme, orderAfterLast, themesUnder } from '#themes/move-theme'
import type { ThemeId } from '#themes/theme'
import { themeAndBelow } from '#themes/theme-lines'

type Answer = Promise<Result<Done, Problem>>

/** A theme more, after the others under its parent. It is the club's, for every squad. @throws AppError `notAllowed`. */
export async function addThemeOf(
  viewer: Viewer,
  { squadId, ...theme }: NewThemeInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const themes = await listThemes(tx)
    const problems = problemsOfTheme({ id: null, ...theme }, themes)
    if (problems.length > 0) return refuse(...problems)
    const id = newId()
    const order = orderAfterLast(themes, theme.parentId)
    await recordThemes(tx, [{ id, ...theme, order, code: null }])
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { action: 'addTheme', objectKind: 'theme', objectId: id, by })
    return saved(`Added: ${theme.name}.`)
  })
}

/** A theme's name, what it asks for and what it stands under. @throws AppError `notAllowed` or `notFound`. */
export async function changeThemeOf(
  viewer: Viewer,
  { squadId, themeId, ...wanted }: ThemeInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const themes = await listThemes(tx)
    const held = getTheme(themes, themeId)
    const problems = problemsOfTheme({ id: themeId, ...wanted }, themes)
    if (problems.length > 0) return refuse(...problems)
    const isMoved = held.parentId !== wanted.parentId
    const order = isMoved ? orderAfterLast(themes, wanted.parentId) : held.order
    await changeTheme(tx, themeId, { ...wanted, order })
    const by = { personId: viewer.personId, at: now }
    const detail = { parentId: wanted.parentId, isMoved }
    await recordAudit(tx, { action: 'changeTheme', objectKind: 'theme', objectId: themeId, detail, by })
    return saved('Saved.')
  })
}

/** One step up or down among the themes beside it. @throws AppError `notAllowed` or `notFound`. */
export async function moveThemeOf(
  viewer: Viewer,
  { squadId, themeId, step }: MoveThemeInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const themes = await listThemes(tx)
    const { name } = getTheme(themes, themeId)
    const placed = moveTheme(themes, { themeId, step })
    if (placed.length === 0)
      return refuse({
        path: '',
        message: `${name} is the ${step === 'up' ? 'first' : 'last'} there already.`,
      })
    for (const { id, order } of placed) await changeTheme(tx, id, { order })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, {
      action: 'moveTheme',
      objectKind: 'theme',
      objectId: themeId,
      detail: { step },
      by,
    })
    return saved(`${name} stands one place ${step === 'up' ? 'higher' : 'lower'}.`)
  })
}

/** @throws AppError `notFound`. */
export function getTheme(themes: readonly StoredTheme[], themeId: ThemeId): StoredTheme {
  const theme = themes.find(({ id }) => id === themeId)
  if (!theme) throw new AppError('notFound', `no theme ${themeId}`)
  return theme
}

/** Why a theme cannot be called this, or stand there. `id` null: a new one. */
export function problemsOfTheme(
  { id, name, parentId }: { readonly id: ThemeId | null } & Pick<StoredTheme, 'name' | 'parentId'>,
  themes: readonly StoredTheme[],
): readonly Problem[] {
  const parent = themes.find((theme) => theme.id === parentId)
  if (parentId !== null && !parent)
    return [{ path: 'parentId', message: 'is no longer there; choose another, or none' }]
  if (id !== null && parentId !== null && themeAndBelow(themes, id).has(parentId))
    return [
      {
        path: 'parentId',
        message: `${parent?.name} is the theme itself or stands under it; choose one that does not`,
      },
    ]
  const same = themesUnder(themes, parentId).find(
    (theme) => theme.id !== id && nameKey(theme.name) === nameKey(name),
  )
  if (!same) return []
  const where = parent ? `under ${parent.name}` : 'at the top'
  return [{ path: 'name', message: `there is a theme ${same.name} ${where} already; choose another name` }]
}
