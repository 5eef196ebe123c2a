import type { MatchFormat } from '#match/format/match-format'

/** "1st half", "3rd quarter", "Game 2". Periods count from 0. */
export function periodWords(
  { periodSeconds, isShortGames }: Pick<MatchFormat, 'periodSeconds' | 'isShortGames'>,
  period: number,
): string {
  if (isShortGames) return `Game ${period + 1}`
  const what = { 1: 'match', 2: 'half', 3: 'third', 4: 'quarter' }[periodSeconds.length]
  if (what === 'match') return 'The match'
  return what ? `${ordinals[period] ?? period + 1} ${what}` : `Period ${period + 1}`
}

const ordinals = ['1st', '2nd', '3rd', '4th']
