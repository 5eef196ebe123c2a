import type { MatchFormat } from '#match/format/match-format'
import type { Period } from '#match/match'

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

/** The plain format with the periods that were entered with the match, where any were. */
export function plainFormatFor(periods: readonly Period[] | null): MatchFormat {
  const [first, second] = periods ?? []
  if (!periods || !first) return plainFormat
  return {
    ...plainFormat,
    periodSeconds: periods.map(({ start, end }) => end - start),
    breakSeconds: second ? Math.max(0, second.start - first.end) : plainFormat.breakSeconds,
  }
}
