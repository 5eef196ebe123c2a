import fc from 'fast-check'
import type { Role, Situation } from '#exposure/column'
import type { AccountLine, PresenceAccount, SessionAccount } from '#fairness/account'
import { accountPractice } from '#fairness/account-practice'
import { emptyKindStanding, type KindStanding } from '#fairness/standing'
import { noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { Player } from '#squad/player'
import type { Membership } from '#squad/squad'

export function aPlayer(player: Partial<Player> & { id: string }): Player {
  return { name: `Player ${player.id}`, keeps: true, wantsToKeep: false, ...player }
}

export function aMembership(
  playerId: string,
  firstDay = '2026-08-01',
  lastDay: string | null = null,
): Membership {
  return { playerId, firstDay, lastDay }
}

/** A row of an account: what was got and due in one column. `full` and `openGoal` are the due unless said. */
export type Row = {
  role: Role
  situation?: Situation
  themeId?: string
  seconds?: number
  turns?: number
  fair?: number
  fairTurns?: number
  full?: number
  openGoal?: number
}

export type At = {
  rows?: readonly Row[]
  /** Seconds there; the sum of the rows' seconds unless said. */
  live?: number
  isGuest?: boolean
  longestRestTurns?: number
  turnsPresent?: number
}

/** A session's account, written out by hand: who was there with what. */
export function anAccount(session: {
  id: string
  day: string
  kind?: SessionAccount['kind']
  written?: SessionAccount['written']
  players: Readonly<Record<string, At>>
}): SessionAccount {
  const entries = Object.entries(session.players)
  const presences = entries.map(([playerId, at]) => presenceOf(playerId, at))
  return {
    sessionId: session.id,
    day: session.day,
    kind: session.kind ?? 'practice',
    written: session.written ?? 'tapped',
    liveSeconds: Math.max(0, ...presences.map((presence) => presence.liveSeconds)),
    lines: entries.flatMap(([playerId, at]) =>
      (at.rows ?? []).map((row) => lineOf(playerId, row, !at.isGuest)),
    ),
    presences,
  }
}

function presenceOf(playerId: string, at: At): PresenceAccount {
  const rows = at.rows ?? []
  const liveSeconds = at.live ?? rows.reduce((sum, row) => sum + (row.seconds ?? 0), 0)
  return {
    playerId,
    isMember: !at.isGuest,
    attendance: liveSeconds > 0 ? 'here' : 'away',
    liveSeconds,
    turnsPresent: at.turnsPresent ?? rows.reduce((sum, row) => sum + (row.turns ?? 0), 0),
    longestRestTurns: at.longestRestTurns ?? 0,
  }
}

function lineOf(playerId: string, row: Row, isMember: boolean): AccountLine {
  const fairSeconds = row.fair ?? 0
  return {
    playerId,
    role: row.role,
    situation: row.situation ?? null,
    themeId: row.themeId ?? null,
    line: null,
    seconds: row.seconds ?? 0,
    turns: row.turns ?? 0,
    fairSeconds,
    fairTurns: row.fairTurns ?? 0,
    fullFairSeconds: isMember ? (row.full ?? fairSeconds) : 0,
    openGoalFairSeconds: row.openGoal ?? fairSeconds,
  }
}

/** A figure of which only what a test is about is said; due is the fair share unless said. */
export function aFigure(figure: Partial<StandingFigure>): StandingFigure {
  return {
    ...noFigure,
    dueSeconds: figure.fairSeconds ?? 0,
    dueTurns: figure.fairTurns ?? 0,
    ...figure,
  }
}

/** A standing of which only what a test is about is said. */
export function aStanding(
  standing: Partial<Omit<KindStanding, 'roles' | 'situations'>> & {
    roles?: Partial<KindStanding['roles']>
    situations?: Partial<KindStanding['situations']>
  },
): KindStanding {
  return {
    ...emptyKindStanding,
    ...standing,
    roles: { ...emptyKindStanding.roles, ...standing.roles },
    situations: { ...emptyKindStanding.situations, ...standing.situations },
  }
}

/** Days from 1 September 2026 on. */
export function dayNumber(index: number): string {
  return new Date(Date.UTC(2026, 8, 1 + index)).toISOString().slice(0, 10)
}

const turnSeconds = 90

type Draw = {
  absent: number
  order: readonly number[]
  theme: string | null
  seats: [number, number, number]
}

const aDraw = (players: number): fc.Arbitrary<Draw> =>
  fc.record({
    // One bit a player.
    absent: fc.nat(2 ** players - 1),
    order: fc.shuffledSubarray(
      Array.from({ length: players }, (_, index) => index),
      { minLength: players },
    ),
    theme: fc.constantFrom(null, 'passing', 'pressing'),
    seats: fc.tuple(fc.nat(2), fc.nat(2), fc.nat(1)),
  })

/**
 * Seasons of practices folded by the book itself: players who come and go, stations of any size, two themes, one who
 * does not keep. `ids` names the players; the last is a guest when `hasGuest`.
 */
export function someSeasons(of: { players: number; hasGuest?: boolean }): fc.Arbitrary<Season> {
  const practice = fc.array(aDraw(of.players), { minLength: 1, maxLength: 6 })
  return fc.array(practice, { minLength: 1, maxLength: 8 }).map((practices) => ({ ...of, practices }))
}

export type Season = { players: number; hasGuest?: boolean; practices: readonly (readonly Draw[])[] }

export function accountsOf(season: Season, ids: readonly string[]): readonly SessionAccount[] {
  const nameOf = (index: number) => ids[index] as string
  const members = season.hasGuest ? ids.slice(0, -1) : ids
  return season.practices.map((draws, index) => {
    const isAbsent = (draw: Draw, player: number) => ((draw.absent >> player) & 1) === 1
    const turns = draws.map((draw, turn) => {
      const there = draw.order.filter((player) => !isAbsent(draw, player)).map(nameOf)
      const [attack, defend, keep] = draw.seats
      return {
        start: turn * turnSeconds,
        end: (turn + 1) * turnSeconds,
        themeId: draw.theme,
        stations: [
          {
            attack: there.slice(0, attack),
            defend: there.slice(attack, attack + defend),
            keep: there.slice(attack + defend, attack + defend + keep),
          },
        ],
      }
    })
    const register = draws.flatMap((draw, turn) =>
      draw.order
        .filter((player) => !isAbsent(draw, player))
        .map((player) => ({
          playerId: nameOf(player),
          from: turn * turnSeconds,
          to: (turn + 1) * turnSeconds,
        })),
    )
    return accountPractice(
      { id: `s${index}`, day: dayNumber(index), lengthSeconds: null, register, turns },
      { written: 'tapped', able: new Set(ids.slice(1)), members: new Set(members), middleAttackShare: 0.5 },
    )
  })
}
