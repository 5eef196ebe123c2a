import { describe, expect, it } from 'vitest'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { mostOnTogether } from '#lineup/most-on-together'
import type { LineUpProblem } from '#lineup/problem'
import { sayLineUpClash } from '#lineup/say-line-up-clash'
import { noWishes } from '#match/format/line-wish'
import { smallLineUp } from '../support/line-up-builder'
import { seededRandom } from '../support/seeded-random'

const names: Readonly<Record<string, string>> = { p1: 'Ada', p2: 'Bo', p3: 'Cleo', p4: 'Dan', p5: 'Edda' }

function said(problem: LineUpProblem) {
  return findLineUpClash(problem).map((clash) => {
    const { path, message } = sayLineUpClash(problem, clash, (id) => names[id] ?? '')
    return [path, message]
  })
}

describe('too few', () => {
  it('came for the places', () => {
    expect(said(smallLineUp({ count: 2 }))).toEqual([
      [
        'places',
        "Two came and three places are to be filled: play with two, or take somebody's absence back.",
      ],
    ])
  })

  it('are there for some of the match', () => {
    const isThere = [false, false, true, true]
    expect(said(smallLineUp({ players: [{ isThere }, { isThere }] }))).toEqual([
      [
        'places',
        "From 0:00 to 10:00 two are there and three places are to be filled: play with two, or take somebody's absence back.",
      ],
    ])
  })

  it('may keep goal', () => {
    const keeps = false
    expect(said(smallLineUp({ players: [{ keeps }, { keeps }, { keeps }, { keeps }] }))).toEqual([
      [
        'players',
        'Nobody who is there may keep goal: put somebody down for goal, or choose a shape without a keeper.',
      ],
    ])
    const away = [{ keeps }, { keeps }, { keeps }, { isThere: [true, true, true, false] }]
    expect(said(smallLineUp({ players: away }))).toEqual([
      [
        'players',
        'From 15:00 to 20:00 nobody who is there may keep goal: put somebody down for goal, or choose a shape without a keeper.',
      ],
    ])
  })

  it('play the lines', () => {
    const wishes = { ...noWishes, back: 'notYet' as const }
    const problem = smallLineUp({ players: [{ wishes }, { wishes }, { wishes }, { wishes }] })
    expect(said(problem).map(([path]) => path)).toEqual(['places'])
    expect(said(problem)[0]?.[1]).toContain('lines')
  })

  it('are left by the limit on keeping goal', () => {
    const players = [{}, {}, {}, {}].map((_, index) => ({ keeps: index === 0 }))
    expect(said(smallLineUp({ players, rules: { mostKeeperPeriods: 1 } }))).toEqual([
      [
        'rules.mostKeeperPeriods',
        'Goal is to be kept two times, a period each; one may keep it, in one each at most: put one more down for goal, or let them keep it more often.',
      ],
    ])
  })
})

describe('promises that contradict each other', () => {
  it('more than is allowed, more than the player is there for', () => {
    const players = [
      { leastSeconds: 900, mostSeconds: 600 },
      { leastSeconds: 900, isThere: [true, true, false, false] },
    ]
    expect(said(smallLineUp({ players }))).toEqual([
      [
        'players.0',
        'Ada is promised 15 minutes and may play 10 minutes at most: lower the promise, or raise the limit.',
      ],
      [
        'players.1',
        'Bo is promised 15 minutes and is there for 10 minutes: lower the promise, or change from when to when the player is there.',
      ],
    ])
  })

  it('limits that leave places empty', () => {
    const players = [{ mostSeconds: 600 }, { mostSeconds: 600 }, { mostSeconds: 600 }]
    expect(said(smallLineUp({ players }))).toEqual([
      [
        'format.mostSecondsADay',
        "All together may play 50 minutes more, and the places take 60 minutes: play with fewer, play for less time, or raise the day's limit.",
      ],
    ])
  })

  it('a least time on above the longest', () => {
    const rules = { leastSpellSeconds: 600, longestSpellSeconds: 300 }
    expect(said(smallLineUp({ rules }))).toEqual([
      [
        'rules.leastSpellSeconds',
        'Everyone is to stay on for 10 minutes at least and for 5 minutes at most: make the first the smaller one.',
      ],
    ])
  })

  it('a stretch without a change longer than anybody may be on, or off', () => {
    const rules = { longestSpellSeconds: 240, longestOffSeconds: 270 }
    expect(said(smallLineUp({ rules }))).toEqual([
      [
        'rules.longestSpellSeconds',
        'Nobody can change between 0:00 and 5:00, and nobody may be on for more than 4 minutes at a stretch: add a time for changes in between, or allow 5 minutes.',
      ],
      [
        'rules.longestOffSeconds',
        'Nobody can change between 0:00 and 5:00, and nobody may be off for more than 4:30 minutes at a stretch: add a time for changes in between, or allow 5 minutes.',
      ],
    ])
  })

  it('a promise that only the numbers forbid is none', () => {
    const players = [{}, {}, {}, {}].map(() => ({ leastSeconds: 1200 }))
    expect(said(smallLineUp({ players }))).toEqual([])
  })
})

