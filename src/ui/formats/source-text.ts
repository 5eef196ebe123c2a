import type { FormatSource, MatchFormat } from '#match/format/match-format'

/** Where a rule is from, and how well that is known. */
export function sourceText({ body, season, readAt, isFromMemory }: FormatSource): string {
  const where = readAt === '' ? '' : ` Read at: ${readAt}.`
  const memory = isFromMemory ? ' Written from memory in part or whole: check it before you rely on it.' : ''
  const when = season === '' ? '' : ` (${season})`
  return `As published by ${body}${when}.${where}${memory}`
}

const partWords: Readonly<Record<Exclude<keyof MatchFormat, 'name'>, string>> = {
  ages: 'ages',
  aSide: 'players a side',
  hasKeeper: 'the keeper',
  periodSeconds: 'the periods',
  breakSeconds: 'the break',
  isShortGames: 'short games',
  mostSubstitutions: 'how many may come on',
  changesAtBreaksOnly: 'when changes are made',
  mayReturn: 'coming on again',
  leastTime: 'the least time',
  mostKeeperPeriods: 'time in goal',
  mostSecondsADay: 'the limit of a day',
  mostPlayers: 'the list of a match',
  fewestPlayers: 'how many a match needs',
  shapes: 'the shapes',
  source: 'who says so',
  note: 'the note',
}

/** The parts that a club has changed of a format it took over, in words. */
export function changedWords(parts: readonly (keyof MatchFormat)[]): readonly string[] {
  return parts.flatMap((part) => (part === 'name' ? [] : [partWords[part]]))
}
