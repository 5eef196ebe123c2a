import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { type SummedColumn, sumAccounts } from '#data/account-sums'
import { type FlagState, listFlagStates } from '#data/flag-states'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadPlayers } from '#data/players'
import { listThemes } from '#data/themes'
import { type JudgedFigure, judgeFigure } from '#fairness/book/judged-figure'
import { namesApart } from '#fairness/book/names-apart'
import { summedFigures } from '#fairness/book/summed-figures'
import { subjectNames, type ToldFlag, tellFlag } from '#fairness/book/told-flag'
import { causesOfFlag, type FlagCause, figureOfFlag, flagCauses } from '#fairness/flags/flag-causes'
import { type CureGroup, cureGroups, type FlagRule } from '#fairness/flags/flag-rule'
import { flagRules } from '#fairness/flags/registry'
import { type FlagFilter, type FlagQuery, readFlagFilter } from '#server/flag-filter'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { daysSoFar, loadSquadSeason, type SquadSeason } from '#server/squad-season'
import { dayIn } from '#server/today'
import type { Player } from '#squad/player'
import type { Season, Squad, SquadId } from '#squad/squad'
import { waysWritten } from '#squad/written'

/** A flag as the page of flags shows it. */
export type FlagEntry = {
  readonly id: string
  readonly playerId: string
  readonly playerName: string
  readonly group: CureGroup
  readonly status: FlagState['status']
  readonly told: ToldFlag
  /** The figure it is about, with the three parts of its difference; null where it is about no difference in time. */
  readonly figure: JudgedFigure | null
  readonly causes: readonly FlagCause[]
  /** The last answer. An open flag that has one has got worse since. */
  readonly answer: { readonly by: string; readonly on: Day; readonly reason: string } | null
  readonly clearedOn: Day | null
}

export type FlagsBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly season: Season
  readonly filter: FlagFilter
  /** Whether the door to luck or habit is shown. */
  readonly seesLuck: boolean
  readonly counts: Readonly<Record<FlagState['status'], number>>
  /** Causes that any flag of the chosen status has, with how many. */
  readonly causes: readonly { readonly cause: FlagCause; readonly count: number }[]
  /** By player's name; under each cure where the order asks for it. */
  readonly parts: readonly { readonly group: CureGroup | null; readonly flags: readonly FlagEntry[] }[]
}

/** The flags of a squad's season. Quiet notes stay on the player's own page. @throws AppError `notAllowed` or `notFound`. */
export async function loadFlags(
  viewer: Viewer,
  { squadId, query, now }: { readonly squadId: SquadId; readonly query: FlagQuery; readonly now?: Date },
): Promise<FlagsBook> {
  return inClub(viewer.clubId, async (tx) => {
    const of = await loadSquadSeason(tx, viewer, { squadId, now })
    const filter = readFlagFilter(query)
    const entries = await loadEntries(tx, of)
    const ofStatus = entries.filter(({ status }) => status === filter.status)
    const shown = ofStatus.filter(({ causes }) => filter.cause === null || causes.includes(filter.cause))
    const countOf = (status: FlagState['status']) => entries.filter((entry) => entry.status === status).length
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad: of.squad,
      season: of.season,
      filter,
      seesLuck: may(viewer, 'seeLuck', { kind: 'squad', squadId }),
      counts: {
        open: countOf('open'),
        acknowledged: countOf('acknowledged'),
        cleared: countOf('cleared'),
      },
      causes: flagCauses.flatMap((cause) => {
        const count = ofStatus.filter(({ causes }) => causes.includes(cause)).length
        return count > 0 ? [{ cause, count }] : []
      }),
      parts: filter.order === 'name' ? [{ group: null, flags: shown }] : partsByCure(shown),
    }
  })
}

function partsByCure(shown: readonly FlagEntry[]): FlagsBook['parts'] {
  return cureGroups
    .map((group) => ({ group, flags: shown.filter((flag) => flag.group === group) }))
    .filter(({ flags }) => flags.length > 0)
}

async function loadEntries(tx: ClubTx, of: SquadSeason): Promise<readonly FlagEntry[]> {
  const { squad, season } = of
  const states = await listFlagStates(tx, { squadIds: [squad.id], seasonId: season.id })
  const themes = await listThemes(tx)
  const names = subjectNames({ themes, terms: season.terms })
  const days = daysSoFar(of, null)
  const columns = days ? await sumAccounts(tx, { squadIds: [squad.id], ...days, writtens: waysWritten }) : []
  const columnsOf = columnsByPlayer(columns)
  const players = namesApart(await listSquadPlayers(tx, squad.id))
  const rules = new Map<string, FlagRule>(flagRules.map((rule) => [rule.name, rule]))
  return players.flatMap((player) =>
    states
      .filter((state) => state.playerId === player.id)
      .flatMap((state) => {
        const rule = rules.get(state.rule)
        const told = tellFlag(state, names)
        if (!rule || !told || told.isQuiet) return []
        const own = columnsOf.get(keyOf(state.playerId, state.scope)) ?? []
        return [entryOf(state, { told, player, group: rule.cureGroup, columns: own, of })]
      }),
  )
}

type Known = {
  readonly told: ToldFlag
  readonly player: Player
  readonly group: CureGroup
  readonly columns: readonly SummedColumn[]
  readonly of: SquadSeason
}

function entryOf(state: FlagState, { told, player, group, columns, of }: Known): FlagEntry {
  const figure = figureOfFlag(summedFigures(columns), { group, subject: state.subject })
  const judged =
    figure &&
    judgeFigure(figure, {
      role: roleOfGroup[group] ?? null,
      kind: state.scope,
      wantsToKeep: player.wantsToKeep,
      isMember: true,
      policy: of.policy,
    })
  const dayAt = (at: Date) => dayIn(of.club.timeZone, at)
  const { acknowledged, clearedAt } = state
  return {
    id: state.id,
    playerId: player.id,
    playerName: player.name,
    group,
    status: state.status,
    told,
    figure: judged,
    causes: causesOfFlag({ group, cause: judged?.cause ?? null }),
    answer: acknowledged && {
      by: acknowledged.by,
      on: dayAt(acknowledged.at),
      reason: acknowledged.reason,
    },
    clearedOn: clearedAt && dayAt(clearedAt),
  }
}

const roleOfGroup: Partial<Record<CureGroup, 'attack' | 'defend' | 'keep' | 'rest'>> = {
  attack: 'attack',
  defend: 'defend',
  goal: 'keep',
  waiting: 'rest',
}

/** As a member only: nobody is flagged for what it did as a guest. */
function columnsByPlayer(columns: readonly SummedColumn[]): ReadonlyMap<string, readonly SummedColumn[]> {
  return groupBy(
    columns.filter(({ isMember }) => isMember),
    ({ playerId, kind }) => keyOf(playerId, kind),
  )
}

function keyOf(playerId: string, kind: 'practice' | 'match'): string {
  return `${playerId} ${kind}`
}
