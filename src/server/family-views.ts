import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { listFlagStates } from '#data/flag-states'
import { type ClubTx, inClub } from '#data/in-club'
import { listMemberships, listSquadIdsOf } from '#data/memberships'
import { getPlayer } from '#data/players'
import { listPolicies } from '#data/policies'
import { listSeasons } from '#data/seasons'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import type { SessionAccount } from '#fairness/account'
import { type DayAttended, playerAttendance, sessionsOfPlayer } from '#fairness/book/player-attendance'
import { playerThemes } from '#fairness/book/player-themes'
import { countWritten } from '#fairness/book/written-count'
import {
  type FamilySentence,
  type FamilyTopic,
  familyFigure,
  familySentences,
  sessionsBeforeSentences,
} from '#fairness/family-sentences'
import { emptyStanding, type KindStanding, type SessionKind, standingsNow } from '#fairness/standing'
import { loadClubDay } from '#server/club-day'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { daysSoFar, seasonFor } from '#server/squad-season'
import { isMemberBetween } from '#squad/member-between'
import type { Player, PlayerId } from '#squad/player'
import { type Policy, policyInForce } from '#squad/policy'
import type { Membership, Season, Squad, SquadId } from '#squad/squad'
import type { ThemeMeeting } from '#themes/theme-meetings'

/** What a family reads about practices, or about matches. */
export type FamilyKind = {
  readonly kind: SessionKind
  readonly held: number
  readonly written: number
  /** Null: too little is written down to say anything but attendance and themes. */
  readonly said: {
    readonly sentences: readonly FamilySentence[]
    /** What the child did, in the order of the topics; those it never did are left out. */
    readonly did: readonly { readonly topic: FamilyTopic; readonly seconds: number; readonly turns: number }[]
    /** Time the child was there for. */
    readonly liveSeconds: number
  } | null
  readonly attendance: readonly DayAttended[]
}

export type FamilySquad = {
  readonly squadName: string
  readonly kinds: readonly FamilyKind[]
  readonly themes: readonly {
    readonly name: string
    readonly depth: number
    readonly meeting: ThemeMeeting
  }[]
}

/** One child's page for its family: nothing of any other child is in it. */
export type FamilyBook = {
  readonly frame: FrameOfPage
  /** False: a coach looks at what the family sees. */
  readonly isFamily: boolean
  readonly childName: string
  readonly seasonName: string
  readonly squads: readonly FamilySquad[]
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadFamilyPage(
  viewer: Viewer,
  { playerId, now }: { readonly playerId: PlayerId; readonly now?: Date },
): Promise<FamilyBook> {
  return inClub(viewer.clubId, async (tx) => {
    const squadIds = await listSquadIdsOf(tx, playerId)
    demand(viewer, 'seeFamilyPage', { kind: 'player', playerId, squadIds })
    const player = await getPlayer(tx, playerId)
    const { today } = await loadClubDay(tx, now)
    const season = seasonFor(await listSeasons(tx), today)
    if (!season) throw new AppError('notFound', `no season in club ${viewer.clubId}`)
    const squads: FamilySquad[] = []
    for (const squadId of squadIds) {
      const memberships = (await listMemberships(tx, squadId)).filter((one) => one.playerId === playerId)
      if (!isMemberBetween(memberships, { playerId, ...season })) continue
      const squad = await getSquad(tx, squadId)
      squads.push(await loadSquad(tx, { squad, season, today, player, memberships }))
    }
    return {
      frame: await loadFrame(tx, viewer, viewer.role === 'guardian' ? null : (squadIds[0] ?? null)),
      isFamily: viewer.role === 'guardian',
      childName: player.name,
      seasonName: season.name,
      squads,
    }
  })
}

type OfChild = {
  readonly squad: Squad
  readonly season: Season
  readonly today: string
  readonly player: Player
  /** Its own in this squad. */
  readonly memberships: readonly Membership[]
}

async function loadSquad(tx: ClubTx, of: OfChild): Promise<FamilySquad> {
  const { squad, season, today, player, memberships } = of
  const days = daysSoFar({ season, today }, null)
  const all = days ? await listAccounts(tx, { squadId: squad.id, ...days }) : []
  const own = sessionsOfPlayer(all, { playerId: player.id, memberships })
  const policy = policyInForce(await listPolicies(tx), {
    ageLimit: squad.ageLimit,
    day: days?.to ?? today,
  })
  const agreements = fewerTurnsOf(await listAdjustments(tx, [player.id]))
  const standing = standingsNow({ accounts: own, agreements }).get(player.id) ?? emptyStanding
  const flags = await loadOwnFlags(tx, { squadId: squad.id, seasonId: season.id, playerId: player.id })
  const themes = await listThemes(tx)
  return {
    squadName: squad.name,
    kinds: (['practice', 'match'] as const).map((kind) =>
      kindOf(own, { kind, standing: standing[kind], player, policy, flags, today }),
    ),
    themes: playerThemes(own, { playerId: player.id, themes }).map(({ theme, ...line }) => ({
      ...line,
      name: theme.name,
    })),
  }
}

async function loadOwnFlags(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly seasonId: string; readonly playerId: PlayerId },
) {
  const flags = await listFlagStates(tx, { squadIds: [at.squadId], seasonId: at.seasonId })
  return flags.filter(({ playerId }) => playerId === at.playerId)
}

type OfKind = {
  readonly kind: SessionKind
  readonly standing: KindStanding
  readonly player: Player
  readonly policy: Policy
  readonly flags: Awaited<ReturnType<typeof loadOwnFlags>>
  readonly today: string
}

function kindOf(own: readonly SessionAccount[], of: OfKind): FamilyKind {
  const { kind, standing, policy } = of
  const sessions = own.filter((account) => account.kind === kind)
  const { held, written, isEnough } = countWritten(sessions, policy)
  const topics = kind === 'practice' ? (['attack', 'defend', 'keep'] as const) : (['played', 'keep'] as const)
  return {
    kind,
    held,
    written,
    said:
      isEnough && written >= sessionsBeforeSentences
        ? {
            sentences: familySentences({ ...of, roles: standing.roles }),
            did: topics.flatMap((topic) => {
              const { seconds, turns } = familyFigure(standing, topic)
              return seconds > 0 ? [{ topic, seconds, turns }] : []
            }),
            liveSeconds: standing.liveSeconds,
          }
        : null,
    attendance: playerAttendance(sessions, of.player.id),
  }
}