describe('places that are held', () => {
  it.each([
    [{ player: 0, window: 1, place: 'on' }, 'Ada is held on at 5:00, and is not there then'],
    [{ player: 1, window: 1, place: 'keeper' }, 'Bo is held in goal at 5:00, and is not down for goal'],
    [
      { player: 2, window: 0, place: 'middle' },
      'Cleo is held in the middle at 0:00, and does not play that line yet',
    ],
  ] as const)('cannot be: %o', (fixed, begins) => {
    const problem = smallLineUp({
      count: 5,
      players: [
        { isThere: [true, false, true, true] },
        { keeps: false },
        { wishes: { ...noWishes, middle: 'notYet' } },
      ],
      fixed: [fixed],
    })
    expect(said(problem)).toEqual([
      [
        `held.${fixed.player}.${fixed.window}`,
        expect.stringMatching(new RegExp(`^${begins}: let the place go, or `)),
      ],
    ])
  })

  it('contradict each other', () => {
    const twice = [
      { player: 0, window: 0, place: 'back' },
      { player: 0, window: 0, place: 'off' },
    ] as const
    expect(said(smallLineUp({ fixed: twice }))).toEqual([
      ['held.0.0', 'Ada is held at the back at 0:00, and in another place as well: keep one of the two.'],
    ])
    const two = [
      { player: 0, window: 0, place: 'back' },
      { player: 1, window: 0, place: 'back' },
    ] as const
    expect(said(smallLineUp({ fixed: two }))).toEqual([
      [
        'held.1.0',
        'Ada and Bo are held at the back at 0:00, and there is one such place: let one of them go.',
      ],
    ])
    const off = [
      { player: 0, window: 0, place: 'off' },
      { player: 1, window: 0, place: 'off' },
    ] as const
    expect(said(smallLineUp({ fixed: off }))).toEqual([
      ['held.1.0', 'Ada and Bo are held off at 0:00, and only one can be off: let one of them go.'],
    ])
  })

  it('change before it is allowed', () => {
    const fixed = [
      { player: 3, window: 0, place: 'on' },
      { player: 3, window: 1, place: 'off' },
    ] as const
    expect(said(smallLineUp({ fixed, rules: { leastSpellSeconds: 480 } }))).toEqual([
      [
        'held.3.1',
        'Dan is held off at 5:00, after 5 minutes on at most; everyone is to stay on for 8 minutes: take this player off later, or lower that time.',
      ],
    ])
    expect(said(smallLineUp({ fixed, rules: { leastSpellSeconds: 300 } }))).toEqual([])
  })

  it('bring back who may not come back', () => {
    const fixed = [
      { player: 3, window: 0, place: 'on' },
      { player: 3, window: 1, place: 'off' },
      { player: 3, window: 2, place: 'on' },
    ] as const
    expect(said(smallLineUp({ fixed, rules: { mayReturn: false } })).map(([path]) => path)).toEqual([
      'held.3.2',
    ])
  })
})

describe('pairs', () => {
  it('kept apart and held on together', () => {
    const fixed = [
      { player: 0, window: 2, place: 'on' },
      { player: 1, window: 2, place: 'keeper' },
    ] as const
    expect(said(smallLineUp({ apart: [[0, 1]], fixed }))).toEqual([
      ['apart.0', 'Ada and Bo are kept apart, and both are held on at 10:00: let one of the two places go.'],
    ])
  })

  it('kept apart where nobody else can fill the places', () => {
    expect(said(smallLineUp({ count: 3, apart: [[0, 1]] }))).toEqual([
      [
        'apart.0',
        'Ada and Bo are kept apart, and at 0:00 the places cannot be filled without both: let them be on together in this match, or play with fewer.',
      ],
    ])
  })

  it('kept apart and together', () => {
    expect(said(smallLineUp({ apart: [[0, 1]], together: [[1, 0]] }))).toEqual([
      ['together.0', 'Ada and Bo are kept apart and kept together: keep one of the two.'],
    ])
  })

  // Outside check: every set of players is tried.
  it('leave as many on as the largest set without one of them, by brute force', () => {
    const random = seededRandom(5)
    for (let round = 0; round < 40; round += 1) {
      const count = random.whole(1, 7)
      const players = Array.from({ length: count }, (_, index) => index)
      const pairs = Array.from({ length: random.whole(0, 8) }, (): [number, number] => [
        random.whole(0, count - 1),
        random.whole(0, count - 1),
      ]).filter(([one, other]) => one !== other)
      let largest = 0
      for (let bits = 0; bits < 2 ** count; bits += 1) {
        const isOn = (player: number) => (bits & (1 << player)) !== 0
        if (pairs.some(([one, other]) => isOn(one) && isOn(other))) continue
        largest = Math.max(largest, players.filter(isOn).length)
      }
      expect(mostOnTogether(players, pairs)).toBe(largest)
    }
  })
})
