import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { allDays, type Day } from '#common/time'
import { listAccounts } from '#data/accounts'
import { type Adjustment, fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { listErasedIds } from '#data/erasures'
import { type FlagState, listFlagStates } from '#data/flag-states'
import { type ClubTx, inClub } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listLineWishes } from '#data/line-wishes'
import { listMemberships, listMembershipsOf, listSquadIdsOf } from '#data/memberships'
import { listAway } from '#data/player-away'
import { getPlayer, listSquadPlayers } from '#data/players'
import type { SquadDays } from '#data/sessions'
import { listThemes } from '#data/themes'
import { type ChoiceCount, countChoices, listPassed } from '#data/turn-sums'
import { type Situation, situations } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import { type BookRow, bookRows } from '#fairness/book/book-rows'
import { type JudgedFigure, judgeFigure } from '#fairness/book/judged-figure'
import { namesApart } from '#fairness/book/names-apart'
import { type DayAttended, playerAttendance, sessionsOfPlayer } from '#fairness/book/player-attendance'
import { playerThemes } from '#fairness/book/player-themes'
import { type PlayerWeek, playerWeeks } from '#fairness/book/player-weeks'
import { runningGaps } from '#fairness/book/running-gaps'
import { standingSums } from '#fairness/book/standing-sums'
import { subjectNames, type ToldFlag, tellFlag } from '#fairness/book/told-flag'
import { countWritten, type WrittenCount } from '#fairness/book/written-count'
import { type BelowPromise, belowPromise } from '#fairness/matches/below-promise'
import type { MatchFigure } from '#fairness/matches/match-figure'
import { emptyStanding, type SessionKind, type StandingInput, standingsNow } from '#fairness/standing'
import { type LineWishes, noWishes } from '#match/format/line-wish'
import { loadMatchPromise } from '#server/match-promise'
import { loadMatchSeason, type MatchOfSeason } from '#server/match-season'
import { squadsToday } from '#server/open-player'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { recordLook } from '#server/record-look'
import { daysSoFar, loadSquadSeason, type SquadSeason } from '#server/squad-season'
import type { KeepsChange } from '#squad/keeps-change'
import type { Player, PlayerId } from '#squad/player'
import type { PlayerAway } from '#squad/player-away'
import type { Membership, Season, Squad, SquadId } from '#squad/squad'
import type { Theme } from '#themes/theme'
import type { ThemeMeeting } from '#themes/theme-meetings'

/** A flag of the player with what was said to it. */
export type PlayerFlag = {
  readonly id: string
  readonly told: ToldFlag
  readonly acknowledged: FlagState['acknowledged']
  readonly status: FlagState['status']
}

/** What can be set of the player, as it stands. */
export type PlayerSettings = {
  readonly squadId: SquadId
  readonly playerId: PlayerId
  /** As it is kept, without what tells two of one name apart. */
  readonly name: string
  readonly keeps: boolean
  readonly wantsToKeep: boolean
  readonly wishes: LineWishes
  readonly keepsChanges: readonly KeepsChange[]
  /** In this squad, in order of time. */
  readonly memberships: readonly Membership[]
  /** Known to be away, today and after it. */
  readonly away: readonly PlayerAway[]
  readonly today: Day
  /** False: it is in another squad now, and only its days in this one are to be set here. */
  readonly mayChangePlayer: boolean
}

/** A player's season as its squad's coaches see it, practices or matches. */
export type PlayerBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly season: Season
  readonly player: Player
  readonly kind: SessionKind
  readonly written: WrittenCount
  /** Null when nothing of the player is written. */
  readonly row: BookRow | null
  readonly weeks: readonly PlayerWeek[]
  readonly gaps: ReturnType<typeof runningGaps>
  readonly situations: readonly { readonly situation: Situation; readonly figure: JudgedFigure }[]
  readonly themes: readonly {
    readonly themeName: string
    /** Steps it stands under other themes. */
    readonly depth: number
    readonly meeting: ThemeMeeting
  }[]
  readonly attendance: readonly DayAttended[]
  /** Open and answered ones, of practices and matches. */
  readonly flags: readonly PlayerFlag[]
  readonly choices: ChoiceCount | null
  readonly agreed: readonly Adjustment[]
  /** Match by match, where matches are looked at; those it was there for. */
  readonly matches: readonly (Pick<MatchOfSeason, 'sessionId' | 'day' | 'title'> & {
    readonly figure: MatchFigure
  })[]
  /** Of them, those in which it had less than everyone is promised. */
  readonly below: readonly BelowPromise[]
  /** Null: nothing of it is the viewer's to change. */
  readonly settings: PlayerSettings | null
}

