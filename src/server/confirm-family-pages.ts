import 'server-only'
import { z } from 'zod'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { andList } from '#common/and-list'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { inClub } from '#data/in-club'
import { type Done, saved } from '#server/action'
import { pageDigest } from '#server/page-digest'
import { loadPagesOfSquad, type PageToConfirm } from '#server/pages-of-squad'
import { savePages } from '#server/save-family-pages'
import { loadSquadSeason } from '#server/squad-season'

const mostChildren = 100

/** Whose pages are confirmed, each with the mark of what was seen. */
export const confirmPagesInput = z.object({
  squadId: z.uuid(),
  seen: z
    .array(z.strictObject({ playerId: z.uuid(), mark: z.string().max(40) }))
    .min(1, 'no page was chosen; reload the page')
    .max(mostChildren, `at most ${mostChildren} pages can be confirmed at once`),
})

/**
 * What a coach has seen becomes what families read, from the next morning on. Where the book says something else by now,
 * nothing is confirmed. @throws AppError `notAllowed` or `notFound`.
 */
export async function confirmPagesOf(
  viewer: Viewer,
  { squadId, seen }: z.infer<typeof confirmPagesInput>,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'confirmFamilyPage', { kind: 'squad', squadId })
    const of = await loadSquadSeason(tx, viewer, { squadId, now })
    const pages = await loadPagesOfSquad(tx, of)
    const marks = new Map(seen.map(({ playerId, mark }) => [playerId, mark]))
    const chosen = pages.filter(({ child }) => marks.has(child.id))
    if (chosen.length < marks.size) return refuse({ path: '', message: notOfSquad })
    const changed = chosen.filter(({ child, page }) => marks.get(child.id) !== pageDigest(page))
    if (changed.length > 0) return refuse({ path: '', message: changedMeanwhile(changed) })
    const by = { personId: viewer.personId, at: now }
    await savePages(tx, { of, pages: chosen, confirmedBy: viewer.name, by })
    const whose = chosen.length === 1 ? 'The page is' : `${chosen.length} pages are`
    return saved(`${whose} confirmed. Families read it from 8:00 tomorrow morning.`)
  })
}

const notOfSquad = 'One of these children is not in this squad any more. Reload the page.'

function changedMeanwhile(changed: readonly PageToConfirm[]): string {
  const names = andList(changed.map(({ child }) => child.name))
  return `The book has changed since you opened this page: ${names}. Nothing was confirmed. Reload the page and look again.`
}
