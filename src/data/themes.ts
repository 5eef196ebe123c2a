import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { listProgrammeRules, saveProgrammeRules } from '#data/programme-rules'
import { couldBeThere, type SquadTerm } from '#data/squad-term'
import { themeFocusShape } from '#exchange/theme-focus-json'
import type { SquadId, TermId } from '#squad/squad'
import { noRule } from '#themes/programme-rule'
import type { ProgrammeEntry, Theme, ThemeId } from '#themes/theme'
import { noFocus, type ThemeFocus } from '#themes/theme-focus'

/** `asks`: what the theme asks for, in a sentence for coaches. `code`: its key in the file it was imported from. */
export type StoredTheme = Theme & {
  readonly asks: string
  readonly focus: ThemeFocus
  readonly code: string | null
}

/** Every theme of the club, by place among its siblings; the tree is in `parentId`. */
export async function listThemes(tx: ClubTx): Promise<readonly StoredTheme[]> {
  const rows = await tx.db.theme.findMany({
    where: { clubId: tx.clubId },
    select: { id: true, name: true, parentId: true, order: true, asks: true, focus: true, code: true },
    orderBy: [{ order: 'asc' }, { name: 'asc' }, { id: 'asc' }],
  })
  return rows.map((row) => ({ ...row, focus: themeFocusShape.parse(row.focus) }))
}

/** A theme without a focus is about anything. */
export type NewTheme = Omit<StoredTheme, 'focus'> & { readonly focus?: ThemeFocus }

/** Parents may stand anywhere in the list. */
export async function recordThemes(tx: ClubTx, themes: readonly NewTheme[]): Promise<void> {
  await tx.db.theme.createMany({
    data: themes.map(({ id, name, parentId, order, asks, focus = noFocus, code }) => ({
      clubId: tx.clubId,
      id,
      name,
      parentId,
      order,
      asks,
      focus: structuredClone(focus) as object,
      code,
    })),
  })
}

/** The database refuses a theme under one of its own. */
export async function changeTheme(
  tx: ClubTx,
  themeId: ThemeId,
  change: Partial<Pick<StoredTheme, 'name' | 'parentId' | 'order' | 'asks' | 'focus'>>,
): Promise<void> {
  const { name, parentId, order, asks, focus } = change
  await tx.db.theme.update({
    where: { clubId_id: { clubId: tx.clubId, id: themeId } },
    data: { name, parentId, order, asks, focus: focus && (structuredClone(focus) as object) },
    select: { id: true },
  })
}

/** What a squad's programme wishes for a term, by the themes' own order. */
export async function listProgramme(tx: ClubTx, at: SquadTerm): Promise<readonly ProgrammeEntry[]> {
  if (!couldBeThere(at)) return []
  return tx.db.programmeEntry.findMany({
    where: { clubId: tx.clubId, squadId: at.squadId, termId: at.termId },
    select: { themeId: true, wishedShare: true },
    orderBy: [{ theme: { order: 'asc' } }, { theme: { name: 'asc' } }, { themeId: 'asc' }],
  })
}

/** The programmes of squads in a term, as `listProgramme` has each; squads without one are left out. */
export async function listProgrammes(
  tx: ClubTx,
  at: { readonly squadIds: readonly SquadId[]; readonly termId: TermId },
): Promise<ReadonlyMap<SquadId, readonly ProgrammeEntry[]>> {
  if (!isId(at.termId)) return new Map()
  const rows = await tx.db.programmeEntry.findMany({
    where: { clubId: tx.clubId, squadId: { in: at.squadIds.filter(isId) }, termId: at.termId },
    select: { squadId: true, themeId: true, wishedShare: true },
    orderBy: [{ theme: { order: 'asc' } }, { theme: { name: 'asc' } }, { themeId: 'asc' }],
  })
  const programmes = new Map<SquadId, ProgrammeEntry[]>()
  for (const { squadId, ...entry } of rows)
    programmes.set(squadId, [...(programmes.get(squadId) ?? []), entry])
  return programmes
}

/** The terms for which one of these squads wishes for anything. */
export async function listTermsWithProgramme(
  tx: ClubTx,
  squadIds: readonly SquadId[],
): Promise<readonly SquadTerm[]> {
  return tx.db.programmeEntry.findMany({
    where: { clubId: tx.clubId, squadId: { in: squadIds.filter(isId) } },
    select: { squadId: true, termId: true },
    distinct: ['squadId', 'termId'],
  })
}

/** Puts what a squad wishes for in the place of what it wished before; a theme that stays keeps its rules. */
export async function saveProgramme(
  tx: ClubTx,
  { squadId, termId, programme }: SquadTerm & { readonly programme: readonly ProgrammeEntry[] },
): Promise<void> {
  const before = new Map(
    (await listProgrammeRules(tx, { squadId, termId })).map((rule) => [rule.themeId, rule]),
  )
  const rules = programme.map(({ themeId, wishedShare }) => ({
    ...(before.get(themeId) ?? noRule),
    themeId,
    wishedShare,
  }))
  await saveProgrammeRules(tx, { squadId, termId, rules })
}
