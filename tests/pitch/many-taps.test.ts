import { describe, expect, it } from 'vitest'
import { afterTheWhistle } from '#pitch/after-the-whistle'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import { foldPitch } from '#pitch/pitch-state'
import { aPlan, aPlannedTurn, area, kickOff, rosterOf } from '../support/pitch-builder'

/** As many taps as the book keeps of one practice. */
const most = 5000
const letters = 'abcdefghij'
const turns = Array.from({ length: 40 }, (_, index) => aPlannedTurn(Math.floor(index / 10), 'ab/c/d ef/g/h'))
const plan = aPlan(turns)
const idOf = (index: number) => `tap-${String(index).padStart(5, '0')}`
const tap = (index: number, deed: Deed): PitchEvent => ({
  id: idOf(index),
  deviceId: 'p1',
  at: kickOff + index * 1000,
  deed,
})
const fold = (events: readonly PitchEvent[]) => foldPitch(plan, rosterOf(letters), events)

describe('an undo of an undo of an undo …', () => {
  // Every undo turns what it undoes around: what the first tap is hangs on whether their number is even.
  it.each([0, 1, 2, 7, 8, most - 2, most - 1])('%i deep leaves what its number says', (count) => {
    const chain = Array.from({ length: count }, (_, index) =>
      tap(index + 1, { kind: 'undo', undoes: idOf(index) }),
    )
    const events = [tap(0, { kind: 'begin' }), ...chain]
    expect(fold(events).status).toBe(count % 2 === 0 ? 'running' : 'notBegun')
    expect(fold(events.toReversed()).status).toBe(count % 2 === 0 ? 'running' : 'notBegun')
  })
})

describe('as many taps as are kept', () => {
  const start = most / 2
  const places = [area('ab/c/d'), area('ba/d/c')]
  const stations = (index: number) => [places[index % 2] ?? area('//')]
  const deeds: Readonly<Record<string, (index: number) => Deed>> = {
    'coming and going': (index) => ({
      kind: 'register',
      playerId: letters[index % 3] ?? 'a',
      state: index % 2 ? 'here' : 'notPlaying',
    }),
    'out for today': () => ({ kind: 'register', playerId: 'a', state: 'out' }),
    'swaps in one turn': (index) =>
      index === start
        ? { kind: 'turnStart', turn: 0, stations: stations(0) }
        : index === most - 1
          ? { kind: 'turnEnd', start: idOf(start), endings: [] }
          : { kind: 'change', start: idOf(start), stations: stations(index) },
    'turns started': (index) => ({ kind: 'turnStart', turn: index % 200, stations: stations(index) }),
    passes: (index) => ({ kind: 'passed', turn: index % 40, playerId: 'a', role: 'attack' }),
    points: (index) => ({ kind: 'points', round: index % 4, side: 0, points: 1 }),
    'new plans': (index) => ({
      kind: 'replan',
      fromTurn: index % 40,
      turns: turns.slice(index % 40),
      sentence: '',
    }),
  }

  // A phone reckons everything anew at each tap; the limit leaves room for a busy machine.
  it.each(Object.entries(deeds))('%s are reckoned at once', (_what, deed) => {
    const events = [
      tap(0, { kind: 'begin' }),
      ...Array.from({ length: most - 1 }, (_, index) => tap(index + 1, deed(index + 1))),
    ]
    const before = performance.now()
    afterTheWhistle(fold(events))
    expect(performance.now() - before).toBeLessThan(2500)
  })

  it('of one who is out are one step to take back', () => {
    const outs = Array.from({ length: 3 }, (_, index) =>
      tap(index + 1, { kind: 'register', playerId: 'a', state: 'out' }),
    )
    const [step, ...others] = fold([tap(0, { kind: 'begin' }), ...outs]).undoable
    expect(step).toMatchObject({ event: { id: idOf(3) }, also: [idOf(1), idOf(2)], needsSecondAnswer: true })
    expect(others.map(({ event }) => event.id)).toEqual([idOf(0)])
  })
})
