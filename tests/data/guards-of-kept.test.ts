import { describe, expect, it } from 'vitest'
import { ask, ids } from '../support/guarded-club'
import { answered, audit, exposure, flag, insert, policy, presence, review } from '../support/guarded-rows'

describe('what is kept beside the sessions, when it cannot be, is refused', () => {
  it.each<[what: string, constraint: string, statement: () => string]>([
    ['negative seconds', 'Exposure_figures_check', () => exposure({ seconds: -1e-9 })],
    ['seconds that are no number', 'Exposure_figures_check', () => exposure({ fairSeconds: 'NaN' })],
    ['seconds without end', 'Exposure_figures_check', () => exposure({ fullFairSeconds: 'Infinity' })],
    ['waiting in a situation', 'Exposure_column_check', () => exposure({ role: 'rest' })],
    ['a column twice', 'Exposure_pkey', () => `${exposure({})}; ${exposure({})}`],
    [
      'waiting more turns than it was there',
      'SessionPresence_figures_check',
      () => presence({ longestRestTurns: 2 }),
    ],
    [
      'negative live time',
      'SessionTotal_liveSeconds_check',
      () => insert('SessionTotal', { sessionId: ids.practice, liveSeconds: -1 }),
    ],
    ['a tolerance above the whole', 'PolicyVersion_shares_check', () => policy({ toleranceShare: 1.1 })],
    ['a share below zero', 'PolicyVersion_shares_check', () => policy({ middleAttackShare: -0.1 })],
    ['a share that is no number', 'PolicyVersion_shares_check', () => policy({ goalShareLimit: 'NaN' })],
    ['a negative tolerance', 'PolicyVersion_counts_check', () => policy({ toleranceSeconds: -1 })],
    ['no waiting at all', 'PolicyVersion_counts_check', () => policy({ restLimitTurns: 0 })],
    ['rules for under-twos', 'PolicyVersion_ageLimit_check', () => policy({ ageLimit: 2 })],
    [
      'a flag twice',
      'FlagState_clubId_squadId_seasonId_playerId_rule_scope_subje_key',
      () => `${flag({})}; ${flag({})}`,
    ],
    ['a flag acknowledged by nobody', 'FlagState_answer_check', () => flag({ status: 'acknowledged' })],
    ['half an answer', 'FlagState_answer_check', () => flag(answered)],
    [
      'an answer without a reason',
      'FlagState_answer_check',
      () => flag({ acknowledgedById: ids.coach, ...answered, acknowledgedReason: '' }),
    ],
    ['a cleared flag without a time', 'FlagState_answer_check', () => flag({ status: 'cleared' })],
    ['an open flag that was cleared', 'FlagState_answer_check', () => flag({ clearedAt: 'now()' })],
    ['a gap that is no number', 'FlagState_figures_check', () => flag({ gapSeconds: 'NaN' })],
    ['a flag without a rule', 'FlagState_rule_check', () => flag({ rule: '' })],
    ['an answer to a review by nobody', 'TermReview_answer_check', () => review({ answer: 'So it is.' })],
    ['an audit row of nothing', 'AuditEntry_text_check', () => audit({ action: '' })],
    [
      'an audit row without measure',
      'AuditEntry_detail_check',
      () => audit({ detail: JSON.stringify('x'.repeat(70_000)) }),
    ],
  ])('%s', async (_what, constraint, statement) => {
    expect(await ask(statement())).toMatchObject({ constraint })
  })
})
