import { describe, expect, it } from 'vitest'
import { evenSeats } from '#ahead/even-seats'
import type { AheadPlayer } from '#ahead/problem'
import { noSeats, seatColumns } from '#ahead/seat-column'
import { fairSeconds } from '#rotation/fair-seconds'
import type { RotationProblem } from '#rotation/problem'

const player = (keeps: boolean) => ({ keeps }) as AheadPlayer

describe('even shares of a practice to come', () => {
  it('are the fair shares of the book where it is certain who comes', () => {
    const keeps = [true, true, false, false, false, true, false, false]
    const rotation: RotationProblem = {
      players: keeps.map((own, index) => ({
        id: `p${index}`,
        keeps: own,
        present: [true, true, true],
        gap: { attack: 0, defend: 0, keep: 0, rest: 0, outnumbering: 0, level: 0, outnumbered: 0 },
      })),
      rounds: [{ id: '1', turnSeconds: 60, keepersStay: false, sides: null }],
      turns: [0, 1, 2].map(() => ({ round: 0, seconds: 60, stations: [{ attack: 3, defend: 2, keep: 1 }] })),
      restLimit: null,
      apart: [],
      fixed: [],
    }
    const even = evenSeats(
      { players: keeps.map(player) },
      { comes: keeps.map(() => 1) },
      {
        seats: { ...noSeats, attackOutnumbering: 540, defendOutnumbered: 360, keep: 180 },
        liveSeconds: 180,
      },
    )
    fairSeconds(rotation).forEach((due, index) => {
      expect(even[index]?.attackOutnumbering).toBeCloseTo(due.attack, 9)
      expect(even[index]?.defendOutnumbered).toBeCloseTo(due.defend, 9)
      expect(even[index]?.keep).toBeCloseTo(due.keep, 9)
    })
  })

  it('share out every seat, and nobody sits longer than it is there', () => {
    const seats = { ...noSeats, attackLevel: 500, defendLevel: 500, keep: 150 }
    const comes = [1, 0.5, 0, 0.75, 0.9, 1]
    const even = evenSeats(
      { players: [true, false, true, true, false, false].map(player) },
      { comes },
      { seats, liveSeconds: 300 },
    )
    for (const column of seatColumns)
      expect(even.reduce((sum, own) => sum + own[column], 0)).toBeCloseTo(seats[column], 9)
    even.forEach((own, index) => {
      const all = seatColumns.reduce((sum, column) => sum + own[column], 0)
      expect(all).toBeLessThanOrEqual((comes[index] ?? 0) * 300 + 1e-9)
    })
  })

  it('leave places free where fewer are expected than there are places', () => {
    const even = evenSeats(
      { players: [true, false].map(player) },
      { comes: [0.5, 1] },
      { seats: { ...noSeats, attackLevel: 60, defendLevel: 60, keep: 60 }, liveSeconds: 60 },
    )
    expect(even).toEqual([
      { ...noSeats, keep: 30 },
      { ...noSeats, attackLevel: 30, defendLevel: 30 },
    ])
  })

  it('give nobody goal who may not keep, and nothing to who cannot come', () => {
    const even = evenSeats(
      { players: [false, false].map(player) },
      { comes: [1, 0] },
      { seats: { ...noSeats, attackAlone: 60, keep: 60 }, liveSeconds: 60 },
    )
    expect(even).toEqual([{ ...noSeats, attackAlone: 60 }, noSeats])
  })
})
