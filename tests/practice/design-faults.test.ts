import { describe, expect, it } from 'vitest'
import { castFaults } from '#practice/cast-faults'
import type { DesignRound } from '#practice/design'
import { designFaults } from '#practice/design-faults'
import { firstDraft, plainAdaptation, plainChange } from '#practice/new-design'
import { roundFaults } from '#practice/round-faults'
import { aRound, aShape, aSheet } from '../support/design-builder'

const pathsOf = (problems: readonly { readonly path: string }[]) => problems.map(({ path }) => path)

describe('a round', () => {
  it.each<[string, Partial<DesignRound>, string, RegExp]>([
    ['without areas', { stations: [] }, 'stations', /no places.*2 attackers and 1 defender/],
    [
      'with an empty area',
      { stations: [aShape('2v1'), aShape('0v0')] },
      'stations.1',
      /no places.*take the area out/,
    ],
    ['with empty areas only', { stations: [aShape('0v0')] }, 'stations', /nobody can play/],
    ['without turns', { turnCount: 0 }, 'turnCount', /1 is the fewest/],
    ['of turns of no length', { turnSeconds: 0 }, 'turnSeconds', /no length.*45 seconds/],
    ['of turns that are no number', { turnSeconds: Number.NaN }, 'turnSeconds', /no length/],
    [
      'until the ball is dead at once',
      { turnSeconds: 0, isUntilDead: true },
      'turnSeconds',
      /how long a ball/,
    ],
    ['of half a turn', { turnCount: 2.5 }, 'turnCount', /whole number, 60 at most/],
    ['of a turn of three hours', { turnSeconds: 10_800 }, 'turnSeconds', /7200 at most/],
    ['with no time between', { gapSeconds: Number.NaN }, 'gapSeconds', /0 for none/],
    [
      'with less than no points',
      { endings: [{ id: 'e', words: 'Goal', side: 'attack', points: -1 }] },
      'endings.0',
      /points from 0/,
    ],
    ['a free game in three parts', { isFreeGame: true, turnCount: 3 }, 'turnCount', /2 turns would be right/],
    [
      'an ending without words',
      { endings: [{ id: 'e', words: ' ', side: 'attack', points: 1 }] },
      'endings.0',
      /says nothing/,
    ],
  ])('%s is refused', (_what, parts, path, message) => {
    const faults = roundFaults(aRound(['2v1'], parts))
    expect(pathsOf(faults)).toEqual([path])
    expect(faults[0]?.message).toMatch(message)
  })

  const choice = (...sizes: readonly (readonly [string, number])[]): Partial<DesignRound> => ({
    choice: { by: 'attack', sizes: sizes.map(([text, points]) => ({ shape: aShape(text), points })) },
  })

  it.each<[string, Partial<DesignRound>, readonly string[]]>([
    ['one size only', choice(['3v2', 1]), ['choice']],
    ['a size larger than the area', choice(['3v2', 1], ['4v2', 1]), ['choice.sizes.1']],
    ['an empty size', choice(['3v2', 1], ['0v0', 1]), ['choice.sizes.1']],
    ['a harder size for fewer points', choice(['3v2', 2], ['2v2', 1]), ['choice.sizes.1']],
    ['harder for as many', choice(['3v2', 2], ['2v2', 2]), []],
    ['harder for more', choice(['3v2', 1], ['2v2', 2], ['1v2', 3]), []],
  ])('a choice with %s', (_what, parts, paths) => {
    expect(pathsOf(roundFaults(aRound(['3v2'], parts)))).toEqual(paths)
  })

  it('in order has no fault', () => {
    expect(roundFaults(aRound(['3v2+1', '2v2']))).toEqual([])
  })
})

describe('a design', () => {
  it('as a new one begins lacks its name only', () => {
    expect(designFaults(firstDraft)).toEqual([
      { path: 'name', message: 'is empty; write what the design is called' },
    ])
  })

  it.each([
    ['no rounds', { rounds: [] }, ['rounds']],
    ['an area of no length', { areaLengthM: 0 }, ['areaLengthM']],
    ['an area of a kilometre', { areaWidthM: 1000 }, ['areaWidthM']],
    ['a length that is no number', { areaLengthM: Number.NaN }, ['areaLengthM']],
    ['halves that do not mirror', { isMirrored: true }, ['rounds.0.stations']],
    ['halves that mirror', { isMirrored: true, rounds: [aRound(['2v1', '3v2', '2v1', '3v2'])] }, []],
    ['sides without a name', { sides: { names: ['Red', ' '], swap: 'never' } as const }, ['sides.1']],
    ['two sides of one name', { sides: { names: ['Red', 'red '], swap: 'never' } as const }, ['sides.1']],
    [
      'sides with nobody against them',
      { sides: { names: ['Red', 'Blue'], swap: 'never' } as const, rounds: [aRound(['3v0'])] },
      ['sides.swap'],
    ],
  ])('with %s', (_what, parts, paths) => {
    expect(pathsOf(designFaults(aSheet(parts)))).toEqual(paths)
  })

  it('names the round and field of every fault', () => {
    const rounds = [aRound(['2v1']), aRound(['0v0', '2v1'], { title: ' ', turnSeconds: 0 })]
    expect(pathsOf(designFaults(aSheet({ rounds })))).toEqual([
      'rounds.1.title',
      'rounds.1.stations.0',
      'rounds.1.turnSeconds',
    ])
  })
})