type PlayerQuery = { readonly kind?: string | string[] }

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadPlayerBook(
  viewer: Viewer,
  at: {
    readonly squadId: SquadId
    readonly playerId: PlayerId
    readonly query: PlayerQuery
    readonly now?: Date
  },
): Promise<PlayerBook> {
  return inClub(viewer.clubId, async (tx) => {
    const { squadId, playerId } = at
    const of = await loadSquadSeason(tx, viewer, at)
    demand(viewer, 'seePlayer', { kind: 'player', playerId, squadIds: await listSquadIdsOf(tx, playerId) })
    const player = await loadMember(tx, { squadId, playerId })
    await recordLook(tx, viewer, { page: 'player', playerId })
    const kind = at.query.kind === 'match' ? 'match' : 'practice'
    const themes = await listThemes(tx)
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad: of.squad,
      season: of.season,
      player,
      kind,
      ...(await loadSeasonOf(tx, { of, player, kind, themes })),
      flags: await loadFlags(tx, { of, playerId, themes }),
      settings: await loadSettings(tx, viewer, { squadId, playerId, today: of.today }),
    }
  })
}

/** Whoever is or was of the squad has a page there; guests have theirs in their own squad. */
async function loadMember(tx: ClubTx, at: { squadId: SquadId; playerId: PlayerId }): Promise<Player> {
  const memberships = await listMemberships(tx, at.squadId)
  const players = namesApart(await listSquadPlayers(tx, at.squadId))
  const player = players.find(({ id }) => id === at.playerId)
  if (!player || !memberships.some(({ playerId }) => playerId === player.id)) {
    throw new AppError('notFound', `no player ${at.playerId} in squad ${at.squadId}`)
  }
  return player
}

async function loadSettings(
  tx: ClubTx,
  viewer: Viewer,
  { today, ...at }: { readonly squadId: SquadId; readonly playerId: PlayerId; readonly today: Day },
): Promise<PlayerSettings | null> {
  const { squadId, playerId } = at
  if (!may(viewer, 'changePlayer', { kind: 'squad', squadId })) return null
  if ((await listErasedIds(tx)).has(playerId)) return null
  const { name, keeps, wantsToKeep } = await getPlayer(tx, playerId)
  const all = await listMembershipsOf(tx, playerId)
  const object = { kind: 'player', playerId, squadIds: squadsToday(all, today) } as const
  return {
    ...at,
    name,
    keeps,
    wantsToKeep,
    wishes: (await listLineWishes(tx, [playerId])).get(playerId) ?? noWishes,
    keepsChanges: await listKeepsChanges(tx, [playerId]),
    memberships: all.filter((one) => one.squadId === squadId),
    away: await listAway(tx, { playerIds: [playerId], from: today, to: allDays.to }),
    today,
    mayChangePlayer: may(viewer, 'changePlayer', object),
  }
}

type OfPlayer = {
  readonly of: SquadSeason
  readonly player: Player
  readonly kind: SessionKind
  readonly themes: readonly Theme[]
}

