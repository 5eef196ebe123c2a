import { describe, expect, it } from 'vitest'
import { seededChance } from '#common/chance'
import { accountPractice } from '#fairness/account-practice'
import { chanceOfGap } from '#fairness/luck/chance-of-gap'
import { dealer } from '#fairness/luck/deal-at-random'
import { luckRoles } from '#fairness/luck/draw'
import { drawMoments } from '#fairness/luck/draw-moments'
import { drawOfPractices } from '#fairness/luck/draw-of-practices'
import { countDraws, visitDraws } from '#fairness/luck/every-draw'
import { luckOrHabit } from '#fairness/luck/luck-or-habit'
import { luckPractice } from '../../support/luck-practice'

const times = <T>(count: number, what: (at: number) => T) =>
  Array.from({ length: count }, (_, at) => what(at))

/** Two keepers who stay two turns each, one who changes, a free game, and somebody whose places stay. */
const mixed = () =>
  luckPractice(
    'abcde',
    [
      { attack: 'a', defend: 'b', keep: 'c', round: 'one' },
      { attack: 'd', defend: 'a', keep: 'c', round: 'one' },
      { attack: 'd', defend: 'b', keep: 'a', round: 'two' },
      { attack: 'ab', defend: 'cd', round: 'game' },
      { attack: 'cd', defend: 'ab', round: 'game', continuesWait: true },
    ],
    { able: 'acd', still: 'e' },
  )

