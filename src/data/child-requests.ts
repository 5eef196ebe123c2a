import 'server-only'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import type { Author } from '#data/author'
import { dateOf, dayOf, dayOrNull } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { ChildRequest, RequestOutcome } from '#rights/child-request'
import type { PlayerId } from '#squad/player'

/** A request with the names that the administrator reads. */
export type NamedRequest = ChildRequest & {
  readonly playerName: string
  /** Null: the child is there. */
  readonly erasedAt: Date | null
  readonly askedByName: string | null
}

const columns = {
  id: true,
  playerId: true,
  kind: true,
  text: true,
  askedById: true,
  receivedOn: true,
  dueOn: true,
  extendedTo: true,
  extendedWhy: true,
  outcome: true,
  answer: true,
  answeredAt: true,
} as const

type Row = Omit<ChildRequest, 'receivedOn' | 'dueOn' | 'extendedTo'> & {
  readonly receivedOn: Date
  readonly dueOn: Date
  readonly extendedTo: Date | null
}

function toRequest(row: Row): ChildRequest {
  const { receivedOn, dueOn, extendedTo, ...rest } = row
  return { ...rest, receivedOn: dayOf(receivedOn), dueOn: dayOf(dueOn), extendedTo: dayOrNull(extendedTo) }
}

const named = {
  ...columns,
  player: { select: { name: true, erasedAt: true } },
  askedBy: { select: { name: true } },
} as const

type NamedRow = Row & {
  readonly player: { readonly name: string; readonly erasedAt: Date | null }
  readonly askedBy: { readonly name: string } | null
}

function toNamed({ player, askedBy, ...row }: NamedRow): NamedRequest {
  const names = { playerName: player.name, erasedAt: player.erasedAt, askedByName: askedBy?.name ?? null }
  return { ...toRequest(row), ...names }
}

/** Every request of the club, in no order that matters. */
export async function listRequests(tx: ClubTx): Promise<readonly NamedRequest[]> {
  const rows = await tx.db.childRequest.findMany({ where: { clubId: tx.clubId }, select: named })
  return rows.map(toNamed)
}

/** @throws AppError `notFound`. */
export async function getRequest(tx: ClubTx, requestId: string): Promise<NamedRequest> {
  const row = isId(requestId)
    ? await tx.db.childRequest.findUnique({
        where: { clubId_id: { clubId: tx.clubId, id: requestId } },
        select: named,
      })
    : null
  if (!row) throw new AppError('notFound', `no request ${requestId}`)
  return toNamed(row)
}

/** What one person asked about one child, the latest first. */
export async function listRequestsBy(
  tx: ClubTx,
  { playerId, askedById }: { readonly playerId: PlayerId; readonly askedById: string },
): Promise<readonly ChildRequest[]> {
  if (!isId(playerId)) return []
  const rows = await tx.db.childRequest.findMany({
    where: { clubId: tx.clubId, playerId, askedById },
    select: columns,
    orderBy: [{ receivedOn: 'desc' }, { id: 'desc' }],
  })
  return rows.map(toRequest)
}

/** How many requests a person sent on a day, about whatever child. */
export async function countRequestsOn(
  tx: ClubTx,
  { askedById, day }: { readonly askedById: string; readonly day: Day },
): Promise<number> {
  return tx.db.childRequest.count({ where: { clubId: tx.clubId, askedById, receivedOn: dateOf(day) } })
}

export async function recordRequest(
  tx: ClubTx,
  request: Pick<ChildRequest, 'id' | 'playerId' | 'kind' | 'text' | 'askedById' | 'receivedOn' | 'dueOn'>,
): Promise<void> {
  const { receivedOn, dueOn, ...rest } = request
  await tx.db.childRequest.createMany({
    data: [{ clubId: tx.clubId, ...rest, receivedOn: dateOf(receivedOn), dueOn: dateOf(dueOn) }],
  })
}

/** False: it was answered or given more time meanwhile. */
export async function extendRequest(
  tx: ClubTx,
  { id, to, why }: { readonly id: string; readonly to: Day; readonly why: string },
): Promise<boolean> {
  const { count } = await tx.db.childRequest.updateMany({
    where: { clubId: tx.clubId, id, outcome: null, extendedTo: null },
    data: { extendedTo: dateOf(to), extendedWhy: why },
  })
  return count > 0
}

/** False: it was answered meanwhile. */
export async function answerRequest(
  tx: ClubTx,
  at: { readonly id: string; readonly outcome: RequestOutcome; readonly answer: string; readonly by: Author },
): Promise<boolean> {
  const { count } = await tx.db.childRequest.updateMany({
    where: { clubId: tx.clubId, id: at.id, outcome: null },
    data: {
      outcome: at.outcome,
      answer: at.answer,
      answeredById: at.by.personId,
      answeredAt: at.by.at,
    },
  })
  return count > 0
}
