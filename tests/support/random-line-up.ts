import {
  type LineUpPlayer,
  type LineUpProblem,
  type LineUpWindow,
  noRules,
  notRunning,
} from '#lineup/problem'
import { lineWishes, noWishes } from '#match/format/line-wish'
import type { LinePlaces } from '#match/format/match-format'
import { type SeededRandom, seededRandom } from './seeded-random'

export type RandomLineUpWish = {
  /** Players alike: all there throughout, all may keep, owed nothing, no wishes. Otherwise each has its own. */
  readonly areEqual?: boolean
  readonly players?: number
  readonly aSide?: number
  readonly periods?: number
}

/**
 * A line-up like those that matches ask for: 8 to 18 players, 5 to 11 a side, 2 to 4 periods of 2 to 4 windows. With
 * players of their own: late, early, not keeping goal, owed time, with wishes, pairs and held places. Mostly possible,
 * not always; the same for the same seed.
 */
export function randomLineUp(seed: number, wish: RandomLineUpWish = {}): LineUpProblem {
  const random = seededRandom(seed * 104_729 + 11)
  const aSide = wish.aSide ?? random.pick([5, 6, 7, 8, 9, 11])
  const count = wish.players ?? random.whole(Math.max(8, aSide), Math.min(18, aSide * 2))
  const periods = wish.periods ?? random.pick([2, 2, 3, 4])
  const spare = Math.min(2, count - aSide)
  const windows = windowsOf(random, { periods, places: placesOf(random, aSide) })
  const shares = [0, 0.5, 0.5, 0.75]
  const asked = { windows, areEqual: wish.areEqual ?? false, share: random.pick(shares) }
  const players = Array.from({ length: count }, (_, index) =>
    playerOf(random, { ...asked, index, mayMiss: index < spare }),
  )
  const longest = Math.max(...windows.map(({ start, end }) => end - start))
  return {
    windows,
    players,
    rules: {
      ...noRules,
      keeperForPeriod: random.chance(0.6),
      mostKeeperPeriods: random.chance(0.2) ? 2 : null,
      leastSpellSeconds: random.chance(0.4) ? longest + 1 : 0,
      longestOffSeconds: random.chance(0.3) ? longest * 2 : null,
      mostChanges: random.chance(0.2) ? random.whole(4, 16) : null,
    },
    apart: !asked.areEqual && random.chance(0.3) ? [[count - 1, count - 2]] : [],
    together: !asked.areEqual && random.chance(0.2) ? [[count - 3, count - 4]] : [],
    fixed:
      !asked.areEqual && random.chance(0.3)
        ? [{ player: random.whole(spare, count - 1), window: 0, place: random.pick(['on', 'off'] as const) }]
        : [],
    hasStart: true,
  }
}

function placesOf(random: SeededRandom, aSide: number): LinePlaces {
  const field = aSide - 1
  const back = random.whole(1, Math.max(1, Math.floor(field / 2)))
  const forward = random.whole(1, Math.max(1, Math.floor((field - back) / 2)))
  return { keeper: 1, back, middle: field - back - forward, forward }
}

function windowsOf(
  random: SeededRandom,
  asked: { readonly periods: number; readonly places: LinePlaces },
): readonly LineUpWindow[] {
  const inPeriod = asked.periods === 2 ? random.whole(2, 4) : random.whole(2, 3)
  const lengths = Array.from({ length: inPeriod }, () => random.pick([240, 300, 300, 300, 360]))
  const windows: LineUpWindow[] = []
  let at = 0
  for (let period = 0; period < asked.periods; period += 1) {
    for (const length of lengths) {
      windows.push({ period, start: at, end: at + length, places: asked.places })
      at += length
    }
  }
  return windows
}

function playerOf(
  random: SeededRandom,
  asked: {
    readonly index: number
    readonly windows: readonly LineUpWindow[]
    readonly areEqual: boolean
    readonly share: number
    readonly mayMiss: boolean
  },
): LineUpPlayer {
  const { index, windows, areEqual, share, mayMiss } = asked
  const whole = windows.at(-1)?.end ?? 0
  const [from, to] = areEqual || !mayMiss ? [0, windows.length] : thereFrom(random, windows.length)
  const there = windows.slice(from, to).reduce((sum, { start, end }) => sum + end - start, 0)
  const own = {
    id: `p${String(index + 1).padStart(2, '0')}`,
    isThere: windows.map((_, window) => from <= window && window < to),
    leastSeconds: Math.ceil(share * there),
    mostSeconds: null,
    running: notRunning,
  }
  if (areEqual) {
    return {
      ...own,
      keeps: true,
      owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
      wishes: noWishes,
      metSeconds: { back: 0, middle: 0, forward: 0 },
    }
  }
  const keeps = index % 4 === 3 || random.chance(0.35)
  const met = () => random.whole(0, 6000)
  const wishFor = () => (random.chance(0.75) ? 'open' : random.pick(lineWishes))
  const mostSeconds = random.chance(0.05) ? Math.floor(whole * 0.6) : null
  return {
    ...own,
    mostSeconds,
    leastSeconds: Math.min(own.leastSeconds, mostSeconds ?? own.leastSeconds),
    keeps,
    owed: {
      playSeconds: random.whole(-9000, 9000) / 10,
      keepSeconds: keeps ? random.whole(-6000, 6000) / 10 : 0,
      starts: random.whole(-150, 150) / 100,
    },
    wishes: { back: wishFor(), middle: wishFor(), forward: wishFor() },
    metSeconds: { back: met(), middle: met(), forward: met() },
  }
}

function thereFrom(random: SeededRandom, count: number): readonly [number, number] {
  const middle = random.whole(1, count - 1)
  if (random.chance(0.5)) return [middle, count]
  return random.chance(0.5) ? [0, middle] : [0, count]
}
