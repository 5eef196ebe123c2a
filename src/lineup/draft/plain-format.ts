import type { MatchFormat } from '#match/format/match-format'

/**
 * What a match is planned by where nobody has said how the squad plays: nobody's rule, there to be changed. Our own
 * choice, no source.
 */
export const plainFormat: MatchFormat = {
  name: 'Seven a side',
  ages: null,
  aSide: 7,
  hasKeeper: true,
  periodSeconds: [1500, 1500],
  breakSeconds: 600,
  isShortGames: false,
  mostSubstitutions: null,
  changesAtBreaksOnly: false,
  mayReturn: true,
  leastTime: { share: null, periods: null, late: [], wherePossible: false },
  mostKeeperPeriods: null,
  mostSecondsADay: null,
  mostPlayers: null,
  fewestPlayers: null,
  shapes: [{ name: '2-3-1', places: { keeper: 1, back: 2, middle: 3, forward: 1 } }],
  source: null,
  note: '',
}
