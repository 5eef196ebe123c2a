import { describe, expect, it } from 'vitest'
import { problemOfAhead } from '#ahead/problem-of-request'
import { readPlanRequest } from '#exchange/plan-request/plan-request'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { writePlanRequest } from '#exchange/plan-request/write-plan-request'
import { aPlanRequest, withChanged } from '../../support/plan-request-builder'
import { seededRandom } from '../../support/seeded-random'
import { spoil } from '../../support/spoil-season'

const said = (request: unknown) => {
  const read = readPlanRequest(request)
  return read.ok ? [] : read.reasons.map(({ path, message }) => `${path}: ${message}`)
}
const read = (request: unknown) => {
  const answer = readPlanRequest(request)
  if (!answer.ok) throw new Error(JSON.stringify(answer.reasons))
  return answer.value
}
const aRound = { turnCount: 4, turnSeconds: 60, stations: [{ attack: 2, defend: 2 }] }
const away = (from: string, to: string) => withChanged('players', 0, { away: [{ from, to }] })

/** What is refused, each by itself: the change to a sound request, and the line of it. */
const refusals: readonly (readonly [string, unknown, RegExp])[] = [
  ['an unknown key', { ...aPlanRequest(), surprise: 1 }, /^surprise: is not a key/],
  [
    'an unknown key of a theme',
    withChanged('themes', 1, { week: 3 } as object),
    /^themes\[1\]\.week: is not a key/,
  ],
  [
    'an unknown column of a gap',
    withChanged('players', 1, { gap: { middle: 3 } as object }),
    /^players\[1\]\.gap\.middle: is not a key/,
  ],
  ['another format', { ...aPlanRequest(), format: 'x' }, /^format: is "x"; "turnbook\/plan-request@1"/],
  [
    'a term that ends first',
    aPlanRequest({ term: { from: '2026-12-18', to: '2026-09-07' }, practices: aPlanRequest().practices }),
    /^term\.to: is 2026-09-07; a day not before 2026-12-18/,
  ],
  [
    'a term of ten years',
    aPlanRequest({ term: { from: '2026-09-07', to: '2036-09-07' } }),
    /^term\.to: is 2036-09-07; 60 weeks/,
  ],
  [
    'a day that is none',
    withChanged('practices', 5, { date: '2026-11-31' }),
    /^practices\[5\]\.date: is "2026-11-31"/,
  ],
  [
    'a day after the term',
    withChanged('practices', 5, { date: '2027-01-05' }),
    /^practices\[5\]\.date: is 2027-01-05; a day of the term/,
  ],
  [
    'days out of order',
    withChanged('practices', 3, { date: '2026-10-07' }),
    /^practices\[3\]\.date: is 2026-10-07, before the one/,
  ],
  ['no practices', aPlanRequest({ practices: [] }), /^practices: are none; one practice or more/],
  ['no themes', aPlanRequest({ themes: [] }), /^themes: are none/],
  ['no designs', aPlanRequest({ designs: [] }), /^designs: are none/],
  ['no players', aPlanRequest({ players: [] }), /^players: are none/],
  [
    'a thousand practices',
    aPlanRequest({
      practices: Array.from({ length: 1000 }, (_, index) => ({ id: `s${index}`, date: '2026-10-06' })),
    }),
    /^practices: are 1000; 60 or fewer/,
  ],
  ['a doubled player', withChanged('players', 1, { id: 'p1' }), /^players\[1\]\.id: "p1" is used twice/],
  ['a doubled theme', withChanged('themes', 1, { id: 'press' }), /^themes\[1\]\.id: "press" is used twice/],
  ['an id without letters', withChanged('practices', 0, { id: '' }), /^practices\[0\]\.id: has 0 letters/],
  [
    'half a second',
    withChanged('practices', 0, { lengthSeconds: 0.5 }),
    /^practices\[0\]\.lengthSeconds: is 0\.5/,
  ],
  [
    'a ground without width',
    withChanged('practices', 0, { ground: { lengthM: 40, widthM: 0 } }),
    /^practices\[0\]\.ground\.widthM: is 0; a number of metres from 1 to 200/,
  ],
  [
    'a theme held that is not there',
    withChanged('practices', 0, { held: { theme: 'x' } }),
    /^practices\[0\]\.held\.theme: "x" is not an id of themes/,
  ],
  [
    'a design held that is not there',
    withChanged('practices', 0, { held: { theme: 'press', design: 'd9' } }),
    /^practices\[0\]\.held\.design: "d9"/,
  ],
  [
    'closed days that leave nothing',
    aPlanRequest({ closed: [{ from: '2026-10-01', to: '2026-12-01' }] }),
    /^closed: leave out every practice/,
  ],
  ['a parent that is not there', withChanged('themes', 1, { parent: 'x' }), /^themes\[1\]\.parent: "x"/],
  [
    'a theme under itself',
    withChanged('themes', 0, { parent: 'together' }),
    /^themes\[0\]\.parent: leads back to the theme itself/,
  ],
  ['a share above one', withChanged('themes', 0, { share: 40 }), /^themes\[0\]\.share: is 40; a share/],
  [
    'a theme after itself',
    withChanged('themes', 0, { after: 'press' }),
    /^themes\[0\]\.after: is the theme itself/,
  ],
  [
    'week nought',
    withChanged('themes', 0, { firstWeek: 0 }),
    /^themes\[0\]\.firstWeek: is 0; a whole number of weeks/,
  ],
  [
    'a last week before the first',
    withChanged('themes', 0, { firstWeek: 5, lastWeek: 4 }),
    /^themes\[0\]\.lastWeek: is 4; 5 or more/,
  ],
  [
    'back later than it may',
    withChanged('themes', 0, { leastWeeksBetween: 5, mostWeeksBetween: 4 }),
    /^themes\[0\]\.mostWeeksBetween: is 4; 5 or more/,
  ],
  [
    'weeks kept for nothing',
    aPlanRequest({ blocks: [{ theme: 'x', firstWeek: 2, lastWeek: 3 }] }),
    /^blocks\[0\]\.theme: "x"/,
  ],
  ['a design without rounds', withChanged('designs', 0, { rounds: [] }), /^designs\[0\]\.rounds: are none/],
  [
    'a round without seats',
    withChanged('designs', 0, { rounds: [{ ...aRound, stations: [{}] }] }),
    /^designs\[0\]\.rounds\[0\]\.stations: have no seat/,
  ],
  [
    'half a seat',
    withChanged('designs', 0, { rounds: [{ ...aRound, stations: [{ attack: 1.5 }] }] }),
    /^designs\[0\]\.rounds\[0\]\.stations\[0\]\.attack: is 1\.5/,
  ],
  [
    'a free game of three parts',
    withChanged('designs', 0, { rounds: [{ ...aRound, turnCount: 3, freeGame: true }] }),
    /^designs\[0\]\.rounds\[0\]\.turnCount: is 3; 2, as a free game/,
  ],
  [
    'more turns than a practice has',
    withChanged('designs', 0, { rounds: Array.from({ length: 4 }, () => ({ ...aRound, turnCount: 60 })) }),
    /^designs\[0\]\.rounds: have 240 turns together; 200/,
  ],
  [
    'a practice held after those to come',
    aPlanRequest({ met: [{ date: '2026-11-10', themes: ['build'] }] }),
    /^met\[0\]\.date: is 2026-11-10; a day not after 2026-10-06/,
  ],
  [
    'more came than were held',
    withChanged('players', 0, { came: 9 }),
    /^players\[0\]\.came: is 9; no more than the 8/,
  ],
  ['away backwards', away('2026-10-09', '2026-10-01'), /^players\[0\]\.away\[0\]\.to: is 2026-10-01/],
  [
    'more of a theme than was played',
    withChanged('players', 0, { themeSeconds: { build: 9000 } }),
    /^players\[0\]\.themeSeconds\.build: is 9000; from 0 to the 3000/,
  ],
  [
    'a gap beyond all seasons',
    withChanged('players', 0, { gap: { attack: 1e300 } }),
    /^players\[0\]\.gap\.attack: is 1e\+300; seconds from/,
  ],
  [
    'a tolerance below nothing',
    aPlanRequest({ policy: { toleranceSeconds: -1 } }),
    /^policy\.toleranceSeconds: is -1/,
  ],
  ['least that is more than even', aPlanRequest({ gentle: { least: 1.2 } }), /^gentle\.least: is 1\.2/],
  ['no draws', aPlanRequest({ draws: 0 }), /^draws: is 0; a whole number of terms to draw, 1 or more/],
  ['a thousand million draws', aPlanRequest({ draws: 1e9 }), /^draws: are 1000000000; 10000/],
  [
    'more to choose from than anyone could',
    aPlanRequest({
      practices: Array.from({ length: 60 }, (_, index) => ({ id: `s${index}`, date: '2026-10-06' })),
      designs: Array.from({ length: 200 }, (_, index) => ({
        ...(aPlanRequest().designs[1] as PlanRequestJson['designs'][number]),
        id: `d${index}`,
      })),
    }),
    /^designs: serve 400 themes in 60 practices, 24000 choices in all; 20000 or fewer/,
  ],
  ['a rest below nothing', aPlanRequest({ designRest: -1 }), /^designRest: is -1/],
]

