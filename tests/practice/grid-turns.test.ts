import { describe, expect, it } from 'vitest'
import { practiceSpans } from '#exposure/practice-spans'
import { summarizeColumn } from '#practice/column-summary'
import { outcomesOfGrid, turnsOfGrid } from '#practice/grid-turns'
import { aGrid, aRegister } from '../support/grid-builder'

function turnsOf(grid: ReturnType<typeof aGrid>, but: Parameters<typeof aRegister>[1] = {}) {
  const turns = turnsOfGrid(grid, aRegister(grid, but))
  if (!turns.ok) throw new Error(JSON.stringify(turns.reasons))
  return turns.value
}

function refusalsOf(grid: ReturnType<typeof aGrid>, but: Parameters<typeof aRegister>[1] = {}) {
  const turns = turnsOfGrid(grid, aRegister(grid, but))
  return turns.ok ? [] : turns.reasons
}

describe('turns of a grid', () => {
  it('a round is its turns one after the other, with nobody’s time between them', () => {
    const grid = aGrid('ann A\nbo D', [{ turnCount: 3, turnSeconds: 45, gapSeconds: 15 }])
    expect(turnsOf(grid).turns.map(({ start, end }) => [start, end])).toEqual([
      [0, 45],
      [60, 105],
      [120, 165],
    ])
  })

  it('a column begins where the one before it ends, or when it says', () => {
    const grid = aGrid('ann A D A\nbo D A D', [{ turnCount: 2 }, {}, { startsAt: 600 }])
    expect(turnsOf(grid).turns.map(({ start }) => start)).toEqual([0, 60, 120, 600])
  })

  it('whoever has no letter waits, and a column without letters is left out but keeps its time', () => {
    const grid = aGrid('ann A . D\nbo D . A\ncy . . .')
    const { turns } = turnsOf(grid)
    expect(turns.map(({ start }) => start)).toEqual([0, 120])
    const spans = practiceSpans({ turns, register: aRegister(grid) })
    expect(spans.map((span) => span.resting)).toEqual([['cy'], ['cy']])
  })

  it('without numbers, areas are made alike, so that everybody’s situation is right', () => {
    const grid = aGrid('a A\nb A\nc A\nd A\ne D\nf D\ng K', [{ areas: 2 }])
    const { stations } = turnsOf(grid).turns[0] ?? { stations: [] }
    expect(stations.map(({ attack, defend }) => [attack.length, defend.length])).toEqual([
      [2, 1],
      [2, 1],
    ])
    // One keeper for two areas is fine: nobody's situation counts keepers.
    expect(stations.flatMap((station) => station.keep)).toEqual(['g'])
  })

  it('numbers decide, and may ask for more areas than the column says', () => {
    const grid = aGrid('a A1\nb A2\nc D2\nd D2\ne D1')
    expect(turnsOf(grid).turns[0]?.stations).toEqual([
      { attack: ['a'], defend: ['e'], keep: [] },
      { attack: ['b'], defend: ['c', 'd'], keep: [] },
    ])
  })

  it('who has no number fills the areas up to the same count', () => {
    const grid = aGrid('a A2\nb A\nc D\nd D', [{ areas: 2 }])
    expect(turnsOf(grid).turns[0]?.stations).toEqual([
      { attack: ['b'], defend: ['c'], keep: [] },
      { attack: ['a'], defend: ['d'], keep: [] },
    ])
  })

  it('refuses to guess who was where when the areas cannot be alike', () => {
    expect(refusalsOf(aGrid('a A\nb A\nc A\nd D\ne D', [{ areas: 2 }]))).toEqual([
      { reason: 'areasDoNotFit', column: 0, role: 'attack', count: 3, areas: 2 },
    ])
    // Attackers are written in unequal areas: which defender met whom cannot be known.
    expect(refusalsOf(aGrid('a A1\nb A1\nc A2\nd D\ne D', [{ areas: 2 }]))).toEqual([
      { reason: 'areasDoNotFit', column: 0, role: 'attack', count: 3, areas: 2 },
    ])
  })

  it('who came during a round plays from its first whole turn', () => {
    const grid = aGrid('ann A\nbo D\ncy A', [{ turnCount: 3 }])
    const { turns } = turnsOf(grid, { cy: [90, 100_000] })
    expect(turns.map((turn) => turn.stations[0]?.attack)).toEqual([['ann'], ['ann'], ['ann', 'cy']])
  })

  it('refuses a place for somebody who was not there for any turn of it', () => {
    expect(refusalsOf(aGrid('ann A D\nbo D A'), { bo: [61, 100_000] })).toEqual([
      { reason: 'notThere', column: 0, playerId: 'bo', turnStart: 0 },
      { reason: 'notThere', column: 1, playerId: 'bo', turnStart: 60 },
    ])
  })

  it('refuses a column that starts before the one before it has ended', () => {
    expect(refusalsOf(aGrid('ann A D\nbo D A', [{ turnCount: 5 }, { startsAt: 200 }]))).toEqual([
      { reason: 'startsTooEarly', column: 1, startsAt: 200, before: 300 },
    ])
  })

  it('who was offered a place and passed waits, and a pass is written for each turn of the round', () => {
    const { turns, passes } = turnsOf(aGrid('ann A\nbo D\ncy pD', [{ turnCount: 2, turnSeconds: 40 }]))
    expect(turns.flatMap((turn) => turn.stations.flatMap((s) => [...s.attack, ...s.defend]))).not.toContain(
      'cy',
    )
    expect(passes).toEqual([
      { playerId: 'cy', role: 'defend', lengthSeconds: 40 },
      { playerId: 'cy', role: 'defend', lengthSeconds: 40 },
    ])
  })

  it('a free game is two halves with sides swapped, keepers staying, one wait', () => {
    const grid = aGrid('a A\nb A\nc D\nd K\ne .', [{ turnSeconds: 600, isFreeGame: true }])
    expect(turnsOf(grid).turns).toMatchObject([
      { start: 0, end: 300, stations: [{ attack: ['a', 'b'], defend: ['c'], keep: ['d'] }] },
      {
        start: 300,
        end: 600,
        stations: [{ attack: ['c'], defend: ['a', 'b'], keep: ['d'] }],
        continuesWait: true,
      },
    ])
    expect(turnsOf(grid, { a: [0, 300] }).turns[1]?.stations[0]?.defend).toEqual(['b'])
  })

  it('refuses a free game with one side, or of half a minute', () => {
    expect(refusalsOf(aGrid('a A\nb A', [{ turnSeconds: 600, isFreeGame: true }]))).toMatchObject([
      { reason: 'freeGameNeedsTwoSides' },
    ])
    expect(refusalsOf(aGrid('a A\nb D', [{ turnSeconds: 90, isFreeGame: true }]))).toMatchObject([
      { reason: 'freeGameNeedsWholeMinutes' },
    ])
  })

  it('the side that chose is kept with every turn of the round', () => {
    const grid = aGrid('a A\nb D', [{ turnCount: 2, chosenBy: 'defend' }])
    expect(turnsOf(grid).turns.map((turn) => turn.chosenBy)).toEqual(['defend', 'defend'])
  })
})

