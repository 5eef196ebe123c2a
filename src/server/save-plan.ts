import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { hasDay } from '#common/dated'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { listAdjustments, nameFirstPartner } from '#data/adjustments'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { findDesign } from '#data/designs'
import { type ClubTx, inClub } from '#data/in-club'
import { listPairs } from '#data/player-pairs'
import { listRegister } from '#data/register-lines'
import { findPlan, savePlan } from '#data/session-plans'
import { changeSession, lockSession } from '#data/sessions'
import { knowsAgreed } from '#planning/agreed-today'
import { checkedPlan } from '#planning/checked-plan'
import { pairsToReload } from '#planning/pairs-to-reload'
import type { PlannedPlayer, PracticePlan } from '#planning/practice-plan'
import { sayPlanFault } from '#planning/say-plan-fault'
import { rotationColumns } from '#rotation/problem'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { loadPlanCast, type PlanCast } from '#server/plan-cast'
import { whyNotPlanned } from '#server/plan-closed'
import type { PlanInput } from '#server/plan-input'
import { getSessionOfSquad } from '#server/session-of-squad'

/**
 * Keeps a plan of a practice. Who is in it, what they carry in, every rule and what is said of its evenness are checked
 * and worked out here; the page is not trusted. @throws AppError `notAllowed` or `notFound`.
 */
export async function savePlanOf(viewer: Viewer, input: PlanInput): Promise<Result<Done, Problem>> {
  const { squadId, sessionId, knownVersion } = input
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'planPractice', { kind: 'squad', squadId })
    await lockSession(tx, sessionId)
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const closed = await whyNotPlanned(tx, session)
    if (closed) return refuse({ path: '', message: closed })
    const stands = await findPlan(tx, sessionId)
    if ((stands?.version ?? 0) !== knownVersion) return refuse({ path: '', message: someoneElse })
    const now = new Date()
    const { today } = await loadClubDay(tx, now)
    const alsoIds = [
      ...(stands?.plan.players ?? []).map(({ playerId }) => playerId),
      ...(await listRegister(tx, sessionId)).map(({ playerId }) => playerId),
    ]
    const cast = await loadPlanCast(tx, { session, today, alsoIds })
    const nameOf = (id: string) => cast.players.find((player) => player.id === id)?.name ?? 'Somebody'
    const pairs = await listPairs(tx, { squadId, from: session.day })
    const problems = [
      ...problemsOfCast(input.plan, cast),
      ...problemsOfAgreements(input.plan, { cast, nameOf }),
      ...(await problemsOfDesign(tx, input.plan)),
      ...pairsToReload(input.plan, { pairs, day: session.day, nameOf }),
    ]
    if (problems.length > 0) return refuse(...problems)
    const checked = checkedPlan(input.plan)
    if (!checked.ok)
      return refuse(...checked.reasons.map((fault) => ({ path: '', message: sayPlanFault(fault, nameOf) })))
    const by = { personId: viewer.personId, at: now }
    const version = await savePlan(tx, { sessionId, plan: checked.value, knownVersion, by })
    const { design, players, turns } = checked.value
    await rememberPartners(tx, { players, day: session.day, by })
    // Another design than was planned is about its own theme.
    if (design.id !== session.designId)
      await changeSession(tx, sessionId, { designId: design.id, themeId: null })
    const detail = { version, players: players.length, turns: turns.length }
    await recordAudit(tx, { action: 'savePlan', objectKind: 'session', objectId: sessionId, detail, by })
    return saved(`Saved. ${checked.value.proof.sentence}`)
  })
}

const someoneElse =
  'Somebody else saved a plan of this practice since you opened the page, and nothing of yours was saved. Open the page in a second tab to see theirs; reloading this one takes it over.'

function problemsOfCast(plan: PracticePlan, { players }: PlanCast): readonly Problem[] {
  const known = new Map(players.map((player) => [player.id, player]))
  const strangers = plan.players.filter(({ playerId }) => !known.has(playerId))
  if (strangers.length > 0)
    return [{ path: '', message: 'Somebody in this plan is no longer known in the club. Reload the page.' }]
  const pairs = [...plan.apart, ...plan.together].flat()
  if (pairs.some((id) => !known.has(id)))
    return [{ path: '', message: 'A pair in this plan names somebody who is not known. Reload the page.' }]
  const changed = plan.players.filter(({ playerId, keeps, gap }) => {
    const own = known.get(playerId)
    const season = plan.rules.countsMatches ? own?.season.withMatches : own?.season.practice
    return (
      own?.keeps !== keeps ||
      rotationColumns.some((column) => Math.abs((season?.gap[column] ?? 0) - gap[column]) > 1)
    )
  })
  if (changed.length === 0) return []
  return [
    {
      path: '',
      message:
        'The season book has changed since this page was opened, and the plan was made for what stood there before. Nothing was saved: reload the page to plan by the book as it is now.',
    },
  ]
}

/** What was agreed is known to every plan; whether it is kept in this one is the coach's to say. */
function problemsOfAgreements(
  plan: PracticePlan,
  { cast, nameOf }: { readonly cast: PlanCast; readonly nameOf: (id: string) => string },
): readonly Problem[] {
  const agreements = new Map(cast.players.map((player) => [player.id, player.agreements]))
  const isPartner = (id: string, of: string) => id !== of && agreements.has(id)
  const strange = plan.players.filter(
    ({ playerId, agreed }) => agreed?.firstPartner && !isPartner(agreed.firstPartner, playerId),
  )
  if (strange.length > 0)
    return strange.map(({ playerId }) => ({
      path: '',
      message: `The first partner of ${nameOf(playerId)} is not one of the others of this squad. Choose another one.`,
    }))
  return plan.players
    .filter(({ playerId, agreed }) => !knowsAgreed(agreed, agreements.get(playerId) ?? []))
    .map(({ playerId }) => ({
      path: '',
      message: `What is agreed with ${nameOf(playerId)} has changed since you opened the page. Reload it to plan with that.`,
    }))
}

async function problemsOfDesign(tx: ClubTx, { design }: PracticePlan): Promise<readonly Problem[]> {
  if (design.id === null || (await findDesign(tx, design.id))) return []
  return [{ path: '', message: 'This design is no longer there. Choose another one.' }]
}

/** Who was named as somebody's first partner for the first time is remembered for the practices to come. */
async function rememberPartners(
  tx: ClubTx,
  of: { readonly players: readonly PlannedPlayer[]; readonly day: Day; readonly by: Author },
): Promise<void> {
  const named = new Map(
    of.players.flatMap(({ playerId, agreed }) =>
      agreed?.firstPartner ? [[playerId, agreed.firstPartner] as const] : [],
    ),
  )
  if (named.size === 0) return
  for (const agreement of await listAdjustments(tx, [...named.keys()])) {
    const partnerId = named.get(agreement.playerId)
    if (agreement.kind !== 'sameFirstPartner' || !hasDay(agreement, of.day) || !partnerId) continue
    if (!(await nameFirstPartner(tx, { id: agreement.id, partnerId }))) continue
    const detail = { agreementId: agreement.id }
    const { playerId: objectId } = agreement
    await recordAudit(tx, {
      action: 'nameFirstPartner',
      objectKind: 'player',
      objectId,
      detail,
      by: of.by,
    })
  }
}
