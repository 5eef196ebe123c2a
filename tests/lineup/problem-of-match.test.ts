import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { plainFormat } from '#lineup/draft/plain-format'
import { lineUpOf } from '#lineup/line-up-of-plan'
import type { MatchPlanPlayer, MatchPlanRequest } from '#lineup/match-plan'
import { matchPlanOf } from '#lineup/match-plan-of'
import { placesFor } from '#lineup/places-for'
import { planOfSpells } from '#lineup/plan-of-spells'
import { noRules } from '#lineup/problem'
import { problemOfMatch } from '#lineup/problem-of-match'
import { quickLineUp } from '#lineup/quick-line-up'
import { noWishes } from '#match/format/line-wish'
import type { MatchFormat } from '#match/format/match-format'
import { spellsAt } from '../support/match-spells'

/** Of the plain format. */
const places = { keeper: 1, back: 2, middle: 3, forward: 1 }
const format = (changes: Partial<MatchFormat>): MatchFormat => ({ ...plainFormat, ...changes })

function player(playerId: string, changes: Partial<MatchPlanPlayer> = {}): MatchPlanPlayer {
  return {
    playerId,
    keeps: true,
    from: 0,
    to: null,
    owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
    wishes: noWishes,
    metSeconds: { back: 0, middle: 0, forward: 0 },
    playedToday: 0,
    ...changes,
  }
}

function request(count: number, changes: Partial<MatchPlanRequest> = {}): MatchPlanRequest {
  return {
    format: plainFormat,
    places,
    marks: [
      [300, 600, 900, 1200],
      [300, 600, 900, 1200],
    ],
    players: Array.from({ length: count }, (_, index) => player(`p${index + 1}`)),
    rules: noRules,
    leastShare: null,
    apart: [],
    together: [],
    locks: [],
    ...changes,
  }
}

describe('the problem that a match asks', () => {
  it('has a window between all marks, in playing time', () => {
    const { windows } = problemOfMatch(request(9, { marks: [[600, 300, 600, 0, 1500], []] }))
    expect(windows.map(({ period, start, end }) => [period, start, end])).toEqual([
      [0, 0, 300],
      [0, 300, 600],
      [0, 600, 1500],
      [1, 1500, 3000],
    ])
  })

  it('has no change inside periods where a format allows none', () => {
    const problem = problemOfMatch(request(9, { format: format({ changesAtBreaksOnly: true }) }))
    expect(problem.windows).toHaveLength(2)
    expect(problem.rules.mostChanges).toBe(0)
  })

  it('counts on who comes late from the next mark on, and promises it a part of its own time', () => {
    const players = [...request(8).players, player('late', { from: 1400 }), player('early', { to: 2000 })]
    const problem = problemOfMatch(request(0, { players, leastShare: 0.5 }))
    expect(problem.players[8]?.isThere).toEqual([...Array(5).fill(false), ...Array(5).fill(true)])
    expect(problem.players[9]?.isThere).toEqual([...Array(6).fill(true), ...Array(4).fill(false)])
    expect(problem.players.map(({ leastSeconds }) => leastSeconds)).toEqual([
      ...Array(8).fill(1500),
      800,
      1000,
    ])
  })

  it('plays with as many as are there while some are still to come', () => {
    const players = [...request(6).players, player('late', { from: 1500 })]
    const { windows } = problemOfMatch(request(0, { players }))
    expect(windows[0]?.places).toEqual({ keeper: 1, back: 2, middle: 2, forward: 1 })
    expect(windows[5]?.places).toEqual(places)
    expect(problemOfMatch(request(6)).windows[0]?.places).toEqual(places)
    expect(placesFor(places, 1)).toEqual({ keeper: 1, back: 0, middle: 0, forward: 0 })
  })

  it('holds places by their time, and pairs by their players', () => {
    const problem = problemOfMatch(
      request(9, {
        locks: [{ playerId: 'p2', start: 300, end: 900, place: 'keeper' }],
        apart: [
          ['p1', 'p9'],
          ['p1', 'gone'],
        ],
      }),
    )
    expect(problem.fixed).toEqual([
      { player: 1, window: 1, place: 'keeper' },
      { player: 1, window: 2, place: 'keeper' },
    ])
    expect(problem.apart).toEqual([[0, 8]])
  })

  it('lets the limit of a day win over what its last match promises', () => {
    const players = [player('p1', { playedToday: 3000 }), ...request(9).players.slice(1)]
    const problem = problemOfMatch(
      request(0, { players, leastShare: 0.5, format: format({ mostSecondsADay: 3600 }) }),
    )
    expect(
      problem.players.map(({ leastSeconds, mostSeconds }) => [leastSeconds, mostSeconds]).slice(0, 2),
    ).toEqual([
      [600, 600],
      [1500, 3600],
    ])
  })

  // Rule: three of four quarters where mathematically possible (a region's own rule, ayso76.org): with ten for seven
  // places there are 28 for 30, so everybody can have two and not three.
  it('promises whole periods only as far as the numbers go, where a format says so', () => {
    const quarters = format({
      periodSeconds: [600, 600, 600, 600],
      leastTime: { share: null, periods: 3, late: [], wherePossible: true },
    })
    const least = (count: number) =>
      problemOfMatch(request(count, { format: quarters, marks: [[], [], [], []] })).players[0]?.leastSeconds
    expect([least(9), least(10), least(14), least(15)]).toEqual([1800, 1200, 1200, 600])
  })
})

describe('a plan of a match', () => {
  it('keeps its line-up as spells, and gives it back', () => {
    const asked = request(9, { rules: { ...noRules, keeperForPeriod: true } })
    const problem = problemOfMatch(asked)
    const lineUp = quickLineUp(problem, { seed: 1 })
    if (!lineUp) throw new Error('No line-up was found.')
    const plan = matchPlanOf(asked, lineUpOf(problem, lineUp), (id) => id)
    expect(planOfSpells(asked, plan.spells)).toEqual(lineUp)
    expect(checkLineUp(problem, lineUp)).toEqual([])
    for (const { start, end } of plan.spells) {
      expect(end).toBeGreaterThan(start)
      expect(Math.floor(start / 1500)).toBe(Math.floor((end - 1) / 1500))
    }
    const counts = Array.from({ length: 3000 }, (_, second) => spellsAt(plan.spells, second).length)
    expect(new Set(counts)).toEqual(new Set([7]))
  })

  it('is no plan of a request whose windows or players it does not fit', () => {
    const asked = request(9)
    const spell = { playerId: 'p1', line: 'back', start: 0, end: 300 } as const
    expect(planOfSpells(asked, [spell])?.[0]?.slice(0, 2)).toEqual(['back', null])
    expect(planOfSpells(asked, [{ ...spell, end: 301 }])).toBeNull()
    expect(planOfSpells(asked, [{ ...spell, playerId: 'nobody' }])).toBeNull()
    expect(planOfSpells(asked, [spell, { ...spell, line: 'middle' }])).toBeNull()
  })
})
