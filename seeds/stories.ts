import type { Day } from '#common/time'
import type { SquadKey } from './club'
import { demoAdjustments } from './club'
import type { PlayerKey } from './names'
import { playerId } from './names'
import type { InMind } from './tally'

/** What the season of one player is meant to show, and where the numbers come from. */
export const stories = {
  /** Sent to defend when it was due to attack, whenever somebody else decided than a plan. */
  shortChanged: 'adaeze',
  /** Away nearly half the time, treated evenly when there. */
  missedALot: 'freya',
  /** Attacks as much as anyone, never with the numbers in favour. */
  neverOutnumbering: 'elif',
  /** The only one of its squad who is willing to keep. */
  soleKeeper: 'amara',
  /** Put in goal, though asked not to be, when the sole keeper is away. */
  unwillingKeeper: 'bogdan',
  /** Was offered attack and passed at the last three practices. */
  passes: 'hana',
  fewerTurns: 'dev',
} as const satisfies Record<string, PlayerKey>

/** Players of one squad who came to play with another, or visitors of no squad, by session. */
export const guestsAt: Readonly<Record<string, readonly PlayerKey[]>> = {
  'underTen/practice/2026-05-19': ['pia'],
  'underTen/practice/2026-06-02': ['pia'],
  'underTwelve/practice/2026-04-29': ['luca'],
  'underTwelve/match/2026-05-02': ['luca'],
}

/** Days that the sole keeper was away. */
const soleKeeperAway: readonly string[] = [
  'underTwelve/practice/2025-10-08',
  'underTwelve/practice/2026-01-28',
  'underTwelve/practice/2026-03-18',
  'underTwelve/practice/2026-05-06',
  'underTwelve/match/2025-11-15',
  'underTwelve/match/2026-02-28',
]

/** Two who keep promise to come to each match of the under-tens. */
const keepersPromised: Readonly<Record<string, readonly PlayerKey[]>> = {
  'underTen/match/2025-09-20': ['bao', 'goran'],
  'underTen/match/2025-10-11': ['dilnoza', 'kiri'],
  'underTen/match/2025-11-08': ['bao', 'kiri'],
  'underTen/match/2025-11-29': ['dilnoza', 'goran'],
  'underTen/match/2026-01-17': ['bao', 'dilnoza'],
  'underTen/match/2026-02-07': ['goran', 'kiri'],
  'underTen/match/2026-03-07': ['bao', 'goran'],
  'underTen/match/2026-04-25': ['dilnoza', 'kiri'],
  'underTen/match/2026-05-16': ['bao', 'kiri'],
}

/** Who must be there, or must not, for a story to be true. Null: as it falls. */
export function mustCome(key: PlayerKey, sessionKey: string): boolean | null {
  if (key === stories.soleKeeper) return !soleKeeperAway.includes(sessionKey)
  if (key === stories.unwillingKeeper && soleKeeperAway.includes(sessionKey)) return true
  if (keepersPromised[sessionKey]?.includes(key)) return true
  if (incidents.some((incident) => incident.player === key && incident.session === sessionKey)) return true
  if (passesAt.some((pass) => pass.player === key && pass.session === sessionKey)) return true
  return null
}

export type Incident = {
  readonly session: string
  readonly player: PlayerKey
  /** The state from `from` on, in seconds; until `to` where one is given, here again after it. */
  readonly state: 'notPlaying' | 'out'
  readonly from: number
  readonly to: number | null
}

export const incidents: readonly Incident[] = [
  { session: 'underTen/practice/2025-11-18', player: 'mina', state: 'notPlaying', from: 0, to: null },
  { session: 'underTwelve/practice/2026-02-04', player: 'gwen', state: 'notPlaying', from: 0, to: 1500 },
  { session: 'underTwelve/practice/2026-02-11', player: 'jamal', state: 'out', from: 1480, to: null },
  { session: 'underTen/practice/2026-03-17', player: 'ines', state: 'out', from: 2010, to: null },
]

export type Pass = { readonly session: string; readonly player: PlayerKey; readonly lengthSeconds: number }

export const passesAt: readonly Pass[] = [
  { session: 'underTen/practice/2026-01-13', player: 'jiho', lengthSeconds: 45 },
  { session: 'underTen/practice/2026-05-12', player: stories.passes, lengthSeconds: 50 },
  { session: 'underTen/practice/2026-05-19', player: stories.passes, lengthSeconds: 60 },
  { session: 'underTen/practice/2026-06-02', player: stories.passes, lengthSeconds: 50 },
]

/** Sessions in which a turn was written with the sides the wrong way round, and corrected. */
export const correctedIn: readonly string[] = [
  'underTen/practice/2025-10-14',
  'underTwelve/practice/2026-01-14',
]

/** How likely a player comes when nothing else decides. */
export function comingChance(key: PlayerKey): number {
  return key === stories.missedALot ? 0.55 : 0.92
}

/** What the coach has in mind for a player at a session that was not dealt from a plan. */
export function inMindOf(id: string, day: Day): InMind {
  const agreed = demoAdjustments.find((line) => line.playerId === id && line.firstDay <= day)
  return { attack: id === playerId(stories.shortChanged) ? 0.68 : 1, playing: agreed?.dueShare ?? 1 }
}

/** A plan deals evenly, but keeps what was agreed with a family. */
export function inMindAsPlanned(id: string, day: Day): InMind {
  return { ...inMindOf(id, day), attack: 1 }
}

/** Who may be asked to keep goal in a squad, in the order in which the coach would think of them. */
export function keepersOf(squad: SquadKey): readonly PlayerKey[] {
  return squad === 'underTen'
    ? ['bao', 'dilnoza', 'goran', 'kiri']
    : [stories.soleKeeper, stories.unwillingKeeper]
}