async function loadSeasonOf(tx: ClubTx, { of, player, kind, themes }: OfPlayer) {
  const { squad, policy } = of
  const playerId = player.id
  const days = daysSoFar(of, null)
  const squadDays = days && { squadId: squad.id, ...days }
  const all = squadDays ? await listAccounts(tx, squadDays) : []
  const memberships = await listMemberships(tx, squad.id)
  const accounts = all.filter((account) => account.kind === kind)
  const own = sessionsOfPlayer(accounts, { playerId, memberships })
  const agreed = await listAdjustments(tx, [playerId])
  const passed = squadDays && kind === 'practice' ? await listPassed(tx, squadDays) : []
  const input: StandingInput = { accounts, passed, agreements: fewerTurnsOf(agreed) }
  const standing = (standingsNow(input).get(playerId) ?? emptyStanding)[kind]
  const ownMatches = kind === 'match' ? await loadOwnMatches(tx, { of, playerId, squadDays }) : noMatches
  const choices = squadDays && kind === 'practice' ? await countChoices(tx, squadDays) : []
  return {
    written: countWritten(own, policy),
    row: rowOfPlayer(input, { player, kind, policy }),
    weeks: playerWeeks(own, playerId),
    gaps: runningGaps(input, { playerId, kind, policy }),
    situations: situations.map((situation) => ({
      situation,
      figure: judgeFigure(standing.situations[situation], {
        role: null,
        kind,
        wantsToKeep: player.wantsToKeep,
        isMember: true,
        policy,
      }),
    })),
    themes: playerThemes(own, { playerId, themes }).map(({ theme, ...line }) => ({
      ...line,
      themeName: theme.name,
    })),
    attendance: playerAttendance(own, playerId),
    choices: choices.find((one) => one.playerId === playerId) ?? null,
    agreed,
    ...ownMatches,
  }
}

const noMatches: Pick<PlayerBook, 'matches' | 'below'> = { matches: [], below: [] }

async function loadOwnMatches(
  tx: ClubTx,
  at: { readonly of: SquadSeason; readonly playerId: PlayerId; readonly squadDays: SquadDays | null },
): Promise<Pick<PlayerBook, 'matches' | 'below'>> {
  const { of, playerId, squadDays } = at
  const { promise } = await loadMatchPromise(tx, { squadId: of.squad.id, policy: of.policy })
  const { matches } = await loadMatchSeason(tx, { days: squadDays, playerIds: [playerId], promise })
  return {
    matches: matches.flatMap(({ sessionId, day, title, figures }) =>
      figures
        .filter((figure) => figure.playerId === playerId)
        .map((figure) => ({ sessionId, day, title, figure })),
    ),
    below: belowPromise(matches).filter(({ figure }) => figure.playerId === playerId),
  }
}

function rowOfPlayer(
  input: StandingInput,
  { player, kind, policy }: Pick<OfPlayer, 'player' | 'kind'> & Pick<SquadSeason, 'policy'>,
): BookRow | null {
  const sumsOf = (accounts: readonly SessionAccount[]) =>
    standingSums((standingsNow({ ...input, accounts }).get(player.id) ?? emptyStanding)[kind], {
      playerId: player.id,
      isMember: true,
    })
  const { columns, presence } = sumsOf(input.accounts)
  if (presence.sessions === 0) return null
  const planned = sumsOf(input.accounts.filter(({ written }) => written === 'asPlanned')).presence
  const { members } = bookRows({
    kind,
    isNarrowed: false,
    situation: null,
    columns,
    presences: [presence],
    plannedPresences: [planned],
    passed: input.passed ?? [],
    players: [player],
    policy,
  })
  return members[0] ?? null
}

async function loadFlags(
  tx: ClubTx,
  {
    of,
    playerId,
    themes,
  }: { readonly of: SquadSeason; readonly playerId: PlayerId; readonly themes: readonly Theme[] },
): Promise<readonly PlayerFlag[]> {
  const names = subjectNames({ themes, terms: of.season.terms })
  const flags = await listFlagStates(tx, {
    squadIds: [of.squad.id],
    seasonId: of.season.id,
    statuses: ['open', 'acknowledged'],
  })
  return flags
    .filter((flag) => flag.playerId === playerId)
    .flatMap((flag) => {
      const told = tellFlag(flag, names)
      return told ? [{ id: flag.id, told, acknowledged: flag.acknowledged, status: flag.status }] : []
    })
}
