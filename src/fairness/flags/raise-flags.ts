import { hasDay } from '#common/dated'
import type { Day, Seconds } from '#common/time'
import type { SessionAccount } from '#fairness/account'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import { type Cure, cureOf } from '#fairness/flags/cure'
import type { Finding, FlagRule } from '#fairness/flags/flag-rule'
import { FlagTrail, type Trace } from '#fairness/flags/flag-trail'
import { hasMatchesForRoles } from '#fairness/flags/matches-for-roles'
import { flagRules } from '#fairness/flags/registry'
import type { PassedTurn } from '#fairness/passed'
import { type SessionKind, type Standing, type Standings, standingsAfterEach } from '#fairness/standing'
import { asOf, type KeepsChange } from '#squad/keeps-change'
import type { Player, PlayerId } from '#squad/player'
import type { Policy } from '#squad/policy'
import { isMemberOn, type Membership, type Term } from '#squad/squad'

/** A rule's finding about a player, with since when and what would put it right. Never a ranking. */
export type Flag = Finding & {
  readonly playerId: PlayerId
  readonly rule: FlagRule['name']
  readonly scope: SessionKind
  /** The first session after which it has held without a break. */
  readonly since: Day
  readonly sinceSessionId: string
  /** The gap is smaller than three attended sessions ago. */
  readonly isClosing: boolean
  readonly cure: Cure
}

export type SquadInSeason = {
  readonly accounts: readonly SessionAccount[]
  readonly players: readonly Player[]
  readonly memberships: readonly Membership[]
  readonly terms: readonly Term[]
  readonly policy: Policy
  readonly passed?: readonly PassedTurn[]
  readonly agreements?: readonly AgreedFewerTurns[]
  readonly keepsChanges?: readonly KeepsChange[]
  /** Of the squad's written practice turns; null without any. */
  readonly medianTurnSeconds: Seconds | null
  /** Who is a member on this day can be flagged. */
  readonly on: Day
  /** All of them, unless a few are to be looked at alone. */
  readonly rules?: readonly FlagRule[]
}

/**
 * Every flag of a squad in a season, in the order of its players and then of the rules. Judged anew after every written
 * session, practice and match apart. Guests are never flagged, and nobody is for sessions it was a guest in.
 */
export function raiseFlags(squad: SquadInSeason): readonly Flag[] {
  const rules = squad.rules ?? flagRules
  const changes = squad.keepsChanges ?? []
  const judged = asOf(squad.players, { changes, day: squad.on }).filter(({ id }) =>
    isMemberOn(squad.memberships, { playerId: id, day: squad.on }),
  )
  const trails = new Map(
    judged.map((player) => [player.id, { practice: new FlagTrail(), match: new FlagTrail() }]),
  )
  let last: Standings = new Map()
  for (const { account, standings } of standingsAfterEach(squad)) {
    last = standings
    const term = squad.terms.find((t) => hasDay(t, account.day)) ?? null
    const wasThere = new Set(account.presences.filter((p) => p.liveSeconds > 0).map((p) => p.playerId))
    for (const player of judged) {
      const standing = standings.get(player.id)
      if (!standing) continue
      const keepsChanges = changes.filter(({ playerId }) => playerId === player.id)
      const context = { policy: squad.policy, player, keepsChanges, scope: account.kind, term }
      trails.get(player.id)?.[account.kind].record(judge(rules, standing[account.kind], context), {
        account,
        wasThere: wasThere.has(player.id),
      })
    }
  }
  return judged.flatMap((player) => {
    const trail = trails.get(player.id)
    const standing = last.get(player.id)
    if (!trail || !standing) return []
    return (['practice', 'match'] as const).flatMap((scope) =>
      trail[scope]
        .now()
        .filter(({ rule }) => maySpeak(rule, { standing, scope, policy: squad.policy }))
        .map((trace) =>
          toFlag(trace, { playerId: player.id, scope, medianTurnSeconds: squad.medianTurnSeconds }),
        ),
    )
  })
}

function judge(
  rules: readonly FlagRule[],
  standing: Parameters<FlagRule['judge']>[0],
  context: Parameters<FlagRule['judge']>[1],
) {
  return rules
    .filter((rule) => rule.scopes.includes(context.scope))
    .flatMap((rule) => rule.judge(standing, context).map((finding) => ({ rule, finding })))
}

/**
 * No flag before the policy's number of written sessions since joining, of either kind, goal-keeping and safety
 * excepted; of attack and defence in matches not before its number of matches. What is judged meanwhile still counts
 * for since when and whether it is closing.
 */
function maySpeak(
  rule: Pick<FlagRule, 'speaksEarly' | 'waitsForMatches'>,
  at: { readonly standing: Standing; readonly scope: SessionKind; readonly policy: Policy },
): boolean {
  const { standing, scope, policy } = at
  const sessions = standing[scope].attended.length
  if (rule.waitsForMatches && !hasMatchesForRoles({ sessions, kind: scope, policy })) return false
  const written = standing.practice.sessionsWritten + standing.match.sessionsWritten
  return rule.speaksEarly || written >= policy.sessionsBeforeFlags
}

function toFlag(
  { rule, finding, since, isClosing }: Trace,
  at: {
    readonly playerId: PlayerId
    readonly scope: SessionKind
    readonly medianTurnSeconds: Seconds | null
  },
): Flag {
  return {
    ...finding,
    playerId: at.playerId,
    rule: rule.name,
    scope: at.scope,
    since: since.day,
    sinceSessionId: since.sessionId,
    isClosing,
    cure: cureOf(finding, { rule, ...at }),
  }
}
