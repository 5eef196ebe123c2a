import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'

/**
 * Six practices of an autumn for eight players, three themes and three designs, with something said of everything.
 * Weeks begin on Mondays: 7 September 2026 is one.
 */
export function aPlanRequest(change: Partial<PlanRequestJson> = {}): PlanRequestJson {
  return {
    format: 'turnbook/plan-request@1',
    term: { from: '2026-09-07', to: '2026-12-18' },
    policy: { toleranceSeconds: 300, toleranceShare: 0.15 },
    practices: ['2026-10-06', '2026-10-08', '2026-10-13', '2026-10-20', '2026-10-27', '2026-11-03'].map(
      (date, index) => ({ id: `s${index + 1}`, date, lengthSeconds: 3600, ground: null, held: null }),
    ),
    closed: [{ from: '2026-10-19', to: '2026-10-24' }],
    themes: [
      { id: 'press', share: 0.4, firstWeek: 1, lastWeek: null, mostWeeksBetween: 4 },
      { id: 'together', parent: 'press', share: 0.2, after: 'build' },
      { id: 'build', share: 0.4, leastWeeksBetween: 1 },
    ],
    blocks: [],
    designs: [
      {
        id: 'd1',
        themes: ['press'],
        lengthM: 30,
        widthM: 20,
        rounds: [
          { turnCount: 10, turnSeconds: 120, gapSeconds: 20, stations: [{ attack: 3, defend: 3, keep: 1 }] },
        ],
      },
      {
        id: 'd2',
        themes: ['together', 'build'],
        lengthM: 25,
        widthM: 20,
        rounds: [{ turnCount: 12, turnSeconds: 90, stations: [{ attack: 3, defend: 2, keep: 1 }] }],
      },
      {
        id: 'd3',
        themes: ['build'],
        lengthM: 40,
        widthM: 30,
        rounds: [{ turnCount: 8, turnSeconds: 150, stations: [{ attack: 2, defend: 3 }] }],
      },
    ],
    met: [{ date: '2026-09-29', themes: ['build'], design: 'd3' }],
    players: Array.from({ length: 8 }, (_, index) => ({
      id: `p${index + 1}`,
      keeps: index < 4,
      came: 8,
      held: 8,
      away: [],
      gap: { attack: index < 4 ? -300 : 300, defend: index < 4 ? 300 : -300 },
      fair: { attack: 1800, defend: 1800 },
      playedSeconds: 3000,
      themeSeconds: { build: 1500, press: 1500 },
    })),
    designRest: 0,
    gentle: { least: 0.6, most: 1.4 },
    alternatives: true,
    draws: null,
    seed: 1,
    timeLimitMs: 2000,
    workLimit: null,
    ...change,
  }
}

type Listed = 'practices' | 'themes' | 'designs' | 'players'

/** The same with one thing of one of its lists changed. */
export function withChanged<List extends Listed>(
  list: List,
  index: number,
  change: Partial<PlanRequestJson[List][number]>,
  request = aPlanRequest(),
): PlanRequestJson {
  return {
    ...request,
    [list]: request[list].map((own, place) => (place === index ? { ...own, ...change } : own)),
  }
}
