import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { listClubPlayers } from '#data/club-players'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listMemberships, recordMemberships } from '#data/memberships'
import { listSquadPlayers, recordPlayers } from '#data/players'
import { lockSquad } from '#data/squad-lock'
import { getSquad } from '#data/squads'
import { nameKey } from '#exchange/table/name-form'
import { type Done, saved } from '#server/action'
import { problemsOfDays } from '#server/change-membership'
import { countedSentence } from '#server/change-player'
import { loadClubDay } from '#server/club-day'
import { countAnew, countingTimeoutMs } from '#server/count-anew'
import type { NewPlayerInput } from '#server/player-input'
import type { Player, PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/**
 * A player who joins the squad. A name that is there already is asked about once: two of one name stay two, and a guest
 * becomes a member with everything that was written of it. @throws AppError `notAllowed` or `notFound`.
 */
export async function addPlayerOf(
  viewer: Viewer,
  input: NewPlayerInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  const { squadId, firstDay } = input
  demand(viewer, 'changePlayer', { kind: 'squad', squadId })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      await lockSquad(tx, squadId)
      const { name: squadName } = await getSquad(tx, squadId)
      const joining = await whoJoins(tx, viewer, input)
      if (!joining.ok) return joining
      const { playerId, isNew } = joining.value
      if (isNew) {
        const { name, keeps, wantsToKeep } = input
        await recordPlayers(tx, [{ id: playerId, name, keeps, wantsToKeep, code: null }])
      }
      const membership = { playerId, firstDay, lastDay: null }
      await recordMemberships(tx, { squadId, memberships: [membership] })
      const by = { personId: viewer.personId, at: now }
      const detail = { squadId, firstDay, isNew }
      await recordAudit(tx, { action: 'addPlayer', objectKind: 'player', objectId: playerId, detail, by })
      const counted = await countAnew(tx, { squadIds: [squadId], from: firstDay, today, now })
      return saved(
        `${input.name} belongs to the ${squadName} from ${firstDay} on. ${countedSentence(counted)}`,
      )
    },
    { timeoutMs: countingTimeoutMs },
  )
}

type Joining = { readonly playerId: PlayerId; readonly isNew: boolean }

async function whoJoins(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, name, firstDay, who }: NewPlayerInput,
): Promise<Result<Joining, Problem>> {
  const known = await listKnown(tx, viewer, { squadId, name })
  if (who === 'another' || (who === '' && known.length === 0))
    return accept({ playerId: newId(), isNew: true })
  if (who === '') return refuse({ path: 'who', message: sameNameQuestion(known.map((one) => one.name)) })
  const player = known.find(({ id }) => id === who)
  if (!player)
    return refuse({ path: 'who', message: 'is nobody of that name; choose again, or correct the name' })
  const own = (await listMemberships(tx, squadId)).filter(({ playerId }) => playerId === player.id)
  const [met] = problemsOfDays({ firstDay, lastDay: null }, own)
  return met ? refuse(met) : accept({ playerId: player.id, isNew: false })
}

/** Of the squad, guests included, and of other squads as far as the viewer may see them: who has this name. */
async function listKnown(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, name }: { readonly squadId: SquadId; readonly name: string },
): Promise<readonly Player[]> {
  const here = new Set((await listSquadPlayers(tx, squadId)).map(({ id }) => id))
  return (await listClubPlayers(tx)).filter(
    ({ id: playerId, squadIds, name: other }) =>
      nameKey(other) === nameKey(name) &&
      (here.has(playerId) || may(viewer, 'seePlayer', { kind: 'player', playerId, squadIds })),
  )
}

function sameNameQuestion(names: readonly string[]): string {
  return names.length === 1
    ? `There is a ${names[0]} already: is this another player? Choose below, and add again.`
    : `There are ${names.length} players called ${names[0]} already: is this another one? Choose below, and add again.`
}