describe('a request for the weeks ahead', () => {
  it.each(refusals)('is refused with %s', (_what, request, line) => {
    const lines = said(request)
    expect(
      lines.filter((one) => line.test(one)),
      lines.join('\n'),
    ).toHaveLength(1)
  })

  it('says every fault at once', () => {
    const wrong = { ...withChanged('players', 0, { came: 9 }), seed: 0.5, draws: -3 }
    expect(said(wrong)).toHaveLength(3)
  })

  it('with little said is of the usual kind', () => {
    const { format, term, practices, themes, designs, players } = aPlanRequest()
    const bare = {
      format,
      term,
      practices: practices.map(({ id, date }) => ({ id, date })),
      themes: themes.map(({ id }) => ({ id })),
      designs,
      players: players.map(({ id }) => ({ id })),
    }
    const { request, settings } = read(bare)
    expect(settings).toEqual({
      alternatives: true,
      draws: null,
      seed: 1,
      timeLimitMs: 10_000,
      workLimit: null,
    })
    expect(request).toMatchObject({
      policy: { toleranceSeconds: 600, toleranceShare: 0.15 },
      programme: [],
      designRest: 0,
      gentle: { least: 0.6, most: 1.4 },
    })
    expect(request.players[0]).toMatchObject({ keeps: true, came: 0, held: 0, playedSeconds: 0 })
  })

  it('written and read again is the same', () => {
    const { request, settings } = read(aPlanRequest({ workLimit: 7, draws: 100 }))
    const again = read(JSON.parse(JSON.stringify(writePlanRequest(request, settings))))
    expect(again.request).toEqual(request)
    expect(again.settings).toEqual(settings)
  })

  it('written leaves out what it names and no longer has', () => {
    const { request } = read(aPlanRequest())
    const gone = {
      ...request,
      practices: request.practices.map((own, index) => ({
        ...own,
        held:
          index === 0
            ? { themeId: 'gone', designId: 'd1' }
            : index === 1
              ? { themeId: 'build', designId: 'gone' }
              : null,
      })),
      blocks: [{ themeId: 'gone', firstWeek: 1, lastWeek: 2 }],
      met: [{ day: '2026-09-29', themeIds: ['gone', 'build'], designId: 'gone' }],
      designs: request.designs.map((own) => ({ ...own, themeIds: [...own.themeIds, 'gone'] })),
      players: request.players.map((own) => ({
        ...own,
        themeSeconds: new Map([...own.themeSeconds, ['gone', 60] as const]),
      })),
    }
    const again = read(JSON.parse(JSON.stringify(writePlanRequest(gone)))).request
    expect(again.practices.slice(0, 2).map(({ held }) => held)).toEqual([
      null,
      { themeId: 'build', designId: null },
    ])
    expect(again).toMatchObject({ blocks: [], met: [{ themeIds: ['build'], designId: null }] })
    expect(problemOfAhead(again)).toEqual(problemOfAhead(gone))
  })

  it('spoilt at random is read or refused in clear lines, never with an error', () => {
    const random = seededRandom(2026)
    let refused = 0
    const unclear: string[] = []
    for (let round = 0; round < 250; round++) {
      let spoilt: unknown = aPlanRequest()
      for (let times = random.whole(1, 3); times > 0; times--) spoilt = spoil(spoilt, random)
      const lines = said(spoilt)
      if (lines.length > 0) refused++
      // Where it is, what is wrong, and what would be right.
      unclear.push(...lines.filter((line) => !/^[^:]+: .+(would be right|leave it out)$/.test(line)))
      unclear.push(...lines.filter((line) => /undefined|NaN|\[object/.test(line)))
    }
    expect(unclear).toEqual([])
    expect(refused).toBeGreaterThan(100)
  })
})
