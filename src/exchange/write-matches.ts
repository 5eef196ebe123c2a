import type { Day, Seconds } from '#common/time'
import { toThousandth } from '#common/to-thousandth'
import { writeCsv } from '#exchange/csv/write-csv'
import type { Line } from '#match/match'

/** What one match was for one player. */
export type MatchLineOfFile = {
  readonly name: string
  /** Code or id. */
  readonly player: string
  readonly isMember: boolean
  readonly day: Day
  /** Code or id. */
  readonly match: string
  readonly title: string
  readonly thereSeconds: Seconds
  readonly playedSeconds: Seconds
  readonly dueSeconds: number
  readonly isStart: boolean
  readonly lines: Readonly<Record<Line, Seconds>>
  readonly longestOffSeconds: Seconds
  readonly leastSeconds: Seconds
}

const header = [
  'Player',
  'Code',
  'Member',
  'Day',
  'Match',
  'Title',
  'Seconds there',
  'Seconds played',
  'Fair seconds',
  'Started',
  'Seconds in goal',
  'Seconds at the back',
  'Seconds in the middle',
  'Seconds forward',
  'Longest seconds off',
  'Seconds promised',
]

/** Matches as CSV, a row for each player who was there, seconds to a thousandth, in the order given. */
export function writeMatches(lines: readonly MatchLineOfFile[]): string {
  const rows = lines.map((l) => [
    l.name,
    l.player,
    l.isMember ? 'yes' : 'guest',
    l.day,
    l.match,
    l.title,
    l.thereSeconds,
    l.playedSeconds,
    toThousandth(l.dueSeconds),
    l.isStart ? 'yes' : 'no',
    l.lines.keeper,
    l.lines.back,
    l.lines.middle,
    l.lines.forward,
    l.longestOffSeconds,
    l.leastSeconds,
  ])
  return writeCsv([header, ...rows])
}
