import { describe, expect, it } from 'vitest'
import { dealerAsPlanned } from '#ahead/chance/deal-as-planned'
import { dealerAsSoFar } from '#ahead/chance/deal-as-so-far'
import { type EvenShare, shareEvenly } from '#ahead/chance/even-share'
import { practicePlayer } from '#ahead/chance/practice-player'
import { type PracticeToDeal, practicesToDeal } from '#ahead/chance/practice-to-deal'
import { columnCount, type Standing, standingNow } from '#ahead/chance/standing'
import { evenSeats } from '#ahead/even-seats'
import { expectedEnd } from '#ahead/expected-end'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { noSeats, seatColumns } from '#ahead/seat-column'
import { seatCount } from '#ahead/seat-places'
import { noSeconds } from '#rotation/fair-seconds'
import { rotationColumns } from '#rotation/problem'
import { plainAhead, plainPlayer } from '../../support/plain-ahead'
import { choicesInTurn, planInTurn, playedBefore } from '../../support/plan-in-turn'
import { randomAhead } from '../../support/random-ahead'
import { seededRandom } from '../../support/seeded-random'

const seeds = [1, 2, 3, 4]

/** The same, but that it is certain who comes. */
const certain = (problem: AheadProblem): AheadProblem => ({
  ...problem,
  practices: problem.practices.map((practice) => ({
    ...practice,
    comes: practice.comes.map((chance) => (chance > 0 ? 1 : 0)),
  })),
})

const sumOf = (list: Iterable<number>) => [...list].reduce((all, own) => all + own, 0)

describe('even shares among those who came', () => {
  it.each(seeds)('are those of the weeks ahead where it is certain who comes (%i)', (seed) => {
    const problem = certain(randomAhead(seed, { players: 12, practices: 4, rules: 0 }))
    practicesToDeal(problem, { choices: choicesInTurn(problem), leans: [] }).forEach((practice, at) => {
      const own = problem.practices[at]
      const offer = own?.offers[at % own.offers.length]
      if (!practice || !own || !offer) throw new Error('Something is chosen everywhere.')
      const here = Int32Array.from(own.comes.flatMap((chance, player) => (chance > 0 ? [player] : [])))
      const even = emptyShare()
      shareEvenly(practice, { here, count: here.length }, even)
      const wanted = sumOf(Object.values(offer.seats))
      // Fewer places where too few came for all of them.
      expect(wanted).toBeLessThanOrEqual(here.length * offer.liveSeconds)
      evenSeats(problem, own, offer).forEach((due, player) => {
        const shares = problem.players[player]?.keeps ? even.able : even.others
        if (own.comes[player] === 1)
          seatColumns.forEach((column, seat) => {
            expect(shares[seat]).toBeCloseTo(due[column], 6)
          })
      })
    })
  })

  it('are of fewer places where too few came to fill them, and nobody keeps who may not', () => {
    const even = emptyShare()
    const here = Int32Array.from([0, 1])
    shareEvenly(practiceOf({ keeps: [false, false, true] }), { here, count: 2 }, even)
    // Two people for ten minutes: all of it in play, two parts attacking to one defending.
    expect(2 * sumOf(even.others)).toBeCloseTo(1200, 9)
    expect(even.others[seatColumns.indexOf('attackLevel')]).toBeCloseTo(400, 9)
    expect(even.others[seatColumns.indexOf('keep')]).toBe(0)
  })
})