describe('an adaptation', () => {
  const said = { ...plainAdaptation('a1'), title: 'Smaller', why: 'Less time.' }
  const faultsOf = (parts: Partial<typeof said>) =>
    pathsOf(designFaults(aSheet({ adaptations: [{ ...said, ...parts }] })))

  it.each([
    ['that is in order', {}, []],
    ['without words', { title: '', why: '' }, ['adaptations.0.title', 'adaptations.0.why']],
    ['that does nothing', { changes: [] }, ['adaptations.0.changes']],
    [
      'of a round that is not there',
      { changes: [{ ...plainChange('areas'), round: 3 }] },
      ['adaptations.0.changes.0'],
    ],
    [
      'of no size',
      { changes: [{ what: 'area', lengthTimes: Number.NaN, widthTimes: 1 }] },
      ['adaptations.0.changes.0'],
    ],
    ['of empty words', { changes: [plainChange('condition')] }, ['adaptations.0.changes.0']],
    [
      'that leaves an area empty',
      { changes: [{ what: 'places', round: null, attack: -2, defend: -1, keep: 0 }] },
      ['adaptations.0.changes'],
    ],
  ] as const)('%s', (_what, parts, paths) => {
    expect(faultsOf(parts)).toEqual(paths)
  })
})

describe('what a squad cannot fill', () => {
  const cast = (children: number, mayKeep = children) => ({ squadName: 'Under-10s', children, mayKeep })

  it('is more places than children, and what would fit is said', () => {
    const [fault] = castFaults([aRound(['3v2', '3v2', '3v2'])], cast(11))
    expect(fault).toEqual({
      path: 'rounds.0.stations',
      message: '15 places, and Under-10s has 11 children; 2 × 3v2 would fit',
    })
    expect(castFaults([aRound(['3v2', '3v2'])], cast(10))).toEqual([])
    expect(castFaults([aRound(['8v8'])], cast(4))[0]?.message).toMatch(/2v1 would fit$/)
    expect(castFaults([aRound(['2v1'])], cast(1))[0]?.message).toMatch(/1 child; at least 3/)
  })

  it('is a goal that nobody may keep, and more goals than keepers', () => {
    expect(castFaults([aRound(['2v1+1'])], cast(10, 0))[0]?.message).toMatch(
      /nobody of Under-10s may keep goal; take the keeper out/,
    )
    expect(castFaults([aRound(['2v1+1', '2v1+1'])], cast(10, 1))[0]?.message).toMatch(
      /2 places in goal, and 1 child .* 1 at most/,
    )
    expect(castFaults([aRound(['2v1+1', '2v1+1'])], cast(10, 2))).toEqual([])
  })

  it('is never the free game, which takes whoever is there', () => {
    expect(castFaults([aRound(['8v8+2'], { isFreeGame: true })], cast(5, 0))).toEqual([])
  })
})

describe('a design larger than a practice', () => {
  const turns = (count: number) => aRound(['2v1'], { turnCount: count })

  it('is refused, with what would be right: turns together, rounds, areas', () => {
    const tooLong = { ...aSheet(), rounds: [turns(60), turns(60), turns(60), turns(21)] }
    expect(designFaults(tooLong)).toEqual([
      { path: 'rounds', message: expect.stringMatching(/have 201 turns together.*200 at most/) },
    ])
    const tooMany = { ...aSheet(), rounds: Array.from({ length: 13 }, () => turns(1)) }
    expect(pathsOf(designFaults(tooMany))).toEqual(['rounds'])
    const areas = { ...aSheet(), rounds: [aRound(Array(10).fill('2v1'))] }
    expect(designFaults(areas)).toEqual([
      { path: 'rounds.0.stations', message: expect.stringMatching(/are 10.*9 at most/) },
    ])
  })

  it('is no way to adapt one either', () => {
    const change = { what: 'turns', round: null, secondsTimes: 1, countTimes: 3 } as const
    const adaptation = { ...plainAdaptation('a'), title: 'Longer', why: 'More of it.', changes: [change] }
    const sheet = {
      ...aSheet(),
      rounds: Array.from({ length: 5 }, () => turns(20)),
      adaptations: [adaptation],
    }
    expect(designFaults(sheet)).toEqual([
      { path: 'adaptations.0.changes', message: expect.stringMatching(/^leaves rounds that have 300 turns/) },
    ])
  })
})
