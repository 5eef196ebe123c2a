import { describe, expect, it } from 'vitest'
import { attendancesOf } from '#ahead/chance/attendances'
import { chanceWord } from '#ahead/chance/chance-word'
import type { ChanceInside, Chances } from '#ahead/chance/chances'
import { chancesInSlices } from '#ahead/chance/chances-in-slices'
import { hardestInSlices } from '#ahead/chance/hardest-in-slices'
import { inOneGo } from '#ahead/chance/in-one-go'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { noSeats } from '#ahead/seat-column'
import { noSeconds } from '#rotation/fair-seconds'
import { type ColumnSeconds, rotationColumns } from '#rotation/problem'
import { binomialAtMost } from '../../support/binomial'
import { clopperPearsonInterval } from '../../support/clopper-pearson'
import { plainAhead, plainPlayer } from '../../support/plain-ahead'
import { planInTurn, playedBefore } from '../../support/plan-in-turn'
import { randomAhead } from '../../support/random-ahead'

const chancesOf = (...of: Parameters<typeof chancesInSlices>) => inOneGo(chancesInSlices(...of))
const hardestToLose = (...of: Parameters<typeof hardestInSlices>) => inOneGo(hardestInSlices(...of))

/** Six players and five practices; ten times it is open whether one comes. */
function fewOpen(seed: number): { readonly problem: AheadProblem; readonly plan: AheadPlan } {
  const whole = playedBefore(randomAhead(seed, { players: 6, practices: 5, themes: 4, designs: 4, rules: 0 }))
  const problem: AheadProblem = {
    ...whole,
    practices: whole.practices.map((practice) => ({
      ...practice,
      comes: practice.comes.map((_, player) => (player < 2 ? 0.6 + 0.2 * player : 1)),
    })),
  }
  return { problem, plan: planInTurn(problem) }
}

const everyChance = ({ plan, carryOn }: Chances): readonly ChanceInside[] =>
  [plan, ...(carryOn ? [carryOn] : [])].flatMap(({ players, everyone }) => [
    everyone,
    ...players.flatMap(({ all, seats, themes, columns, byTheme }) => [
      all,
      seats,
      themes,
      ...Object.values(columns),
      ...byTheme,
    ]),
  ])

describe('chances that are drawn', () => {
  it.each([1, 2])('are those counted out over every way to come and stay away (%i)', (seed) => {
    const { problem, plan } = fewOpen(seed)
    const exact = chancesOf(problem, plan, { seed, draws: 1024 })
    const drawn = chancesOf(problem, plan, { seed, draws: 1023 })
    expect([exact.isExact, exact.played]).toEqual([true, 1024])
    expect([drawn.isExact, drawn.played]).toEqual([false, 1023])
    const [truth, guesses] = [everyChance(exact), everyChance(drawn)]
    // All of them hold at once 999 times in 1,000, were the draws not the same every time (Bonferroni).
    const level = 1 - 0.001 / truth.length
    guesses.forEach(({ chance }, at) => {
      const { low, high } = clopperPearsonInterval({ hits: Math.round(chance * 1023), tries: 1023 }, level)
      expect(truth[at]?.chance).toBeGreaterThanOrEqual(low - 1e-9)
      expect(truth[at]?.chance).toBeLessThanOrEqual(high + 1e-9)
    })
    // It is no test where nothing is open.
    expect(truth.filter(({ chance }) => chance > 0.01 && chance < 0.99).length).toBeGreaterThan(3)
  })

  it('are the same for the same seed, and others for another', () => {
    const { problem, plan } = fewOpen(1)
    const drawn = (seed: number) => everyChance(chancesOf(problem, plan, { seed, draws: 150 }))
    expect(drawn(4)).toEqual(drawn(4))
    expect(drawn(4)).not.toEqual(drawn(5))
  })

  it('say how far they are done, and may be stopped between two steps', () => {
    const { problem, plan } = fewOpen(1)
    const slices = chancesInSlices(problem, plan, { seed: 1, draws: 100 })
    const parts = [slices.next().value, slices.next().value]
    expect(parts).toEqual([0.2, 0.4])
  })

  it('lie within their own intervals', () => {
    const { problem, plan } = fewOpen(2)
    for (const { chance, low, high, word } of everyChance(chancesOf(problem, plan, { seed: 1, draws: 80 }))) {
      expect(low).toBeLessThanOrEqual(chance)
      expect(high).toBeGreaterThanOrEqual(chance)
      expect(high - low).toBeGreaterThan(0)
      expect(word).toBe(chanceWord(chance))
    }
  })
})

