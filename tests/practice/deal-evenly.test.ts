import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gridAsPlanned, noExceptions } from '#practice/as-planned'
import { dealEvenly } from '#practice/deal-evenly'
import type { DesignRound } from '#practice/design'
import { turnsOfGrid } from '#practice/grid-turns'
import type { PresenceLine } from '#squad/presence'

const round = (change: Partial<DesignRound> = {}): DesignRound => ({
  title: 'Three against two',
  turnCount: 7,
  turnSeconds: 45,
  gapSeconds: 15,
  stations: [{ attack: 3, defend: 2, keep: 1 }],
  ...change,
})

const somePlayers = (count: number, keepers = count) =>
  Array.from({ length: count }, (_, index) => ({ id: `p${index + 1}`, keeps: index < keepers }))

const hereAll = (players: readonly { readonly id: string }[]): PresenceLine[] =>
  players.map(({ id }) => ({ playerId: id, from: 0, to: 100_000 }))

function deal(rounds: readonly DesignRound[], players = somePlayers(8), register = hereAll(players)) {
  const grid = dealEvenly({ rounds, themeId: null, players, register })
  const turns = turnsOfGrid(grid, register)
  if (!turns.ok) throw new Error(JSON.stringify(turns.reasons))
  return { grid, turns: turns.value.turns }
}

function countsOf(grid: ReturnType<typeof dealEvenly>, letter: string) {
  return grid.rows.map((row) => row.marks.filter((mark) => mark.startsWith(letter)).length)
}

const spread = (counts: readonly number[]) => Math.max(...counts) - Math.min(...counts)

describe('dealing a design evenly', () => {
  it('fills every place of every turn with somebody who is there', () => {
    const { turns } = deal([
      round(),
      round({
        stations: [
          { attack: 2, defend: 1, keep: 0 },
          { attack: 2, defend: 1, keep: 0 },
        ],
      }),
    ])
    expect(turns).toHaveLength(14)
    expect(
      turns.map((turn) =>
        turn.stations.map((s) => [s.attack.length, s.defend.length, s.keep.length].join('v')),
      ),
    ).toEqual([...Array(7).fill(['3v2v1']), ...Array(7).fill(['2v1v0', '2v1v0'])])
  })

  it('waiting differs by one turn at most, and nobody waits twice running where it can be helped', () => {
    const { grid } = deal([round({ turnCount: 20 })])
    expect(spread(countsOf(grid, 'W'))).toBeLessThanOrEqual(1)
    for (const { marks } of grid.rows) expect(marks.join(',')).not.toContain('W,W')
  })

  it('over a whole cycle attack, defence and goal are even too', () => {
    const { grid } = deal([round({ turnCount: 24 })])
    for (const letter of ['A', 'D', 'K']) expect(spread(countsOf(grid, letter))).toBeLessThanOrEqual(2)
  })

  it('never puts in goal who asked not to be: the place stays empty', () => {
    const { grid, turns } = deal([round()], somePlayers(7, 1))
    expect(countsOf(grid, 'K')).toEqual([7, 0, 0, 0, 0, 0, 0])
    const { turns: without } = deal([round()], somePlayers(7, 0))
    expect(turns[0]?.stations[0]?.keep).toEqual(['p1'])
    expect(without.every((turn) => turn.stations[0]?.keep.length === 0)).toBe(true)
  })

  it('with fewer players than places it leaves places out, the larger side first', () => {
    const { turns } = deal(
      [
        round({
          stations: [
            { attack: 3, defend: 2, keep: 1 },
            { attack: 3, defend: 2, keep: 1 },
          ],
        }),
      ],
      somePlayers(11),
    )
    expect(turns[0]?.stations.map((s) => [s.attack.length, s.defend.length, s.keep.length])).toEqual([
      [3, 2, 1],
      [2, 2, 1],
    ])
  })

  it('who leaves changes nothing that was played before', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 7, max: 16 }),
        fc.integer({ min: 0, max: 15 }),
        fc.integer({ min: 1, max: 12 }),
        (count, who, turn) => {
          const players = somePlayers(count)
          const leaver = `p${(who % count) + 1}`
          const register = hereAll(players).map((line) =>
            line.playerId === leaver ? { ...line, to: turn * 60 - 15 } : line,
          )
          const whole = deal([round({ turnCount: 14 })], players).turns
          const cut = deal([round({ turnCount: 14 })], players, register).turns
          expect(cut.slice(0, turn)).toEqual(whole.slice(0, turn))
          expect(JSON.stringify(cut.slice(turn))).not.toContain(`"${leaver}"`)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('the same players in another order of the register get the same turns as the places in that order', () => {
    const players = somePlayers(9)
    const renamed = players.map(({ keeps }, index) => ({ id: `q${index + 1}`, keeps }))
    const [one, other] = [deal([round()], players), deal([round()], renamed)]
    expect(JSON.stringify(other.turns)).toBe(JSON.stringify(one.turns).replaceAll('"p', '"q'))
  })
})

describe('as planned, except', () => {
  const players = somePlayers(8)
  const plan = {
    rounds: [round({ turnCount: 3 }), round({ turnCount: 3 })],
    themeId: null,
    players,
    register: hereAll(players),
  }

  it('without exceptions it is the plan', () => {
    expect(gridAsPlanned({ ...plan, exceptions: noExceptions })).toEqual(dealEvenly(plan))
  })

  it('what comes after the stop was not played', () => {
    const grid = gridAsPlanned({ ...plan, exceptions: { stoppedAfterTurn: 4, swaps: [] } })
    expect(grid.columns).toHaveLength(4)
    expect(grid.rows.every((row) => row.marks.length === 4)).toBe(true)
  })

  it('two who swapped have each other’s places from a turn to a turn', () => {
    const whole = dealEvenly(plan)
    const grid = gridAsPlanned({
      ...plan,
      exceptions: { stoppedAfterTurn: null, swaps: [{ players: ['p1', 'p8'], fromTurn: 2, toTurn: 3 }] },
    })
    const [first, last] = [whole.rows[0]?.marks ?? [], whole.rows[7]?.marks ?? []]
    expect(grid.rows[0]?.marks).toEqual([first[0], last[1], last[2], ...first.slice(3)])
    expect(grid.rows[7]?.marks).toEqual([last[0], first[1], first[2], ...last.slice(3)])
  })
})