describe('a practice dealt as planned', () => {
  it.each(seeds)('ends as the plan expects where it is certain who comes (%i)', (seed) => {
    const problem = certain(randomAhead(seed, { players: 10, practices: 5, rules: 0 }))
    const plan = planInTurn(problem)
    const end = standingNow(problem)
    const play = practicePlayer(practicesToDeal(problem, plan), {
      playerCount: problem.players.length,
      deal: dealerAsPlanned(problem.players.length),
    })
    const came = Uint8Array.from(problem.practices.flatMap(({ comes }) => comes))
    problem.practices.forEach((_, at) => {
      play(at, came, end)
    })
    expectedEnd(problem, plan).forEach((expected, player) => {
      rotationColumns.forEach((column, place) => {
        expect(end.gap[player * columnCount + place]).toBeCloseTo(expected.gap[column], 3)
      })
      expect(end.played[player]).toBeCloseTo(expected.playedSeconds, 3)
      expected.themeSeconds.forEach((seconds, theme) => {
        expect(end.themes[player * problem.themes.length + theme]).toBeCloseTo(seconds, 3)
      })
    })
  })

  it('makes good what a player missed, who then comes again', () => {
    const problem = twoWho({ comes: [0.5, 1, 1], gentle: { least: 0.5, most: 1.5 } })
    const plan: AheadPlan = {
      choices: [0, 0],
      // 60 expected in each of two practices; a share may change by 150.
      leans: [0, 1].map(() => [more(60), more(-60), noSeats]),
    }
    const end = (came: readonly number[]) => endOf(problem, plan, { came, deal: dealerAsPlanned(3) })
    const attack = ({ gap }: Standing, player: number) => gap[player * columnCount]
    expect(attack(end([0, 1, 1, 1, 1, 1]), 0)).toBeGreaterThan(-300 + 130)
    expect(attack(end([0, 1, 1, 0, 1, 1]), 0)).toBe(-300)
  })
})

describe.each([
  ['as planned', (problem: AheadProblem) => dealerAsPlanned(problem.players.length)],
  ['as so far', (problem: AheadProblem) => dealerAsSoFar(problem)],
] as const)('a practice dealt %s', (_, dealerOf) => {
  it.each(seeds)('fills its places, shares out what there is and nothing else (%i)', (seed) => {
    const problem = playedBefore(randomAhead(seed, { players: 11, practices: 6, rules: 0 }))
    const deal = dealerOf(problem)
    if (!deal) throw new Error('Something was played so far.')
    const random = seededRandom(seed)
    const standing = standingNow(problem)
    practicesToDeal(problem, planInTurn(problem)).forEach((practice) => {
      if (!practice) throw new Error('Something is chosen everywhere.')
      const here = problem.players.flatMap((_player, player) => (random.chance(0.75) ? [player] : []))
      const before = { gap: standing.gap.slice(), played: standing.played.slice() }
      deal(practice, { here: Int32Array.from(here), count: here.length }, standing)
      const change = standing.gap.map((own, at) => own - (before.gap[at] ?? 0))
      rotationColumns.forEach((_column, place) => {
        expect(sumOf(change.filter((_own, at) => at % columnCount === place))).toBeCloseTo(0, 4)
      })
      const even = emptyShare()
      shareEvenly(practice, { here: Int32Array.from(here), count: here.length }, even)
      const places = sumOf(here.map((player) => sumOf(practice.keeps[player] ? even.able : even.others)))
      expect(sumOf(standing.played) - sumOf(before.played)).toBeCloseTo(places, 3)
      problem.players.forEach((_player, player) => {
        const played = (standing.played[player] ?? 0) - (before.played[player] ?? 0)
        // As so far, it adds up to a second.
        expect(played).toBeLessThanOrEqual(practice.liveSeconds + 1)
        expect(played).toBeGreaterThanOrEqual(-1)
        const [attack = 0, defend = 0, keep = 0, rest = 0] = change.slice(player * columnCount)
        expect(attack + defend + keep + rest).toBeCloseTo(0, 4)
        if (!practice.keeps[player]) expect(keep).toBeCloseTo(0, 6)
        if (!here.includes(player)) expect([played, attack, defend, keep]).toEqual([0, 0, 0, 0])
      })
    })
  })
})

