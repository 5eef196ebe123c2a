import { resting, seatPlace } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/**
 * Blocks of equal size in which every two of `players` meet exactly once; a row is a set of blocks that can be played
 * at the same time. Public mathematics: the plane of order 2, the affine planes of order 3 and 4, the difference set
 * {0, 1, 3, 9} mod 13, and Kirkman's fifteen schoolgirls (T. P. Kirkman, 1850). Lists for 7, 9 and 15 as in Sage's
 * `combinat/designs`, which cites the CRC Handbook of Combinatorial Designs, 2nd ed. 2007; 16 built over GF(4).
 */
type Design = { readonly players: number; readonly rows: readonly (readonly (readonly number[])[])[] }

/** Points as digits of base 16. */
function design(players: number, rows: string): Design {
  const blocksOf = (row: string) =>
    row.split(' ').map((block) => [...block].map((point) => Number.parseInt(point, 16)))
  return { players, rows: rows.split(', ').map(blocksOf) }
}

export const mixingDesigns: readonly Design[] = [
  design(7, '013, 024, 056, 126, 145, 235, 346'),
  design(9, '015 267 348, 168 357 024, 147 036 258, 456 078 123'),
  design(
    13,
    Array.from({ length: 13 }, (_, add) =>
      [0, 1, 3, 9].map((point) => ((point + add) % 13).toString(16)).join(''),
    ).join(', '),
  ),
  design(
    15,
    '07e 139 26b 458 acd, 18e 24a 03c 569 7bd, 29e 35b 14d 06a 78c, 3ae 46c 257 01b 89d, 4be 05d 368 12c 79a, 5ce 167 049 23d 8ab, 6de 028 15a 347 9bc',
  ),
  design(
    16,
    '048c 159d 26ae 37bf, 05af 14be 278d 369c, 06bd 17ac 249f 358e, 079e 168f 25bc 34ad, 0123 4567 89ab cdef',
  ),
]

/**
 * The plan in which every two players are on one side exactly once, where the request has the numbers of a known design:
 * attackers only, everyone there throughout. Null otherwise. It looks at nothing else: whether it keeps the rules, and
 * is as fair, is for the caller to see.
 */
export function designedPlan(problem: RotationProblem): RotationPlan | null {
  const { players, turns } = problem
  if (!players.every(({ present }) => present.every((isThere) => isThere))) return null
  const stations = turns[0]?.stations.length ?? 0
  for (const { players: count, rows } of mixingDesigns) {
    const rounds = stations === 1 ? rows.flat().map((block) => [block]) : rows
    const size = rounds[0]?.[0]?.length
    const isSame =
      count === players.length &&
      rounds.length === turns.length &&
      turns.every(
        (turn) =>
          turn.stations.length === rounds[0]?.length &&
          turn.stations.every(({ attack, defend, keep }) => attack === size && defend === 0 && keep === 0),
      )
    if (isSame) return rounds.map((blocks) => placesOf(blocks, count))
  }
  return null
}

function placesOf(blocks: readonly (readonly number[])[], players: number): readonly number[] {
  const places: number[] = Array.from({ length: players }, () => resting)
  blocks.forEach((block, station) => {
    for (const player of block) places[player] = seatPlace(station, 'attack')
  })
  return places
}
