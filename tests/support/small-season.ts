import type { MatchInSeason, PracticeInSeason, SeasonJson } from './season-json'

/** A small season without a fault, everything in it that a log can have; to be changed by whoever asked for it. */
export function smallSeason(): SeasonJson & { practices: PracticeInSeason[]; matches: MatchInSeason[] } {
  return {
    format: 'turnbook/season-log@1',
    policy: { toleranceSeconds: 60, toleranceShare: 0.1, middleAttackShare: 0.5 },
    players: [{ id: 'p1', name: 'Ada' }, { id: 'p2', keeps: false }, { id: 'p3' }, { id: 'p4', keeps: true }],
    themes: [
      { id: 't1', name: 'Two against one', parent: null },
      { id: 't2', parent: 't1' },
    ],
    practices: [
      {
        id: 's1',
        date: '2026-09-01',
        title: 'Tuesday',
        lengthSeconds: 3600,
        register: [
          { player: 'p1', from: 0, to: 3600 },
          { player: 'p2', from: 0, to: 1800 },
          { player: 'p2', from: 1800, to: 3600 },
          { player: 'p3', from: 300, to: 3600 },
        ],
        turns: [
          { start: 300, end: 345, theme: 't1', stations: [{ attack: ['p1', 'p2'], defend: ['p3'] }] },
          { start: 360, end: 405, theme: 'unlisted', stations: [{ attack: ['p3'], keep: ['p1'] }, {}] },
          { start: 405, end: 465, stations: [] },
        ],
      },
      { id: 's2', date: '2026-09-03', register: [], turns: [] },
    ],
    matches: [
      {
        id: 'm1',
        date: '2026-09-05',
        periods: [
          { start: 0, end: 1500 },
          { start: 1800, end: 3300 },
        ],
        register: [
          { player: 'p1', from: 0, to: 3300 },
          { player: 'p3', from: 0, to: 3300 },
          { player: 'p4', from: 600, to: 3300 },
        ],
        spells: [
          { player: 'p1', line: 'keeper', start: 0, end: 1500 },
          { player: 'p3', line: 'middle', start: 0, end: 900 },
          { player: 'p4', line: 'forward', start: 900, end: 1500 },
          { player: 'p3', line: 'back', start: 1800, end: 3300 },
        ],
      },
    ],
  }
}