describe('chances of several things together', () => {
  it('are no more than those of each alone, and no less than they must be', () => {
    const { problem, plan } = fewOpen(3)
    const chances = chancesOf(problem, plan, { seed: 2, draws: 100 })
    const expectTogether = (together: ChanceInside, alone: readonly ChanceInside[]) => {
      const missed = alone.reduce((sum, { chance }) => sum + 1 - chance, 0)
      expect(together.chance).toBeLessThanOrEqual(Math.min(...alone.map(({ chance }) => chance)) + 1e-9)
      expect(together.chance).toBeGreaterThanOrEqual(1 - missed - 1e-9)
    }
    for (const way of [chances.plan, chances.carryOn]) {
      if (!way) throw new Error('Something was played so far.')
      expectTogether(
        way.everyone,
        way.players.map(({ all }) => all),
      )
      for (const { all, seats, themes, columns, byTheme } of way.players) {
        expectTogether(all, [seats, themes])
        expectTogether(seats, Object.values(columns))
        expectTogether(themes, byTheme)
      }
      expect(way.meanInside.all).toBeCloseTo(
        way.players.reduce((sum, { all }) => sum + all.chance, 0),
        9,
      )
    }
  })
})

describe('chances that can be known', () => {
  it('are certain where it is certain who comes, and played through once', () => {
    const { problem, plan } = fewOpen(1)
    const practices = problem.practices.map((practice) => ({
      ...practice,
      comes: practice.comes.map(() => 1),
    }))
    const chances = chancesOf({ ...problem, practices }, plan, { seed: 1, draws: 1 })
    expect([chances.isExact, chances.played]).toEqual([true, 1])
    for (const { chance, low, high } of everyChance(chances)) {
      expect([0, 1]).toContain(chance)
      expect([low, high]).toEqual([chance, chance])
    }
  })

  it.each([1, 2, 3, 4, 5, 6])(
    'are of a binomial distribution where a player must come to %i of six practices',
    (needed) => {
      // Each practice that it comes to brings 100 seconds, as much as is gentle, of the 600 that it is short.
      const chances = chancesOf(...shortOf({ practices: 6, tolerance: 600 - 100 * needed, comes: 0.7 }))
      const expected = 1 - binomialAtMost(needed - 1, { tries: 6, chance: 0.7 })
      expect(chances.isExact).toBe(true)
      expect(chances.plan.players[0]?.columns.attack.chance).toBeCloseTo(expected, 9)
      expect(chances.plan.everyone.chance).toBeCloseTo(expected, 9)
      // Carried on, what is short only grows.
      expect(chances.carryOn?.players[0]?.columns.attack.chance).toBe(0)
    },
  )

  it('are never less where more is tolerated: players come and stay away alike', () => {
    const { problem, plan } = fewOpen(3)
    const chances = (factor: number) => {
      const players = problem.players.map((player) => ({
        ...player,
        themeTolerance: player.themeTolerance * factor,
        tolerance: Object.fromEntries(
          rotationColumns.map((column) => [column, player.tolerance[column] * factor]),
        ) as typeof player.tolerance,
      }))
      return everyChance(chancesOf({ ...problem, players }, plan, { seed: 1, draws: 200 }))
    }
    const narrow = chances(0.6)
    chances(1.2).forEach(({ chance }, at) => {
      expect(chance).toBeGreaterThanOrEqual(narrow[at]?.chance ?? 0)
    })
  })
})

