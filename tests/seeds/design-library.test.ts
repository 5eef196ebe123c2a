import { describe, expect, it } from 'vitest'
import { adaptDesign } from '#practice/adapt-design'
import { adaptationKinds } from '#practice/adaptation'
import { adaptationEffects } from '#practice/design-effects'
import { designFaults } from '#practice/design-faults'
import { childrenNeeded } from '#practice/design-stretch'
import { roundFaults } from '#practice/round-faults'
import { kindOfRound } from '#practice/round-kind'
import { placesOfAll } from '#practice/round-places'
import { shapesText } from '#practice/shape-text'
import { demoDesigns, designId } from '../../seeds/designs'
import { demoThemes } from '../../seeds/programme'

const named = demoDesigns.map((design) => [design.name, design] as const)

describe('the library of designs', () => {
  it('has more than twelve of different names, for every theme that practices have', () => {
    expect(new Set(demoDesigns.map(({ name }) => name)).size).toBe(demoDesigns.length)
    expect(demoDesigns.length).toBeGreaterThan(12)
    const themeIds = new Set(demoDesigns.map((design) => design.themeId))
    // All but the heading of the defending ones, which has three below it.
    expect(demoThemes.filter(({ id }) => !themeIds.has(id)).map(({ name }) => name)).toEqual([
      'Without the ball',
    ])
  })

  it('says in every round with sizes to pick what the attackers win their points with', () => {
    const picked = demoDesigns.flatMap(({ rounds }) => rounds.filter(({ choice }) => choice))
    expect(picked.length).toBeGreaterThan(2)
    for (const { title, endings } of picked)
      expect([title, endings?.some(({ side }) => side === 'attack')]).toEqual([title, true])
  })

  it('has each kind of round, rounds that end when the ball is dead, choices of both kinds, sides and halves', () => {
    const rounds = demoDesigns.flatMap((design) => design.rounds)
    const kinds = new Set(rounds.map(kindOfRound))
    for (const kind of ['outnumbering', 'level', 'outnumbered', 'free', 'chosen'] as const)
      expect(kinds.has(kind), kind).toBe(true)
    expect(rounds.some(({ isUntilDead }) => isUntilDead)).toBe(true)
    expect(new Set(rounds.flatMap(({ choice }) => choice?.by ?? []))).toEqual(new Set(['attack', 'coach']))
    expect(demoDesigns.some(({ sides }) => sides)).toBe(true)
    expect(demoDesigns.some(({ isMirrored }) => isMirrored)).toBe(true)
    expect(demoDesigns.some(({ areaUnit }) => areaUnit === 'yd')).toBe(true)
  })

  it.each(named)('%s has no fault, ends with a free game and says who scores what', (_name, design) => {
    expect(designFaults(design)).toEqual([])
    expect(design.rounds.map((round) => kindOfRound(round) === 'free')).toEqual(
      design.rounds.map((_, index) => index === design.rounds.length - 1),
    )
    for (const round of design.rounds) {
      const scorers = new Set(round.endings?.map(({ side }) => side))
      if (!round.isFreeGame && round.choice == null) expect(scorers.has('attack'), round.title).toBe(true)
      expect((round.endings?.length ?? 0) > 0, round.title).toBe(true)
    }
    expect(design.note.length).toBeGreaterThan(10)
  })

  // The demo's squads have 14 and 16 children.
  it.each(named)('%s can be played by 14 and by 16', (_name, design) => {
    const needed = childrenNeeded(design)
    expect(needed?.fewest).toBeLessThanOrEqual(14)
    expect(needed?.most).toBeGreaterThanOrEqual(16)
    for (const { stations } of design.rounds) expect(placesOfAll(stations).all).toBeLessThanOrEqual(14)
  })

  it.each(named)('%s is made harder or easier in three ways at least, of three kinds', (_name, design) => {
    expect(design.adaptations.length).toBeGreaterThanOrEqual(3)
    const kinds = new Set(design.adaptations.map(({ kind }) => kind))
    expect(adaptationKinds.filter((kind) => kinds.has(kind)).length).toBeGreaterThanOrEqual(3)
    for (const adaptation of design.adaptations) {
      const effects = adaptationEffects(design, { adaptation, children: 14 })
      const isCounted = adaptation.changes.some(({ what }) => what === 'ending')
      expect(effects.length > 0 || isCounted, adaptation.title).toBe(true)
      expect(adaptDesign(design, adaptation).rounds.flatMap(roundFaults), adaptation.title).toEqual([])
    }
  })
})

// What the practices of the season were played by, as it stood before the library grew: turns × seconds, areas.
const played = {
  lanes: ['6x40 3 × 2v1', '6x50 3v2+1, 3v2', '4x60 3v3+1, 2v2', '2x330 5v5+1'],
  doors: ['6x45 2 × 3v2', '5x60 4v3+1, 2v1', '4x60 3v3+1, 2v2', '2x330 5v5+1'],
  quickFinish: ['8x30 1v1+1, 1v1+1, 2v2', '6x45 2v2+1, 2v2, 1v1', '5x50 3v2+1, 3v2', '2x330 5v5+1'],
  bridge: ['6x40 2v1+1, 2v1, 2v1', '6x50 2v3+1, 2v3', '4x60 3v3+1, 2v2', '2x330 5v5+1'],
  overTheLine: ['6x45 3v2+1, 3v2', '5x70 4v4+1, 1v1', '4x50 2v3, 2v3+1', '2x330 5v5+1'],
} as const

describe('the designs of the season', () => {
  it.each(Object.entries(played))('%s has the turns it was played with', (key, turns) => {
    const design = demoDesigns.find(({ id }) => id === designId(key as keyof typeof played))
    expect(
      design?.rounds.map(
        ({ turnCount, turnSeconds, stations }) => `${turnCount}x${turnSeconds} ${shapesText(stations)}`,
      ),
    ).toEqual(turns)
  })
})
