import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fairKeepShare, fairSeatShare } from '#fairness/fair-share'
import { fitTable } from '../support/proportional-fitting'

/**
 * A span: present players of whom some may keep, keeper seats fewer than those who may, other columns of seats, and
 * whoever is left rests. With as many keeper seats as able players the fitting only creeps towards its table.
 */
const span = fc
  .record({
    present: fc.integer({ min: 2, max: 16 }),
    draw: fc.array(fc.nat(), { minLength: 6, maxLength: 6 }),
  })
  .map(({ present, draw: [a = 0, b = 0, ...others] }) => {
    const able = 2 + (a % (present - 1))
    const keeperSeats = b % able
    const seats: number[] = []
    let left = present - keeperSeats
    for (const other of others) {
      const taken = other % (left + 1)
      if (taken > 0) seats.push(taken)
      left -= taken
    }
    return { present, able, keeperSeats, seats: left > 0 ? [...seats, left] : seats }
  })

describe('the fair share in closed form', () => {
  it('is the table that iterative proportional fitting reaches from ones and zeros', () => {
    fc.assert(
      fc.property(span, ({ present, able, keeperSeats, seats }) => {
        const isAble = (player: number) => player < able
        const columns = keeperSeats > 0 ? [keeperSeats, ...seats] : seats
        const ones = Array.from({ length: present }, (_, player) =>
          columns.map((_, column) => (keeperSeats > 0 && column === 0 && !isAble(player) ? 0 : 1)),
        )
        const fitted = fitTable(ones, { rows: ones.map(() => 1), columns })
        const places = { present, keeperSeats, able }
        const closed = ones.map((_, player) => {
          const others = seats.map((own) => fairSeatShare(places, { seats: own, isAble: isAble(player) }))
          return keeperSeats > 0 ? [fairKeepShare(places, isAble(player)), ...others] : others
        })
        for (const [player, row] of closed.entries()) {
          for (const [column, share] of row.entries())
            expect(share).toBeCloseTo(fitted[player]?.[column] ?? -1, 9)
        }
      }),
      { numRuns: 300 },
    )
  })

  it('gives everyone one unit and every column its seats, as many keeper seats as able players too', () => {
    fc.assert(
      fc.property(span, fc.boolean(), ({ present, able, seats, ...drawn }, allKeep) => {
        const keeperSeats = allKeep ? able : drawn.keeperSeats
        const rest = present - keeperSeats
        const others = allKeep ? [rest] : seats
        const places = { present, keeperSeats, able }
        const rows = Array.from({ length: present }, (_, player) => [
          fairKeepShare(places, player < able),
          ...others.map((own) => fairSeatShare(places, { seats: own, isAble: player < able })),
        ])
        for (const row of rows) expect(row.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
        for (const [column, own] of [keeperSeats, ...others].entries()) {
          expect(rows.reduce((sum, row) => sum + (row[column] ?? 0), 0)).toBeCloseTo(own, 9)
        }
      }),
      { numRuns: 300 },
    )
  })
})
