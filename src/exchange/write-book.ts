import type { Seconds } from '#common/time'
import { toThousandth } from '#common/to-thousandth'
import { writeCsv } from '#exchange/csv/write-csv'
import type { MatchLine, Role, Situation } from '#exposure/column'

/** What a player got and was due in one column of the book. */
export type BookLine = {
  readonly name: string
  /** Code or id. */
  readonly player: string
  readonly isMember: boolean
  readonly kind: 'practice' | 'match'
  readonly role: Role
  readonly situation: Situation | null
  readonly line: MatchLine | null
  /** Name; empty when none. */
  readonly theme: string
  readonly seconds: Seconds
  readonly turns: number
  readonly fairSeconds: Seconds
}

const header = [
  'Player',
  'Code',
  'Member',
  'Practice or match',
  'Role',
  'Situation',
  'Line',
  'Theme',
  'Seconds',
  'Turns',
  'Fair seconds',
  'Gap seconds',
]

/** The season book as CSV, seconds to a thousandth, in the order given. */
export function writeBook(lines: readonly BookLine[]): string {
  const rows = lines.map((l) => [
    l.name,
    l.player,
    l.isMember ? 'yes' : 'guest',
    l.kind,
    l.role,
    l.situation,
    l.line,
    l.theme,
    toThousandth(l.seconds),
    l.turns,
    toThousandth(l.fairSeconds),
    toThousandth(l.seconds - l.fairSeconds),
  ])
  return writeCsv([header, ...rows])
}
