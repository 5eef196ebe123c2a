import { describe, expect, it } from 'vitest'
import type { AreaShape } from '#practice/design'
import { childrenNeeded, isPaired, stretchDesign } from '#practice/design-stretch'
import { kindOfRound, kindOfShape } from '#practice/round-kind'
import { placesOfAll } from '#practice/round-places'
import { demoDesigns } from '../../seeds/designs'
import { aRound, aShape, aSheet } from '../support/design-builder'

describe('the kind of a round, as the attackers have it', () => {
  it.each([
    [aRound(['3v2+1', '2v1']), 'outnumbering'],
    [aRound(['2v2+1']), 'level'],
    [aRound(['2v3']), 'outnumbered'],
    [aRound(['4v4'], { isFreeGame: true }), 'free'],
    [aRound(['3v2', '2v2']), 'mixed'],
    [aRound(['3v0']), 'alone'],
    [aRound(['3v2', '3v0']), 'outnumbering'],
    [
      aRound(['3v2'], {
        choice: { by: 'attack', sizes: ['3v2', '2v2'].map((text) => ({ shape: aShape(text), points: 1 })) },
      }),
      'chosen',
    ],
  ])('of %o is %s', (round, kind) => {
    expect(kindOfRound(round)).toBe(kind)
  })
})

describe('children needed', () => {
  // On paper: 3v2+1 and 3v2 keep their kind down to 2v1 and 2v1 (6 children), 3v3 down to 1v1 (2), 2v3 down to 1v2 (3).
  // The fullest round has 11 places. The emptiest has 5: with up to 10 nobody waits twice running in it.
  it('are the fewest that keep every area and kind, the best, and the most without two waits in a row', () => {
    const rounds = [aRound(['3v2+1', '3v2']), aRound(['3v3']), aRound(['2v3'])]
    expect(childrenNeeded({ rounds })).toEqual({ fewest: 6, best: 11, most: 11 })
    expect(childrenNeeded({ rounds: rounds.slice(0, 1) })).toEqual({ fewest: 6, best: 11, most: 22 })
  })

  it('leave the free game out, and are unknown without places', () => {
    expect(childrenNeeded({ rounds: [aRound(['8v8'], { isFreeGame: true })] })).toBeNull()
    expect(childrenNeeded({ rounds: [aRound([])] })).toBeNull()
  })

  it.each(demoDesigns.map((design) => [design.name, design] as const))(
    'of %s are what trying every smaller area finds',
    (_name, design) => {
      const rising = design.rounds.filter(({ isFreeGame }) => !isFreeGame)
      const least = rising.map(({ stations }) =>
        stations.reduce((sum, shape) => sum + Math.min(...playersOfKind(shape)), 0),
      )
      expect(childrenNeeded(design)?.fewest).toBe(Math.max(...least))
    },
  )
})

/** In the field of every area no larger than this one that is of its kind. */
function playersOfKind(shape: AreaShape): readonly number[] {
  const found: number[] = []
  for (let attack = 0; attack <= shape.attack; attack += 1)
    for (let defend = 0; defend <= shape.defend; defend += 1)
      if (kindOfShape({ attack, defend, keep: 0 }) === kindOfShape(shape) && attack + defend > 0)
        found.push(attack + defend)
  return found
}

describe('a design for so many children', () => {
  it('is as it is drawn where it can be filled and nobody waits twice running', () => {
    const sheet = aSheet({ rounds: [aRound(['3v2', '3v2'])] })
    for (const present of [10, 15, 20])
      expect(stretchDesign(sheet, { present, keepersAble: present })[0]).toMatchObject({
        stations: sheet.rounds[0]?.stations,
        sentence: null,
        waiting: present - 10,
        waitsInARow: present === 10 ? 0 : 1,
      })
  })

  it.each(demoDesigns.map((design) => [design.name, design] as const))(
    '%s never has more places than children, nor more keepers than may keep',
    (_name, design) => {
      for (let present = 2; present <= 26; present += 1)
        for (const keepersAble of [0, 1, present]) {
          for (const round of stretchDesign(design, { present, keepersAble })) {
            const { all, keep } = placesOfAll(round.stations)
            expect(all).toBeLessThanOrEqual(present)
            expect(keep).toBeLessThanOrEqual(keepersAble)
            expect(all + round.waiting).toBe(present)
            // What is not as drawn says what it became.
            const drawn =
              JSON.stringify(round.stations) === JSON.stringify(design.rounds[round.round]?.stations)
            if (all > 0) expect(round.sentence === null).toBe(drawn)
          }
        }
    },
  )

  it('keeps mirrored halves alike while two areas can be filled', () => {
    const sheet = aSheet({ isMirrored: true, rounds: [aRound(['3v2+1', '3v2+1'])] })
    for (let present = 6; present <= 30; present += 1) {
      const [round] = stretchDesign(sheet, { present, keepersAble: present })
      expect(isPaired(round?.stations ?? []), `${present} children`).toBe(true)
    }
  })
})
