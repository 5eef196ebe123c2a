import { situationsAt } from '#exposure/situation'
import type { SeatColumn, Seats, Span } from '#exposure/span'
import type { Practice } from '#practice/practice'
import type { Station, Turn } from '#practice/turn'
import { type JoinedPresence, joinPresence, listPresent } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'

/** The turns of a practice as spans, one each, in their order. */
export function practiceSpans(practice: Pick<Practice, 'register' | 'turns'>): readonly Span[] {
  const joined = joinPresence(practice.register)
  return practice.turns.map((turn) => spanOfTurn(turn, joined))
}

function spanOfTurn(turn: Turn, joined: JoinedPresence): Span {
  const present = listPresent(joined, { from: turn.start, to: turn.end })
  const seats = seatsOf(turn.stations)
  const seated = new Set(seats.flatMap((s) => s.playerIds))
  return {
    start: turn.start,
    end: turn.end,
    themeId: turn.themeId,
    present,
    seats,
    resting: present.filter((playerId) => !seated.has(playerId)),
    turnCount: 1,
    continuesWait: turn.continuesWait ?? false,
    continuesTurn: turn.continuesTurn ?? false,
  }
}

function seatsOf(stations: readonly Station[]): readonly Seats[] {
  const byColumn = new Map<string, { column: SeatColumn; playerIds: PlayerId[] }>()
  const seat = (column: SeatColumn, playerIds: readonly PlayerId[]) => {
    if (playerIds.length === 0) return
    const key = `${column.role} ${column.situation}`
    const found = byColumn.get(key) ?? { column, playerIds: [] }
    found.playerIds.push(...playerIds)
    byColumn.set(key, found)
  }
  for (const station of stations) {
    const situation = situationsAt({ attackers: station.attack.length, defenders: station.defend.length })
    seat({ role: 'attack', situation: situation.attack, line: null }, station.attack)
    seat({ role: 'defend', situation: situation.defend, line: null }, station.defend)
    seat({ role: 'keep', situation: null, line: null }, station.keep)
  }
  return [...byColumn.values()]
}