describe('players who take turns', () => {
  const taking = { turnCount: 6, atATime: [{ attack: 2, defend: 1, keep: 0 }] }

  it('side by side everyone gets as many turns as the numbers allow, in order', () => {
    const { turns } = turnsOf(aGrid('a A\nb A\nc A\nd D\ne D', [taking]))
    expect(turns.map((turn) => turn.stations[0]?.attack.join(''))).toEqual([
      'ab',
      'ca',
      'bc',
      'ab',
      'ca',
      'bc',
    ])
    expect(turns.map((turn) => turn.stations[0]?.defend.join(''))).toEqual(['d', 'e', 'd', 'e', 'd', 'e'])
  })

  it('the next round goes on with who has waited longest', () => {
    const grid = aGrid('a A D\nb A D\nc A D\nd D A\ne D A', [
      { ...taking, turnCount: 1 },
      { ...taking, turnCount: 1 },
    ])
    const { turns } = turnsOf(grid)
    expect(turns[0]?.stations[0]).toMatchObject({ attack: ['a', 'b'], defend: ['d'] })
    expect(turns[1]?.stations[0]).toMatchObject({ attack: ['e', 'd'], defend: ['c'] })
  })

  it('areas are filled one after the other, or by the numbers written', () => {
    const pool = aGrid('a A\nb A\nc A\nd A\ne D\nf D', [{ ...taking, turnCount: 1, areas: 2 }])
    expect(turnsOf(pool).turns[0]?.stations.map((s) => [...s.attack, ...s.defend].join(''))).toEqual([
      'abe',
      'cdf',
    ])
    const written = aGrid('a A2\nb A2\nc A1\nd A1\ne D1\nf D2', [{ ...taking, turnCount: 1 }])
    expect(turnsOf(written).turns[0]?.stations.map((s) => [...s.attack, ...s.defend].join(''))).toEqual([
      'cde',
      'abf',
    ])
  })

  it('each area takes as many as it is meant for', () => {
    const shapes = [
      { attack: 2, defend: 1, keep: 1 },
      { attack: 1, defend: 1, keep: 0 },
    ]
    const grid = aGrid('a A\nb A\nc A\nd D\ne D\nf K', [{ areas: 2, atATime: shapes }])
    expect(turnsOf(grid).turns[0]?.stations).toEqual([
      { attack: ['a', 'b'], defend: ['d'], keep: ['f'] },
      { attack: ['c'], defend: ['e'], keep: [] },
    ])
  })

  it('refuses areas written behind some of a side only', () => {
    expect(refusalsOf(aGrid('a A1\nb A\nc D\nd D', [{ ...taking, areas: 2 }]))).toEqual([
      { reason: 'someAreasMissing', role: 'attack', column: 0 },
    ])
  })

  it('who comes late is next, and has no turn before', () => {
    const { turns } = turnsOf(aGrid('a A\nb A\nc A\nd D', [{ ...taking, turnCount: 4 }]), {
      c: [60, 100_000],
    })
    expect(turns.map((turn) => turn.stations[0]?.attack.join(''))).toEqual(['ab', 'ca', 'bc', 'ab'])
  })
})

describe('what a column comes to at a glance', () => {
  it('says the numbers of each area, who waits, and how many turns differ', () => {
    const grid = aGrid('a A\nb A\nc A\nd D\ne D\nf K\ng .', [{ turnCount: 4 }])
    const register = aRegister(grid, { c: [70, 100_000] })
    const [outcome] = outcomesOfGrid(grid, register)
    expect(outcome && summarizeColumn(outcome, register)).toEqual({
      shapes: [{ attack: 3, defend: 2, keep: 1 }],
      otherTurns: 2,
      waiting: 1,
      turnCount: 4,
    })
  })

  it('a free game is told by its first half', () => {
    const grid = aGrid('a A\nb A\nc D\nd .', [{ turnSeconds: 600, isFreeGame: true }])
    const [outcome] = outcomesOfGrid(grid, aRegister(grid))
    expect(outcome && summarizeColumn(outcome, aRegister(grid))).toEqual({
      shapes: [{ attack: 2, defend: 1, keep: 0 }],
      otherTurns: 0,
      waiting: 1,
      turnCount: 2,
    })
  })
})
