import 'server-only'
import { z } from 'zod'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { daysLater } from '#common/days-later'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { isDay } from '#common/time'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { getPerson } from '#data/people'
import { answerReview, listReviews, openReviews } from '#data/reviews'
import { listSeasons } from '#data/seasons'
import { handOverSquad } from '#data/squad-coaches'
import { lockSquad } from '#data/squad-lock'
import { getSquad, listSquads } from '#data/squads'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { canCoach } from '#server/review-views'
import { finalOn, isFinal } from '#squad/term-review'

type Answer = Promise<Result<Done, Problem>>

export const openReviewInput = z.object({ termId: z.uuid() })

/** Opens a term's review of every squad, which shows it to their coaches. @throws AppError `notAllowed` or `notFound`. */
export async function openReviewOf(
  viewer: Viewer,
  { termId }: z.infer<typeof openReviewInput>,
  now = new Date(),
): Answer {
  demand(viewer, 'openReview', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const term = (await listSeasons(tx)).flatMap(({ terms }) => terms).find(({ id }) => id === termId)
    if (!term) throw new AppError('notFound', `no term ${termId}`)
    if (term.firstDay > today)
      return refuse({ path: 'termId', message: `has not begun; it begins on ${term.firstDay}` })
    const opened = new Set((await listReviews(tx, termId)).map(({ squadId }) => squadId))
    const squadIds = (await listSquads(tx)).map(({ id }) => id).filter((id) => !opened.has(id))
    if (squadIds.length === 0)
      return refuse({ path: '', message: 'The review of this term is open for every squad already.' })
    const by = { personId: viewer.personId, at: now }
    await openReviews(tx, { squadIds, termId, on: today, personId: viewer.personId })
    const detail = { squads: squadIds.length, on: today }
    await recordAudit(tx, { action: 'openReview', objectKind: 'term', objectId: termId, detail, by })
    return saved(
      `Opened. The squads’ coaches can answer until it is final on ${finalOn({ openedOn: today })}.`,
    )
  })
}

const mostLetters = 2000

export const answerReviewInput = z.object({
  squadId: z.uuid(),
  termId: z.uuid(),
  answer: z
    .string()
    .trim()
    .max(mostLetters, `can be ${mostLetters} letters at most; yours is longer, so say it shorter`),
})

/** The squad's coach's answer; an empty one takes it back. @throws AppError `notAllowed`. */
export async function answerReviewOf(
  viewer: Viewer,
  { squadId, termId, answer }: z.infer<typeof answerReviewInput>,
  now = new Date(),
): Answer {
  demand(viewer, 'answerReview', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const review = (await listReviews(tx, termId)).find((one) => one.squadId === squadId)
    if (!review)
      return refuse({ path: '', message: 'This review has not been opened; the head coach opens it.' })
    if (isFinal(review, today))
      return refuse({
        path: '',
        message: `This review is final since ${finalOn(review)}: it can no longer be answered.`,
      })
    const by = { personId: viewer.personId, at: now }
    await answerReview(tx, { squadId, termId, answer, by })
    const detail = { termId, letters: answer.length }
    await recordAudit(tx, { action: 'answerReview', objectKind: 'squad', objectId: squadId, detail, by })
    return saved(answer === '' ? 'The answer was taken back.' : 'Answered.')
  })
}

export const handOverInput = z.object({
  squadId: z.uuid(),
  personId: z.uuid('choose who takes the squad over'),
  day: z.string().refine(isDay, 'write a day of the calendar, such as 2026-03-31'),
})

/** Nobody can be given the squad before a day that has been set, so a mistyped year would keep it for good. */
const daysAhead = 730

/** Gives a squad to another coach from a day on. @throws AppError `notAllowed` or `notFound`. */
export async function handOverOf(
  viewer: Viewer,
  { squadId, personId, day }: z.infer<typeof handOverInput>,
  now = new Date(),
): Answer {
  demand(viewer, 'handOverSquad', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    // Two who give it away at once would both see the line of before, and leave the squad with two coaches.
    await lockSquad(tx, squadId)
    const { today } = await loadClubDay(tx, now)
    const squad = await getSquad(tx, squadId)
    const person = await getPerson(tx, personId)
    if (!canCoach(person))
      return refuse({
        path: 'personId',
        message: `${person.name} is no coach of the club; choose one who is`,
      })
    if (day < today) return refuse({ path: 'day', message: `is over; choose ${today} or a later day` })
    const latest = daysLater(today, daysAhead)
    if (day > latest)
      return refuse({ path: 'day', message: `is too far ahead; choose a day up to ${latest}` })
    const done = await handOverSquad(tx, { squadId, personId, day })
    if (!done.ok) return refuse(handOverProblem(done.reasons[0] ?? 'tooEarly', person.name))
    const by = { personId: viewer.personId, at: now }
    const detail = { personId, day }
    await recordAudit(tx, { action: 'handOver', objectKind: 'squad', objectId: squadId, detail, by })
    return saved(`${person.name} coaches the ${squad.name} from ${day} on.`)
  })
}

function handOverProblem(reason: 'isCoach' | 'tooEarly', name: string): Problem {
  return reason === 'isCoach'
    ? { path: 'personId', message: `${name} coaches this squad already; choose somebody else` }
    : {
        path: 'day',
        message:
          'is before or on the day from which somebody else has been given the squad; choose a later one',
      }
}
