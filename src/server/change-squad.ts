import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { allDays } from '#common/time'
import { recordAudit } from '#data/audit'
import { lockClub } from '#data/clubs'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { lockSquad } from '#data/squad-lock'
import { changeSquad, getSquad, listSquads, recordSquads } from '#data/squads'
import { nameKey } from '#exchange/table/name-form'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import type { SquadInput } from '#server/club-input'
import { countAnew, countingTimeoutMs } from '#server/count-anew'
import type { Squad } from '#squad/squad'

/** A squad more, or another name or age for one that stands. @throws AppError `notAllowed` or `notFound`. */
export async function saveSquadOf(
  viewer: Viewer,
  { squadId, name, ageLimit }: SquadInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(
    viewer.clubId,
    async (tx) => {
      await lockClub(tx)
      const held = squadId === '' ? null : await getSquad(tx, squadId)
      const taken = (await listSquads(tx)).some(
        (other) => other.id !== squadId && nameKey(other.name) === nameKey(name),
      )
      if (taken)
        return refuse({
          path: 'name',
          message: `There is a squad called ${name} already; choose another name.`,
        })
      const squad = { id: held?.id ?? newId(), name, ageLimit }
      if (held) await changeSquad(tx, squad)
      else await recordSquads(tx, [squad])
      if (held && held.ageLimit !== ageLimit) await countAgain(tx, squad, now)
      await recordAudit(tx, {
        action: held ? 'changeSquad' : 'addSquad',
        objectKind: 'squad',
        objectId: squad.id,
        detail: { ageLimit },
        by: { personId: viewer.personId, at: now },
      })
      return saved(held ? 'Saved.' : `Added: ${name}. Next, its players.`)
    },
    { timeoutMs: countingTimeoutMs },
  )
}

/** The rules of an age are the club's policy for it, so another age may count and flag otherwise. */
async function countAgain(tx: ClubTx, { id: squadId }: Squad, now: Date): Promise<void> {
  const { today } = await loadClubDay(tx, now)
  await lockSquad(tx, squadId)
  await countAnew(tx, { squadIds: [squadId], from: allDays.from, today, now })
}
