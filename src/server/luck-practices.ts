import 'server-only'
import type { Day } from '#common/time'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import type { ClubTx } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { loadWritten, type WrittenPractice } from '#data/written-sessions'
import { agreedShareOn } from '#fairness/agreed-due'
import { isAsItHappened, partAsItHappened } from '#fairness/luck/as-it-happened'
import type { LuckPractice } from '#fairness/luck/draw-of-practices'
import { loadSquadRules } from '#server/rebuild'
import { ableOn } from '#squad/keeps-change'
import { isMemberOn, type Membership, type SquadId } from '#squad/squad'

export type LuckPractices = {
  /** Those written as they happened, in order of time. */
  readonly practices: readonly LuckPractice[]
  readonly memberships: readonly Membership[]
  /** The part of all turns written that these are; null: none was written. */
  readonly part: number | null
}

/** A squad's practices as a fair draw could have been: with who might keep goal, and whose places stay, on each day. */
export async function loadLuckPractices(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly from: Day; readonly to: Day },
): Promise<LuckPractices> {
  const sessions = await listSessions(tx, { ...at, kind: 'practice', withCancelled: false })
  const written = (await loadWritten(tx, sessions)).filter((one) => one.kind === 'practice')
  const { memberships, players, keepsChanges } = await loadSquadRules(tx, at.squadId, written)
  const ids = players.map(({ id }) => id)
  const agreements = fewerTurnsOf(await listAdjustments(tx, ids))
  const stays = ({ session: { day }, passes }: WrittenPractice) =>
    ids.filter(
      (playerId) =>
        agreedShareOn(agreements, { playerId, day }) < 1 ||
        !isMemberOn(memberships, { playerId, day }) ||
        passes.some((pass) => pass.playerId === playerId),
    )
  return {
    memberships,
    part: partAsItHappened(
      written.map(({ session, practice }) => ({ written: session.written, turns: practice.turns.length })),
    ),
    practices: written
      .filter(({ session }) => isAsItHappened(session.written))
      .map((one) => ({
        practice: one.practice,
        able: ableOn(players, { changes: keepsChanges, day: one.session.day }),
        still: new Set(stays(one)),
      })),
  }
}
