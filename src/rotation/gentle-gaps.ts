import { fairSeconds, noSeconds } from '#rotation/fair-seconds'
import {
  type ColumnSeconds,
  presentAt,
  type RotationColumn,
  type RotationProblem,
  seatsOfTurn,
} from '#rotation/problem'

/** By how much (of 1) an even share of attack or defence in one practice may be raised or lowered to catch up. */
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
 * one and a half times its even share of attack, of defence, and of each situation in this practice. What is cut off
 * attack and defence is cut off waiting the other way, so that each player's gaps add up to what they did before. Where
 * more are to be in goal than may, nobody is due anything yet, and every gap stays: that clash is for others to say.
 */
export function gentleGaps(problem: RotationProblem): GentleGaps {
  if (problem.turns.some((turn, index) => seatsOfTurn(turn, 'keep') > ableAt(problem, index)))
    return { problem, later: problem.players.map(() => noSeconds) }
  const due = fairSeconds(problem)
  const players = problem.players.map((own, index) => ({
    ...own,
    gap: gentleGap(own.gap, due[index] ?? own.gap),
  }))
  return {
    problem: { ...problem, players },
    later: problem.players.map(({ gap }, index) => minus(gap, players[index]?.gap ?? gap)),
  }
}

function ableAt(problem: RotationProblem, turn: number): number {
  return presentAt(problem, turn).filter((player) => problem.players[player]?.keeps).length
}

function gentleGap(gap: ColumnSeconds, fair: ColumnSeconds): ColumnSeconds {
  const own: Record<RotationColumn, number> = { ...gap }
  for (const column of [...gentle, ...situations]) {
    const most = half * fair[column]
    own[column] = Math.max(-most, Math.min(most, gap[column]))
  }
  for (const column of gentle) own.rest += gap[column] - own[column]
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