describe('luck or habit', () => {
  // The sign test: of ten, one or nine or further has a two-sided chance of 22 in 1,024, .0215 in the tables of the binomial.
  it('is the sign test where two take turns at two places', () => {
    const nineOfTen = luckPractice(
      'ab',
      times(10, (at) => (at < 9 ? { attack: 'a', defend: 'b' } : { attack: 'b', defend: 'a' })),
    )
    const { squad, players } = luckOrHabit([nineOfTen], { tested: ['a', 'b'], single: true, seed: 1 })
    expect(squad).toEqual({ pValue: 22 / 1024, way: 'everyDraw', draws: 1024, asWide: 22 })
    expect(players?.map(({ pValue }) => pValue)).toHaveLength(4)
    for (const own of players ?? []) {
      expect(own.pValue).toBeCloseTo(0.021484375, 12)
      expect(own.adjusted).toBeCloseTo(0.021484375, 12)
      expect(own.drawnTurns).toBe(5)
    }
  })

  it('says the same in closed form, by every draw, and by draws at random', () => {
    const draw = drawOfPractices([mixed()])
    expect([draw.turns, draw.leftOut]).toEqual([5, 0])
    // Keepers 3 · 3, places 6 · 6 · 6; whichever side of the game somebody is on, it has attacked and defended once.
    expect(countDraws(draw)).toBe(3 * 3 * 6 * 6 * 6)
    const moments = drawMoments(draw)
    const all: number[][] = []
    visitDraws(draw, (turns) => all.push([...turns]))
    expect(all).toHaveLength(countDraws(draw))
    const deal = dealer(draw, seededChance(7))
    const dealt = times(4000, () => {
      const turns = new Float64Array(moments.had.length)
      deal(turns)
      return turns
    })
    draw.players.forEach((_, player) => {
      luckRoles.forEach((role, at) => {
        const column = player * 4 + at
        const counts = all.map((turns) => turns[column] ?? 0)
        const mean = average(counts)
        const variance = average(counts.map((count) => (count - mean) ** 2))
        expect(moments.mean[column]).toBeCloseTo(mean, 9)
        expect(moments.variance[column]).toBeCloseTo(variance, 9)
        const off = Math.abs((moments.had[column] ?? 0) - mean)
        const far = counts.filter((count) => Math.abs(count - mean) >= off - 1e-6).length / counts.length
        expect(chanceOfGap(draw, { player, role })).toBeCloseTo(far, 9)
        // Four standard errors.
        const random = average(dealt.map((turns) => turns[column] ?? 0))
        expect(Math.abs(random - mean)).toBeLessThanOrEqual(4 * Math.sqrt(variance / dealt.length) + 1e-9)
      })
    })
  })

  it('expects of a draw what the book calls an even share', () => {
    const chance = seededChance(3)
    const practice = luckPractice(
      'abcdefgh',
      times(12, () => randomTurn('abcdefgh', 'aceg', chance)),
      {
        able: 'aceg',
      },
    )
    const { lines } = accountPractice(
      { id: 'p', day: '2026-11-03', lengthSeconds: null, ...practice.practice },
      { able: new Set('aceg'), members: new Set('abcdefgh'), middleAttackShare: 0.5, written: 'tapped' },
    )
    const draw = drawOfPractices([practice])
    const moments = drawMoments(draw)
    draw.players.forEach((playerId, player) => {
      luckRoles.forEach((role, at) => {
        const own = lines.filter((line) => line.playerId === playerId && line.role === role)
        const fair = own.reduce((sum, { fairTurns }) => sum + fairTurns, 0)
        expect(moments.mean[player * 4 + at]).toBeCloseTo(fair, 9)
        expect(moments.had[player * 4 + at]).toBe(own.reduce((sum, { turns }) => sum + turns, 0))
      })
    })
  })

  it('calls a fair draw unusual about as often as it says', () => {
    const chance = seededChance(11)
    const pValues = (isOneRound: boolean) =>
      times(100, () => {
        const turns = times(12, (at) => ({
          ...randomTurn('abcdefg', 'abc', chance),
          round: isOneRound ? 'one' : `${at}`,
        }))
        const practice = luckPractice('abcdefg', turns, { able: 'abc' })
        const { squad } = luckOrHabit([practice], { tested: [...'abcdefg'], single: false, seed: 5 })
        return squad?.pValue ?? Number.NaN
      })
    const [apart, together] = [pValues(false), pValues(true)]
    for (const level of [0.1, 0.3, 0.5, 0.8]) {
      const partOf = (values: readonly number[]) => values.filter((p) => p <= level).length / values.length
      // Three and a half standard errors.
      const room = 3.5 * Math.sqrt((level * (1 - level)) / apart.length)
      expect(Math.abs(partOf(apart) - level)).toBeLessThan(room)
      // A keeper drawn twice running looks as if it stayed: that errs towards luck, never towards habit.
      expect(partOf(together) - level).toBeLessThan(room)
    }
  })

  it('finds the child that never attacked, and only it', () => {
    const others = [...'bcdefgh']
    const turns = times(60, (at) => {
      const at3 = times(3, (n) => others[(at * 3 + n) % 7] ?? '')
      const waits = others.filter((one) => !at3.includes(one))
      return { attack: at3.join(''), defend: [waits[at % 4], 'a'][at % 2] ?? '' }
    })
    const { squad, players } = luckOrHabit([luckPractice('abcdefgh', turns)], {
      tested: [...'abcdefgh'],
      single: true,
      seed: 2,
    })
    expect(squad?.pValue).toBeLessThan(0.01)
    const attack = (players ?? []).filter(({ role }) => role === 'attack')
    expect(attack.filter(({ adjusted }) => adjusted <= 0.05).map(({ playerId }) => playerId)).toEqual(['a'])
  })

  it('leaves out whose places stay, and turns whose places changed', () => {
    const draw = drawOfPractices([mixed()])
    expect(draw.players).not.toContain('e')
    const changed = luckPractice('abc', [
      { attack: 'a', defend: 'b' },
      { attack: 'c', defend: 'b', continuesTurn: true },
      { attack: 'c', defend: 'a' },
    ])
    expect(drawOfPractices([changed])).toMatchObject({ turns: 1, leftOut: 2 })
    const nothing = luckOrHabit([luckPractice('ab', [{ attack: 'a', defend: 'b' }], { still: 'b' })], {
      tested: ['a', 'b'],
      single: true,
      seed: 1,
    })
    expect(nothing).toMatchObject({ squad: null, players: [] })
  })
})

function average(numbers: readonly number[]): number {
  return numbers.reduce((all, one) => all + one, 0) / numbers.length
}

function randomTurn(all: string, able: string, chance: () => number) {
  const keep = able[Math.floor(chance() * able.length)] ?? ''
  const order = [...all].filter((one) => one !== keep).map((one) => ({ one, at: chance() }))
  const rest = order.sort((a, b) => a.at - b.at).map(({ one }) => one)
  return { keep, attack: rest.slice(0, 2).join(''), defend: rest.slice(2, 4).join('') }
}
