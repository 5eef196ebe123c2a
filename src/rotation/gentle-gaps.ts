import { fairSeconds, noSeconds } from '#rotation/fair-seconds'
import {
  type ColumnSeconds,
  presentAt,
  type RotationColumn,
  type RotationProblem,
  seatsOfTurn,
} from '#rotation/problem'

/** By how much (of 1) an even share in one practice may be raised or lowered to catch up. */
const half = 0.5
const gentle = ['attack', 'defend'] as const
const situations = ['outnumbering', 'level', 'outnumbered'] as const

export type GentleGaps = {
  /** The request with as much of each gap as this practice is asked to close. */
  readonly problem: RotationProblem
  /** For each player, what is left for later practices: carried in − asked to close now, seconds. */
  readonly later: readonly ColumnSeconds[]
}

/**
 * Catching up without anybody noticing: what is carried in is cut so that nobody is to get less than half or more than
 * one and a half times its even share of attack, of defence, and of each situation in this practice; what others are to
 * get more or less for it is cut in step. What is cut off attack and defence is cut off waiting the other way, as far as
 * nobody is to wait for less than half or more than one and a half times its even share of that either: being kept from
 * catching up at once is no reason to stand about. Where more are to be in goal than may, nobody is due anything yet, and
 * every gap stays: that clash is for others to say.
 */
export function gentleGaps(problem: RotationProblem): GentleGaps {
  if (problem.turns.some((turn, index) => seatsOfTurn(turn, 'keep') > ableAt(problem, index)))
    return { problem, later: problem.players.map(() => noSeconds) }
  const due = fairSeconds(problem)
  const gaps = problem.players.map(({ gap }, index) => cutGap(gap, due[index] ?? gap))
  const factors = new Map(cutColumns.map((column) => [column, balancing(problem, gaps, column)]))
  const players = problem.players.map((own, index) => ({
    ...own,
    gap: gentleGap(own.gap, { cut: gaps[index] ?? own.gap, factors, fair: due[index] ?? own.gap }),
  }))
  return {
    problem: { ...problem, players },
    later: problem.players.map(({ gap }, index) => minus(gap, players[index]?.gap ?? gap)),
  }
}

function ableAt(problem: RotationProblem, turn: number): number {
  return presentAt(problem, turn).filter((player) => problem.players[player]?.keeps).length
}

const cutColumns = [...gentle, ...situations]

/** A gap with no more left in each column than may be caught up in one practice. */
function cutGap(gap: ColumnSeconds, fair: ColumnSeconds): ColumnSeconds {
  const own: Record<RotationColumn, number> = { ...gap }
  for (const column of cutColumns) {
    const most = half * fair[column]
    own[column] = Math.max(-most, Math.min(most, gap[column]))
  }
  return own
}

type Balancing = { readonly above: number; readonly below: number }

/**
 * What one gets more, others get less. Where much was cut off one who is far behind, all others would still be asked to
 * give up theirs, and nobody would be there to take it but that one, beyond what is gentle: so theirs is cut in step.
 */
function balancing(
  problem: RotationProblem,
  cut: readonly ColumnSeconds[],
  column: RotationColumn,
): Balancing {
  const before = problem.players.reduce((sum, { gap }) => sum + gap[column], 0)
  const above = cut.reduce((sum, gap) => sum + Math.max(0, gap[column]), 0)
  const below = cut.reduce((sum, gap) => sum + Math.max(0, -gap[column]), 0)
  const tooMuch = above - below - before
  const part = (all: number, less: number) => (less <= 0 || all === 0 ? 1 : Math.max(0, 1 - less / all))
  return { above: part(above, tooMuch), below: part(below, -tooMuch) }
}

function gentleGap(
  gap: ColumnSeconds,
  of: {
    readonly cut: ColumnSeconds
    readonly factors: ReadonlyMap<RotationColumn, Balancing>
    readonly fair: ColumnSeconds
  },
): ColumnSeconds {
  const own: Record<RotationColumn, number> = { ...of.cut }
  for (const column of cutColumns) {
    const { above = 1, below = 1 } = of.factors.get(column) ?? {}
    own[column] *= own[column] > 0 ? above : below
  }
  for (const column of gentle) own.rest += gap[column] - own[column]
  const most = half * of.fair.rest
  own.rest = Math.max(-most, Math.min(most, own.rest))
  return own
}

function minus(one: ColumnSeconds, other: ColumnSeconds): ColumnSeconds {
  const left: Record<RotationColumn, number> = { ...one }
  for (const column of Object.keys(left) as RotationColumn[]) left[column] = one[column] - other[column]
  return left
}

/** A gap smaller than this, in seconds, is none. */
const nothing = 1

/**
 * Which part (of 1) of a gap a practice closes in which a player got `seconds` of a role and was due `fair`: 1 also where
 * it goes beyond, 0 where it widens it; null: there was no gap.
 */
export function closedShare(
  gap: number,
  got: { readonly seconds: number; readonly fair: number },
): number | null {
  if (Math.abs(gap) < nothing) return null
  return Math.max(0, Math.min(1, (got.fair - got.seconds) / gap))
}

const parts = [
  [0, 'nothing of it'],
  [1 / 10, 'a tenth'],
  [1 / 5, 'a fifth'],
  [1 / 4, 'a quarter'],
  [1 / 3, 'a third'],
  [1 / 2, 'half'],
  [2 / 3, 'two thirds'],
  [3 / 4, 'three quarters'],
  [9 / 10, 'nearly all'],
  [1, 'all of it'],
] as const

/** A part of 1 in a word: "a third". */
export function sayPart(share: number): string {
  const nearest = parts.reduce((best, own) =>
    Math.abs(own[0] - share) < Math.abs(best[0] - share) ? own : best,
  )
  return nearest[1]
}
