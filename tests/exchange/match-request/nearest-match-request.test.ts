import { describe, expect, it } from 'vitest'
import { impossibleMatch } from '#exchange/match-request/impossible-match'
import { readMatchRequest } from '#exchange/match-request/match-request'
import type { MatchRequestJson } from '#exchange/match-request/match-request-shape'
import { checkLineUp } from '#lineup/check-line-up'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import { quickLineUp } from '#lineup/quick-line-up'
import { aRequestOfMatch, withPlayer } from '../../support/request-of-match'

/** Few windows: what is missed is searched for long. */
const aMatch = (change: Partial<MatchRequestJson> = {}) => aRequestOfMatch({ changeEvery: 600, ...change })
const read = (json: unknown) => {
  const request = readMatchRequest(json)
  if (!request.ok) throw new Error(JSON.stringify(request.reasons))
  return request.value
}
const impossible = (json: MatchRequestJson) => {
  const request = read(json)
  return impossibleMatch(request, {
    clash: findLineUpClash(request.problem),
    waysOut: [],
    hasTime: () => true,
  })
}
const six = aMatch({ players: aMatch().players.slice(0, 6) })
const nobodyKeeps = aMatch({
  players: aMatch().players.map((player) => ({ ...player, keeps: false })),
})
const held = (place: 'on' | 'off' | 'keeper', player = 'p1') => ({ player, from: 0, to: 300, place })

/** What is asked, which rule and place is named, and what the nearest request says otherwise. */
const cases: readonly (readonly [string, MatchRequestJson, string, object])[] = [
  ['fewer players than places', six, 'places places', { fewerWhereTooFew: true }],
  [
    'nobody who may keep goal',
    nobodyKeeps,
    'keepers places.keeper',
    { places: { keeper: 0, back: 3, middle: 3, forward: 1 } },
  ],
  [
    'a promise above the limit',
    withPlayer(0, { least: 1200, most: 600 }, aMatch()),
    'least players[0].least',
    { players: [{ id: 'p1', least: 600, most: 600 }] },
  ],
  [
    'a keeper held who may not keep',
    withPlayer(0, { keeps: false }, aMatch({ fixed: [held('on', 'p2'), held('keeper')] })),
    'fixed fixed[1]',
    { fixed: [held('on', 'p2')] },
  ],
  [
    'spells that are longest before they are long enough',
    aMatch({ rules: { leastSpell: 900, longestSpell: 600 } }),
    'leastSpell rules.leastSpell',
    { rules: { leastSpell: 900, longestSpell: null } },
  ],
  [
    'a pair held on that is kept apart',
    aMatch({ apart: [['p1', 'p2']], fixed: [held('on'), held('on', 'p2')] }),
    'apart apart[0]',
    { apart: [['p1', 'p2']] },
  ],
]

describe('a request that no line-up fits', () => {
  it.each(cases)('%s: the place, why, and the nearest that works', (_what, json, place, change) => {
    const { requirements, nearest } = impossible(json)
    expect(requirements.map(({ rule, path }) => `${rule} ${path}`)).toContain(place)
    for (const { why } of requirements) expect(why).toMatch(/^\p{L}.*\.$/u)
    expect(nearest).toMatchObject(partly(change))
    const { problem } = read(nearest)
    const plan = quickLineUp(problem, { seed: 1, steps: 5000 })
    expect(plan && checkLineUp(problem, plan)).toEqual([])
  })

  it('keeps everything that is not in the way', () => {
    const { nearest } = impossible({ ...six, rules: { leastSpell: 300 }, apart: [], leastShare: 0.5 })
    expect(nearest).toEqual({
      ...six,
      rules: { leastSpell: 300 },
      apart: [],
      leastShare: 0.5,
      fewerWhereTooFew: true,
    })
  })

  it('has no nearest where nobody is there', () => {
    expect(impossible(aMatch({ players: [] })).nearest).toBeNull()
  })
})

/** Lists of players are compared at their beginning. */
function partly(change: object): object {
  return 'players' in change
    ? { ...change, players: expect.arrayContaining(change.players as unknown[]) }
    : change
}
