import { describe, expect, it } from 'vitest'
import { matchPlanHelp } from '#cli/match-plan-help'
import { readMatchRequest } from '#exchange/match-request/match-request'
import { type MatchRequestJson, matchRequestShape } from '#exchange/match-request/match-request-shape'
import { spellsAt } from '../support/match-spells'
import { aRequestOfMatch, withPlayer } from '../support/request-of-match'
import { runTurnbook } from '../support/run-turnbook'
import { secondLineUpCheck } from '../support/second-line-up-check'

/** Short, as most of what is asked here is proven long before; what is not is checked all the same. */
const timeLimitMs = 300
const run = async (request: object) => {
  const result = await runTurnbook(['match-plan'], JSON.stringify({ timeLimitMs, ...request }))
  return { ...result, json: result.output === '' ? null : JSON.parse(result.output) }
}
const team = (count: number) => Array.from({ length: count }, (_, index) => ({ id: `p${index + 1}` }))

/** An example of the help, read as JSON. */
const block = (format: string) => {
  const from = matchPlanHelp.indexOf(`{ "format": "${format}"`)
  const [example = ''] = matchPlanHelp.slice(from).split(/\n(?:Needed:|changes hold)/)
  return JSON.parse(example)
}
const shownAnswer = () => block('turnbook/match-plan@1')

type ShownSpell = { readonly player: string; readonly start: number; readonly end: number }

/** How many are on in each five minutes of two halves of ten, and how many come on inside them. */
function playedBy(spells: readonly ShownSpell[]) {
  const windows = [0, 300, 600, 900].map((at) => spellsAt(spells, at).length)
  return { windows, comeOn: spells.filter(({ start }) => start === 300 || start === 900).length }
}

/** Requests that ask for something of everything. */
const asked: readonly (readonly [string, MatchRequestJson])[] = [
  [
    'a keeper for each half, and few changes',
    aRequestOfMatch({ rules: { keeperForPeriod: true, mostChanges: 4 }, leastShare: 0.5 }),
  ],
  ['somebody late, somebody gone early, what is owed, and lines', owedAndLines(lateAndGone())],
  [
    'a pair apart, and places held',
    aRequestOfMatch({
      apart: [['p1', 'p2']],
      fixed: [
        { player: 'p3', from: 0, to: 1200, place: 'keeper' },
        { player: 'p4', from: 300, to: 600, place: 'off' },
      ],
    }),
  ],
]

function lateAndGone(): MatchRequestJson {
  return withPlayer(1, { present: [[0, 1500]] }, withPlayer(0, { present: [[450, 2400]] }))
}

function owedAndLines(request = aRequestOfMatch()): MatchRequestJson {
  const owed = withPlayer(2, { gap: { play: -300, keep: 120, starts: -1 }, keeps: false }, request)
  return withPlayer(3, { lines: { forward: 'notYet', back: 'likes' }, met: { back: 900 } }, owed)
}

