import { describe, expect, it } from 'vitest'
import { fairLineUp } from '#lineup/fair-line-up'
import { changesInside, lineUpValues, movePrice, movesInside } from '#lineup/line-up-values'
import { roomInLines } from '#lineup/room-in-lines'
import { noWishes } from '#match/format/line-wish'
import { planOf, smallLineUp } from '../support/line-up-builder'

const nothing = { playSeconds: 0, keepSeconds: 0, starts: 0 }

// All figures worked by hand: four players, three on, four windows of 300 s.
describe('what is due', () => {
  it('is shared evenly among those who are there, window by window', () => {
    const fair = fairLineUp(smallLineUp({ players: [{ isThere: [false, true, true, true] }] }))
    // Three of three in the first window, three of four in the others.
    expect(fair.play).toEqual([675, 975, 975, 975])
    expect(fair.starts).toEqual([0, 1, 1, 1])
    expect(fair.keep.map(Math.round)).toEqual([225, 325, 325, 325])
  })

  it('gives goal to who may keep it, and the rest of the places to all by what goal leaves them', () => {
    const fair = fairLineUp(smallLineUp({ players: [{}, {}, { keeps: false }, { keeps: false }] }))
    // Half of goal each for two; two places for the three who are not in goal: 1/2 + 1/2 · 2/3 and 2/3 of 1200 s.
    expect(fair.keep).toEqual([600, 600, 0, 0])
    expect(fair.play.map((seconds) => Math.round(seconds))).toEqual([1000, 1000, 800, 800])
  })

  it('of lines: all of this match, and what one is behind in a line over the term, less what one is ahead', () => {
    const metSeconds = { back: 1000, middle: 200, forward: 0 }
    const problem = smallLineUp({
      players: [{ metSeconds }, { metSeconds, wishes: { ...noWishes, back: 'learning', middle: 'likes' } }],
    })
    // Due out of goal: 900 − 300. Half of the field's places are at the back, half in the middle: half of the 1200 so far
    // is even, so 400 ahead at the back and 400 behind in the middle. Nobody plays up front.
    expect(roomInLines(problem, fairLineUp(problem)).slice(0, 2)).toEqual([
      { back: 200, middle: 1000, forward: 600 },
      { back: Number.POSITIVE_INFINITY, middle: Number.POSITIVE_INFINITY, forward: 600 },
    ])
  })
})

describe('what a line-up comes to', () => {
  const plan = planOf('KK KK', 'BB M-', 'M- -M', '-M BB')

  it('goal by goal', () => {
    const players = [
      { owed: { playSeconds: 60, keepSeconds: 100, starts: 0.5 } },
      { leastSeconds: 1000, metSeconds: { back: 400, middle: 0, forward: 0 } },
      { owed: { ...nothing, playSeconds: -200 }, leastSeconds: 600 },
      {},
    ]
    expect(lineUpValues(smallLineUp({ players }), plan)).toEqual({
      // Bo plays 900 of 1000.
      promise: 100,
      // 60 + 900 − 1200, 900 − 900, 900 − 200 − 600, 900 − 900.
      minutes: 240 ** 2 + 0 + 100 ** 2 + 0,
      // 100 + 300 − 1200; the others are due 300 each.
      goal: 800 ** 2 + 3 * 300 ** 2,
      // 0.5 + 0.75 − 1; twice 0.75 − 1; 0.75.
      starts: 0.25 ** 2 + 2 * 0.25 ** 2 + 0.75 ** 2,
      // Room is 600 in each line, but Bo was 200 ahead at the back, where it has 600.
      lines: 200,
      changes: 2,
    })
  })

  it('has no starts to share once it is under way', () => {
    expect(lineUpValues(smallLineUp({ hasStart: false }), plan).starts).toBe(0)
  })

  it('counts who comes on inside a period, and who moves while it stays on', () => {
    const moving = planOf('KK BM', 'BM KK', 'MB --', '-- MB')
    expect([changesInside(smallLineUp(), plan), movesInside(smallLineUp(), plan)]).toEqual([2, 0])
    expect([changesInside(smallLineUp(), moving), movesInside(smallLineUp(), moving)]).toEqual([0, 4])
    const rooms = { wishes: { back: 'likes', middle: 'likes', forward: 'likes' } } as const
    const free = smallLineUp({ players: [rooms, rooms, rooms, rooms] })
    expect(lineUpValues(free, moving).lines).toBe(4 * movePrice)
  })

  it('goes on from how they stand where a period is running', () => {
    const since = (line: 'keeper' | 'back' | 'middle' | null) => ({
      running: { line, seconds: 60, hasComeOff: false, periodsKept: 0 },
    })
    const players = [since('keeper'), since('middle'), since(null), since('back')]
    const running = smallLineUp({ players, hasStart: false })
    expect([changesInside(running, plan), movesInside(running, plan)]).toEqual([3, 1])
  })
})