describe('chances of nothing much', () => {
  const { problem, plan } = fewOpen(1)

  it('are how everyone stands where no practice is left', () => {
    const none = { ...problem, practices: [] }
    const chances = chancesOf(none, { choices: [], leans: [] }, { seed: 1, draws: 10 })
    expect([chances.isExact, chances.played]).toEqual([true, 1])
    problem.players.forEach(({ gap, tolerance }, player) => {
      const isInside = -gap.attack <= tolerance.attack
      expect(chances.plan.players[player]?.columns.attack.chance).toBe(isInside ? 1 : 0)
    })
    expect(chances.carryOn).toEqual(chances.plan)
    expect(hardestToLose(none, { choices: [], leans: [] }, { seed: 1, draws: 10 }).lost).toEqual([])
  })

  it('are so too where nothing is chosen, and where nobody comes', () => {
    const none = chancesOf({ ...problem, practices: [] }, { choices: [], leans: [] }, { seed: 1, draws: 10 })
    const nothing = { ...plan, choices: plan.choices.map(() => -1) }
    expect(chancesOf(problem, nothing, { seed: 1, draws: 1024 }).plan.meanInside).toEqual(
      none.plan.meanInside,
    )
    const empty = problem.practices.map((practice) => ({ ...practice, comes: practice.comes.map(() => 0) }))
    const alone = chancesOf({ ...problem, practices: empty }, plan, { seed: 1, draws: 10 })
    expect(alone.plan.meanInside).toEqual(none.plan.meanInside)
  })

  it('are none of anybody where there is nobody', () => {
    const practices = problem.practices.map((practice) => ({ ...practice, comes: [] }))
    const nobody = { ...problem, practices, players: [] }
    const chances = chancesOf(nobody, { ...plan, leans: [] }, { seed: 1, draws: 10 })
    expect([chances.plan.players, chances.carryOn, chances.plan.everyone.chance]).toEqual([[], null, 1])
  })
})

describe('ways to come and stay away', () => {
  it('are each gone through once, and together certain', () => {
    const { problem } = fewOpen(1)
    const { isExact, count, each } = attendancesOf(problem, { seed: 1, draws: 2000 })
    const seen = new Map<string, number>()
    for (const { came, weight } of each()) seen.set(came.join(''), weight)
    expect([isExact, count, seen.size]).toEqual([true, 1024, 1024])
    expect([...seen.values()].reduce((all, own) => all + own, 0)).toBeCloseTo(1, 9)
  })

  it('are drawn as often as they are likely', () => {
    const { problem } = fewOpen(1)
    const draws = 1000
    const came = Array.from({ length: 6 }, () => 0)
    for (const way of attendancesOf(problem, { seed: 9, draws }).each())
      for (let player = 0; player < 6; player++) came[player] = (came[player] ?? 0) + (way.came[player] ?? 0)
    came.forEach((hits, player) => {
      const { low, high } = clopperPearsonInterval({ hits, tries: draws }, 0.999)
      const chance = problem.practices[0]?.comes[player] ?? 0
      expect(chance).toBeGreaterThanOrEqual(low)
      expect(chance).toBeLessThanOrEqual(high)
    })
  })

  it('stay as they are for all others where one chance changes', () => {
    const { problem } = fewOpen(1)
    const away = problem.practices.map((practice) => ({
      ...practice,
      comes: practice.comes.map((chance, player) => (player === 0 ? 0 : chance)),
    }))
    const lists = (practices: AheadProblem['practices']) => {
      const all: number[][] = []
      for (const { came } of attendancesOf({ ...problem, practices }, { seed: 3, draws: 20 }).each())
        all.push([...came].filter((_own, at) => at % 6 !== 0))
      return all
    }
    expect(lists(away)).toHaveLength(20)
    expect(lists(away)).toEqual(lists(problem.practices))
  })
})

