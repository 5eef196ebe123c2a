import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { findDesign } from '#data/designs'
import { type FlagState, listFlagStates } from '#data/flag-states'
import { type ClubTx, inClub } from '#data/in-club'
import { countPitchEvents } from '#data/pitch-events'
import { listSquadPlayers } from '#data/players'
import { listPlanned } from '#data/session-plans'
import { listSessions, type Session } from '#data/sessions'
import { listThemes } from '#data/themes'
import { findMedianTurnSeconds } from '#data/turn-sums'
import { namesApart } from '#fairness/book/names-apart'
import { subjectNames, type ToldFlag, tellFlag } from '#fairness/book/told-flag'
import { type CureToday, groupByCure } from '#fairness/flags/group-by-cure'
import type { RoundToGive } from '#fairness/flags/round-cure'
import type { PracticeDesign } from '#practice/design'
import { longestRound } from '#practice/round-to-give'
import { forgetChildrenWhenDue } from '#server/forget-children'
import { forgetGuestsWhenDue } from '#server/forget-guests'
import { forgetTodayWhenDue } from '#server/forget-today'
import { asPlannedAhead } from '#server/next-as-planned'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { daysSoFar, loadSquadSeason, type SquadSeason } from '#server/squad-season'
import type { Player } from '#squad/player'
import type { Squad, SquadId } from '#squad/squad'
import type { Theme } from '#themes/theme'

export type ShownSession = Pick<Session, 'id' | 'kind' | 'day' | 'title' | 'startsAt'>

/** What a coach opens the book for on a day. */
export type TodayBook = {
  readonly frame: FrameOfPage
  readonly squad: Squad
  readonly today: Day
  readonly next:
    | (ShownSession & {
        readonly design: { readonly id: string; readonly name: string } | null
        readonly themeName: string | null
        readonly isTapped: boolean
        readonly isPlanned: boolean
      })
    | null
  /** Others of the next one's day, not written down yet. */
  readonly alsoThatDay: readonly ShownSession[]
  /** Held and not written down, the latest first; `isTapped`: at the pitch, and only to be looked at. */
  readonly toWrite: readonly (ShownSession & { readonly isTapped: boolean })[]
  /** At most three. */
  readonly cures: readonly {
    readonly cure: CureToday
    readonly flags: readonly { readonly playerId: string; readonly told: ToldFlag }[]
  }[]
  readonly openFlags: number
  readonly players: readonly { readonly id: string; readonly name: string }[]
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadToday(
  viewer: Viewer,
  at: { readonly squadId: SquadId; readonly now?: Date },
): Promise<TodayBook> {
  return inClub(viewer.clubId, async (tx) => {
    const of = await loadSquadSeason(tx, viewer, at)
    await forgetGuestsWhenDue(tx, of)
    await forgetChildrenWhenDue(tx, of)
    await forgetTodayWhenDue(tx, of)
    const { squad, season, today } = of
    const themes = await listThemes(tx)
    const sessions = await listSessions(tx, {
      squadId: squad.id,
      from: season.firstDay,
      to: season.lastDay,
      withCancelled: false,
    })
    const held = sessions.filter(({ day }) => day < today)
    const next = sessions.find(({ day, written }) => day >= today && written === 'notWritten') ?? null
    const alsoThatDay = sessions.filter(
      ({ id, day, written }) => day === next?.day && id !== next.id && written === 'notWritten',
    )
    const planned = next && (await asPlannedAhead(tx, { session: next, season }))
    const design = planned?.designId ? await findDesign(tx, planned.designId) : null
    const round = await loadRound(tx, { of, held, design })
    const players = namesApart(await listSquadPlayers(tx, squad.id))
    const unwritten = held.filter(({ written }) => written === 'notWritten').reverse()
    const taps = await countPitchEvents(
      tx,
      [...unwritten, ...(next ? [next] : [])].map(({ id }) => id),
    )
    return {
      frame: await loadFrame(tx, viewer, squad.id),
      squad,
      today,
      next: next && {
        ...shownSession(next),
        isTapped: taps.has(next.id),
        isPlanned: (await listPlanned(tx, [next.id])).has(next.id),
        design: design && { id: design.id, name: design.name },
        themeName: themes.find(({ id }) => id === (planned?.themeId ?? design?.themeId))?.name ?? null,
      },
      alsoThatDay: alsoThatDay.map(shownSession),
      toWrite: unwritten.map((session) => ({ ...shownSession(session), isTapped: taps.has(session.id) })),
      ...(await loadCures(tx, { of, round, themes, players })),
      players: players.map(({ id, name }) => ({ id, name })),
    }
  })
}

function shownSession({ id, kind, day, title, startsAt }: Session): ShownSession {
  return { id, kind, day, title, startsAt }
}

/** What the next practice can offer; without a design of its own, what the last practice with one offered. */
async function loadRound(
  tx: ClubTx,
  { of, held, design }: { of: SquadSeason; held: readonly Session[]; design: PracticeDesign | null },
): Promise<RoundToGive | null> {
  const days = daysSoFar(of, null)
  const medianTurnSeconds = days ? await findMedianTurnSeconds(tx, { squadId: of.squad.id, ...days }) : null
  if (medianTurnSeconds === null) return null
  const lastDesignId = held.filter(({ designId }) => designId !== null).at(-1)?.designId
  const used = design ?? (lastDesignId ? await findDesign(tx, lastDesignId) : null)
  const round = used && longestRound(used.rounds)
  return round && { turns: round.turnCount, stations: round.stations.length, medianTurnSeconds }
}

type OpenFlags = {
  readonly of: SquadSeason
  readonly round: RoundToGive | null
  readonly themes: readonly Theme[]
  /** By name. */
  readonly players: readonly Player[]
}

async function loadCures(
  tx: ClubTx,
  { of, round, themes, players }: OpenFlags,
): Promise<Pick<TodayBook, 'cures' | 'openFlags'>> {
  const names = subjectNames({ themes, terms: of.season.terms })
  const open: readonly FlagState[] = await listFlagStates(tx, {
    squadIds: [of.squad.id],
    seasonId: of.season.id,
    statuses: ['open'],
  })
  // Who gains most from a round comes first in it; on a page players stand by name.
  const place = new Map(players.map(({ id }, index) => [id, index]))
  const byName = (a: string, b: string) => (place.get(a) ?? 0) - (place.get(b) ?? 0)
  const cures = groupByCure(open, round).map((cure) => ({
    cure: { ...cure, playerIds: cure.playerIds.toSorted(byName) },
    flags: (cure.kind === 'round' ? [...cure.clears, ...cure.starts] : cure.flags)
      .flatMap((flag) => {
        const told = tellFlag(flag, names)
        return told ? [{ playerId: flag.playerId, told }] : []
      })
      .toSorted((a, b) => byName(a.playerId, b.playerId)),
  }))
  return { cures, openFlags: open.filter((flag) => !tellFlag(flag, names)?.isQuiet).length }
}
