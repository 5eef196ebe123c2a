import { accept, type Result, refuse } from '#common/result'
import { type Interval, secondsInMinute } from '#common/time'
import { type ColumnSetting, type Seatings, seatAllThrough, seatTakingTurns } from '#practice/column-seatings'
import { turnsOfFreeGame } from '#practice/free-game'
import type { PracticeGrid } from '#practice/grid'
import { partsOf } from '#practice/grid-absent'
import { areasOf, type Placing, placeInAreas } from '#practice/grid-areas'
import { passedRoleOf, placeOf } from '#practice/grid-mark'
import type { GridRefusal } from '#practice/grid-refusal'
import { timesOfColumns } from '#practice/grid-times'
import type { Passed } from '#practice/replay'
import type { SeatRole, Station, Turn } from '#practice/turn'
import { isPresentThroughout, type JoinedPresence, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

/** What a column comes to. A column in which nobody has a place comes to nothing. */
export type ColumnOutcome = {
  readonly turns: readonly Turn[]
  readonly passes: readonly Passed[]
  readonly refusals: readonly GridRefusal[]
}

/** What every column of the grid comes to under a register, one outcome a column, refusals beside what could be read. */
export function outcomesOfGrid(
  grid: PracticeGrid,
  register: readonly PresenceLine[],
): readonly ColumnOutcome[] {
  const presence = joinPresence(register)
  const times = timesOfColumns(grid.columns)
  const lastPlayed = new Map<PlayerId, number>()
  let turnNumber = 0
  return grid.columns.map((column, index) => {
    const marked = grid.rows.map((row) => ({ playerId: row.playerId, mark: row.marks[index] ?? '' }))
    const setting = { index, column, turns: times[index]?.turns ?? [], marked, presence }
    if (!marked.some(({ mark }) => placeOf(mark))) return { turns: [], passes: [], refusals: [] }
    const turns = turnsOfColumn(setting, lastPlayed)
    if (!turns.ok) return { turns: [], passes: [], refusals: turns.reasons }
    for (const turn of turns.value) {
      for (const playerId of seatedIn(turn)) lastPlayed.set(playerId, turnNumber)
      turnNumber += 1
    }
    const refusals = [...absences(setting), ...earlyStart(setting, times[index - 1]?.turns ?? [])]
    return { turns: turns.value, passes: passesOf(setting), refusals }
  })
}

/** The turns of a grid in order of time, and what was passed; or every reason why it cannot be written. */
export function turnsOfGrid(
  grid: PracticeGrid,
  register: readonly PresenceLine[],
): Result<{ readonly turns: readonly Turn[]; readonly passes: readonly Passed[] }, GridRefusal> {
  const outcomes = outcomesOfGrid(grid, register)
  const refusals = outcomes.flatMap((outcome) => outcome.refusals)
  if (refusals.length > 0) return refuse(...refusals)
  return accept({
    turns: outcomes.flatMap((outcome) => outcome.turns),
    passes: outcomes.flatMap((outcome) => outcome.passes),
  })
}

function turnsOfColumn(
  setting: ColumnSetting,
  lastPlayed: ReadonlyMap<PlayerId, number>,
): Result<readonly Turn[], GridRefusal> {
  const { column, turns } = setting
  if (column.isFreeGame) return turnsOfFreeGameColumn(setting)
  const seatings: Result<Seatings, GridRefusal> = column.atATime
    ? seatTakingTurns(setting, { shapes: column.atATime, lastPlayed })
    : seatAllThrough(setting)
  if (!seatings.ok) return seatings
  return accept(
    turns.map(({ from, to }, index) => ({
      start: from,
      end: to,
      themeId: column.themeId,
      stations: stationsOf(seatings.value[index] ?? []),
      round: column.title || null,
      chosenBy: column.chosenBy,
      continuesWait: column.continuesWait,
      continuesTurn: column.continuesTurn && index === 0,
    })),
  )
}

/** A free game in one column. Who is there for one half only plays in that half. */
function turnsOfFreeGameColumn({
  index,
  column,
  turns,
  marked,
  presence,
}: ColumnSetting): Result<readonly Turn[], GridRefusal> {
  if (column.turnSeconds % secondsInMinute !== 0 || column.turnSeconds === 0) {
    return refuse({ reason: 'freeGameNeedsWholeMinutes', column: index, lengthSeconds: column.turnSeconds })
  }
  const placings = placeInAreas(marked, areasOf(column, marked))
  if (!placings.ok) return refuse(...placings.reasons.map((reason) => ({ ...reason, column: index })))
  const games = stationsOf(placings.value)
  if (!games.every((game) => game.attack.length > 0 && game.defend.length > 0)) {
    return refuse({ reason: 'freeGameNeedsTwoSides', column: index })
  }
  const halves = turnsOfFreeGame({
    start: turns[0]?.from ?? 0,
    minutes: column.turnSeconds / secondsInMinute,
    games,
    themeId: column.themeId,
    round: column.title || null,
  })
  return accept(
    halves.map((half) => ({
      ...half,
      stations: half.stations.map((game) => presentOf(game, half, presence)),
    })),
  )
}

function presentOf(station: Station, turn: Pick<Turn, 'start' | 'end'>, presence: JoinedPresence): Station {
  const there = (playerIds: readonly PlayerId[]) =>
    playerIds.filter((id) => isPresentThroughout(presence, id, { from: turn.start, to: turn.end }))
  return { attack: there(station.attack), defend: there(station.defend), keep: there(station.keep) }
}

function stationsOf(placings: readonly Placing[]): readonly Station[] {
  const areas = Math.max(0, ...placings.map((place) => place.area))
  return Array.from({ length: areas }, (_, index) => {
    const here = (role: SeatRole) =>
      placings
        .filter((place) => place.area === index + 1 && place.role === role)
        .map((place) => place.playerId)
    return { attack: here('attack'), defend: here('defend'), keep: here('keep') }
  })
}

function seatedIn(turn: Turn): readonly PlayerId[] {
  return turn.stations.flatMap((station) => [...station.attack, ...station.defend, ...station.keep])
}

/** Who has a place in a column without being there for any of its turns. */
function absences({ index, column, turns, marked, presence }: ColumnSetting): readonly GridRefusal[] {
  const parts = turns.flatMap((turn) => partsOf(column, turn))
  const isThere = (playerId: PlayerId) => parts.some((turn) => isPresentThroughout(presence, playerId, turn))
  return marked
    .filter(({ playerId, mark }) => placeOf(mark) && !isThere(playerId))
    .map(({ playerId }) => ({ reason: 'notThere', column: index, playerId, turnStart: turns[0]?.from ?? 0 }))
}

function earlyStart({ index, turns }: ColumnSetting, before: readonly Interval[]): readonly GridRefusal[] {
  const end = before.at(-1)?.to ?? 0
  const start = turns[0]?.from ?? end
  return start < end ? [{ reason: 'startsTooEarly', column: index, startsAt: start, before: end }] : []
}

/** Where everyone plays throughout, a pass is for every turn of the column; where they take turns, for one. */
function passesOf({ column, turns, marked, presence }: ColumnSetting): readonly Passed[] {
  return marked.flatMap(({ playerId, mark }) => {
    const role = passedRoleOf(mark)
    if (!role) return []
    const offered = turns.filter((turn) => isPresentThroughout(presence, playerId, turn))
    const passed = column.atATime ? offered.slice(0, 1) : offered
    return passed.map(({ from, to }) => ({ playerId, role, lengthSeconds: to - from }))
  })
}
