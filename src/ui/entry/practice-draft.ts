import { gridAsPlanned, noExceptions, type PlanExceptions } from '#practice/as-planned'
import type { DesignId, PracticeDesign } from '#practice/design'
import type { GridColumn, PracticeGrid } from '#practice/grid'
import { clearAbsent } from '#practice/grid-absent'
import { emptyGrid, plainColumn, roundColumnsOf } from '#practice/grid-columns'
import { addRow } from '#practice/grid-edit'
import { type PracticeEntry, presenceOfEntry } from '#practice/practice-entry'
import type { PlayerId } from '#squad/player'
import { hereThroughout, type RegisterEntry, type RegisterSegment } from '#squad/register-segments'
import type { ThemeId } from '#themes/theme'

export const writingModes = ['grid', 'rounds', 'plan'] as const
export type WritingMode = (typeof writingModes)[number]

export type Guest = { readonly id: PlayerId; readonly name: string }

/** A player as the page of writing knows it. */
export type WritingPlayer = {
  readonly id: PlayerId
  readonly name: string
  readonly keeps: boolean
  readonly isMember: boolean
  readonly isExpected: boolean
}

/** A practice while it is typed in. */
export type PracticeDraft = {
  readonly mode: WritingMode
  readonly grid: PracticeGrid
  readonly register: readonly RegisterEntry[]
  readonly lengthSeconds: number | null
  readonly guests: readonly Guest[]
  readonly designId: DesignId | null
  readonly exceptions: PlanExceptions
  /** Whose being out for today was taken back, each after a second answer. */
  readonly takenBack: readonly PlayerId[]
  /** Passes that are corrected away. */
  readonly voidPasses: readonly string[]
}

const firstRounds = 4

/** A practice that nobody has written yet: everyone expected is here; the design's rounds, or a few plain ones. */
export function freshDraft(known: {
  readonly players: readonly WritingPlayer[]
  readonly design: PracticeDesign | null
  readonly lengthSeconds: number | null
}): PracticeDraft {
  const playerIds = known.players.filter((player) => player.isExpected).map((player) => player.id)
  const columns = known.design
    ? roundColumnsOf(known.design)
    : Array.from({ length: firstRounds }, (_, index) => plainColumn(index + 1, null))
  return {
    mode: 'grid',
    grid: emptyGrid(playerIds, columns),
    register: playerIds.map((playerId) => ({ playerId, segments: hereThroughout })),
    lengthSeconds: known.lengthSeconds,
    guests: [],
    designId: known.design?.id ?? null,
    exceptions: noExceptions,
    takenBack: [],
    voidPasses: [],
  }
}

/** The grid that would be written: what was typed, or the plan with its exceptions. */
export function gridOfDraft(
  draft: PracticeDraft,
  known: { readonly players: readonly WritingPlayer[]; readonly designs: readonly PracticeDesign[] },
): PracticeGrid {
  if (draft.mode !== 'plan') return draft.grid
  const design = known.designs.find(({ id }) => id === draft.designId)
  if (!design)
    return emptyGrid(
      draft.grid.rows.map(({ playerId }) => playerId),
      [],
    )
  const keeps = new Map(known.players.map((player) => [player.id, player.keeps]))
  const planned = { rounds: design.rounds, themeId: design.themeId, exceptions: draft.exceptions }
  const players = draft.grid.rows.map(({ playerId }) => ({
    id: playerId,
    keeps: keeps.get(playerId) ?? true,
  }))
  const end = design.rounds.reduce(
    (sum, round) => sum + round.turnCount * (round.turnSeconds + round.gapSeconds),
    0,
  )
  const register = presenceOfEntry({
    ...entryOf(draft, draft.grid),
    lengthSeconds: Math.max(end, draft.lengthSeconds ?? 0),
  })
  return gridAsPlanned({ ...planned, players, register })
}

export function entryOf(draft: PracticeDraft, grid: PracticeGrid): PracticeEntry {
  return { grid, register: draft.register, lengthSeconds: draft.lengthSeconds }
}

/** The draft with a player's register changed. Marks in rounds that the player is not there for go with it. */
export function withSegments(
  draft: PracticeDraft,
  playerId: PlayerId,
  segments: readonly RegisterSegment[],
): PracticeDraft {
  const register = draft.register.map((own) => (own.playerId === playerId ? { playerId, segments } : own))
  return withGrid({ ...draft, register }, draft.grid)
}

/** The draft with a grid, marks of who is not there left out. */
export function withGrid(draft: PracticeDraft, grid: PracticeGrid): PracticeDraft {
  return { ...draft, grid: clearAbsent(grid, presenceOfEntry(entryOf(draft, grid))) }
}

/** The draft with one more player, here throughout. */
export function withPlayer(draft: PracticeDraft, playerId: PlayerId): PracticeDraft {
  if (draft.register.some((own) => own.playerId === playerId)) return draft
  return {
    ...draft,
    grid: addRow(draft.grid, playerId),
    register: [...draft.register, { playerId, segments: hereThroughout }],
  }
}

/** The draft with a guest by name, known by an id of this page until it is written. */
export function withGuest(draft: PracticeDraft, guest: Guest): PracticeDraft {
  return { ...withPlayer(draft, guest.id), guests: [...draft.guests, guest] }
}

/** Every round changed alike, free games excepted. */
export function withAllRounds(
  draft: PracticeDraft,
  change: Partial<Pick<GridColumn, 'turnCount' | 'turnSeconds' | 'areas' | 'gapSeconds'>> & {
    readonly themeId?: ThemeId | null
  },
): PracticeDraft {
  const columns = draft.grid.columns.map((column) => (column.isFreeGame ? column : { ...column, ...change }))
  return withGrid(draft, { ...draft.grid, columns })
}

/** The next number for a column's id that no column has. */
export function nextColumnNumber({ columns }: PracticeGrid): number {
  const taken = new Set(columns.map((column) => column.id))
  let number = columns.length + 1
  while (taken.has(`c${number}`)) number += 1
  return number
}

/** What may be kept on the device: no names. */
export function withoutNames(draft: PracticeDraft): PracticeDraft {
  return { ...draft, guests: draft.guests.map((guest) => ({ ...guest, name: '' })) }
}
