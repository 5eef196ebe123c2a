import { type LineUpBoard, offPlace } from '#lineup/line-up-board'
import type { Swap, WindowRange } from '#lineup/swap'

/** Makes a swap on the board, or takes it back. */
export function swapPlaces(board: LineUpBoard, swap: Swap, way: 'make' | 'takeBack') {
  const { one, other, third, range, second, onlyLines } = swap
  if (third === null) {
    exchange(board, [one, other], range, onlyLines)
    if (second) exchange(board, [one, other], second)
    return
  }
  const [from, to] = way === 'make' ? [one, third] : [third, one]
  exchange(board, [from, other], range)
  exchange(board, [other, to], range)
}

function exchange(
  { places, windowCount }: LineUpBoard,
  [one, other]: readonly [number, number],
  { first, last }: WindowRange,
  onlyLines = false,
) {
  for (let window = first; window <= last; window += 1) {
    const [at, to] = [one * windowCount + window, other * windowCount + window]
    const place = places[at] as number
    if (onlyLines && (place === offPlace || places[to] === offPlace)) continue
    places[at] = places[to] as number
    places[to] = place
  }
}

/** Whether each may have the places it would get, and any differ, at each time of the swap. */
export function maySwap(board: LineUpBoard, swap: Swap): boolean {
  const { one, other, third, range, second, onlyLines } = swap
  if (third !== null) return mayHandOn(board, [one, other, third], range)
  return (
    mayHandOn(board, [one, other], range, onlyLines) &&
    (second === null || mayHandOn(board, [one, other], second))
  )
}

/** Each gets the places of the next in the list, the last those of the first. */
function mayHandOn(
  { places, allowed, windowCount }: LineUpBoard,
  ring: readonly number[],
  { first, last }: WindowRange,
  onlyLines = false,
): boolean {
  let differs = false
  for (let window = first; window <= last; window += 1) {
    for (let index = 0; index < ring.length; index += 1) {
      const at = (ring[index] as number) * windowCount + window
      const from = (ring[(index + 1) % ring.length] as number) * windowCount + window
      const place = places[from] as number
      if (place === places[at]) continue
      if (onlyLines && (place === offPlace || places[at] === offPlace)) continue
      if (((allowed[at] as number) & (1 << place)) === 0) return false
      differs = true
    }
  }
  return differs
}

/** Seconds more that the first of two would play; null for three, who are not looked at. */
export function secondsGained(board: LineUpBoard, { one, other, third, range, second, onlyLines }: Swap) {
  if (third !== null) return null
  if (onlyLines) return 0
  return gainedIn(board, [one, other], range) + (second ? gainedIn(board, [one, other], second) : 0)
}

function gainedIn(
  { places, windowCount, seconds }: LineUpBoard,
  [one, other]: readonly [number, number],
  { first, last }: WindowRange,
): number {
  let gained = 0
  for (let window = first; window <= last; window += 1) {
    const isOn = places[one * windowCount + window] !== offPlace
    const comesOn = places[other * windowCount + window] !== offPlace
    if (isOn !== comesOn) gained += comesOn ? (seconds[window] as number) : -(seconds[window] as number)
  }
  return gained
}
