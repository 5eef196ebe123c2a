import type { Day } from '#common/time'
import { recordAdjustment } from '#data/adjustments'
import { newId } from '#data/ids'
import { recordKeepsChange } from '#data/keeps-changes'
import { recordSpells } from '#data/match-spells'
import { recordMemberships } from '#data/memberships'
import { recordPlayers } from '#data/players'
import { recordRegisters } from '#data/register-lines'
import { cancelSession, markWritten, recordSessions } from '#data/sessions'
import { recordThemes } from '#data/themes'
import { recordEvents } from '#data/turn-events'
import { readSeasonLog } from '#exchange/season-log'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import type { Match } from '#match/match'
import type { Practice } from '#practice/practice'
import type { Station } from '#practice/turn'
import type { Membership } from '#squad/squad'
import type { Written } from '#squad/written'
import { randomSeason, type SeasonSize } from './random-season'
import { seededRandom } from './seeded-random'
import { aRosterPlayer, aSession, aTheme, type TestClub } from './test-club'

/** A season by chance as trade values with ids that a database takes, and the squad's members, guests and agreements. */
export type RandomBook = {
  readonly practices: readonly Practice[]
  readonly matches: readonly Match[]
  /** Who might keep goal at first; whoever has a day in `turned` says otherwise from that day on. */
  readonly able: ReadonlySet<string>
  readonly turned: ReadonlyMap<string, Day>
  readonly playerIds: readonly string[]
  readonly memberships: readonly Membership[]
  readonly agreements: readonly AgreedFewerTurns[]
  readonly written: ReadonlyMap<string, Written>
  readonly cancelled: ReadonlySet<string>
}

const ways: readonly Written[] = [
  'tapped',
  'roundByRound',
  'asPlanned',
  'typedLater',
  'typedLater',
  'notWritten',
]

/** The same seed gives the same season, but for its ids. */
export function randomBook(seed: number, size: SeasonSize): RandomBook {
  const random = seededRandom(seed)
  const log = readSeasonLog(randomSeason(seed, size))
  if (!log.ok) throw new Error(`season ${seed} is refused`)
  const { players, practices, matches } = log.value
  const ids = new Map<string, string>()
  // Players and themes may have one key between them, so each kind has its own ids.
  const idOf = (kind: string) => (key: string) => {
    const name = `${kind} ${key}`
    if (!ids.has(name)) ids.set(name, newId())
    return ids.get(name) as string
  }
  const [player, theme, session] = [idOf('player'), idOf('theme'), idOf('session')]
  const withPlayer = <Row extends { readonly playerId: string }>(row: Row) => ({
    ...row,
    playerId: player(row.playerId),
  })
  const seats = ({ attack, defend, keep }: Station) => ({
    attack: attack.map(player),
    defend: defend.map(player),
    keep: keep.map(player),
  })
  const book = {
    practices: practices.map((practice) => ({
      ...practice,
      id: session(practice.id),
      register: practice.register.map(withPlayer),
      turns: practice.turns.map((turn) => ({
        ...turn,
        themeId: turn.themeId === null ? null : theme(turn.themeId),
        stations: turn.stations.map(seats),
        continuesWait: random.chance(0.2),
      })),
    })),
    matches: matches.map((match) => ({
      ...match,
      id: session(match.id),
      register: match.register.map(withPlayer),
      spells: match.spells.map(withPlayer),
    })),
  }
  const playerIds = players.map(({ id }) => player(id))
  const sessionIds = [...book.practices, ...book.matches].map(({ id }) => id)
  return {
    ...book,
    playerIds,
    able: new Set(players.filter(({ keeps }) => keeps).map(({ id }) => player(id))),
    memberships: playerIds.flatMap((playerId) =>
      membershipByChance(playerId, random.pick([0, 1, 1, 1, 1, 2, 3])),
    ),
    agreements: playerIds
      .filter(() => random.chance(0.2))
      .map((playerId) => ({
        playerId,
        dueShare: 0.6,
        firstDay: '2026-03-01',
        lastDay: random.pick([null, '2026-09-30']),
      })),
    written: new Map(sessionIds.map((id) => [id, random.pick(ways)])),
    cancelled: new Set(sessionIds.filter(() => random.chance(0.1))),
    turned: new Map(
      playerIds
        .filter(() => random.chance(0.3))
        .map((id) => [id, random.pick(['2026-03-01', '2026-06-15', '2026-10-01'])]),
    ),
  }
}

/** The first season from a seed on that has plenty of everything. */
export function richBook(seed: number): RandomBook {
  const book = randomBook(seed, { players: 12, practices: 24, turns: 12, matches: 10 })
  const isRich = book.practices.length >= 12 && book.matches.length >= 4 && book.playerIds.length >= 8
  return isRich ? book : richBook(seed + 1)
}

/** 0: a guest; 1: all year; 2: joins; 3: leaves and comes back. */
function membershipByChance(playerId: string, kind: number): readonly Membership[] {
  if (kind === 0) return []
  if (kind === 1) return [{ playerId, firstDay: '2026-01-01', lastDay: null }]
  if (kind === 2) return [{ playerId, firstDay: '2026-06-15', lastDay: null }]
  return [
    { playerId, firstDay: '2026-01-01', lastDay: '2026-04-30' },
    { playerId, firstDay: '2026-09-01', lastDay: null },
  ]
}

/** Writes a book into a squad, past the accounts: those are for the test to rebuild. */
export async function recordBook(at: TestClub, book: RandomBook): Promise<void> {
  const { squadId, coach: by } = at
  const { practices, matches } = book
  const themeIds = new Set(practices.flatMap(({ turns }) => turns.flatMap(({ themeId }) => themeId ?? [])))
  await at.run(async (tx) => {
    await recordPlayers(
      tx,
      book.playerIds.map((id) => aRosterPlayer({ id, keeps: book.able.has(id) })),
    )
    for (const [playerId, day] of book.turned) {
      const keeps = !book.able.has(playerId)
      await recordKeepsChange(tx, { playerId, day, keeps, today: '2027-01-01', by })
    }
    await recordMemberships(tx, { squadId, memberships: book.memberships })
    for (const agreed of book.agreements) {
      await recordAdjustment(tx, { ...agreed, id: newId(), kind: 'fewerTurns' })
    }
    await recordThemes(
      tx,
      [...themeIds].map((id) => aTheme({ id })),
    )
    await recordSessions(tx, [
      ...practices.map(({ id, day, lengthSeconds }) => aSession({ squadId, id, day, lengthSeconds })),
      ...matches.map(({ id, day, periods }) => aSession({ squadId, id, day, kind: 'match', periods })),
    ])
    await recordRegisters(tx, {
      registers: [...practices, ...matches].map(({ id, register }) => ({
        sessionId: id,
        lines: register.map((line) => ({ ...line, state: 'here' as const })),
      })),
      by,
    })
    await recordEvents(tx, {
      practices: practices.map(({ id, turns }) => ({
        sessionId: id,
        events: turns.map((turn) => ({ kind: 'turn' as const, id: newId(), turn })),
      })),
      by,
    })
    await recordSpells(tx, { matches: matches.map(({ id, spells }) => ({ sessionId: id, spells })), by })
    for (const [sessionId, written] of book.written)
      await markWritten(tx, { sessionIds: [sessionId], written, by })
    for (const sessionId of book.cancelled) await cancelSession(tx, { sessionId, by })
  })
}
