import type { Day, Seconds } from '#common/time'
import { type MatchSpan, matchSpans } from '#exposure/match-spans'
import { spanLength } from '#exposure/span'
import type { Attendance, SessionAccount } from '#fairness/account'
import { type AgreedFewerTurns, agreedShareOn } from '#fairness/agreed-due'
import { type LineSeconds, lineSecondsOf } from '#fairness/matches/line-seconds'
import { longestOffOf } from '#fairness/matches/longest-off'
import { type MatchPromise, promisedSeconds } from '#fairness/matches/promised-seconds'
import { startersOf } from '#fairness/matches/starters'
import { figuresOfSession } from '#fairness/session-figures'
import { playedFigure } from '#fairness/standing'
import { leastWherePossible } from '#match/format/least-where-possible'
import type { Match } from '#match/match'
import { type JoinedPresence, joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'

/** What one match was for one player. */
export type MatchFigure = {
  readonly playerId: PlayerId
  /** False: a guest. */
  readonly isMember: boolean
  readonly attendance: Attendance
  /** Playing time for which it was there. */
  readonly thereSeconds: Seconds
  readonly playedSeconds: Seconds
  /** Its even share, after what was agreed. */
  readonly dueSeconds: number
  readonly lines: LineSeconds
  readonly isStart: boolean
  /** Part of a start that an even sharing of the first places gives whoever is there at the first kick-off, 0 to 1. */
  readonly dueStarts: number
  readonly longestOffSeconds: Seconds
  /** What everyone is promised of the match, for the time this player was there. */
  readonly leastSeconds: Seconds
  /** Fewer or shorter turns were agreed with its family for the day. */
  readonly isAgreed: boolean
}

/** A written match with what it was for everyone who was there; by player as the account has them. */
export type MatchFigures = {
  readonly sessionId: string
  readonly day: Day
  /** Playing time of the match, breaks left out. */
  readonly wholeSeconds: Seconds
  readonly figures: readonly MatchFigure[]
}

type MatchInput = {
  readonly account: SessionAccount
  readonly match: Match
  readonly promise: MatchPromise
  readonly agreements: readonly AgreedFewerTurns[]
}

/** The figures of one written match, for everyone who was there for some of its time. */
export function matchFigures({ account, match, promise, agreements }: MatchInput): MatchFigures {
  const spans = matchSpans(match)
  const starters = startersOf(match)
  const presence = joinPresence(match.register)
  const ofRoles = figuresOfSession(account, agreements)
  const startDue = dueStartOf(spans, starters.size)
  const least = promisedToAll({ match, promise, presence })
  const figures = account.presences.flatMap((own): readonly MatchFigure[] => {
    const { playerId, isMember, attendance } = own
    const roles = ofRoles.get(playerId)
    if (own.liveSeconds === 0 || !roles) return []
    const lines = lineSecondsOf(match.spells.filter((spell) => spell.playerId === playerId))
    return [
      {
        playerId,
        isMember,
        attendance,
        thereSeconds: own.liveSeconds,
        playedSeconds: lines.keeper + lines.back + lines.middle + lines.forward,
        dueSeconds: playedFigure(roles).dueSeconds,
        lines,
        isStart: starters.has(playerId),
        dueStarts: startDue.get(playerId) ?? 0,
        longestOffSeconds: longestOffOf(spans, playerId),
        leastSeconds: least.get(playerId) ?? 0,
        isAgreed: agreedShareOn(agreements, { playerId, day: account.day }) < 1,
      },
    ]
  })
  const wholeSeconds = spans.reduce((sum, span) => sum + spanLength(span), 0)
  return { sessionId: account.sessionId, day: account.day, wholeSeconds, figures }
}

/** What everyone there was promised, as far as the numbers allow it where the format says so. */
function promisedToAll({
  match,
  promise,
  presence,
}: Pick<MatchInput, 'match' | 'promise'> & { readonly presence: JoinedPresence }): ReadonlyMap<
  PlayerId,
  Seconds
> {
  const { periods, spells } = match
  const ids = [...presence.keys()]
  const promised = ids.map((id) => promisedSeconds(promise, { periods, presence: presence.get(id) ?? [] }))
  const { leastTime } = promise
  const possible = leastTime?.wherePossible
    ? leastWherePossible(promised, {
        capacity: spells.reduce((sum, { start, end }) => sum + end - start, 0),
        periodSeconds:
          leastTime.periods === null ? null : Math.max(1, ...periods.map(({ start, end }) => end - start)),
      })
    : promised
  return new Map(ids.map((id, index) => [id, possible[index] ?? 0]))
}

function dueStartOf(spans: readonly MatchSpan[], starters: number): ReadonlyMap<PlayerId, number> {
  const there = spans[0]?.present ?? []
  return new Map(there.map((playerId) => [playerId, starters / there.length]))
}
