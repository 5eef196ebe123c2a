import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { shareADay } from '#common/dated'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { type Adjustment, endAdjustment, listAdjustments, recordAdjustment } from '#data/adjustments'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadIdsWith } from '#data/memberships'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { countingTimeoutMs, judgeAnew } from '#server/count-anew'
import { openPlayer } from '#server/open-player'
import type { AgreementInput, EndAgreementInput } from '#server/player-input'
import type { PlayerId } from '#squad/player'

type Answer = Promise<Result<Done, Problem>>

/**
 * Something agreed with a player and its family. What it got and was due by the turns stays as it is; what is held
 * against it is judged anew. @throws AppError `notAllowed` or `notFound`.
 */
export async function agreeOf(viewer: Viewer, input: AgreementInput, now = new Date()): Answer {
  const { squadId, playerId } = input
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      await openPlayer(tx, viewer, { squadId, playerId, today })
      const agreed = adjustmentOf(input)
      const problems = problemsOfAgreement(agreed, await listAdjustments(tx, [playerId]))
      if (problems.length > 0) return refuse(...problems)
      await recordAdjustment(tx, agreed)
      const by = { personId: viewer.personId, at: now }
      const detail = { agreementId: agreed.id, firstDay: agreed.firstDay, lastDay: agreed.lastDay }
      await recordAudit(tx, { action: 'agree', objectKind: 'player', objectId: playerId, detail, by })
      await judgeFrom(tx, { playerId, from: agreed.firstDay, today, now })
      return saved('Agreed. No reason is kept.')
    },
    { timeoutMs: countingTimeoutMs },
  )
}

/** The last day of what was agreed. @throws AppError `notAllowed` or `notFound`. */
export async function endAgreementOf(
  viewer: Viewer,
  { squadId, playerId, agreementId, lastDay }: EndAgreementInput,
  now = new Date(),
): Answer {
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      await openPlayer(tx, viewer, { squadId, playerId, today })
      const all = await listAdjustments(tx, [playerId])
      const agreed = all.find(({ id }) => id === agreementId)
      if (!agreed) throw new AppError('notFound', `no agreement ${agreementId} of ${playerId}`)
      const others = all.filter((one) => one !== agreed)
      const problems = problemsOfAgreement({ ...agreed, lastDay }, others)
      if (problems.length > 0) return refuse(...problems)
      await endAdjustment(tx, { id: agreementId, lastDay })
      const by = { personId: viewer.personId, at: now }
      const detail = { agreementId, lastDay }
      await recordAudit(tx, { action: 'endAgreement', objectKind: 'player', objectId: playerId, detail, by })
      await judgeFrom(tx, { playerId, from: agreed.firstDay, today, now })
      return saved(`${lastDay < today ? 'Ended' : 'Ends'} on ${lastDay}, that day included.`)
    },
    { timeoutMs: countingTimeoutMs },
  )
}

/** Why something cannot be agreed for these days. `others`: what else was ever agreed with the player. */
export function problemsOfAgreement(
  { kind, firstDay, lastDay }: Pick<Adjustment, 'kind' | 'firstDay' | 'lastDay'>,
  others: readonly Adjustment[],
): readonly Problem[] {
  if (lastDay !== null && lastDay < firstDay)
    return [
      { path: 'lastDay', message: `is before ${firstDay}, its first day; choose that day or a later one` },
    ]
  const met = others.find((other) => other.kind === kind && shareADay({ firstDay, lastDay }, other))
  if (!met) return []
  const until = met.lastDay === null ? 'on' : `to ${met.lastDay}`
  return [
    {
      path: 'kind',
      message: `is agreed already from ${met.firstDay} ${until}; end that first, or choose other days`,
    },
  ]
}

function adjustmentOf({ playerId, kind, duePercent, firstDay, lastDay }: AgreementInput): Adjustment {
  const agreed = { id: newId(), playerId, firstDay, lastDay }
  return kind === 'fewerTurns' ? { ...agreed, kind, dueShare: Number(duePercent) / 100 } : { ...agreed, kind }
}

async function judgeFrom(
  tx: ClubTx,
  {
    playerId,
    from,
    ...at
  }: { readonly playerId: PlayerId; readonly from: Day; readonly today: Day; readonly now: Date },
): Promise<void> {
  await judgeAnew(tx, { squadIds: await listSquadIdsWith(tx, { playerId, from }), from, ...at })
}