describe('turnbook match-plan', () => {
  it.each(asked)('with %s writes a line-up that a second check accepts', async (_what, request) => {
    const { exitCode, errors, json } = await run(request)
    expect({ exitCode, errors, format: json.format }).toEqual({
      exitCode: 0,
      errors: '',
      format: 'turnbook/match-plan@1',
    })
    expect(secondLineUpCheck(request, json)).toEqual([])
    expect(json.sentence).toMatch(/^\p{Lu}.*\.$/u)
  })

  it('gives ten for seven a side in quarters three quarters each where it can, and two to the others', async () => {
    // A quarter-slot is one place for one quarter: 28 for ten players, so eight play three and two play two. The rule that
    // nobody plays all four before everyone plays three is common practice of youth leagues; the sum is plain counting.
    const quarters = { periods: [600, 600, 600, 600], changeEvery: null, leastShare: 0.5 }
    const { json } = await run(aRequestOfMatch({ ...quarters, players: team(10) }))
    const played = json.players.map(({ seconds }: { seconds: number }) => seconds / 600)
    expect(played.toSorted()).toEqual([2, 2, 3, 3, 3, 3, 3, 3, 3, 3])
    expect(json.goals.promise).toEqual({ value: 0, bound: 0, proven: true })
    expect(json.goals.minutes.proven).toBe(true)
  })

  it.each([
    [10, 7, 2, 8],
    [14, 7, 2, 0],
    [12, 9, 4, 0],
    [8, 7, 4, 4],
    [9, 5, 4, 8],
  ])(
    '%i players, %i on, %i periods: exactly equal time takes %i changes',
    async (players, on, periods, changes) => {
      // S - gcd(S, m·n); the five were counted by hand, wrapping the players round the places.
      const request = aRequestOfMatch({
        periods: Array.from({ length: periods }, () => 600),
        places: { back: on },
        changeEvery: 300,
        players: team(players),
      })
      expect((await run(request)).json.equalTime).toEqual({ changes })
    },
  )

  it('has no count of changes for equal time where all are not due the same', async () => {
    expect(
      (await run({ ...withPlayer(0, { present: [[600, 2400]] }), timeLimitMs: 0 })).json.equalTime,
    ).toBeNull()
  })

  it('writes the same bytes for the same input but for elapsedMs', async () => {
    const few = aRequestOfMatch({
      periods: [600, 600],
      places: { keeper: 1, back: 2, middle: 1, forward: 1 },
      players: team(7),
    })
    const once = async () => {
      const { output } = await run({ ...owedAndLines(few), timeLimitMs: 5000, workLimit: 20 })
      return output.replace(/"elapsedMs": \d+/, '')
    }
    expect(await once()).toBe(await once())
  })

  it('says what fewer changes cost, each with its own line-up, and nothing of it where that is not asked', async () => {
    const seven = { periods: [600, 600], places: { back: 5 }, changeEvery: 300, players: team(7) }
    const { json } = await run(aRequestOfMatch({ ...seven, timeLimitMs: 5000 }))
    const changes = json.goals.changes.value
    expect(json.tradeOffs.length).toBeGreaterThan(0)
    for (const offer of json.tradeOffs) {
      expect(offer.changes).toBe(changes - offer.fewer)
      const { windows, comeOn } = playedBy(offer.spells)
      expect(windows).toEqual([5, 5, 5, 5])
      expect(comeOn).toBe(offer.changes)
      expect(offer.proven).toBe(true)
      expect(Object.keys(offer)).toEqual(Object.keys(shownAnswer().tradeOffs[0]))
    }
    const asked = await run(aRequestOfMatch({ ...seven, tradeOffs: false }))
    expect(asked.json.tradeOffs).toEqual([])
  })

  it('says what to let go where something of a promise is missed, and what that gives', async () => {
    // Ten halves for nine players: one has both, eight have ten minutes of the eleven promised, so 8 · 60 s are missed.
    const halves = { periods: [600, 600], places: { back: 5 }, changeEvery: 300, players: team(9) }
    const { json } = await run(
      aRequestOfMatch({ ...halves, leastShare: 0.55, rules: { mostChanges: 0 }, timeLimitMs: 5000 }),
    )
    expect(json.goals.promise.value).toBe(480)
    expect(json.waysOut[0]).toMatchObject({ rule: 'mostChanges', path: 'rules.mostChanges' })
    expect(json.waysOut[0].short.value).toBeLessThan(480)
    expect(Object.keys(json.waysOut[0])).toEqual(Object.keys(shownAnswer().waysOut[0]))
  })

  it('ends with 2, writes nothing and says each fault in a line', async () => {
    const wrong = { ...aRequestOfMatch({ periods: [0], leastShare: 2 }), seed: 0.5 }
    const { exitCode, output, errors } = await run(wrong)
    expect({ exitCode, output }).toEqual({ exitCode: 2, output: '' })
    expect(errors.trimEnd().split('\n')).toEqual([
      expect.stringMatching(/^periods\[0\]: is 0; /),
      expect.stringMatching(/^leastShare: is 2; /),
      expect.stringMatching(/^seed: is 0\.5; /),
    ])
  })

  it('ends with 3, says why, and the nearest request is answered', async () => {
    const { exitCode, json } = await run(aRequestOfMatch({ players: team(6) }))
    expect({ exitCode, format: json.format }).toEqual({ exitCode: 3, format: 'turnbook/impossible@1' })
    expect(json.requirements).toEqual([
      { rule: 'places', path: 'places', from: 0, to: 2400, why: expect.stringMatching(/^Six came/) },
    ])
    const again = await run(json.nearest)
    expect(again.exitCode).toBe(0)
  })

  it('names the rules that no line-up keeps at once, and what each let go gives', async () => {
    const rules = { leastSpell: 900, longestOff: 300 }
    const { exitCode, json } = await run(aRequestOfMatch({ rules, timeLimitMs: 5000 }))
    expect(exitCode).toBe(3)
    expect(json.requirements).toMatchObject([
      { rule: 'rules', path: 'rules', why: expect.stringMatching(/least time on.*longest time off/) },
    ])
    expect(json.waysOut.map(({ path }: { path: string }) => path).toSorted()).toEqual([
      'rules.leastSpell',
      'rules.longestOff',
    ])
    expect(json.nearest.rules).toEqual({ leastSpell: 900, longestOff: null })
  })
})

describe('the help of match-plan', () => {
  it('shows a request with every key, and it is read', () => {
    const shown = block('turnbook/match-request@1')
    const { marks: _, ...keys } = matchRequestShape.shape
    expect(Object.keys(shown).sort()).toEqual(Object.keys(keys).sort())
    const parts = { players: shown.players[0], rules: shown.rules }
    expect(Object.keys(parts.players).sort()).toEqual(
      Object.keys(matchRequestShape.shape.players.element.shape).sort(),
    )
    expect(Object.keys(parts.rules).sort()).toEqual(
      Object.keys(matchRequestShape.shape.rules.unwrap().shape).sort(),
    )
    const others = ['p02', 'p03', 'p04', 'p05', 'p06', 'p07'].map((id) => ({ id }))
    expect(readMatchRequest({ ...shown, players: [...shown.players, ...others] }).ok).toBe(true)
  })

  it('shows an answer with every key that there is', async () => {
    const shown = shownAnswer()
    const { json } = await run(aRequestOfMatch({ timeLimitMs: 0 }))
    expect(Object.keys(json)).toEqual(Object.keys(shown))
    for (const list of ['windows', 'spells', 'changes', 'players'])
      expect(Object.keys(json[list][0])).toEqual(Object.keys(shown[list][0]))
    expect(Object.keys(json.goals)).toEqual(Object.keys(shown.goals))
    expect(Object.keys(json.goals.promise)).toEqual(Object.keys(shown.goals.promise))
  })
})
