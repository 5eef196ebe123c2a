import type { GridColumn, PracticeGrid } from '#practice/grid'
import { type Mark, markOf } from '#practice/grid-mark'
import { seatRoles, type Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** A turn that stands, and the event that wrote it. */
export type WrittenTurn = { readonly eventId: string; readonly turn: Turn }

/**
 * Written turns opened again as a grid, one column a turn, each starting when it started and known by its event. Written
 * again unchanged it gives the same turns. The two halves of a free game are two columns of their own: a correction may
 * change one of them.
 */
export function gridOfTurns(written: readonly WrittenTurn[], playerIds: readonly PlayerId[]): PracticeGrid {
  const places = written.map(({ turn }) => marksOfTurn(turn))
  return {
    columns: written.map(columnOfTurn),
    rows: playerIds.map((playerId) => ({
      playerId,
      marks: places.map((marks) => marks.get(playerId) ?? ''),
    })),
  }
}

function columnOfTurn({ eventId, turn }: WrittenTurn): GridColumn {
  return {
    id: eventId,
    title: turn.round ?? '',
    turnCount: 1,
    turnSeconds: turn.end - turn.start,
    gapSeconds: 0,
    startsAt: turn.start,
    areas: Math.max(1, turn.stations.length),
    atATime: null,
    themeId: turn.themeId,
    chosenBy: turn.chosenBy ?? null,
    isFreeGame: false,
    continuesWait: turn.continuesWait ?? false,
    continuesTurn: turn.continuesTurn ?? false,
  }
}

function marksOfTurn(turn: Turn): ReadonlyMap<PlayerId, Mark> {
  const marks = new Map<PlayerId, Mark>()
  turn.stations.forEach((station, index) => {
    const area = turn.stations.length > 1 ? index + 1 : null
    for (const role of seatRoles) {
      for (const playerId of station[role]) marks.set(playerId, markOf({ role, area }))
    }
  })
  return marks
}
