import { describe, expect, it } from 'vitest'
import { readRotationRequest, rotationRequestJson } from '#exchange/rotation-request'
import { randomRotation } from '../support/random-rotation'
import { aRound, smallRequest } from '../support/rotation-builder'

/** What is refused, each by itself: the change to a sound request, and the line of it. */
const refusals: readonly (readonly [string, Readonly<Record<string, unknown>>, RegExp])[] = [
  ['an unknown key', { surprise: 1 }, /^surprise: is not a key/],
  ['another format', { format: 'turnbook/rotation-request@2' }, /^format: .*rotation-request@1/],
  ['a doubled player', { players: [{ id: 'p1' }, { id: 'p1' }] }, /^players\[1\]\.id: "p1" is used twice/],
  [
    'presence said twice',
    { players: [{ id: 'p1', fromTurn: 1, present: [[1, 2]] }] },
    /^players\[0\]\.present: /,
  ],
  [
    'presence backwards',
    { players: [{ id: 'p1', fromTurn: 2, toTurn: 1 }] },
    /^players\[0\]: .*turn 2 to turn 1/,
  ],
  ['a span backwards', { players: [{ id: 'p1', present: [[2, 1]] }] }, /^players\[0\]\.present\[0\]: /],
  [
    'a turn there is not',
    { players: [{ id: 'p1', toTurn: 3 }] },
    /^players\[0\]\.toTurn: is 3; a turn from 1 to 2/,
  ],
  ['a gap of no column', { players: [{ id: 'p1', gap: { middle: 1 } }] }, /^players\[0\]\.gap/],
  ['a doubled round', { rounds: [aRound({}), aRound({})] }, /^rounds\[1\]\.id: /],
  ['no turn at all', { rounds: [] }, /^rounds: have no turn/],
  [
    'a turn without stations',
    { rounds: [aRound({ turns: 1, stations: [] })] },
    /^rounds\[0\]\.turns\[0\]: has no seat/,
  ],
  [
    'a turn without seats',
    { rounds: [aRound({ turns: 1, stations: [{ attack: 0 }] })] },
    /^rounds\[0\]\.turns\[0\]: has no seat/,
  ],
  [
    'half a seat',
    { rounds: [aRound({ turns: 1, stations: [{ attack: 1.5 }] })] },
    /stations\[0\]\.attack: is 1\.5/,
  ],
  ['turns of no length', { rounds: [aRound({ turnSeconds: 0 })] }, /^rounds\[0\]\.turnSeconds: is 0/],
  [
    'two keepers who stay',
    { rounds: [aRound({ turns: 1, keepersStay: true, stations: [{ keep: 2 }] })] },
    /keep: is 2; 0 or 1/,
  ],
  [
    'a stranger on a side',
    { rounds: [aRound({ sides: { attack: ['p9'], defend: [] } })] },
    /sides\.attack\[0\]: "p9"/,
  ],
  ['a limit of no turns', { restLimit: 0 }, /^restLimit: is 0; .* 1 or more/],
  ['a stranger kept apart', { apart: [['p1', 'p9']] }, /^apart\[0\]\[1\]: "p9"/],
  ['one kept apart from itself', { apart: [['p1', 'p1']] }, /^apart\[0\]: keeps "p1" apart from itself/],
  ['a fixed stranger', { fixed: [{ turn: 1, role: 'rest', player: 'p9' }] }, /^fixed\[0\]\.player: "p9"/],
  [
    'a fixed turn there is not',
    { fixed: [{ turn: 3, role: 'rest', player: 'p1' }] },
    /^fixed\[0\]\.turn: is 3/,
  ],
  [
    'a fixed station there is not',
    { fixed: [{ turn: 1, station: 2, role: 'keep', player: 'p1' }] },
    /^fixed\[0\]\.station: is 2/,
  ],
  [
    'a fixed seat without a station',
    { fixed: [{ turn: 1, role: 'keep', player: 'p1' }] },
    /^fixed\[0\]\.station: is missing/,
  ],
  [
    'a rest at a station',
    { fixed: [{ turn: 1, station: 1, role: 'rest', player: 'p1' }] },
    /^fixed\[0\]\.station: /,
  ],
  [
    'two fixed places in a turn',
    {
      fixed: [
        { turn: 1, role: 'rest', player: 'p1' },
        { turn: 1, station: 1, role: 'keep', player: 'p1' },
      ],
    },
    /^fixed\[1\]: is a second place for "p1"/,
  ],
  ['half a seed', { seed: 0.5 }, /^seed: is 0\.5/],
  ['time running backwards', { timeLimitMs: -1 }, /^timeLimitMs: is -1/],
  ['a text for a number', { workLimit: 'much' }, /^workLimit: is "much"; a number/],
]

describe('a request for a rotation', () => {
  it.each(refusals)('is refused with %s, and nothing else is said', (_what, change, line) => {
    const read = readRotationRequest({ ...smallRequest(), ...change })
    const lines = read.ok ? [] : read.reasons.map(({ path, message }) => `${path}: ${message}`)
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatch(line)
  })

  it('is refused with every problem at once', () => {
    const read = readRotationRequest({
      ...smallRequest(),
      restLimit: 0,
      apart: [
        ['p1', 'p1'],
        ['p8', 'p9'],
      ],
    })
    expect(read.ok ? [] : read.reasons.map(({ path }) => path)).toEqual([
      'apart[0]',
      'apart[1][0]',
      'apart[1][1]',
      'restLimit',
    ])
  })

  it('may leave out what has a default', () => {
    const read = readRotationRequest(smallRequest())
    expect(read).toMatchObject({
      ok: true,
      value: {
        settings: { seed: 1, timeLimitMs: 2000, workLimit: null },
        problem: {
          restLimit: 2,
          apart: [],
          fixed: [],
          players: [{ keeps: true, present: [true, true] }, {}, {}, {}],
        },
      },
    })
  })

  it('lifts the limit on rests with null, which is not the same as leaving it out', () => {
    const read = readRotationRequest(smallRequest({ restLimit: null }))
    expect(read.ok && read.value.problem.restLimit).toBeNull()
  })

  it('written again and read again asks the same', () => {
    for (let seed = 1; seed <= 25; seed += 1) {
      const read = readRotationRequest(randomRotation(seed))
      if (!read.ok) throw new Error(JSON.stringify(read.reasons))
      expect(readRotationRequest(JSON.parse(JSON.stringify(rotationRequestJson(read.value))))).toEqual(read)
    }
  })
})
