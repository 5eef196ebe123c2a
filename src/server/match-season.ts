import 'server-only'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import type { ClubTx } from '#data/in-club'
import { listSessions, type Session, type SquadDays } from '#data/sessions'
import { loadWritten } from '#data/written-sessions'
import type { SessionAccount } from '#fairness/account'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import { type MatchFigures, matchFigures } from '#fairness/matches/match-figure'
import type { MatchPromise } from '#fairness/matches/promised-seconds'
import type { PlayerId } from '#squad/player'

/** A written match with what it was for everyone. */
export type MatchOfSeason = MatchFigures & Pick<Session, 'title' | 'startsAt'>

/** A squad's matches on the days asked for, in order of time. */
export type MatchSeason = {
  /** Written or not, those that were not cancelled. */
  readonly sessions: readonly Session[]
  readonly accounts: readonly SessionAccount[]
  readonly agreements: readonly AgreedFewerTurns[]
  readonly matches: readonly MatchOfSeason[]
}

/** `playerIds`: whose agreements are to be heeded. `days` null: none has come yet. */
export async function loadMatchSeason(
  tx: ClubTx,
  of: {
    readonly days: SquadDays | null
    readonly playerIds: readonly PlayerId[]
    readonly promise: MatchPromise
  },
): Promise<MatchSeason> {
  const { days, playerIds, promise } = of
  if (!days) return { sessions: [], accounts: [], agreements: [], matches: [] }
  const sessions = await listSessions(tx, { ...days, kind: 'match', withCancelled: false })
  const accounts = await listAccounts(tx, { ...days, kinds: ['match'] })
  const agreements = fewerTurnsOf(await listAdjustments(tx, playerIds))
  const written = await loadWritten(tx, sessions)
  const matches = written.flatMap((one): readonly MatchOfSeason[] => {
    const account = accounts.find(({ sessionId }) => sessionId === one.session.id)
    if (one.kind !== 'match' || !account || account.written === 'notWritten') return []
    const { title, startsAt } = one.session
    return [{ ...matchFigures({ account, match: one.match, promise, agreements }), title, startsAt }]
  })
  return { sessions, accounts, agreements, matches }
}
