import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadId, TermId } from '#squad/squad'
import type { ProgrammeEntry, Theme, ThemeId } from '#themes/theme'

/** `asks`: what the theme asks for, in a sentence for coaches. `code`: its key in the file it was imported from. */
export type StoredTheme = Theme & { readonly asks: string; readonly code: string | null }

/** Every theme of the club, by place among its siblings; the tree is in `parentId`. */
export async function listThemes(tx: ClubTx): Promise<readonly StoredTheme[]> {
  return tx.db.theme.findMany({
    where: { clubId: tx.clubId },
    select: { id: true, name: true, parentId: true, order: true, asks: true, code: true },
    orderBy: [{ order: 'asc' }, { name: 'asc' }, { id: 'asc' }],
  })
}

/** Parents may stand anywhere in the list. */
export async function recordThemes(tx: ClubTx, themes: readonly StoredTheme[]): Promise<void> {
  await tx.db.theme.createMany({
    data: themes.map(({ id, name, parentId, order, asks, code }) => ({
      clubId: tx.clubId,
      id,
      name,
      parentId,
      order,
      asks,
      code,
    })),
  })
}

/** The database refuses a theme under one of its own. */
export async function changeTheme(
  tx: ClubTx,
  themeId: ThemeId,
  change: Partial<Pick<StoredTheme, 'name' | 'parentId' | 'order' | 'asks'>>,
): Promise<void> {
  const { name, parentId, order, asks } = change
  await tx.db.theme.update({
    where: { clubId_id: { clubId: tx.clubId, id: themeId } },
    data: { name, parentId, order, asks },
    select: { id: true },
  })
}

type SquadTerm = { readonly squadId: SquadId; readonly termId: TermId }

/** What a squad's programme wishes for a term, by the themes' own order. */
export async function listProgramme(tx: ClubTx, at: SquadTerm): Promise<readonly ProgrammeEntry[]> {
  if (!isId(at.squadId) || !isId(at.termId)) return []
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

/** Puts the programme of a squad's term in the place of the one before. */
export async function saveProgramme(
  tx: ClubTx,
  { squadId, termId, programme }: SquadTerm & { readonly programme: readonly ProgrammeEntry[] },
): Promise<void> {
  const { clubId } = tx
  await tx.db.programmeEntry.deleteMany({ where: { clubId, squadId, termId } })
  await tx.db.programmeEntry.createMany({
    data: programme.map(({ themeId, wishedShare }) => ({ clubId, squadId, termId, themeId, wishedShare })),
  })
}
