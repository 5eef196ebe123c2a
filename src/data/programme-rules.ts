import 'server-only'
import type { ClubTx } from '#data/in-club'
import { couldBeThere, type SquadTerm } from '#data/squad-term'
import type { ProgrammeRule } from '#themes/programme-rule'

/** The programme of a squad's term with its rules, by the themes' own order. */
export async function listProgrammeRules(tx: ClubTx, at: SquadTerm): Promise<readonly ProgrammeRule[]> {
  if (!couldBeThere(at)) return []
  return tx.db.programmeEntry.findMany({
    where: { clubId: tx.clubId, squadId: at.squadId, termId: at.termId },
    select: {
      themeId: true,
      wishedShare: true,
      firstWeek: true,
      lastWeek: true,
      afterThemeId: true,
      leastWeeksBetween: true,
      mostWeeksBetween: true,
    },
    orderBy: [{ theme: { order: 'asc' } }, { theme: { name: 'asc' } }, { themeId: 'asc' }],
  })
}

/** Puts a programme with its rules in the place of the one before. */
export async function saveProgrammeRules(
  tx: ClubTx,
  { squadId, termId, rules }: SquadTerm & { readonly rules: readonly ProgrammeRule[] },
): Promise<void> {
  const { clubId } = tx
  await tx.db.programmeEntry.deleteMany({ where: { clubId, squadId, termId } })
  await tx.db.programmeEntry.createMany({
    data: rules.map((rule) => ({
      clubId,
      squadId,
      termId,
      themeId: rule.themeId,
      wishedShare: rule.wishedShare,
      firstWeek: rule.firstWeek,
      lastWeek: rule.lastWeek,
      afterThemeId: rule.afterThemeId,
      leastWeeksBetween: rule.leastWeeksBetween,
      mostWeeksBetween: rule.mostWeeksBetween,
    })),
  })
}
