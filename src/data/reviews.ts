import 'server-only'
import { accept, type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import type { Author } from '#data/author'
import { dateOf, dayOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadTerm } from '#data/squad-term'
import type { SquadId, TermId } from '#squad/squad'

/** A squad's review of a term. `answer` is empty until the squad's coach has answered. */
export type TermReview = {
  readonly squadId: SquadId
  readonly termId: TermId
  readonly openedOn: Day
  readonly openedBy: string
  readonly answer: string
  readonly answeredBy: string | null
  readonly answeredAt: Date | null
}

const columns = {
  squadId: true,
  termId: true,
  openedOn: true,
  answer: true,
  answeredAt: true,
  openedBy: { select: { name: true } },
  answeredBy: { select: { name: true } },
} as const

type Row = Omit<TermReview, 'openedOn' | 'openedBy' | 'answeredBy'> & {
  readonly openedOn: Date
  readonly openedBy: { readonly name: string }
  readonly answeredBy: { readonly name: string } | null
}

function toReview({ squadId, termId, openedOn, openedBy, answer, answeredBy, answeredAt }: Row): TermReview {
  return {
    squadId,
    termId,
    openedOn: dayOf(openedOn),
    openedBy: openedBy.name,
    answer,
    answeredBy: answeredBy?.name ?? null,
    answeredAt,
  }
}

/** Of every squad in a term whose review has been opened, in order of age. */
export async function listReviews(tx: ClubTx, termId: TermId): Promise<readonly TermReview[]> {
  const rows = await tx.db.termReview.findMany({
    where: { clubId: tx.clubId, termId },
    select: columns,
    orderBy: [{ squad: { ageLimit: 'asc' } }, { squad: { name: 'asc' } }, { squadId: 'asc' }],
  })
  return rows.map(toReview)
}

/** Of every term in which a squad's review has been opened, in the order in which they were opened. */
export async function listReviewsOfSquad(tx: ClubTx, squadId: SquadId): Promise<readonly TermReview[]> {
  if (!isId(squadId)) return []
  const rows = await tx.db.termReview.findMany({
    where: { clubId: tx.clubId, squadId },
    select: columns,
    orderBy: [{ openedOn: 'asc' }, { termId: 'asc' }],
  })
  return rows.map(toReview)
}

/** Opens the review of squads in a term; those opened before keep their day. */
export async function openReviews(
  tx: ClubTx,
  at: {
    readonly squadIds: readonly SquadId[]
    readonly termId: TermId
    readonly on: Day
    readonly personId: string
  },
): Promise<void> {
  await tx.db.termReview.createMany({
    data: at.squadIds.map((squadId) => ({
      clubId: tx.clubId,
      squadId,
      termId: at.termId,
      openedOn: dateOf(at.on),
      openedById: at.personId,
    })),
    skipDuplicates: true,
  })
}

/** The coach's answer; a later one takes its place, an empty one takes it back. Until when is for the caller to say. */
export async function answerReview(
  tx: ClubTx,
  at: SquadTerm & { readonly answer: string; readonly by: Author & { readonly personId: string } },
): Promise<Result<null, 'notOpened'>> {
  const { count } = await tx.db.termReview.updateMany({
    where: { clubId: tx.clubId, squadId: at.squadId, termId: at.termId },
    data:
      at.answer === ''
        ? { answer: '', answeredById: null, answeredAt: null }
        : { answer: at.answer, answeredById: at.by.personId, answeredAt: at.by.at },
  })
  return count > 0 ? accept(null) : refuse('notOpened')
}
