import { describe, expect, it } from 'vitest'
import { readMatchRequest } from '#exchange/match-request/match-request'
import { aRequestOfMatch, withPlayer } from '../../support/request-of-match'

const said = (request: unknown) => {
  const read = readMatchRequest(request)
  return read.ok ? [] : read.reasons.map(({ path, message }) => `${path}: ${message}`)
}
const problemOf = (request: unknown) => {
  const read = readMatchRequest(request)
  if (!read.ok) throw new Error(JSON.stringify(read.reasons))
  return read.value.problem
}

/** What is refused, each by itself: the change to a sound request, and the line of it. */
const refusals: readonly (readonly [string, unknown, RegExp])[] = [
  ['an unknown key', { ...aRequestOfMatch(), surprise: 1 }, /^surprise: is not a key/],
  ['an unknown key of a player', withPlayer(1, { shirt: 7 } as object), /^players\[1\]\.shirt: is not a key/],
  ['an unknown rule', aRequestOfMatch({ rules: { most: 1 } as object }), /^rules\.most: is not a key/],
  ['another format', { ...aRequestOfMatch(), format: 'x' }, /^format: is "x"; "turnbook\/match-request@1"/],
  ['no periods', aRequestOfMatch({ periods: [] }), /^periods: are none/],
  ['a period of half a second', aRequestOfMatch({ periods: [1200, 0.5] }), /^periods\[1\]: is 0\.5/],
  [
    'more periods than a day has',
    aRequestOfMatch({ periods: [50_000, 50_000], changeEvery: null }),
    /^periods: last 100000 seconds/,
  ],
  ['no places', aRequestOfMatch({ places: {} }), /^places: are none/],
  [
    'a thousand million places',
    aRequestOfMatch({ places: { back: 1e9 } }),
    /^places: are 1000000000; 60 or fewer/,
  ],
  [
    'more pairs than there can be',
    aRequestOfMatch({ apart: Array.from({ length: 2001 }, () => ['p1', 'p2'] as [string, string]) }),
    /^apart: are 2001; 2000 or fewer/,
  ],
  ['two keepers', aRequestOfMatch({ places: { keeper: 2, back: 3 } }), /^places\.keeper: is 2; 0 or 1/],
  ['a place below nothing', aRequestOfMatch({ places: { back: -1 } }), /^places\.back: is -1/],
  ['changes every no seconds', aRequestOfMatch({ changeEvery: 0 }), /^changeEvery: is 0/],
  [
    'too many times for changes',
    aRequestOfMatch({ changeEvery: 5 }),
    /^changeEvery: cuts the match into 480/,
  ],
  ['marks beside changeEvery', aRequestOfMatch({ marks: [[], []] }), /^marks: stand beside changeEvery/],
  [
    'marks of one period only',
    aRequestOfMatch({ changeEvery: undefined, marks: [[600]] }),
    /^marks: are of 1/,
  ],
  [
    'a mark after its period',
    aRequestOfMatch({ changeEvery: undefined, marks: [[], [600, 1200]] }),
    /^marks\[1\]\[1\]: is 1200; a whole second after 600 and before 1200/,
  ],
  ['a doubled player', withPlayer(1, { id: 'p1' }), /^players\[1\]\.id: "p1" is used twice/],
  [
    'a presence that ends first',
    withPlayer(0, { present: [[900, 600]] }),
    /^players\[0\]\.present\[0\]\[1\]: /,
  ],
  ['a presence after the end', withPlayer(0, { present: [[0, 2401]] }), /\[0\]\[1\]: is 2401; .* 0 to 2400/],
  [
    'presences in each other',
    withPlayer(0, {
      present: [
        [0, 900],
        [600, 1200],
      ],
    }),
    /^players\[0\]\.present\[1\]: begins before 900/,
  ],
  ['a least time below nothing', withPlayer(2, { least: -1 }), /^players\[2\]\.least: is -1/],
  ['a most of half a second', withPlayer(2, { most: 0.5 }), /^players\[2\]\.most: is 0\.5/],
  ['time met below nothing', withPlayer(2, { met: { back: -1 } }), /^players\[2\]\.met\.back: is -1/],
  [
    'a gap beyond any season',
    withPlayer(2, { gap: { play: -1e9 } }),
    /^players\[2\]\.gap\.play: is -1000000000/,
  ],
  [
    'a wish that is none',
    withPlayer(2, { lines: { back: 'hates' } } as object),
    /^players\[2\]\.lines\.back: /,
  ],
  ['a share above all', aRequestOfMatch({ leastShare: 1.2 }), /^leastShare: is 1\.2; a share from 0 to 1/],
  [
    'no keeper periods',
    aRequestOfMatch({ rules: { mostKeeperPeriods: 0 } }),
    /^rules\.mostKeeperPeriods: is 0/,
  ],
  ['a spell below nothing', aRequestOfMatch({ rules: { leastSpell: -5 } }), /^rules\.leastSpell: is -5/],
  [
    'a longest spell of nothing',
    aRequestOfMatch({ rules: { longestSpell: 0 } }),
    /^rules\.longestSpell: is 0/,
  ],
  [
    'a longest time off of nothing',
    aRequestOfMatch({ rules: { longestOff: 0 } }),
    /^rules\.longestOff: is 0/,
  ],
  ['half a change', aRequestOfMatch({ rules: { mostChanges: 0.5 } }), /^rules\.mostChanges: is 0\.5/],
  ['half coming on', aRequestOfMatch({ rules: { mostSubstitutions: 0.5 } }), /^rules\.mostSubstitutions: /],
  ['a pair with nobody', aRequestOfMatch({ apart: [['p1', 'p99']] }), /^apart\[0\]\[1\]: "p99" is not an id/],
  ['a pair of one', aRequestOfMatch({ together: [['p1', 'p1']] }), /^together\[0\]: pairs "p1" with itself/],
  [
    'a place held for nobody',
    aRequestOfMatch({ fixed: [{ player: 'p99', from: 0, to: 300, place: 'on' }] }),
    /^fixed\[0\]\.player: /,
  ],
  [
    'a place held for no time',
    aRequestOfMatch({ fixed: [{ player: 'p1', from: 300, to: 300, place: 'on' }] }),
    /^fixed\[0\]\.to: is 300; a second after 300/,
  ],
  ['half a seed', aRequestOfMatch({ seed: 0.5 }), /^seed: is 0\.5/],
  ['a time below nothing', aRequestOfMatch({ timeLimitMs: -1 }), /^timeLimitMs: is -1/],
  ['work below nothing', aRequestOfMatch({ workLimit: -1 }), /^workLimit: is -1/],
]

