import type { Chance } from '#common/chance'
import { decay } from '#common/decay'
import { rowFields, rowLength } from '#lineup/row-values'
import { drawSwap, type Swap } from '#lineup/swap'
import type { SwapBoard } from '#lineup/swap-board'

/**
 * What a step of each field weighs while the search is still loose: broken rules far above promises, those above
 * minutes, and so on down, so that a falling temperature settles them in their order.
 */
const weights = new Float64Array(rowLength)
weights[rowFields.broken] = 3e6
weights[rowFields.promise] = 1e4
weights[rowFields.minutes] = 1
weights[rowFields.goal] = 2e-4
weights[rowFields.starts] = 10
weights[rowFields.lines] = 5e-3
weights[rowFields.changes] = 0.1
weights[rowFields.tidy] = 5e-3

const hottest = 3e4
/** Where rules must be broken on the way to keep them all. */
const hottestOfAll = 3e6
const coldest = 3e-3
/** Beyond so many temperatures a step is as good as never taken: it is not looked at. */
const hopeless = 12
/** What the goals below minutes may make up for, as they are weighed. */
const mostBelowMinutes = 300

/** Simulated annealing by swaps, a fixed number of steps; leaves the board at the best that was met. */
export function annealLineUp(
  swaps: SwapBoard,
  run: { readonly steps: number; readonly chance: Chance; readonly isHot: boolean },
) {
  const { board } = swaps
  const first = run.isHot ? hottestOfAll : hottest
  const cooling = (coldest / first) ** (1 / run.steps)
  let temperature = first
  let cost = weighed(swaps.total())
  let best = cost
  let bestPlaces = board.places.slice()
  for (let step = 0; step < run.steps; step += 1) {
    temperature *= cooling
    const swap = drawSwap(board, run.chance)
    if (!swaps.mayTry(swap)) continue
    if (swaps.isClean() && swaps.lessEven(swap) > hopeless * temperature + mostBelowMinutes) continue
    const more = weighed(swaps.tryOut(swap))
    if (more > 0 && run.chance() >= decay(more / temperature)) {
      swaps.undo(swap)
      continue
    }
    swaps.keep(swap)
    cost += more
    if (cost < best - 1e-9) {
      best = cost
      bestPlaces = board.places.slice()
    }
  }
  board.places.set(bestPlaces)
}

/** Takes every swap that is better goal by goal until none is; a fixed number of tries at most. */
export function settleLineUp(swaps: SwapBoard, mostTries: number) {
  const { playerCount } = swaps.board
  const times = timesOf(swaps.board)
  let tries = 0
  let isBetter = true
  while (isBetter) {
    isBetter = false
    for (const time of times) {
      for (let one = 0; one < playerCount; one += 1) {
        for (let other = one + 1; other < playerCount; other += 1) {
          const swap: Swap = { one, other, third: null, onlyLines: false, ...time }
          if (!swaps.mayTry(swap)) continue
          tries += 1
          if (tries > mostTries) return
          if (isLess(swaps.tryOut(swap))) {
            swaps.keep(swap)
            isBetter = true
          } else swaps.undo(swap)
        }
      }
    }
  }
}

/** Every stretch of windows inside a period, then every two single windows. */
function timesOf({ windowCount, period }: SwapBoard['board']): readonly Pick<Swap, 'range' | 'second'>[] {
  const times: Pick<Swap, 'range' | 'second'>[] = []
  for (let first = 0; first < windowCount; first += 1)
    for (let last = first; last < windowCount && period[last] === period[first]; last += 1)
      times.push({ range: { first, last }, second: null })
  for (let one = 0; one < windowCount; one += 1)
    for (let other = one + 1; other < windowCount; other += 1)
      times.push({ range: { first: one, last: one }, second: { first: other, last: other } })
  return times
}

function weighed(fields: Float64Array): number {
  let sum = 0
  for (let field = 0; field < rowLength; field += 1)
    sum += (weights[field] as number) * (fields[field] as number)
  return sum
}

/** Whether a change betters the first goal that it touches; comings on have no goal of their own. */
function isLess(change: Float64Array): boolean {
  for (let field = 0; field < rowFields.comings; field += 1) {
    const more = change[field] as number
    if (more < -1e-7) return true
    if (more > 1e-7) return false
  }
  return false
}
