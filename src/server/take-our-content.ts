import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { groupBy } from '#common/group-by'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { lockClub } from '#data/clubs'
import { listEveryDesign, recordDesigns } from '#data/designs'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listMatchFormats, recordMatchFormats } from '#data/match-formats'
import { saveThemeDesigns } from '#data/theme-designs'
import { listThemes, recordThemes } from '#data/themes'
import { nameKey } from '#exchange/table/name-form'
import { designsThatServe } from '#practice/our-designs/designs-that-serve'
import { ourDesigns } from '#practice/our-designs/our-designs'
import { type Done, saved } from '#server/action'
import { publishedFormats } from '#server/published-formats'
import { ourThemes } from '#themes/our-themes'

/** Only a club with no theme and no design of its own is offered ours: they are to begin with, not to be mixed in. */
export async function canTakeOurContent(tx: ClubTx): Promise<boolean> {
  return (await listThemes(tx)).length === 0 && (await listEveryDesign(tx)).length === 0
}

/** Ours, but those that the club has taken over, or has something else by the name of. */
async function formatsToTake(tx: ClubTx) {
  const held = await listMatchFormats(tx)
  const names = new Set(held.map(({ format }) => nameKey(format.name)))
  const taken = new Set(held.map(({ takenFrom }) => takenFrom))
  return publishedFormats.formats
    .filter(
      ({ key, format }) => format.source === null && !taken.has(key) && !names.has(nameKey(format.name)),
    )
    .map(({ key, format }) => ({ id: newId(), format, takenFrom: key }))
}

/** Our own themes, practice designs and match formats become the club's, once. @throws AppError `notAllowed`. */
export async function takeOurContentOf(viewer: Viewer, now = new Date()): Promise<Result<Done, Problem>> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    await lockClub(tx)
    if (!(await canTakeOurContent(tx)))
      return refuse({ path: '', message: 'This club has themes or designs already, and nothing was added.' })
    const themeIds = new Map<string, string>(ourThemes.map(({ id }) => [id, newId()]))
    const idOf = (key: string) => themeIds.get(key) ?? null
    await recordThemes(
      tx,
      ourThemes.map(({ id, parentId, ...theme }) => ({
        ...theme,
        id: idOf(id) ?? newId(),
        parentId: parentId && idOf(parentId),
        code: null,
      })),
    )
    const designIds = new Map(ourDesigns.map(({ id }) => [id, newId()]))
    await recordDesigns(
      tx,
      ourDesigns.map((design) => ({
        ...design,
        id: designIds.get(design.id) ?? newId(),
        themeId: idOf(design.themeId),
      })),
    )
    for (const [key, pairs] of groupBy(designsThatServe, ({ themeId }) => themeId))
      await saveThemeDesigns(tx, {
        themeId: idOf(key) ?? '',
        designIds: pairs.flatMap(({ designId }) => designIds.get(designId) ?? []),
      })
    const formats = await formatsToTake(tx)
    await recordMatchFormats(tx, formats)
    const by = { personId: viewer.personId, at: now }
    const detail = { themes: ourThemes.length, designs: ourDesigns.length, formats: formats.length }
    await recordAudit(tx, {
      action: 'takeOurContent',
      objectKind: 'club',
      objectId: viewer.clubId,
      detail,
      by,
    })
    return saved(
      `Added: ${ourThemes.length} themes, ${ourDesigns.length} practice designs and ${formats.length} match formats. They are the club’s now: change them as you like.`,
    )
  })
}
