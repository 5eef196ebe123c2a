import { describe, expect, it } from 'vitest'
import { checkPractice } from '#practice/checks/check-practice'
import { checkOneSeatEach } from '#practice/checks/one-seat-each'
import { checkSeatedWhilePresent } from '#practice/checks/seated-while-present'
import { checkTurnInsidePractice } from '#practice/checks/turn-inside-practice'
import { checkTurnLength } from '#practice/checks/turn-length'
import { checkTurnOrder } from '#practice/checks/turn-order'
import type { Station, Turn } from '#practice/turn'

const turn = (start: number, end: number, ...stations: Partial<Station>[]): Turn => ({
  start,
  end,
  themeId: null,
  stations: stations.map((station) => ({ attack: [], defend: [], keep: [], ...station })),
})

describe('the turns of a practice', () => {
  it('end after they start', () => {
    expect(checkTurnLength([turn(0, 1), turn(2, 2), turn(9, 3)])).toEqual([
      { rule: 'turnWithoutLength', turn: 1 },
      { rule: 'turnWithoutLength', turn: 2 },
    ])
  })

  it('may touch, and stand in order of time', () => {
    expect(checkTurnOrder([turn(0, 40), turn(40, 80), turn(79, 90), turn(10, 20)])).toEqual([
      { rule: 'turnOutOfOrder', turn: 2, lastEnd: 80 },
      { rule: 'turnOutOfOrder', turn: 3, lastEnd: 90 },
    ])
  })

  it('end with the practice at the latest, where its length is known', () => {
    const turns = [turn(0, 100), turn(100, 101)]
    expect(checkTurnInsidePractice(turns, 100)).toEqual([
      { rule: 'turnAfterEnd', turn: 1, lengthSeconds: 100 },
    ])
    expect(checkTurnInsidePractice(turns, null)).toEqual([])
  })

  it('have one seat for each player, over all their stations', () => {
    expect(checkOneSeatEach([turn(0, 9, { attack: ['ann', 'ben'] }, { keep: ['cas', 'ann'] })])).toEqual([
      { rule: 'seatedTwice', turn: 0, playerId: 'ann', seat: { station: 1, role: 'keep', place: 1 } },
    ])
  })

  it('seat only who is there for all of them', () => {
    const register = [
      { playerId: 'ann', from: 0, to: 50 },
      { playerId: 'ann', from: 50, to: 100 },
      { playerId: 'ben', from: 1, to: 100 },
    ]
    const turns = [turn(0, 60, { attack: ['ann'], defend: ['ben'] }), turn(60, 100, { attack: ['ben'] })]
    expect(checkSeatedWhilePresent({ register, turns })).toEqual([
      { rule: 'seatedWhileAway', turn: 0, playerId: 'ben', seat: { station: 0, role: 'defend', place: 0 } },
    ])
  })

  it('are checked for all of it, in their order', () => {
    const turns = [turn(0, 60, { attack: ['ann'] }), turn(50, 40)]
    const faults = checkPractice({ lengthSeconds: 30, register: [], turns })
    expect(faults.map(({ rule, turn }) => `${turn} ${rule}`)).toEqual([
      '0 turnAfterEnd',
      '0 seatedWhileAway',
      '1 turnWithoutLength',
      '1 turnOutOfOrder',
      '1 turnAfterEnd',
    ])
  })
})
