import type { AreaShape } from '#practice/design'
import { shapeText } from '#practice/shape-text'
import type { SeatRole } from '#practice/turn'

type Point = { readonly x: number; readonly y: number }

/** One area as it lies on the ground, in metres from the corner of the whole. The attackers play to `to`. */
export type LaidArea = Point & {
  /** Place in the round's list, from 0. */
  readonly station: number
  readonly lengthM: number
  readonly widthM: number
  readonly to: 'right' | 'left' | 'up'
  /** A goal at the end attacked; without one a line to reach. */
  readonly hasGoal: boolean
  /** A goal at the other end too: with two keepers. */
  readonly hasGoalBehind: boolean
  readonly places: readonly (Point & { readonly role: SeatRole })[]
}

type Whole = { readonly areaLengthM: number; readonly areaWidthM: number; readonly isMirrored: boolean }
type Box = Point & { readonly lengthM: number; readonly widthM: number }

/**
 * The areas of a round side by side, filling the whole: as nearly as long as one and a half times their width. Mirrored,
 * each half has the same ones and plays to the line between the halves, where the goals stand.
 */
export function layAreas(whole: Whole, stations: readonly AreaShape[]): readonly LaidArea[] {
  const { areaLengthM, areaWidthM } = whole
  if (!whole.isMirrored || stations.length % 2 === 1) {
    const boxes = boxesIn({ x: 0, y: 0, lengthM: areaLengthM, widthM: areaWidthM }, stations.length)
    return stations.map((shape, station) => laid(shape, { station, box: boxes[station] as Box, to: null }))
  }
  const half = stations.length / 2
  const column = (x: number) =>
    Array.from({ length: half }, (_, row) => ({
      x,
      y: (row * areaWidthM) / half,
      lengthM: areaLengthM / 2,
      widthM: areaWidthM / half,
    }))
  const [left, right] = [column(0), column(areaLengthM / 2)]
  // Alike ones face each other.
  const paired = stations
    .map((shape, station) => ({ shape, station }))
    .toSorted(
      (one, other) =>
        shapeText(one.shape).localeCompare(shapeText(other.shape)) || one.station - other.station,
    )
  return paired.map(({ shape, station }, index) => {
    const isLeft = index % 2 === 0
    const box = (isLeft ? left : right)[Math.floor(index / 2)] as Box
    return laid(shape, { station, box, to: isLeft ? 'right' : 'left' })
  })
}

const wishedRatio = 1.5

function boxesIn(whole: Box, count: number): readonly Box[] {
  const rows = Array.from({ length: count }, (_, index) => index + 1).filter((row) => count % row === 0)
  const strain = (row: number) => {
    const sides = [whole.widthM / row, (whole.lengthM * row) / count]
    return Math.abs(Math.log(Math.max(...sides) / Math.min(...sides) / wishedRatio))
  }
  const best = rows.toSorted((one, other) => strain(one) - strain(other))[0] ?? 1
  const columns = count / best
  const [lengthM, widthM] = [whole.lengthM / columns, whole.widthM / best]
  return Array.from({ length: count }, (_, index) => ({
    x: whole.x + (index % columns) * lengthM,
    y: whole.y + Math.floor(index / columns) * widthM,
    lengthM,
    widthM,
  }))
}

type Where = { readonly station: number; readonly box: Box; readonly to: LaidArea['to'] | null }

/** How far along the way to goal each role starts, of 1. */
const along: Readonly<Record<SeatRole, number>> = { attack: 0.26, defend: 0.66, keep: 0.9 }

function laid(shape: AreaShape, { station, box, to }: Where): LaidArea {
  const way = to ?? (box.lengthM >= box.widthM ? 'right' : 'up')
  const field = (['attack', 'defend'] as const).flatMap((role) =>
    evenly(shape[role]).map((v) => ({ role, ...onGround(box, way, { u: along[role], v }) })),
  )
  // Of two keepers one stands at each end.
  const behind = Math.floor(shape.keep / 2)
  const keepers = [
    ...evenly(shape.keep - behind).map((v) => ({ u: along.keep, v })),
    ...evenly(behind).map((v) => ({ u: 1 - along.keep, v })),
  ].map((at) => ({ role: 'keep' as const, ...onGround(box, way, at) }))
  return {
    ...box,
    station,
    to: way,
    hasGoal: shape.keep > 0,
    hasGoalBehind: behind > 0,
    places: [...field, ...keepers],
  }
}

function evenly(count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => (index + 1) / (count + 1))
}

/** `u` along the way attacked, `v` across it, both of 1. */
function onGround(
  box: Box,
  way: LaidArea['to'],
  { u, v }: { readonly u: number; readonly v: number },
): Point {
  if (way === 'up') return { x: box.x + v * box.lengthM, y: box.y + (1 - u) * box.widthM }
  const x = way === 'right' ? u : 1 - u
  return { x: box.x + x * box.lengthM, y: box.y + v * box.widthM }
}
