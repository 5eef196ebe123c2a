import type { Finding, FlagRule } from '#fairness/flags/flag-rule'
import type { AttendedSession, KindStanding } from '#fairness/standing'
import type { KeepsChange } from '#squad/keeps-change'
import type { Player } from '#squad/player'
import { defaultPolicy, type Policy } from '#squad/policy'
import { aPlayer, dayNumber } from './account-builder'

/** What a rule finds in a standing, by the default policy, for a player without wishes. */
export function judgeRule(
  rule: FlagRule,
  standing: KindStanding,
  context: {
    player?: Partial<Player>
    policy?: Partial<Policy>
    scope?: 'practice' | 'match'
    isInTerm?: boolean
    keepsChanges?: readonly KeepsChange[]
  } = {},
): readonly Finding[] {
  return rule.judge(standing, {
    policy: { ...defaultPolicy, ...context.policy },
    player: aPlayer({ id: 'ana', ...context.player }),
    keepsChanges: context.keepsChanges ?? [],
    scope: context.scope ?? 'practice',
    term:
      context.isInTerm === false
        ? null
        : { id: 't1', name: 'Autumn', firstDay: '2026-09-01', lastDay: '2026-12-31' },
  })
}

/** Sessions a player was there for, on days from 1 September 2026 on, called s0, s1 and so on. */
export function attended(...sessions: readonly Partial<AttendedSession>[]): readonly AttendedSession[] {
  return sessions.map((session, index) => ({
    sessionId: `s${index}`,
    day: dayNumber(index),
    liveSeconds: 1000,
    playedSeconds: 1000,
    keepSeconds: 0,
    longestRestTurns: 0,
    passedTurns: 0,
    ...session,
  }))
}

/** The words of a rule for a finding, themes and terms called by their key. */
export function wordsOf(rule: FlagRule, finding: Finding | undefined): string {
  if (!finding) throw new Error('nothing was found')
  return rule.sentence(finding, { themeName: (id) => id, termName: (id) => id })
}
