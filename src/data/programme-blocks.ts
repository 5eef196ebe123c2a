import 'server-only'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { couldBeThere, type SquadTerm } from '#data/squad-term'
import type { ProgrammeBlock } from '#themes/programme-rule'

/** Weeks of a squad's term that are kept for one theme, in order of weeks. */
export async function listProgrammeBlocks(tx: ClubTx, at: SquadTerm): Promise<readonly ProgrammeBlock[]> {
  if (!couldBeThere(at)) return []
  return tx.db.programmeBlock.findMany({
    where: { clubId: tx.clubId, squadId: at.squadId, termId: at.termId },
    select: { themeId: true, firstWeek: true, lastWeek: true },
    orderBy: [{ firstWeek: 'asc' }, { lastWeek: 'asc' }, { id: 'asc' }],
  })
}

/** Puts the blocks of a squad's term in the place of those before. */
export async function saveProgrammeBlocks(
  tx: ClubTx,
  { squadId, termId, blocks }: SquadTerm & { readonly blocks: readonly ProgrammeBlock[] },
): Promise<void> {
  const { clubId } = tx
  await tx.db.programmeBlock.deleteMany({ where: { clubId, squadId, termId } })
  await tx.db.programmeBlock.createMany({
    data: blocks.map(({ themeId, firstWeek, lastWeek }) => ({
      clubId,
      id: newId(),
      squadId,
      termId,
      themeId,
      firstWeek,
      lastWeek,
    })),
  })
}
