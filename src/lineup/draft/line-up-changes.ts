import type { Seconds } from '#common/time'
import type { LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'

/** What changes at one time: who comes off, who comes on and where, who moves to another line. */
export type LineUpChange = {
  /** Seconds into the period. */
  readonly at: Seconds
  readonly off: readonly PlayerId[]
  readonly on: readonly { readonly playerId: PlayerId; readonly line: Line }[]
  readonly moves: readonly { readonly playerId: PlayerId; readonly line: Line }[]
}

export type PeriodOfLineUp = {
  /** From 0. */
  readonly period: number
  readonly seconds: Seconds
  /** Who begins it and where, in the order of the lines' players. */
  readonly begins: readonly { readonly playerId: PlayerId; readonly line: Line }[]
  /** Against the end of the period before; nothing in the first. */
  readonly atBreak: Omit<LineUpChange, 'at'> | null
  /** Inside the period, in order of time. */
  readonly changes: readonly LineUpChange[]
}

/** A line-up as it is read out: who begins each period, and what changes when. */
export function changesOfLineUp(problem: LineUpProblem, plan: LineUpPlan): readonly PeriodOfLineUp[] {
  const periods = [...new Set(problem.windows.map(({ period }) => period))]
  return periods.map((period) => {
    const own = problem.windows.flatMap((window, index) => (window.period === period ? [index] : []))
    const first = own[0] ?? 0
    const start = problem.windows[first]?.start ?? 0
    const changes = own.slice(1).map((index) => ({
      at: (problem.windows[index]?.start ?? 0) - start,
      ...changeAt(problem, plan, index),
    }))
    return {
      period,
      seconds: (problem.windows[own.at(-1) ?? 0]?.end ?? 0) - start,
      begins: placesIn(problem, plan, first),
      atBreak: first === 0 ? null : changeAt(problem, plan, first),
      changes: changes.filter(({ off, on, moves }) => off.length + on.length + moves.length > 0),
    }
  })
}

function placesIn(problem: LineUpProblem, plan: LineUpPlan, window: number) {
  return problem.players.flatMap(({ id }, player) => {
    const line = plan[player]?.[window] ?? null
    return line === null ? [] : [{ playerId: id, line }]
  })
}

function changeAt(problem: LineUpProblem, plan: LineUpPlan, window: number): Omit<LineUpChange, 'at'> {
  const moved = problem.players.map(({ id }, player) => ({
    playerId: id,
    was: plan[player]?.[window - 1] ?? null,
    line: plan[player]?.[window] ?? null,
  }))
  return {
    off: moved.flatMap(({ playerId, was, line }) => (was !== null && line === null ? [playerId] : [])),
    on: moved.flatMap(({ playerId, was, line }) =>
      was === null && line !== null ? [{ playerId, line }] : [],
    ),
    moves: moved.flatMap(({ playerId, was, line }) =>
      was !== null && line !== null && was !== line ? [{ playerId, line }] : [],
    ),
  }
}
