import 'server-only'
import type { ClubTx } from '#data/in-club'
import { findFormatOfSquad } from '#data/match-formats'
import { findMatchPlan } from '#data/session-plans'
import type { Session } from '#data/sessions'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchPlan } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'

/** A match's plan, and how it is played: by its plan, else by the squad's format. */
export async function loadMatchFrame(
  tx: ClubTx,
  { id, squadId }: Pick<Session, 'id' | 'squadId'>,
): Promise<{
  readonly plan: MatchPlan | null
  /** Counts the replacements of the plan; 0: there is none. */
  readonly planVersion: number
  readonly format: MatchFormat
}> {
  const stored = await findMatchPlan(tx, id)
  const plan = stored?.plan ?? null
  const format = plan?.format ?? (await findFormatOfSquad(tx, squadId))?.format ?? plainFormat
  return { plan, planVersion: stored?.version ?? 0, format }
}
