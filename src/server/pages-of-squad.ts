import 'server-only'
import type { Day } from '#common/time'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { listChildrenOfSquad } from '#data/family-children'
import { listFamilyNotes } from '#data/family-notes'
import { type FlagState, listFlagStates } from '#data/flag-states'
import type { ClubTx } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listThemes } from '#data/themes'
import { sessionsOfPlayer } from '#fairness/book/player-attendance'
import { figuresOf } from '#fairness/matches/match-rows'
import { emptyStanding, standingsNow } from '#fairness/standing'
import type { FamilyPage } from '#family/family-page'
import { namesInNote } from '#family/names-in-note'
import { pageOfChild } from '#family/page-of-child'
import { type Waiting, whatWaits } from '#family/what-waits'
import { loadMatchPromise } from '#server/match-promise'
import { loadMatchSeason } from '#server/match-season'
import { daysSoFar, type SquadSeason } from '#server/squad-season'
import { isMemberBetween } from '#squad/member-between'
import type { Player } from '#squad/player'

/** What the book says today of one child to its family, before a coach has confirmed it. */
export type PageToConfirm = {
  readonly child: Player
  /** The day it left the squad; null: it is a member. */
  readonly leftOn: Day | null
  readonly page: FamilyPage
  readonly waits: readonly Waiting[]
  /** Its own in this squad and season. */
  readonly flags: readonly FlagState[]
}

/** Of every child that is or was a member in the season, by name. `today` is the last day that counts. */
export async function loadPagesOfSquad(
  tx: ClubTx,
  of: Pick<SquadSeason, 'squad' | 'season' | 'today' | 'policy'>,
): Promise<readonly PageToConfirm[]> {
  const { squad, season, today, policy } = of
  const days = daysSoFar(of, null)
  const squadDays = days && { squadId: squad.id, ...days }
  const accounts = squadDays ? await listAccounts(tx, squadDays) : []
  const everybody = await listChildrenOfSquad(tx, squad.id)
  const memberships = await listMemberships(tx, squad.id)
  const playerIds = everybody.map(({ id }) => id)
  const agreements = fewerTurnsOf(await listAdjustments(tx, playerIds))
  const { promise } = await loadMatchPromise(tx, { squadId: squad.id, policy })
  const { matches } = await loadMatchSeason(tx, { days: squadDays, playerIds, promise })
  const flags = await listFlagStates(tx, { squadIds: [squad.id], seasonId: season.id })
  const themes = await listThemes(tx)
  const notes = await listFamilyNotes(tx, squad.id)
  return everybody
    .filter((child) => isMemberBetween(memberships, { playerId: child.id, ...season }))
    .map((child) => {
      const own = memberships.filter(({ playerId }) => playerId === child.id)
      const ownSessions = sessionsOfPlayer(accounts, { playerId: child.id, memberships: own })
      const standing = standingsNow({ accounts: ownSessions, agreements }).get(child.id) ?? emptyStanding
      const ownFlags = flags.filter(({ playerId }) => playerId === child.id)
      const page = pageOfChild({
        player: child,
        memberships: own,
        accounts,
        standing,
        matchFigures: figuresOf(matches, child.id).filter(({ isMember }) => isMember),
        policy,
        flags: ownFlags,
        themes,
        note: notes.get(child.id) ?? '',
        today,
      })
      const otherNames = everybody.filter(({ id }) => id !== child.id).map(({ name }) => name)
      const named = namesInNote(page.note, { ownName: child.name, otherNames })
      return {
        child,
        leftOn: leftOn(own, today),
        page,
        waits: whatWaits(page, { namesInNote: named }),
        flags: ownFlags,
      }
    })
}

function leftOn(memberships: readonly { readonly lastDay: Day | null }[], today: Day): Day | null {
  const lastDays = memberships.map(({ lastDay }) => lastDay)
  if (lastDays.some((day) => day === null || day >= today)) return null
  return lastDays.reduce(
    (latest, day) => (latest === null || (day !== null && day > latest) ? day : latest),
    null,
  )
}
