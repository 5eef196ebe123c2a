import { toThousandth } from '#common/to-thousandth'
import type { Role } from '#exposure/column'
import type { Owed } from '#lineup/problem'
import type { PlayerId } from '#squad/player'

/** What a player had and was due of one role in the season's matches. */
export type MatchColumn = {
  readonly playerId: PlayerId
  readonly isMember: boolean
  readonly role: Role
  readonly seconds: number
  /** After agreements. */
  readonly dueSeconds: number
}

/** What the season's matches leave a player due: time on, and of it time in goal. What was played as a guest leaves nothing. */
export function owedOfMatches(columns: readonly MatchColumn[], playerId: PlayerId): Omit<Owed, 'starts'> {
  const own = columns.filter((column) => column.playerId === playerId && column.isMember)
  const left = (counts: (role: Role) => boolean) =>
    toThousandth(
      own.reduce(
        (sum, { role, seconds, dueSeconds }) => (counts(role) ? sum + dueSeconds - seconds : sum),
        0,
      ),
    )
  return { playSeconds: left((role) => role !== 'rest'), keepSeconds: left((role) => role === 'keep') }
}
