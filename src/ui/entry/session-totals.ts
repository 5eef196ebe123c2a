import type { Role } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import type { PlayerId } from '#squad/player'

export type RoleTotal = { readonly seconds: number; readonly turns: number; readonly fairSeconds: number }

/** A player's figures of one session, summed over situations and themes. */
export type PlayerTotals = { readonly playerId: PlayerId; readonly roles: Readonly<Record<Role, RoleTotal>> }

/** Everyone who was there for any of it, in the order of `playerIds`. */
export function totalsOfAccount(
  account: SessionAccount,
  playerIds: readonly PlayerId[],
): readonly PlayerTotals[] {
  const nothing = { seconds: 0, turns: 0, fairSeconds: 0 }
  return playerIds.flatMap((playerId) => {
    const own = account.lines.filter((line) => line.playerId === playerId)
    if (!account.presences.some((presence) => presence.playerId === playerId && presence.liveSeconds > 0))
      return []
    const total = (role: Role) =>
      own
        .filter((line) => line.role === role)
        .reduce<RoleTotal>(
          (sum, line) => ({
            seconds: sum.seconds + line.seconds,
            turns: sum.turns + line.turns,
            fairSeconds: sum.fairSeconds + line.fairSeconds,
          }),
          nothing,
        )
    return [
      {
        playerId,
        roles: { attack: total('attack'), defend: total('defend'), keep: total('keep'), rest: total('rest') },
      },
    ]
  })
}
