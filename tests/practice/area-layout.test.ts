import { describe, expect, it } from 'vitest'
import { layAreas } from '#practice/area-layout'
import { demoDesigns } from '../../seeds/designs'
import { aShape } from '../support/design-builder'

const near = (one: number, other: number) => Math.abs(one - other) < 1e-9

describe('areas on the ground', () => {
  it.each(demoDesigns.map((design) => [design.name, design] as const))(
    '%s: every round fills the whole, and everybody stands in the own area',
    (_name, design) => {
      for (const round of design.rounds) {
        const areas = layAreas(design, round.stations)
        const sum = areas.reduce((total, { lengthM, widthM }) => total + lengthM * widthM, 0)
        expect(sum).toBeCloseTo(design.areaLengthM * design.areaWidthM, 6)
        expect(areas.map(({ station }) => station).toSorted()).toEqual([...round.stations.keys()].toSorted())
        for (const { x, y, lengthM, widthM, places, station } of areas) {
          const { attack = 0, defend = 0, keep = 0 } = round.stations[station] ?? {}
          expect(places.map(({ role }) => role)).toEqual([
            ...Array.from({ length: attack }, () => 'attack'),
            ...Array.from({ length: defend }, () => 'defend'),
            ...Array.from({ length: keep }, () => 'keep'),
          ])
          for (const place of places) {
            expect(place.x > x && place.x < x + lengthM && place.y > y && place.y < y + widthM).toBe(true)
          }
        }
      }
    },
  )

  it('with two keepers have a goal at each end, and a keeper at each', () => {
    const whole = { areaLengthM: 60, areaWidthM: 40, isMirrored: false }
    const [area] = layAreas(whole, [aShape('6v6+2')])
    expect(area).toMatchObject({ to: 'right', hasGoal: true, hasGoalBehind: true })
    const keepers = area?.places
      .filter(({ role }) => role === 'keep')
      .map(({ x, y }) => [Math.round(x), Math.round(y)])
    expect(keepers).toEqual([
      [54, 20],
      [6, 20],
    ])
    expect(layAreas(whole, [aShape('6v6+1')])[0]).toMatchObject({ hasGoal: true, hasGoalBehind: false })
  })

  it('mirrored are each other’s image in the middle line, their goals there', () => {
    const whole = { areaLengthM: 64, areaWidthM: 36, isMirrored: true }
    const areas = layAreas(whole, ['3v2+1', '2v2', '3v2+1', '2v2'].map(aShape))
    expect(areas.map(({ to }) => to).toSorted()).toEqual(['left', 'left', 'right', 'right'])
    for (const area of areas) {
      const end = area.to === 'right' ? area.x + area.lengthM : area.x
      expect(end).toBe(32)
      const twin = areas.find(
        (other) => other.to !== area.to && near(other.y, area.y) && other.hasGoal === area.hasGoal,
      )
      const image = twin?.places.map(({ x, y, role }) => `${role} ${(64 - x).toFixed(6)} ${y.toFixed(6)}`)
      expect(image).toEqual(area.places.map(({ x, y, role }) => `${role} ${x.toFixed(6)} ${y.toFixed(6)}`))
    }
  })
})
