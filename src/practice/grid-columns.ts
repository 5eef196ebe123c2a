import type { DesignRound } from '#practice/design'
import type { GridColumn, PracticeGrid } from '#practice/grid'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

type Dealt = { readonly rounds: readonly DesignRound[]; readonly themeId: ThemeId | null }

/** The rounds of a design as columns of single turns. */
export function gridColumnsOf({ rounds, themeId }: Dealt): readonly GridColumn[] {
  return rounds.flatMap((round, index) =>
    Array.from({ length: round.turnCount }, (_, turn) => ({
      ...columnOf(round, themeId),
      id: `r${index + 1}.${turn + 1}`,
      turnCount: 1,
    })),
  )
}

/** The rounds of a design as one column each, in which players take turns on the design's places. */
export function roundColumnsOf({ rounds, themeId }: Dealt): readonly GridColumn[] {
  return rounds.map((round, index) => ({
    ...columnOf(round, themeId),
    id: `r${index + 1}`,
    atATime: round.stations.length > 0 ? round.stations : null,
  }))
}

/** A round nobody has planned: six turns of forty-five seconds in one area. */
export function plainColumn(number: number, themeId: ThemeId | null): GridColumn {
  return {
    id: `c${number}`,
    title: `Round ${number}`,
    turnCount: 6,
    turnSeconds: 45,
    gapSeconds: 15,
    startsAt: null,
    areas: 1,
    atATime: null,
    themeId,
    chosenBy: null,
    isFreeGame: false,
    continuesWait: false,
    continuesTurn: false,
  }
}

/** A free game of some minutes, at the end of a practice. */
export function freeGameColumn(number: number, minutes: number): GridColumn {
  return {
    ...plainColumn(number, null),
    title: 'Free game',
    turnCount: 1,
    turnSeconds: minutes * 60,
    gapSeconds: 0,
    isFreeGame: true,
  }
}

/** A grid with no marks yet. */
export function emptyGrid(playerIds: readonly PlayerId[], columns: readonly GridColumn[]): PracticeGrid {
  return { columns, rows: playerIds.map((playerId) => ({ playerId, marks: columns.map(() => '' as const) })) }
}

function columnOf(round: DesignRound, themeId: ThemeId | null): GridColumn {
  return {
    ...plainColumn(1, themeId),
    title: round.title,
    turnCount: round.turnCount,
    turnSeconds: round.turnSeconds,
    gapSeconds: round.gapSeconds,
    areas: Math.max(1, round.stations.length),
  }
}