describe('the practice that is hardest to lose', () => {
  it('is the one that nobody can make up for', () => {
    // All six are needed, and in the third there is twice as much to be had.
    const [problem, plan, options] = shortOf({ practices: 6, tolerance: 0, comes: 0.9 })
    const practices = problem.practices.map((practice, at) =>
      at === 2 ? { ...practice, offers: practice.offers.map((offer) => doubled(offer)) } : practice,
    )
    const leans = plan.leans.map((own, at) => (at === 2 ? own.map((lean) => times(lean, 2)) : own))
    const needing = (tolerance: number): AheadProblem => ({
      ...problem,
      practices,
      players: problem.players.map((player) => ({
        ...player,
        tolerance: { ...player.tolerance, attack: tolerance },
      })),
    })
    const { hardest, lost, isExact } = hardestToLose(needing(200), { ...plan, leans }, options)
    expect([isExact, hardest?.by, hardest?.lost.practice]).toEqual([true, 'inside', 2])
    // 700 to be had in seven parts of 100, the third worth two: four needed.
    const comes = 0.9
    const five = (needed: number) => 1 - binomialAtMost(needed - 1, { tries: 5, chance: comes })
    const whole = comes * five(2) + (1 - comes) * five(4)
    expect(lost[2]?.fewerInside.mean).toBeCloseTo(whole - five(4), 9)
    const four = (needed: number) => 1 - binomialAtMost(needed - 1, { tries: 4, chance: comes })
    expect(lost[0]?.fewerInside.mean).toBeCloseTo(whole - (comes * four(2) + (1 - comes) * four(4)), 9)
  })

  it('is none where losing one costs nothing', () => {
    const [problem, plan, options] = shortOf({ practices: 3, tolerance: 900, comes: 0.9 })
    expect(hardestToLose(problem, plan, options).hardest).toBeNull()
  })

  it('costs in draws what it costs counted out', () => {
    const { problem, plan } = fewOpen(2)
    const exact = hardestToLose(problem, plan, { seed: 1, draws: 1024 })
    const drawn = hardestToLose(problem, plan, { seed: 1, draws: 700 })
    exact.lost.forEach(({ fewerInside, moreOutside }, at) => {
      for (const [truth, guess] of [
        [fewerInside, drawn.lost[at]?.fewerInside],
        [moreOutside, drawn.lost[at]?.moreOutside],
      ] as const) {
        // Twice the reach of 95 in 100: about one in 10,000 of a normal distribution lies outside.
        const reach = 2 * ((guess?.high ?? 0) - (guess?.mean ?? 0))
        expect(Math.abs(truth.mean - (guess?.mean ?? 0))).toBeLessThanOrEqual(reach + 1e-9)
      }
    })
  })
})

describe('words for chances', () => {
  it('are likely from two in three on, unlikely up to one in three', () => {
    expect([1, 2 / 3, 0.66, 0.5, 0.34, 1 / 3, 0].map(chanceWord)).toEqual([
      'likely',
      'likely',
      'even',
      'even',
      'even',
      'unlikely',
      'unlikely',
    ])
  })
})

/**
 * One player short of attacking by 600 seconds, and one over who always comes and gives to it what is gentle: 100 seconds of
 * 400 even ones in each practice that it comes to.
 */
function shortOf({
  practices,
  tolerance,
  comes,
}: {
  readonly practices: number
  readonly tolerance: number
  readonly comes: number
}): [AheadProblem, AheadPlan, { readonly seed: number; readonly draws: number }] {
  const wide = Object.fromEntries(rotationColumns.map((column) => [column, 1e9])) as ColumnSeconds
  const players = [-600, 600].map((attack, at) =>
    plainPlayer({
      id: `p${at}`,
      keeps: false,
      gap: { ...noSeconds, attack, rest: -attack },
      tolerance: { ...wide, attack: tolerance },
      gapPlayedSeconds: 6000,
      playedSeconds: 6000,
    }),
  )
  const lean = { ...noSeats, attackAlone: 100 }
  const plain = plainAhead({
    weeks: Array.from({ length: practices }, (_, at) => at + 1),
    themes: [],
    problem: { players, gentle: { least: 0.75, most: 1.25 } },
  })
  // Whoever comes attacks for 400 seconds of 1,000: where one comes alone, it has the places of two.
  const offers = [{ theme: 0, design: 0, seats: { ...noSeats, attackAlone: 800 }, liveSeconds: 1000 }]
  const problem: AheadProblem = {
    ...plain,
    practices: plain.practices.map((own) => ({ ...own, offers, comes: [comes, 1] })),
  }
  const leans = problem.practices.map(() => [lean, times(lean, -1)])
  return [problem, { choices: problem.practices.map(() => 0), leans }, { seed: 1, draws: 64 }]
}

const times = (seats: typeof noSeats, by: number) =>
  Object.fromEntries(Object.entries(seats).map(([name, own]) => [name, own * by])) as typeof noSeats

const doubled = (offer: AheadProblem['practices'][number]['offers'][number]) => ({
  ...offer,
  seats: times(offer.seats, 2),
  liveSeconds: offer.liveSeconds * 2,
})
