import type { AheadProblem } from '#ahead/problem'
import { seededChance } from '#common/chance'

/** One way in which everyone may come or stay away, and how much it weighs. The list is written anew for the next one. */
export type Attendance = {
  /** By practice and player: 1 came, 0 did not. */
  readonly came: Uint8Array
  readonly weight: number
}

export type Attendances = {
  readonly isExact: boolean
  readonly count: number
  /** Each way in turn. Players come or stay away independently of each other and of other days. */
  readonly each: () => Generator<Attendance, void>
}

type Coming = Pick<AheadProblem, 'practices' | 'players'>

/** Every way where there are no more of them than draws were asked for, else so many drawn by chance. */
export function attendancesOf(
  problem: Coming,
  { seed, draws }: { readonly seed: number; readonly draws: number },
): Attendances {
  const chances = problem.practices.flatMap(({ comes }) =>
    problem.players.map((_, player) => comes[player] ?? 0),
  )
  const open = chances.flatMap((chance, place) => (chance > 0 && chance < 1 ? [place] : []))
  const ways = 2 ** open.length
  return ways <= draws
    ? { isExact: true, count: ways, each: () => everyWay(chances, open) }
    : { isExact: false, count: draws, each: () => drawnWays(chances, { seed, draws }) }
}

function* everyWay(chances: readonly number[], open: readonly number[]): Generator<Attendance, void> {
  const came = Uint8Array.from(chances, (chance) => (chance >= 1 ? 1 : 0))
  for (let way = 0; way < 2 ** open.length; way++) {
    let weight = 1
    open.forEach((place, bit) => {
      const chance = chances[place] ?? 0
      const isThere = Math.floor(way / 2 ** bit) % 2 === 1
      came[place] = isThere ? 1 : 0
      weight *= isThere ? chance : 1 - chance
    })
    yield { came, weight }
  }
}

/** A number is drawn for every player and practice, certain or not: a chance that changes leaves all other draws as they are. */
function* drawnWays(
  chances: readonly number[],
  { seed, draws }: { readonly seed: number; readonly draws: number },
): Generator<Attendance, void> {
  const chance = seededChance(seed)
  const came = new Uint8Array(chances.length)
  for (let draw = 0; draw < draws; draw++) {
    for (let place = 0; place < chances.length; place++)
      came[place] = chance() < (chances[place] ?? 0) ? 1 : 0
    yield { came, weight: 1 }
  }
}
