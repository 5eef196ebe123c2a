import type { Seconds } from '#common/time'
import type { Role, Situation } from '#exposure/column'
import type { AccountLine, SessionAccount } from '#fairness/account'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** What is added up of one thing over a season. */
export type Sums = { seconds: number; fairSeconds: number; turns: number }

/** Everything that is added up of one player over a season. */
export type PlayerSums = {
  liveSeconds: Seconds
  longestRestTurns: number
  readonly practice: Readonly<Record<Role, Sums>>
  readonly match: Readonly<Record<Role, Sums>>
  readonly situations: Readonly<Record<Situation, Sums>>
  readonly themes: ReadonlyMap<ThemeId, Sums>
}

/** Sums of every player over the accounts. `themeIds`: the themes to add up; no line may carry another. */
export function sumAccounts(
  accounts: readonly SessionAccount[],
  of: { readonly playerIds: readonly PlayerId[]; readonly themeIds: Iterable<ThemeId> },
): ReadonlyMap<PlayerId, PlayerSums> {
  const themeIds = [...of.themeIds]
  const all = new Map(of.playerIds.map((playerId) => [playerId, nothingYet(themeIds)]))
  for (const account of accounts) {
    for (const presence of account.presences) {
      const own = all.get(presence.playerId)
      if (!own) continue
      own.liveSeconds += presence.liveSeconds
      own.longestRestTurns = Math.max(own.longestRestTurns, presence.longestRestTurns)
    }
    for (const line of account.lines) {
      const own = all.get(line.playerId)
      if (own) addLine(own, line, account.kind)
    }
  }
  return all
}

export function addSums(a: Sums, b: Sums): Sums {
  return {
    seconds: a.seconds + b.seconds,
    fairSeconds: a.fairSeconds + b.fairSeconds,
    turns: a.turns + b.turns,
  }
}

function addLine(own: PlayerSums, line: AccountLine, kind: SessionAccount['kind']): void {
  addTo(own[kind][line.role], line)
  if (line.situation !== null) addTo(own.situations[line.situation], line)
  // Time on a theme is playing time: waiting in a turn is not meeting its theme.
  if (line.themeId !== null && line.role !== 'rest') addTo(own.themes.get(line.themeId) ?? nothing(), line)
}

function addTo(sums: Sums, line: AccountLine): void {
  sums.seconds += line.seconds
  sums.fairSeconds += line.fairSeconds
  sums.turns += line.turns
}

function nothingYet(themeIds: readonly ThemeId[]): PlayerSums {
  return {
    liveSeconds: 0,
    longestRestTurns: 0,
    practice: { attack: nothing(), defend: nothing(), keep: nothing(), rest: nothing() },
    match: { attack: nothing(), defend: nothing(), keep: nothing(), rest: nothing() },
    situations: { outnumbering: nothing(), level: nothing(), outnumbered: nothing() },
    themes: new Map(themeIds.map((themeId) => [themeId, nothing()])),
  }
}

function nothing(): Sums {
  return { seconds: 0, fairSeconds: 0, turns: 0 }
}
