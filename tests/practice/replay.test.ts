import { describe, expect, it } from 'vitest'
import type { PracticeEvent } from '#practice/event'
import { replayPractice } from '#practice/replay'

const played = (id: string, start: number, end: number): PracticeEvent => ({
  kind: 'turn',
  id,
  turn: { start, end, themeId: null, stations: [] },
})
const voided = (id: string, voids: string): PracticeEvent => ({ kind: 'void', id, voids })
const passed = (id: string): PracticeEvent => ({
  kind: 'passed',
  id,
  playerId: 'ann',
  role: 'attack',
  lengthSeconds: 40,
})

describe('replaying a practice', () => {
  it('puts a correction written later where it belongs in time', () => {
    const { turns } = replayPractice([
      played('1', 0, 40),
      played('2', 50, 90),
      voided('3', '1'),
      played('4', 0, 45),
    ])
    expect(turns.map(({ start, end }) => [start, end])).toEqual([
      [0, 45],
      [50, 90],
    ])
  })

  it('keeps passes apart and drops those that were voided', () => {
    const replayed = replayPractice([passed('1'), passed('2'), voided('3', '1')])
    expect(replayed).toEqual({ turns: [], passes: [{ playerId: 'ann', role: 'attack', lengthSeconds: 40 }] })
  })

  it.each<[string, PracticeEvent[]]>([
    ['a void of nothing', [voided('1', '9')]],
    ['a void before what it voids', [voided('1', '2'), played('2', 0, 40)]],
    ['a void of a void', [played('1', 0, 40), voided('2', '1'), voided('3', '2')]],
    ['a second void of one turn', [played('1', 0, 40), voided('2', '1'), voided('3', '1')]],
    ['one id twice', [played('1', 0, 40), played('1', 50, 90)]],
    ['turns that overlap', [played('1', 0, 40), played('2', 39, 90)]],
    ['a turn of no length', [played('1', 40, 40)]],
  ])('refuses %s', (_what, events) => {
    expect(() => replayPractice(events)).toThrow()
  })

  it('takes turns that touch', () => {
    expect(replayPractice([played('1', 40, 80), played('2', 0, 40)]).turns).toHaveLength(2)
  })
})
