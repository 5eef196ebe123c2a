import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { listPairs } from '#data/player-pairs'
import { listRegister } from '#data/register-lines'
import { findMatchPlan, savePlan } from '#data/session-plans'
import { lockSession } from '#data/sessions'
import { checkedMatchPlan } from '#lineup/draft/checked-match-plan'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlan, MatchPlanPlayer } from '#lineup/match-plan'
import { fieldLines } from '#match/format/line-wish'
import { pairsToReload } from '#planning/pairs-to-reload'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { whyNoLineUp } from '#server/line-up-closed'
import type { LineUpInput } from '#server/line-up-input'
import { loadMatchCast } from '#server/match-cast'
import { getSessionOfSquad } from '#server/session-of-squad'

/**
 * Keeps the line-up of a match. Who is in it, what the book leaves them due, every rule and what is said of it are checked
 * and worked out here; the page is not trusted. @throws AppError `notAllowed` or `notFound`.
 */
export async function saveLineUpOf(viewer: Viewer, input: LineUpInput): Promise<Result<Done, Problem>> {
  const { squadId, sessionId, knownVersion, plan } = input
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'planPractice', { kind: 'squad', squadId })
    await lockSession(tx, sessionId)
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const closed = await whyNoLineUp(tx, session)
    if (closed) return refuse({ path: '', message: closed })
    const stands = await findMatchPlan(tx, sessionId)
    if ((stands?.version ?? 0) !== knownVersion) return refuse({ path: '', message: someoneElse })
    const now = new Date()
    const { today } = await loadClubDay(tx, now)
    const register = await listRegister(tx, sessionId)
    const alsoIds = [...(stands?.plan.players ?? []), ...register].map(({ playerId }) => playerId)
    const cast = await loadMatchCast(tx, { session, today, alsoIds: [...new Set(alsoIds)] })
    const nameOf = (id: string) => cast.find((player) => player.id === id)?.name ?? 'Somebody'
    const pairs = await listPairs(tx, { squadId, from: session.day })
    const problems = [
      ...problemsOfCast(plan, cast),
      ...pairsToReload(plan, { pairs, day: session.day, nameOf }),
    ]
    if (problems.length > 0) return refuse(...problems)
    const checked = checkedMatchPlan(plan, nameOf)
    if (!checked.ok) return refuse(...checked.reasons.map((message) => ({ path: '', message })))
    const by = { personId: viewer.personId, at: now }
    const version = await savePlan(tx, { sessionId, plan: checked.value, knownVersion, by })
    const detail = { version, players: plan.players.length, spells: plan.spells.length }
    await recordAudit(tx, { action: 'saveLineUp', objectKind: 'session', objectId: sessionId, detail, by })
    return saved(`Saved. ${checked.value.proof.sentence}`)
  })
}

const someoneElse =
  'Somebody else saved a line-up of this match since you opened the page, and nothing of yours was saved. Open the page in a second tab to see theirs; reloading this one takes it over.'

const bookMovedOn =
  'The season book has changed since this page was opened, and the line-up was made for what stood there before. Nothing was saved: reload the page to plan by the book as it is now.'

function problemsOfCast(plan: MatchPlan, cast: readonly PickablePlayer[]): readonly Problem[] {
  const known = new Map(cast.map((player) => [player.id, player]))
  const named = [
    ...plan.players.map(({ playerId }) => playerId),
    ...plan.apart.flat(),
    ...(plan.mayMeet ?? []).flat(),
    ...plan.together.flat(),
    ...plan.locks.map(({ playerId }) => playerId),
  ]
  if (named.some((id) => !known.has(id)))
    return [
      { path: '', message: 'Somebody in this line-up is no longer known in the club. Reload the page.' },
    ]
  const ids = plan.players.map(({ playerId }) => playerId)
  if (new Set(ids).size < ids.length)
    return [{ path: '', message: 'A player stands in this line-up twice. Reload the page.' }]
  const isAsInBook = (player: MatchPlanPlayer) => {
    const own = known.get(player.playerId)
    return own !== undefined && isAsKnown(player, own, plan.isAfresh ?? false)
  }
  return plan.players.every(isAsInBook) ? [] : [{ path: '', message: bookMovedOn }]
}

/** Whether a plan counts on a player as the book has it; set aside from goal for the day, and owed nothing, are the coach's. */
function isAsKnown(player: MatchPlanPlayer, own: PickablePlayer, isAfresh: boolean): boolean {
  const owed = isAfresh ? { playSeconds: 0, keepSeconds: 0, starts: 0 } : own.owed
  return (
    (own.keeps || !player.keeps) &&
    Math.abs(owed.playSeconds - player.owed.playSeconds) <= 1 &&
    Math.abs(owed.keepSeconds - player.owed.keepSeconds) <= 1 &&
    Math.abs(owed.starts - player.owed.starts) <= 1e-3 &&
    Math.abs(own.playedToday - player.playedToday) <= 1 &&
    fieldLines.every(
      (line) =>
        own.wishes[line] === player.wishes[line] &&
        Math.abs(own.metSeconds[line] - player.metSeconds[line]) <= 1,
    )
  )
}
