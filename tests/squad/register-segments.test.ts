import { describe, expect, it } from 'vitest'
import { takenBackFromOut } from '#squad/out-for-today'
import {
  afterTheEnd,
  comeAt,
  entriesOfLines,
  hereThroughout,
  linesOfEntries,
  setFrom,
} from '#squad/register-segments'

const lines = (segments: typeof hereThroughout) =>
  linesOfEntries([{ playerId: 'p', segments }], 3600).map(({ from, to, state }) => [from, to, state])

describe('writing a register', () => {
  it('here throughout is one line to the end of the session', () => {
    expect(lines(hereThroughout)).toEqual([[0, 3600, 'here']])
  })

  it('late, not playing for a while, playing again, gone', () => {
    const late = comeAt(hereThroughout, 600)
    const stopped = setFrom(late, 1200, 'notPlaying')
    const again = setFrom(stopped, 1800, 'here')
    expect(lines(setFrom(again, 3000, 'away'))).toEqual([
      [600, 1200, 'here'],
      [1200, 1800, 'notPlaying'],
      [1800, 3000, 'here'],
    ])
  })

  it('who was away and came is here from then on; the same state goes on as one line', () => {
    expect(lines(comeAt([], 900))).toEqual([[900, 3600, 'here']])
    expect(lines(setFrom(hereThroughout, 900, 'here'))).toEqual([[0, 3600, 'here']])
  })

  it('away from the start is no line at all', () => {
    expect(lines(setFrom(hereThroughout, 0, 'away'))).toEqual([])
  })

  it('opened again, what ran to the end runs to the end, whenever that is', () => {
    const written = linesOfEntries([{ playerId: 'p', segments: setFrom(hereThroughout, 1200, 'out') }], 3600)
    expect(entriesOfLines(written, { end: 3600, playerIds: ['p', 'q'] })).toEqual([
      {
        playerId: 'p',
        segments: [
          { from: 0, to: 1200, state: 'here' },
          { from: 1200, to: null, state: 'out' },
        ],
      },
      { playerId: 'q', segments: [] },
    ])
  })

  it('coming or going at the end or later is found', () => {
    expect(afterTheEnd([{ playerId: 'p', segments: comeAt(hereThroughout, 3600) }], 3600)).toEqual([
      { playerId: 'p', at: 3600 },
    ])
    expect(afterTheEnd([{ playerId: 'p', segments: setFrom(hereThroughout, 4000, 'away') }], 3600)).toEqual([
      { playerId: 'p', at: 4000 },
    ])
    expect(afterTheEnd([{ playerId: 'p', segments: setFrom(hereThroughout, 3600, 'away') }], 3600)).toEqual(
      [],
    )
  })
})

describe('out for today', () => {
  const out = linesOfEntries([{ playerId: 'p', segments: setFrom(hereThroughout, 1200, 'out') }], 3600)
  const written = (segments: typeof hereThroughout) => linesOfEntries([{ playerId: 'p', segments }], 3600)

  it('is not taken back by the same register, or an earlier minute', () => {
    expect(takenBackFromOut(out, out)).toEqual([])
    expect(takenBackFromOut(out, written(setFrom(hereThroughout, 600, 'out')))).toEqual([])
  })

  it('is taken back by being here again, later, away, or not in the register', () => {
    expect(takenBackFromOut(out, written(hereThroughout))).toEqual(['p'])
    expect(takenBackFromOut(out, written(setFrom(hereThroughout, 1800, 'out')))).toEqual(['p'])
    expect(takenBackFromOut(out, written(setFrom(hereThroughout, 1200, 'away')))).toEqual(['p'])
    expect(takenBackFromOut(out, [])).toEqual(['p'])
    expect(
      takenBackFromOut(out, written(setFrom(setFrom(hereThroughout, 1200, 'out'), 2400, 'here'))),
    ).toEqual(['p'])
  })

  it('a longer session is no way around it', () => {
    expect(
      takenBackFromOut(
        out,
        linesOfEntries([{ playerId: 'p', segments: setFrom(hereThroughout, 1200, 'out') }], 5400),
      ),
    ).toEqual([])
  })
})
