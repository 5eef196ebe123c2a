import { describe, expect, it } from 'vitest'
import { expectedAttendance } from '#ahead/attendance/expected-attendance'

describe('the chance to come, drawn towards the squad', () => {
  // B. Efron, C. Morris, "Stein's Paradox in Statistics", Scientific American 236 (1977), no. 5, 119-127: hits of 18 batters
  // in 45 times at bat each; mean .265, and their estimate .265 + .212 (own - .265).
  it("is James-Stein's estimate of the 18 batters", () => {
    const hits = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7]
    const { chances, squad, method } = expectedAttendance(hits.map((came) => ({ came, held: 45 })))
    expect(method).toBe('drawn')
    expect(squad).toBeCloseTo(0.265, 3)
    expect(((chances[0] ?? 0) - (chances[17] ?? 0)) / ((18 - 7) / 45)).toBeCloseTo(0.212, 3)
    const printed = hits.map((came) => 0.265 + 0.212 * (came / 45 - 0.265))
    chances.forEach((chance, at) => {
      expect(chance).toBeCloseTo(printed[at] ?? 0, 3)
    })
    // Printed: .400 becomes .294, .156 becomes .242.
    expect(chances[0]).toBeCloseTo(0.294, 3)
    expect(chances[17]).toBeCloseTo(0.242, 3)
  })

  it('draws a short record further than a long one of the same rate', () => {
    const { chances, squad } = expectedAttendance([
      { came: 2, held: 4 },
      { came: 10, held: 20 },
      { came: 20, held: 20 },
      { came: 19, held: 20 },
      { came: 20, held: 20 },
      { came: 18, held: 20 },
    ])
    const [short = 0, long = 0] = chances
    expect(short).toBeGreaterThan(long)
    expect(long).toBeGreaterThan(0.5)
    expect(short).toBeLessThan(squad)
  })

  // Morris's own way to the spread is an iteration; ours halves an interval. Two ways, one answer.
  it('is where Morris’s iteration comes to rest, with unequal counts', () => {
    const records = [
      { came: 3, held: 6 },
      { came: 14, held: 15 },
      { came: 20, held: 22 },
      { came: 9, held: 21 },
      { came: 22, held: 22 },
      { came: 12, held: 20 },
    ]
    const { chances, squad, method } = expectedAttendance(records)
    expect(method).toBe('drawn')
    const rates = records.map(({ came, held }) => ({ y: came / held, v: (squad * (1 - squad)) / held }))
    const k = rates.length
    const add = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0)
    let [spread, mean] = [0.05, 0]
    for (let step = 0; step < 500; step++) {
      const w = rates.map(({ v }) => 1 / (v + spread))
      mean = add(rates.map(({ y }, at) => (w[at] ?? 0) * y)) / add(w)
      spread = Math.max(
        0,
        add(rates.map(({ y, v }, at) => (w[at] ?? 0) * ((k / (k - 1)) * (y - mean) ** 2 - v))) / add(w),
      )
    }
    rates.forEach(({ y, v }, at) => {
      const drawn = (((k - 3) / (k - 1)) * v) / (v + spread)
      expect(chances[at]).toBeCloseTo((1 - drawn) * y + drawn * mean, 6)
    })
  })

  it('lies between the own rate and the mean, whatever the records', () => {
    const records = Array.from({ length: 16 }, (_, at) => ({ came: (at * 7) % 11, held: 10 + (at % 5) }))
    const { chances } = expectedAttendance(records)
    for (const chance of chances) {
      expect(chance).toBeGreaterThanOrEqual(0)
      expect(chance).toBeLessThanOrEqual(1)
    }
    const order = (numbers: readonly number[]) =>
      numbers.map((_, at) => at).sort((a, b) => (numbers[a] ?? 0) - (numbers[b] ?? 0))
    // Equal counts: the order of the records stays.
    const equal = records.map(({ came }) => ({ came, held: 14 }))
    expect(order(expectedAttendance(equal).chances)).toEqual(order(equal.map(({ came }) => came)))
  })

  it("is the squad's for who has no record, for fewer than four, and where all are alike", () => {
    const mixed = expectedAttendance([
      { came: 0, held: 0 },
      ...[4, 12, 12, 11, 3].map((came) => ({ came, held: 12 })),
    ])
    expect(mixed.method).toBe('drawn')
    expect(mixed.chances[0]).toBeCloseTo(mixed.squad, 9)
    expect(
      expectedAttendance([
        { came: 1, held: 2 },
        { came: 2, held: 2 },
      ]),
    ).toEqual({
      chances: [0.75, 0.75],
      squad: 0.75,
      method: 'squad',
    })
    const alike = expectedAttendance([8, 8, 8, 8, 8].map((came) => ({ came, held: 10 })))
    expect(alike).toEqual({ chances: [0.8, 0.8, 0.8, 0.8, 0.8], squad: 0.8, method: 'squad' })
  })

  it('takes everyone to come where nothing was held', () => {
    expect(expectedAttendance([{ came: 0, held: 0 }])).toEqual({ chances: [1], squad: 1, method: 'none' })
    expect(expectedAttendance([])).toEqual({ chances: [], squad: 1, method: 'none' })
  })
})
