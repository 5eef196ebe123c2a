import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { isoWeeksBetween } from '#common/weeks'
import { recordAudit } from '#data/audit'
import { lockClub } from '#data/clubs'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listProgrammeBlocks, saveProgrammeBlocks } from '#data/programme-blocks'
import { listProgrammeRules, saveProgrammeRules } from '#data/programme-rules'
import { listThemes, recordThemes, type StoredTheme } from '#data/themes'
import { nameKey } from '#exchange/table/name-form'
import { type Done, saved } from '#server/action'
import { openTerm } from '#server/open-term'
import type { TakeProgrammeInput } from '#server/programme-input'
import { blocksInTerm, rulesInTerm } from '#themes/fit-to-term'
import { orderAfterLast } from '#themes/move-theme'
import { type OurProgramme, ourProgrammes } from '#themes/our-programmes'
import { ourThemes, type ThemeKey } from '#themes/our-themes'
import type { ProgrammeBlock, ProgrammeRule } from '#themes/programme-rule'

/**
 * A programme of ours, or of another squad or term, in the place of what a squad wished for in a term: its parts, its rules
 * and its blocks. @throws AppError `notAllowed` or `notFound`.
 */
export async function takeProgrammeOf(
  viewer: Viewer,
  { squadId, termId, from }: TakeProgrammeInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  if (from.kind === 'squad') demand(viewer, 'seeSquad', { kind: 'squad', squadId: from.squadId })
  return inClub(viewer.clubId, async (tx) => {
    // Themes may be added: two squads that begin at once must not add them twice.
    await lockClub(tx)
    const term = await openTerm(tx, { squadId, termId, now })
    if (!term.ok) return term
    const found = from.kind === 'ours' ? await takeOurs(tx, from.key) : await readOf(tx, from)
    if (!found || found.rules.length === 0)
      return refuse({ path: 'from', message: 'has no programme; choose another one of the list' })
    const weeks = isoWeeksBetween(term.value).length
    await saveProgrammeRules(tx, { squadId, termId, rules: rulesInTerm(found.rules, weeks) })
    await saveProgrammeBlocks(tx, { squadId, termId, blocks: blocksInTerm(found.blocks, weeks) })
    const by = { personId: viewer.personId, at: now }
    const detail = { termId, what: 'copy', themes: found.rules.length, newThemes: found.added.length }
    await recordAudit(tx, { action: 'changeProgramme', objectKind: 'squad', objectId: squadId, detail, by })
    const added = found.added.length > 0 ? ` Added to the club’s themes: ${found.added.join(', ')}.` : ''
    return saved(`${term.value.name} has this programme now. Change it as you like.${added}`)
  })
}

type Found = {
  readonly rules: readonly ProgrammeRule[]
  readonly blocks: readonly ProgrammeBlock[]
  /** Names of themes that the club did not have. */
  readonly added: readonly string[]
}

async function readOf(tx: ClubTx, at: { readonly squadId: string; readonly termId: string }): Promise<Found> {
  return { rules: await listProgrammeRules(tx, at), blocks: await listProgrammeBlocks(tx, at), added: [] }
}

async function takeOurs(tx: ClubTx, key: string): Promise<Found | null> {
  const ours = ourProgrammes.find((one) => one.key === key)
  if (!ours) return null
  const { idOf, added } = await themesFor(tx, ours)
  const rules = ours.rules.map((rule) => ({
    ...rule,
    themeId: idOf(rule.themeId),
    afterThemeId: rule.afterThemeId && idOf(rule.afterThemeId),
  }))
  return { rules, blocks: [], added }
}

/** The club's own themes by our names; those it has not, and what they stand under, are added. */
async function themesFor(tx: ClubTx, { rules }: OurProgramme) {
  const held: StoredTheme[] = [...(await listThemes(tx))]
  const ids = new Map<ThemeKey, string>()
  const added: string[] = []
  const idOf = (key: ThemeKey) => ids.get(key) ?? ''
  const wanted = new Set<string>(
    rules.flatMap(({ themeId }) => [
      themeId,
      ...ourThemes.flatMap(({ id, parentId }) => (id === themeId && parentId ? [parentId] : [])),
    ]),
  )
  // Parents stand before their children.
  for (const { id: key, parentId, name, asks, focus } of ourThemes.filter(({ id }) => wanted.has(id))) {
    const same = held.find((theme) => nameKey(theme.name) === nameKey(name))
    const id = same?.id ?? newId()
    ids.set(key, id)
    if (same) continue
    const parent = parentId && idOf(parentId)
    const theme = { id, name, asks, focus, parentId: parent, order: orderAfterLast(held, parent), code: null }
    await recordThemes(tx, [theme])
    held.push(theme)
    added.push(name)
  }
  return { idOf, added }
}
