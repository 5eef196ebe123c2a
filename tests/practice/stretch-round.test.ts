import { describe, expect, it } from 'vitest'
import type { AreaShape, DesignRound } from '#practice/design'
import { kindOfShape } from '#practice/round-kind'
import { placesOfAll } from '#practice/round-places'
import { fitsTurnout, largerAreas, smallerAreas } from '#practice/stretch-areas'
import { largerShapes, smallerShapes, stretchRound } from '#practice/stretch-round'
import { seededRandom } from '../support/seeded-random'

const round = (...stations: AreaShape[]): DesignRound => ({
  title: 'r',
  turnCount: 4,
  turnSeconds: 40,
  gapSeconds: 0,
  stations,
})
const shape = (attack: number, defend: number, keep = 0): AreaShape => ({ attack, defend, keep })
const sizes = (proposals: readonly { readonly stations: readonly AreaShape[] }[]) =>
  proposals.map(({ stations }) =>
    stations.map(({ attack, defend, keep }) => `${attack}v${defend}${keep ? '+' : ''}`).join(' '),
  )
const all = (present: number, keepersAble = present) => ({ present, keepersAble })

// What a coach would do: common practice, no source.
describe('too few for a round', () => {
  it('3 against 2 with four: 2 against 1 keeps more of us and comes first, 2 against 2 is there too', () => {
    const [own] = smallerShapes([round(shape(3, 2))], all(4))
    expect(sizes(own?.proposals ?? [])[0]).toBe('2v1')
    expect(sizes(own?.proposals ?? [])).toContain('2v2')
  })

  it('two mirrored areas, eleven instead of twelve: one of them gets smaller and the other stays', () => {
    const [own] = smallerShapes([round(shape(3, 2, 1), shape(3, 2, 1))], all(11))
    const [best] = own?.proposals ?? []
    expect(best?.keepsKind).toBe(true)
    expect(best?.stations[0]).toEqual(shape(3, 2, 1))
    expect(best?.sentence).toBe('Area 2: 2 against 1 instead of 3 against 2. One waits.')
  })

  it('an area is left out where half the children are missing', () => {
    const [own] = smallerShapes([round(shape(2, 1), shape(2, 1))], all(4))
    expect(sizes(own?.proposals ?? [])[0]).toBe('2v1')
    expect(own?.proposals[0]?.sentence).toBe('One area instead of two. One waits.')
  })

  it('nobody to keep: without goalkeepers, and no side is touched', () => {
    const [own] = smallerShapes([round(shape(2, 1, 1), shape(2, 1, 1))], all(9, 1))
    expect(sizes(own?.proposals ?? [])[0]).toBe('2v1+ 2v1')
    expect(own?.proposals[0]?.sentence).toBe('Area 2: 2 against 1, without a goalkeeper. Two wait.')
  })

  it('one child alone still has a turn, and for nobody there is nothing to propose', () => {
    expect(sizes(smallerAreas([shape(2, 1, 1)], all(1, 0)))[0]).toBe('1v0')
    expect(smallerAreas([shape(2, 1, 1)], all(0))).toEqual([])
  })

  it('rounds that fit are not spoken of', () => {
    expect(smallerShapes([round(shape(3, 2)), round(shape(2, 1))], all(4)).map((own) => own.round)).toEqual([
      0,
    ])
  })
})

describe('more than a round has room for', () => {
  it('grows its areas or gets another, and keeps its kind', () => {
    const [own] = largerShapes([round(shape(2, 1, 1))], all(9))
    expect(own?.proposals[0]?.keepsKind).toBe(true)
    expect(own?.proposals[0]?.waiting).toBeLessThan(5)
    expect(sizes(own?.proposals ?? [])).toContain('2v1+ 2v1+')
  })

  it('stays as it is when everyone has a place', () => {
    expect(largerShapes([round(shape(2, 1))], all(3))).toEqual([])
  })
})

describe('whatever the numbers', () => {
  it('every proposal can be filled, no two are the same, and the kind comes first', () => {
    const random = seededRandom(11)
    for (let turn = 0; turn < 400; turn += 1) {
      const own = shape(random.whole(1, 5), random.whole(0, 4), random.whole(0, 1))
      const stations = Array.from({ length: random.whole(1, 4) }, () =>
        random.chance(0.8) ? own : shape(2, 1),
      )
      const present = random.whole(1, 24)
      const turnout = { present, keepersAble: random.whole(0, present) }
      const smaller = smallerAreas(stations, turnout)
      expect(smaller.length).toBeGreaterThan(0)
      for (const proposal of [...smaller, ...largerAreas(stations, turnout)]) {
        expect(fitsTurnout(proposal.stations, turnout)).toBe(true)
        expect(proposal.waiting).toBe(present - placesOfAll(proposal.stations).all)
        const isKept = proposal.stations.every((after, index) => {
          const from = proposal.from[index]
          return from == null || kindOfShape(after) === kindOfShape(stations[from] as AreaShape)
        })
        expect(proposal.keepsKind).toBe(isKept)
      }
      expect(new Set(sizes(smaller)).size).toBe(smaller.length)
    }
  })
})

describe('a stretched round', () => {
  it('leaves out choices that no longer fit, and the choice where one is left', () => {
    const chosen: DesignRound = {
      ...round(shape(3, 2)),
      choice: {
        by: 'coach',
        sizes: [shape(3, 2), shape(2, 1), shape(1, 1)].map((own, index) => ({ shape: own, points: index })),
      },
    }
    expect(stretchRound(chosen, { stations: [shape(2, 1)] }).choice?.sizes).toHaveLength(2)
    expect(stretchRound(chosen, { stations: [shape(1, 1)] }).choice).toBeNull()
  })
})