describe('what goes on as so far', () => {
  it('goes on as much more or less as so far, for every minute', () => {
    const problem = twoWho({ comes: [1, 1, 1], gentle: { least: 0.5, most: 1.5 } })
    const deal = dealerAsSoFar(problem)
    if (!deal) throw new Error('Something was played so far.')
    const end = endOf(problem, { choices: [0, 0], leans: [] }, { came: [1, 1, 1, 1, 1, 1], deal })
    // Short by 300 of 3,000 seconds played: short by a tenth of 400 seconds in each of two practices.
    expect(end.gap[0]).toBeCloseTo(-300 - 80, 6)
    expect(end.gap[columnCount]).toBeCloseTo(300 + 80, 6)
  })

  it('goes on where nobody waits, whoever stays away', () => {
    const whole = twoWho({ comes: [1, 1, 1], gentle: { least: 0.5, most: 1.5 } })
    const seats = { ...noSeats, attackAlone: 600, defendAlone: 600 }
    const problem: AheadProblem = {
      ...whole,
      practices: whole.practices.map((practice) => ({
        ...practice,
        offers: [{ theme: 0, design: 0, seats, liveSeconds: 600 }],
      })),
      players: whole.players.map((player) => ({
        ...player,
        gap: { ...player.gap, defend: -player.gap.attack, rest: 0 },
      })),
    }
    const deal = dealerAsSoFar(problem)
    if (!deal) throw new Error('Something was played so far.')
    const { gap } = endOf(problem, { choices: [0, 0], leans: [] }, { came: [1, 0, 1, 1, 0, 1], deal })
    // A tenth of 600 seconds less in each practice; half of that, as the third has no difference to give up.
    expect(gap[0]).toBeCloseTo(-300 - 2 * 30, 0)
    expect(gap[1]).toBeCloseTo(300 + 2 * 30, 0)
    expect(gap[3]).toBeCloseTo(0, 0)
  })

  it('is not to be had where nothing was played', () => {
    const problem = twoWho({ comes: [1, 1, 1], gentle: { least: 0.5, most: 1.5 } })
    const players = problem.players.map((player) => ({ ...player, playedSeconds: 0 }))
    expect(dealerAsSoFar({ ...problem, players })).toBeNull()
  })
})

const more = (attackAlone: number) => ({ ...noSeats, attackAlone })

/** Three, the first short of attacking, the second over; two practices of ten minutes with two places to attack. */
function twoWho({
  comes,
  gentle,
}: {
  readonly comes: readonly number[]
  readonly gentle: AheadProblem['gentle']
}): AheadProblem {
  const players = [-300, 300, 0].map((attack, at) =>
    plainPlayer({
      id: `p${at}`,
      keeps: false,
      gap: { ...noSeconds, attack, rest: -attack },
      gapPlayedSeconds: 3000,
      playedSeconds: 1000,
    }),
  )
  const plain = plainAhead({ weeks: [1, 2], themes: [], problem: { players, gentle } })
  const offers = [{ theme: 0, design: 0, seats: more(1200), liveSeconds: 600 }]
  return { ...plain, practices: plain.practices.map((own) => ({ ...own, offers, comes })) }
}

function endOf(
  problem: AheadProblem,
  plan: AheadPlan,
  { came, deal }: { readonly came: readonly number[]; readonly deal: ReturnType<typeof dealerAsPlanned> },
): Standing {
  const end = standingNow(problem)
  const play = practicePlayer(practicesToDeal(problem, plan), { playerCount: problem.players.length, deal })
  problem.practices.forEach((_, at) => {
    play(at, Uint8Array.from(came), end)
  })
  return end
}

const emptyShare = (): EvenShare => ({
  able: new Float64Array(seatCount),
  others: new Float64Array(seatCount),
})

/** Ten minutes with places for three: 800 seconds attacking, 400 defending, 600 in goal. */
function practiceOf({ keeps }: { readonly keeps: readonly boolean[] }): PracticeToDeal {
  const seats = { ...noSeats, attackLevel: 800, defendLevel: 400, keep: 600 }
  return {
    liveSeconds: 600,
    seats: Float64Array.from(seatColumns.map((column) => seats[column])),
    columns: seatColumns.flatMap((column, seat) => (seats[column] > 0 ? [seat] : [])),
    moves: [],
    themes: [],
    keeps,
    gentle: { least: 0.5, most: 1.5 },
    lean: new Float64Array(keeps.length * seatCount),
    meant: new Float64Array(keeps.length * columnCount),
  }
}
