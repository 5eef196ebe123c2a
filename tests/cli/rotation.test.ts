import { describe, expect, it } from 'vitest'
import { randomRotation } from '../support/random-rotation'
import { aRound, smallRequest } from '../support/rotation-builder'
import { runTurnbook } from '../support/run-turnbook'
import { secondRotationCheck } from '../support/second-rotation-check'

const run = async (request: unknown) => {
  const result = await runTurnbook(['rotation'], JSON.stringify(request))
  return { ...result, json: result.output === '' ? null : JSON.parse(result.output) }
}

describe('turnbook rotation', () => {
  it('writes a rotation that a second check accepts, and ends with 0', async () => {
    const request = randomRotation(21)
    const { exitCode, json, errors } = await run(request)
    expect({ exitCode, errors, format: json.format }).toEqual({
      exitCode: 0,
      errors: '',
      format: 'turnbook/rotation@1',
    })
    expect(secondRotationCheck(request, json)).toEqual([])
    expect(json.sentence).toMatch(/12 players and 34 turns/)
    expect(Number.isInteger(json.elapsedMs)).toBe(true)
  })

  it('has exactly the fields of its format', async () => {
    const { json } = await run(smallRequest())
    expect(Object.keys(json)).toEqual([
      'format',
      'turns',
      'restLimit',
      'unfairness',
      'situationUnfairness',
      'roleChanges',
      'mixing',
      'players',
      'sentence',
      'elapsedMs',
    ])
    expect(Object.keys(json.turns[0])).toEqual(['turn', 'round', 'stations', 'rest'])
    expect(Object.keys(json.restLimit)).toEqual([
      'asked',
      'used',
      'leastPossible',
      'proven',
      'price',
      'priceAtMost',
    ])
    expect(Object.keys(json.players[0])).toEqual(['id', 'seconds', 'fairSeconds', 'gapAfter'])
    for (const figures of ['seconds', 'fairSeconds', 'gapAfter'])
      expect(Object.keys(json.players[0][figures])).toEqual([
        'attack',
        'defend',
        'keep',
        'rest',
        'outnumbering',
        'level',
        'outnumbered',
      ])
  })

  it('says the limit and its prices as null where none was asked for', async () => {
    const { json } = await run(smallRequest({ restLimit: null }))
    expect(json.restLimit).toEqual({
      asked: null,
      used: null,
      leastPossible: null,
      proven: true,
      price: null,
      priceAtMost: null,
    })
  })

  it('ends with 2 and writes nothing where the request is wrong', async () => {
    const { exitCode, output, errors } = await run({ ...smallRequest(), restLimit: 0, surprise: 1 })
    expect({ exitCode, output }).toEqual({ exitCode: 2, output: '' })
    expect(errors.trimEnd().split('\n')).toEqual([expect.stringMatching(/^surprise: /)])
  })
})

describe('turnbook rotation ends with 3, says why, and what would work', () => {
  const five = [{ attack: 2, defend: 2, keep: 1 }]
  const fixed = (player: string) => ({ turn: 1, station: 1, role: 'keep' as const, player })
  const noKeeper = ['p1', 'p2', 'p3', 'p4'].map((id) => ({ id, keeps: false }))
  const cases = [
    [
      'more seats than present',
      { rounds: [aRound({ turns: 1, stations: five })] },
      ['seats rounds[0].turns[0] 1'],
    ],
    [
      'nobody who may keep',
      { players: noKeeper },
      ['keepers rounds[0].turns[0] 1', 'keepers rounds[0].turns[1] 2'],
    ],
    [
      'a fixed keeper who may not keep',
      { players: [...noKeeper.slice(0, 3), { id: 'p4' }], fixed: [fixed('p1')] },
      ['fixed fixed[0] 1'],
    ],
    [
      'two fixed in one seat',
      { fixed: [fixed('p1'), fixed('p2')] },
      ['fixed fixed[0] 1', 'fixed fixed[1] 1'],
    ],
    [
      'sides that cannot fill a turn',
      { rounds: [aRound({ turns: 1, sides: { attack: [], defend: ['p1'] } })] },
      ['sides rounds[0].sides 1'],
    ],
    [
      'a pair apart with one station to be at',
      { rounds: [aRound({ turns: 1, stations: [{ attack: 2, defend: 2 }] })], apart: [['p1', 'p2']] },
      ['apart apart[0] 1'],
    ],
    [
      'keepers who stay, and two fixed in turn',
      { rounds: [aRound({ keepersStay: true })], fixed: [fixed('p1'), { ...fixed('p2'), turn: 2 }] },
      ['fixed fixed[0] 1', 'fixed fixed[1] 2', 'keepersStay rounds[0].keepersStay 1'],
    ],
  ] as const

  it.each(cases)('%s', async (_what, change, requirements) => {
    const { exitCode, json } = await run({ ...smallRequest(), ...change })
    expect({ exitCode, format: json.format }).toEqual({ exitCode: 3, format: 'turnbook/impossible@1' })
    const said = json.requirements as { rule: string; path: string; turn: number; why: string }[]
    expect(said.map(({ rule, path, turn }) => `${rule} ${path} ${turn}`)).toEqual(requirements)
    for (const { why } of said) expect(why).toMatch(/^(?:p\d|[A-Z]).*\.$/)
    const again = await run(json.nearest)
    expect(again.exitCode).toBe(0)
    expect(secondRotationCheck(json.nearest, again.json)).toEqual([])
  })

  it('with no nearest request where nobody is there', async () => {
    const { exitCode, json } = await run(smallRequest({ players: [] }))
    expect({ exitCode, nearest: json.nearest }).toEqual({ exitCode: 3, nearest: null })
  })
})
