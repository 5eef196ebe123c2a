import { describe, expect, it } from 'vitest'
import { formatFaults } from '#match/format/format-faults'
import type { LeastTime, MatchFormat } from '#match/format/match-format'
import { shapeOfText } from '#match/format/shape-text'

const noPromise: LeastTime = { share: null, periods: null, late: [], wherePossible: false }
const sevens: MatchFormat = {
  name: 'Sevens',
  ages: [9, 10],
  aSide: 7,
  hasKeeper: true,
  periodSeconds: [720, 720, 720, 720],
  breakSeconds: 300,
  isShortGames: false,
  mostSubstitutions: null,
  changesAtBreaksOnly: false,
  mayReturn: true,
  leastTime: noPromise,
  mostKeeperPeriods: 2,
  mostSecondsADay: null,
  mostPlayers: 12,
  fewestPlayers: 5,
  shapes: shapesOf('2-3-1', '3-2-1'),
  source: null,
  note: '',
}

function shapesOf(...texts: readonly string[]) {
  return texts.map((text) => {
    const shape = shapeOfText(text, { hasKeeper: true })
    if (!shape) throw new Error(`no shape ${text}`)
    return shape
  })
}

/** Each planted alone; its path and what its sentence must say. */
const planted: readonly (readonly [string, Partial<MatchFormat>, string, RegExp])[] = [
  ['ages the wrong way round', { ages: [12, 10] }, 'agesTo', /below 12/],
  [
    'a shape with one too few',
    { shapes: shapesOf('2-3-1', '2-2-1') },
    'shapes',
    /2-2-1 has 5 .* come to 6, the keeper not counted/,
  ],
  ['a shape with a keeper too many', { hasKeeper: false, mostKeeperPeriods: null }, 'shapes', /nobody keeps/],
  [
    'a shape without its keeper',
    { shapes: [{ name: '2-3-2', places: { keeper: 0, back: 2, middle: 3, forward: 2 } }] },
    'shapes',
    /no keeper/,
  ],
  ['a shape twice', { shapes: shapesOf('2-3-1', '2-3-1') }, 'shapes', /2-3-1 stands there twice/],
  ['fewer on the list than play', { mostPlayers: 6 }, 'mostPlayers', /below 7.*7 or more/],
  ['a match that needs more than play', { fewestPlayers: 8 }, 'fewestPlayers', /needs 8.*1 to 7/],
  ['more periods in goal than there are', { mostKeeperPeriods: 5 }, 'mostKeeperPeriods', /4 periods/],
  [
    'more periods promised than there are',
    { leastTime: { ...noPromise, periods: 5 } },
    'leastPeriods',
    /1 to 4/,
  ],
  [
    'three of four for twelve at seven a side',
    { leastTime: { ...noPromise, periods: 3 } },
    'leastPeriods',
    /12 players.*9 at most/,
  ],
  ['three quarters for twelve', { leastTime: { ...noPromise, share: 0.75 } }, 'leastShare', /9 at most/],
  [
    'more promised than a day allows',
    { leastTime: { ...noPromise, share: 0.5 }, mostSecondsADay: 1200 },
    'leastShare',
    /20 minutes/,
  ],
  [
    'a late arrival after which nothing is left',
    { leastTime: { ...noPromise, late: [{ arrivesIn: 4, periods: 1 }] } },
    'late-4',
    /no period is left/,
  ],
  [
    'more for a late arrival than is left',
    { leastTime: { ...noPromise, late: [{ arrivesIn: 2, periods: 3 }] } },
    'late-2',
    /only 2 are left.*0 to 2/,
  ],
]

describe('what makes no sense in a format', () => {
  it('finds nothing in one that makes sense', () => {
    expect(formatFaults(sevens)).toEqual([])
    expect(formatFaults({ ...sevens, ages: null, mostPlayers: null, fewestPlayers: null })).toEqual([])
  })

  it.each(planted)('%s', (_what, change, path, words) => {
    const faults = formatFaults({ ...sevens, ...change })
    expect(faults.map((fault) => fault.path)).toEqual([path])
    expect(faults[0]?.message).toMatch(words)
  })

  it('where nobody keeps, a limit of periods in goal', () => {
    const shapes = [{ name: '2-3-2', places: { keeper: 0, back: 2, middle: 3, forward: 2 } }]
    const faults = formatFaults({ ...sevens, hasKeeper: false, shapes })
    expect(faults).toEqual([{ path: 'mostKeeperPeriods', message: expect.stringMatching(/leave it empty/) }])
  })

  it('lets a promise stand that holds where it is possible, and one for as many as may come', () => {
    const least = { ...noPromise, periods: 3 }
    expect(formatFaults({ ...sevens, leastTime: { ...least, wherePossible: true } })).toEqual([])
    expect(formatFaults({ ...sevens, leastTime: least, mostPlayers: 9 })).toEqual([])
  })

  it('says every fault there is', () => {
    const faults = formatFaults({ ...sevens, ages: [12, 10], mostPlayers: 6, fewestPlayers: 8 })
    expect(faults.map(({ path }) => path)).toEqual(['agesTo', 'mostPlayers', 'fewestPlayers'])
  })
})
