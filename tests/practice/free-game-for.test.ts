import { describe, expect, it } from 'vitest'
import { freeGameFor } from '#practice/free-game-for'
import { placesOf, placesOfAll } from '#practice/round-places'
import { shapesText } from '#practice/shape-text'
import { aRound } from '../support/design-builder'

const game = (...areas: readonly string[]) => aRound(areas, { isFreeGame: true, turnCount: 2 })
const played = (areas: readonly string[], present: number, keepersAble = present) =>
  shapesText(freeGameFor(game(...areas), { present, keepersAble }).stations)

describe('a free game', () => {
  it.each([
    [['5v5+1'], 14, 14, '7v6+1'],
    [['5v5+1'], 11, 11, '5v5+1'],
    [['5v5+1'], 8, 0, '4v4'],
    [['6v6+2'], 14, 1, '7v6+1'],
    [['6v6+2'], 14, 2, '6v6+2'],
    [['5v5'], 3, 3, '2v1'],
    [['5v5+2'], 3, 3, '1v1+1'],
    [['3v3', '3v3'], 13, 13, '3v3, 4v3'],
  ])('drawn as %j for %i, %i of whom may keep goal, is %s', (areas, present, keepersAble, shapes) => {
    expect(played(areas, present, keepersAble)).toBe(shapes)
  })

  it('has a place for everybody, no side two larger than the other, no game two larger than another', () => {
    for (const areas of [['5v5+1'], ['6v6+2'], ['3v3+1', '3v3+1'], ['2v2', '2v2', '2v2+1']])
      for (let present = 2; present <= 30; present += 1)
        for (const keepersAble of [0, 1, 2, present]) {
          const { stations } = freeGameFor(game(...areas), { present, keepersAble })
          const { all, keep } = placesOfAll(stations)
          expect(all).toBe(present)
          expect(keep).toBeLessThanOrEqual(Math.min(keepersAble, placesOfAll(game(...areas).stations).keep))
          for (const { attack, defend } of stations) {
            expect(attack - defend === 0 || attack - defend === 1).toBe(true)
            expect(defend).toBeGreaterThan(0)
          }
          const sizes = stations.map(placesOf)
          expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1)
        }
  })
})
