import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { listErasedIds } from '#data/erasures'
import { inClub } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { namesApart } from '#fairness/book/names-apart'
import { forgetGuestsWhenDue } from '#server/forget-guests'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { loadSquadSeason } from '#server/squad-season'
import type { Player } from '#squad/player'
import type { Membership, Squad, SquadId } from '#squad/squad'

/** A player of the squad with its latest days there. */
export type ListedPlayer = Player & { readonly days: Pick<Membership, 'firstDay' | 'lastDay'> }

/** Who belongs to a squad, by name. */
export type PlayersPage = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly today: Day
  /** Today, or from a day to come on. */
  readonly members: readonly ListedPlayer[]
  /** Who once belonged to it. */
  readonly former: readonly ListedPlayer[]
  /** On a register of the squad and never a member. */
  readonly guests: readonly Player[]
  readonly mayChange: boolean
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadPlayers(
  viewer: Viewer,
  { squadId, now }: { readonly squadId: SquadId; readonly now?: Date },
): Promise<PlayersPage> {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, today } = await loadSquadSeason(tx, viewer, { squadId, now })
    await forgetGuestsWhenDue(tx, { today })
    // In order of time, so the last one stays.
    const latest = new Map((await listMemberships(tx, squadId)).map((one) => [one.playerId, one]))
    const erased = await listErasedIds(tx)
    const players = namesApart(await listSquadPlayers(tx, squadId)).filter(({ id }) => !erased.has(id))
    const listed = players.flatMap((player): readonly ListedPlayer[] => {
      const days = latest.get(player.id)
      return days ? [{ ...player, days }] : []
    })
    const isOver = ({ days }: ListedPlayer) => days.lastDay !== null && days.lastDay < today
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      today,
      members: listed.filter((player) => !isOver(player)),
      former: listed.filter(isOver),
      guests: players.filter(({ id }) => !latest.has(id)),
      mayChange: may(viewer, 'changePlayer', { kind: 'squad', squadId }),
    }
  })
}
