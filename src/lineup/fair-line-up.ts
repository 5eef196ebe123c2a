import { fairKeepShare, fairSeatShare, type Places } from '#fairness/fair-share'
import { type LineUpProblem, type LineUpWindow, windowSeconds } from '#lineup/problem'

/** What each player is due of a line-up, in the order of the players: seconds on, of them in goal; part of a start. */
export type FairLineUp = {
  readonly play: readonly number[]
  readonly keep: readonly number[]
  readonly starts: readonly number[]
}

/**
 * The book's own fair share, window by window, among those who are there: so a plan is judged as the book will judge it.
 * Where fewer may keep goal than places need, nobody is due any of it.
 */
export function fairLineUp(problem: LineUpProblem): FairLineUp {
  const play = problem.players.map(() => 0)
  const keep = problem.players.map(() => 0)
  const starts = problem.players.map(() => 0)
  for (const [index, window] of problem.windows.entries()) {
    const due = dueOf(problem, window, index)
    for (const [player, share] of due.entries()) {
      play[player] = (play[player] ?? 0) + (share.keep + share.field) * windowSeconds(window)
      keep[player] = (keep[player] ?? 0) + share.keep * windowSeconds(window)
      if (index === 0 && problem.hasStart) starts[player] = share.keep + share.field
    }
  }
  return { play, keep, starts }
}

function dueOf(problem: LineUpProblem, window: LineUpWindow, index: number) {
  const there = problem.players.filter(({ isThere }) => isThere[index])
  const able = there.filter(({ keeps }) => keeps).length
  const { keeper, back, middle, forward } = window.places
  const places: Places = {
    present: there.length,
    keeperSeats: Math.min(keeper, able),
    able,
  }
  const seats = Math.min(back + middle + forward, there.length - places.keeperSeats)
  return problem.players.map((player) => {
    if (!player.isThere[index]) return { keep: 0, field: 0 }
    return {
      keep: fairKeepShare(places, player.keeps),
      field: fairSeatShare(places, { seats, isAble: player.keeps }),
    }
  })
}
