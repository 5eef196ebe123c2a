import { describe, expect, it } from 'vitest'
import { adaptDesign } from '#practice/adapt-design'
import type { Adaptation, DesignChange } from '#practice/adaptation'
import { adaptationEffects, designSeconds, roundEffect } from '#practice/design-effects'
import { copyRound, moveRound, removeRound } from '#practice/edit-rounds'
import { aRound, aShape, aSheet } from '../support/design-builder'

const doing = (...changes: readonly DesignChange[]): Adaptation => ({
  id: 'a1',
  kind: 'task',
  title: 'Other',
  makes: 'harder',
  forWhom: 'all',
  why: 'To see.',
  changes,
})

const sheet = aSheet({
  rounds: [
    aRound(['2v1+1', '2v1'], { title: 'First' }),
    aRound(['3v2'], { title: 'Second', endings: [{ id: 'goal', words: 'Goal', side: 'attack', points: 1 }] }),
    aRound(['5v5'], { title: 'Free game', isFreeGame: true, turnCount: 2 }),
  ],
})

describe('an adaptation', () => {
  it('of the area changes nothing else', () => {
    const adapted = adaptDesign(sheet, doing({ what: 'area', lengthTimes: 0.5, widthTimes: 1.5 }))
    expect(adapted).toEqual({ ...sheet, areaLengthM: 15, areaWidthM: 30 })
  })

  it('of one round leaves the others, of every round the free game', () => {
    const places = { what: 'places', attack: 0, defend: 1, keep: 0 } as const
    const one = adaptDesign(sheet, doing({ ...places, round: 1 }))
    expect(one.rounds.map(({ stations }) => stations)).toEqual([
      sheet.rounds[0]?.stations,
      [aShape('3v3')],
      [aShape('5v5')],
    ])
    const every = adaptDesign(sheet, doing({ ...places, round: null }))
    expect(every.rounds.map(({ stations }) => stations)).toEqual([
      [aShape('2v2+1'), aShape('2v2')],
      [aShape('3v3')],
      [aShape('5v5')],
    ])
  })

  it('never leaves fewer than no place, nor no area, nor no turn', () => {
    const adapted = adaptDesign(
      sheet,
      doing(
        { what: 'places', round: 0, attack: 0, defend: 0, keep: -3 },
        { what: 'areas', round: 0, by: -9 },
        { what: 'turns', round: 0, secondsTimes: 0.001, countTimes: 0.1 },
      ),
    )
    expect(adapted.rounds[0]).toMatchObject({ stations: [aShape('2v1')], turnSeconds: 1, turnCount: 1 })
  })

  it('adds areas like the last, sizes of a choice grow with them', () => {
    const choice = { by: 'attack', sizes: [{ shape: aShape('2v1'), points: 1 }] } as const
    const own = aSheet({ rounds: [aRound(['3v1', '2v1'], { choice })] })
    const adapted = adaptDesign(
      own,
      doing({ what: 'areas', round: 0, by: 1 }, { what: 'places', round: 0, attack: 1, defend: 0, keep: 0 }),
    )
    expect(adapted.rounds[0]?.stations).toEqual([aShape('4v1'), aShape('3v1'), aShape('3v1')])
    expect(adapted.rounds[0]?.choice?.sizes).toEqual([{ shape: aShape('3v1'), points: 1 }])
  })

  it('puts an ending in place of one with its id, and rules after those that hold', () => {
    const ending = { id: 'goal', words: 'Goal with one touch', side: 'attack', points: 3 } as const
    const adapted = adaptDesign(
      sheet,
      doing({ what: 'ending', round: 1, ending }, { what: 'condition', round: 1, words: 'Two touches' }),
    )
    expect(adapted.rounds[1]).toMatchObject({ endings: [ending], conditions: ['Two touches'] })
  })
})

describe('what a round asks', () => {
  // On paper: 4 turns of 60 s for 10 children on 7 places: 240 s live, each plays 240 × 7/10 = 168 s and waits 72 s;
  // whole 4 × 60 + 3 × 30 = 330 s; 30 × 20 m for 7 is 85.7 m², without the keeper 100 m².
  it('is reckoned for so many children', () => {
    const effect = roundEffect(sheet, { round: sheet.rounds[0] ?? aRound([]), children: 10 })
    expect(effect).toMatchObject({ places: 7, placesTooMany: 0, waiting: 3, wholeSeconds: 330 })
    expect(effect.workSeconds).toBeCloseTo(168, 9)
    expect(effect.waitSeconds).toBeCloseTo(72, 9)
    expect(effect.areaPerChild).toBeCloseTo(600 / 7, 9)
    expect(effect.areaWithoutKeepers).toBeCloseTo(100, 9)
  })

  it('with too few children says how many places stay empty, and nobody waits', () => {
    const effect = roundEffect(sheet, { round: sheet.rounds[0] ?? aRound([]), children: 5 })
    expect(effect).toMatchObject({ placesTooMany: 2, waiting: 0, waitSeconds: 0 })
  })

  // On paper: 4 × 60 + 3 × 30 = 330 s, and 2 × 300 s of a free game without a gap.
  it('takes so long altogether, and less of it with the ball in play', () => {
    const game = aRound(['5v5'], { turnCount: 2, turnSeconds: 300, gapSeconds: 0, isFreeGame: true })
    expect(designSeconds([aRound(['2v1']), game])).toEqual({ whole: 930, live: 840 })
    expect(designSeconds([])).toEqual({ whole: 0, live: 0 })
  })

  it('before and after an adaptation differs where it does something, and only there', () => {
    const effects = adaptationEffects(sheet, {
      adaptation: doing({ what: 'places', round: 1, attack: 0, defend: 1, keep: 0 }),
      children: 10,
    })
    expect(effects.map(({ title }) => title)).toEqual(['Second'])
    expect(effects[0]).toMatchObject({ before: { places: 5 }, after: { places: 6 }, conditions: [] })
    const words = adaptationEffects(sheet, {
      adaptation: doing({ what: 'condition', round: null, words: 'Two touches' }),
      children: 10,
    })
    expect(words.map(({ title, conditions }) => [title, conditions])).toEqual([
      ['First', ['Two touches']],
      ['Second', ['Two touches']],
    ])
  })
})

describe('rounds moved, copied and taken out', () => {
  const ofRound = (round: number) => doing({ what: 'areas', round, by: 1 })
  const edited = { ...sheet, adaptations: [ofRound(0), ofRound(1), ofRound(2)] }
  const what = (design: typeof edited) => ({
    titles: design.rounds.map(({ title }) => title),
    refs: design.adaptations.map(({ changes }) =>
      changes.map((change) => (change.what === 'area' ? null : design.rounds[change.round ?? -1]?.title)),
    ),
  })

  it('take what adaptations do to them along', () => {
    const refs = [['First'], ['Second'], ['Free game']]
    expect(what(edited)).toEqual({ titles: ['First', 'Second', 'Free game'], refs })
    expect(what(moveRound(edited, { from: 0, by: 1 }))).toEqual({
      titles: ['Second', 'First', 'Free game'],
      refs,
    })
    expect(moveRound(edited, { from: 0, by: -1 })).toBe(edited)
    expect(what(copyRound(edited, 0))).toEqual({ titles: ['First', 'First', 'Second', 'Free game'], refs })
    expect(what(removeRound(edited, 1))).toEqual({
      titles: ['First', 'Free game'],
      refs: [['First'], [], ['Free game']],
    })
  })
})