describe('a request for a line-up', () => {
  it.each(refusals)('with %s is refused', (_what, request, line) => {
    expect(said(request)).toEqual([expect.stringMatching(line)])
  })

  it('is refused with a line for each fault at once', () => {
    const request = aRequestOfMatch({ periods: [0, 1200], leastShare: 2, apart: [['p1', 'p0']] })
    expect(said(request).map((line) => line.split(':')[0])).toEqual([
      'periods[0]',
      'leastShare',
      'apart[0][1]',
    ])
  })

  it('may leave out all but periods, places and players', () => {
    const { changeEvery: _, ...least } = aRequestOfMatch()
    const { windows, players, rules } = problemOf(least)
    expect(windows.at(-1)).toMatchObject({ period: 1, end: 2400 })
    expect(players[0]).toMatchObject({
      keeps: true,
      owed: { playSeconds: 0, keepSeconds: 0, starts: 0 },
      leastSeconds: 0,
      mostSeconds: null,
      wishes: { back: 'open', middle: 'open', forward: 'open' },
    })
    expect(rules).toMatchObject({ keeperForPeriod: false, leastSpellSeconds: 0, mayReturn: true })
  })

  it('cuts the periods at its marks, or at breaks only', () => {
    const edges = (change: Parameters<typeof aRequestOfMatch>[0]) =>
      problemOf(aRequestOfMatch({ changeEvery: undefined, ...change })).windows.map(({ end }) => end)
    expect(edges({ changeEvery: 500 })).toEqual([500, 1000, 1200, 1700, 2200, 2400])
    expect(edges({ changeEvery: null })).toEqual([1200, 2400])
    expect(edges({ marks: [[700], []] })).toEqual([700, 1200, 2400])
  })

  it('turns a gap, had less due, into what is owed', () => {
    const { players } = problemOf(withPlayer(0, { gap: { play: -120, keep: 60, starts: -0.5 } }))
    expect(players[0]?.owed).toEqual({ playSeconds: 120, keepSeconds: -60, starts: 0.5 })
  })

  it('promises a share of the time for which a player is there, in whole seconds', () => {
    const late = withPlayer(0, { present: [[1200, 2400]] }, aRequestOfMatch({ leastShare: 0.55 }))
    expect(
      problemOf(late)
        .players.map(({ leastSeconds }) => leastSeconds)
        .slice(0, 2),
    ).toEqual([660, 1320])
    const own = withPlayer(0, { least: 300 }, aRequestOfMatch({ leastShare: 0.5 }))
    expect(problemOf(own).players[0]?.leastSeconds).toBe(300)
  })

  it('counts a player in a window only where it is there for all of it; times that touch are one', () => {
    const { players } = problemOf(
      withPlayer(0, {
        present: [
          [0, 400],
          [400, 900],
          [1000, 2400],
        ],
      }),
    )
    expect(players[0]?.isThere).toEqual([true, true, true, false, true, true, true, true])
  })

  it('plays with fewer only where that is said', () => {
    const seven = aRequestOfMatch({ players: aRequestOfMatch().players.slice(0, 7) })
    const late = withPlayer(6, { present: [[300, 2400]] }, seven)
    const places = (request: unknown) => problemOf(request).windows.map((window) => window.places)
    expect(places(late)[0]).toMatchObject({ keeper: 1, back: 2, middle: 3, forward: 1 })
    expect(places({ ...late, fewerWhereTooFew: true }).slice(0, 2)).toEqual([
      { keeper: 1, back: 2, middle: 2, forward: 1 },
      { keeper: 1, back: 2, middle: 3, forward: 1 },
    ])
  })
})
