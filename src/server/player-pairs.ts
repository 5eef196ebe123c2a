import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { shareADay } from '#common/dated'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { endPair, listPairs, recordPair } from '#data/player-pairs'
import { listSquadPlayers } from '#data/players'
import { lockSquad } from '#data/squad-lock'
import type { PlayerPair } from '#planning/player-pair'
import { type Done, saved } from '#server/action'
import type { EndPairInput, NewPairInput } from '#server/plan-input'

type Answer = Promise<Result<Done, Problem>>

/** Two players kept apart, or together, from a day to a day. No reason is kept. @throws AppError `notAllowed` or `notFound`. */
export async function addPairOf(viewer: Viewer, input: NewPairInput, now = new Date()): Answer {
  const { squadId, kind, oneId, otherId, firstDay, lastDay } = input
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'planPractice', { kind: 'squad', squadId })
    await lockSquad(tx, squadId)
    const known = new Set((await listSquadPlayers(tx, squadId)).map(({ id }) => id))
    const standing = await listPairs(tx, { squadId, from: firstDay })
    const problems = problemsOfPair(input, { known, standing })
    if (problems.length > 0) return refuse(...problems)
    const pair: PlayerPair = { id: newId(), squadId, playerIds: [oneId, otherId], kind, firstDay, lastDay }
    await recordPair(tx, { ...pair, madeById: viewer.personId })
    const by = { personId: viewer.personId, at: now }
    const detail = { kind, firstDay, lastDay }
    await recordAudit(tx, { action: 'addPair', objectKind: 'playerPair', objectId: pair.id, detail, by })
    return saved('Noted, without a reason. Plans made from now on keep to it.')
  })
}

/** The last day of a pair. @throws AppError `notAllowed` or `notFound`. */
export async function endPairOf(viewer: Viewer, input: EndPairInput, now = new Date()): Answer {
  const { squadId, pairId, lastDay } = input
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'planPractice', { kind: 'squad', squadId })
    await lockSquad(tx, squadId)
    const pair = (await listPairs(tx, { squadId, from: '0001-01-01' })).find(({ id }) => id === pairId)
    if (!pair) throw new AppError('notFound', `no pair ${pairId} of ${squadId}`)
    if (lastDay < pair.firstDay)
      return refuse({
        path: 'lastDay',
        message: `is before ${pair.firstDay}, its first day; choose that day or a later one`,
      })
    await endPair(tx, { squadId, pairId, lastDay })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, {
      action: 'endPair',
      objectKind: 'playerPair',
      objectId: pairId,
      detail: { lastDay },
      by,
    })
    return saved(`Ends on ${lastDay}, that day included.`)
  })
}

/** Why two players cannot be a pair for these days. `standing`: the pairs of the squad that hold on its first day or later. */
export function problemsOfPair(
  { oneId, otherId, firstDay, lastDay }: NewPairInput,
  { known, standing }: { readonly known: ReadonlySet<string>; readonly standing: readonly PlayerPair[] },
): readonly Problem[] {
  const problems: Problem[] = []
  if (oneId === otherId)
    problems.push({ path: 'otherId', message: 'is the same player; choose somebody else' })
  for (const [path, id] of [
    ['oneId', oneId],
    ['otherId', otherId],
  ] as const)
    if (!known.has(id)) problems.push({ path, message: 'is not known in this squad; choose one of the list' })
  if (lastDay < firstDay)
    problems.push({
      path: 'lastDay',
      message: `is before ${firstDay}, its first day; choose that day or a later one`,
    })
  const isSame = ({ playerIds }: PlayerPair) => playerIds.includes(oneId) && playerIds.includes(otherId)
  const met = standing.find((pair) => isSame(pair) && shareADay(pair, { firstDay, lastDay }))
  if (met && oneId !== otherId)
    problems.push({
      path: 'otherId',
      message: `is paired with the first one already, from ${met.firstDay} to ${met.lastDay ?? 'no day'}; end that first`,
    })
  return problems
}
