import { describe, expect, it } from 'vitest'
import type { Adaptation, DesignChange } from '#practice/adaptation'
import { adaptationEffects } from '#practice/design-effects'
import { sizeText, squareText, turnsText } from '#ui/designs/design-words'
import { effectLines } from '#ui/designs/effect-text'
import { placeOf } from '#ui/designs/form/draft'
import { numberOf } from '#ui/designs/form/number-field'
import { aRound, aSheet } from '../../support/design-builder'

const doing = (...changes: readonly DesignChange[]): Adaptation => ({
  ...{ id: 'a1', kind: 'task', title: 'Other', makes: 'harder', forWhom: 'all', why: 'To see.' },
  changes,
})

const sheet = aSheet({
  rounds: [
    aRound(['2v1', '2v1'], { title: 'One' }),
    aRound(['2v1', '2v1'], { title: 'Two' }),
    aRound(['3v3', '1v1'], { title: 'Three' }),
  ],
})
const linesFor = (adaptation: Adaptation, children = 12) =>
  effectLines(adaptationEffects(sheet, { adaptation, children }))

describe('what an adaptation does, in words', () => {
  // On paper: 600 m² for 6 places is 100 m², for 8 places 75 m²; half as wide, half of each.
  it('says rounds that change alike together', () => {
    expect(linesFor(doing({ what: 'area', lengthTimes: 1, widthTimes: 0.5 }))).toEqual([
      { rounds: ['One', 'Two'], pieces: ['100 → 50 m² for each child'] },
      { rounds: ['Three'], pieces: ['75 → 38 m² for each child'] },
    ])
  })

  // Twelve children on 6 places play half of the time; on 8 places twice as long as they wait.
  it('says places, playing to waiting, and what is called out', () => {
    expect(
      linesFor(
        doing(
          { what: 'places', round: 0, attack: 0, defend: 1, keep: 0 },
          { what: 'condition', round: 0, words: 'Two touches' },
        ),
      ),
    ).toEqual([
      {
        rounds: ['One'],
        pieces: [
          '100 → 75 m² for each child',
          '6 → 8 places',
          'playing to waiting 1 : 1 → 2 : 1',
          '“Two touches”',
        ],
      },
    ])
  })

  it('says when there are more places than children', () => {
    const [line] = linesFor(doing({ what: 'areas', round: 0, by: 1 }), 8)
    expect(line?.pieces).toContain('1 place more than children')
  })
})

describe('words of a design', () => {
  it('has lengths in the unit it was written in', () => {
    const ground = { areaLengthM: 64.008, areaWidthM: 36.576 }
    expect(sizeText(ground, 'yd')).toBe('70 × 40 yd')
    expect(sizeText(ground, 'm')).toBe('64 × 36.6 m')
    expect(squareText(195.0964, 'yd')).toBe('195 m² (233 yd²)')
    expect(squareText(null, 'm')).toBe('–')
  })

  it('says how long turns last', () => {
    expect(turnsText(aRound([]))).toBe('4 turns of 60 s, 30 s between')
    expect(turnsText(aRound([], { isUntilDead: true, gapSeconds: 0 }))).toBe(
      '4 turns, each until the ball is dead, about 60 s',
    )
    expect(turnsText(aRound([], { isFreeGame: true, turnCount: 2, turnSeconds: 330 }))).toBe(
      '2 halves of 5 min 30 s, sides swapped',
    )
  })

  it.each([
    ['rounds.1.stations', 'Round 2, areas'],
    ['rounds.1.stations.0', 'Round 2, area 1'],
    ['rounds.0.turnSeconds', 'Round 1, length of a turn'],
    ['rounds', 'Rounds'],
    ['adaptations.2.changes.0', 'Adaptation 3, what is done'],
    ['areaLengthM', 'Length'],
    ['sides.1', 'Sides'],
  ])('calls %s %s', (path, place) => {
    expect(placeOf(path)).toBe(place)
  })

  it.each([
    ['12', 12],
    [' 12,5 ', 12.5],
    ['-1', -1],
    ['', Number.NaN],
    ['12m', Number.NaN],
    ['1e3', Number.NaN],
  ])('reads “%s” as %d', (text, number) => {
    expect(numberOf(text)).toBe(number)
  })
})
