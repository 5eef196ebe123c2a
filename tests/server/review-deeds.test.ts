import { describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import { recordPeople } from '#data/people'
import { listReviews } from '#data/reviews'
import { listSquadCoaches, recordSquadCoach } from '#data/squad-coaches'
import { findViewer } from '#server/find-viewer'
import { answerReviewOf, handOverOf, openReviewOf } from '#server/review-deeds'
import { coachOf, headCoachOf } from '../support/import-input'
import { aClub, type TestClub } from '../support/test-club'

const opening = new Date('2026-12-28T12:00:00Z')
const laterBy = (days: number) => new Date(opening.getTime() + days * 24 * 60 * 60 * 1000)

const guardianOf = (at: TestClub): Viewer => ({
  ...coachOf(at, []),
  personId: at.guardianId,
  role: 'guardian',
  playerIds: at.playerIds.slice(0, 1),
})

const stateOf = (at: TestClub) =>
  at.run(async (tx) => ({
    reviews: await listReviews(tx, at.termIds[0]),
    audit: (await listAudit(tx, { limit: 20 })).map(({ action }) => action),
  }))

describe('opening a review', () => {
  it('opens it for every squad, once, by the head coach only', async () => {
    const at = await aClub()
    const input = { termId: at.termIds[0] }
    for (const viewer of [coachOf(at), guardianOf(at)])
      await expect(openReviewOf(viewer, input, opening)).rejects.toMatchObject({ code: 'notAllowed' })
    const done = await openReviewOf(headCoachOf(at), input, opening)
    expect(done).toMatchObject({ ok: true, value: { message: expect.stringContaining('2027-01-04') } })
    const { reviews, audit } = await stateOf(at)
    expect(reviews).toMatchObject([{ squadId: at.squadId, openedOn: '2026-12-28', openedBy: 'Lou Wynd' }])
    expect(audit).toEqual(['openReview'])
    expect((await openReviewOf(headCoachOf(at), input, opening)).ok).toBe(false)
  })

  it('is refused for a term that has not begun, or is not there', async () => {
    const at = await aClub()
    const early = await openReviewOf(headCoachOf(at), { termId: at.termIds[1] }, opening)
    expect(early).toMatchObject({ ok: false, reasons: [{ path: 'termId' }] })
    await expect(openReviewOf(headCoachOf(at), { termId: newId() }, opening)).rejects.toMatchObject({
      code: 'notFound',
    })
  })
})

describe('answering a review', () => {
  const answer = (at: TestClub, text: string) => ({
    squadId: at.squadId,
    termId: at.termIds[0],
    answer: text,
  })

  it('is the squad’s coach’s for seven days, may be put anew or taken back, and then is final', async () => {
    const at = await aClub()
    const coach = coachOf(at)
    expect((await answerReviewOf(coach, answer(at, 'Early'), opening)).ok).toBe(false)
    await openReviewOf(headCoachOf(at), { termId: at.termIds[0] }, opening)
    expect((await answerReviewOf(coach, answer(at, 'It rained.'), laterBy(1))).ok).toBe(true)
    expect((await answerReviewOf(coach, answer(at, 'It rained a lot.'), laterBy(6))).ok).toBe(true)
    expect((await answerReviewOf(coach, answer(at, 'Too late'), laterBy(7))).ok).toBe(false)
    const { reviews, audit } = await stateOf(at)
    expect(reviews[0]).toMatchObject({ answer: 'It rained a lot.', answeredBy: 'Kit Vale' })
    expect(audit.filter((action) => action === 'answerReview')).toHaveLength(2)
    expect((await answerReviewOf(coach, answer(at, ''), laterBy(6))).ok).toBe(true)
    expect((await stateOf(at)).reviews[0]).toMatchObject({ answer: '', answeredBy: null })
  })

  it('is not another coach’s, nor a parent’s', async () => {
    const at = await aClub()
    await openReviewOf(headCoachOf(at), { termId: at.termIds[0] }, opening)
    for (const viewer of [coachOf(at, []), guardianOf(at)])
      await expect(answerReviewOf(viewer, answer(at, 'x'), opening)).rejects.toMatchObject({
        code: 'notAllowed',
      })
  })
})

describe('handing a squad over', () => {
  async function twoCoaches() {
    const at = await aClub()
    const nextId = newId()
    await at.run(async (tx) => {
      await recordPeople(tx, [{ id: nextId, name: 'Pat Quill', role: 'coach' }])
      const { squadId } = at
      const { personId } = at.coach
      await recordSquadCoach(tx, { squadId, personId, kind: 'coach', firstDay: '2026-08-01', lastDay: null })
    })
    return { at, nextId }
  }

  it('ends one line, begins the next, and gives the squad to the new coach from that day on', async () => {
    const { at, nextId } = await twoCoaches()
    const input = { squadId: at.squadId, personId: nextId, day: '2027-01-04' }
    expect((await handOverOf(headCoachOf(at), input, opening)).ok).toBe(true)
    const lines = await at.run((tx) => listSquadCoaches(tx, at.squadId))
    expect(lines.map(({ personName, firstDay, lastDay }) => [personName, firstDay, lastDay])).toEqual([
      ['Kit Vale', '2026-08-01', '2027-01-03'],
      ['Pat Quill', '2027-01-04', null],
    ])
    expect((await findViewer({ clubId: at.club.id, personId: nextId }))?.squadIds).toEqual([])
    expect((await stateOf(at)).audit).toEqual(['handOver'])
  })

  it('by two at once leaves the squad with one coach', async () => {
    const { at, nextId } = await twoCoaches()
    const third = newId()
    await at.run((tx) => recordPeople(tx, [{ id: third, name: 'Nia Ash', role: 'coach' }]))
    const give = (personId: string) =>
      handOverOf(headCoachOf(at), { squadId: at.squadId, personId, day: '2027-01-04' }, opening)
    const answers = await Promise.all([give(nextId), give(third), give(nextId), give(third)])
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
    const lines = await at.run((tx) => listSquadCoaches(tx, at.squadId))
    expect(lines.filter(({ lastDay }) => lastDay === null)).toHaveLength(1)
  })

  it('is refused for a day so far off that it can only be mistyped: no earlier one could be set after it', async () => {
    const at = await aClub()
    const next = newId()
    await at.run((tx) => recordPeople(tx, [{ id: next, name: 'Nia Ash', role: 'coach' }]))
    const asked = { squadId: at.squadId, personId: next, day: '2926-12-28' }
    expect(await handOverOf(headCoachOf(at), asked, opening)).toMatchObject({
      ok: false,
      reasons: [{ path: 'day', message: 'is too far ahead; choose a day up to 2028-12-27' }],
    })
  })

  it('is refused to whom it belongs already, to a parent, for a day that is over, and is the head coach’s only', async () => {
    const { at, nextId } = await twoCoaches()
    const give = (personId: string, day = '2027-01-04', viewer = headCoachOf(at)) =>
      handOverOf(viewer, { squadId: at.squadId, personId, day }, opening)
    expect(await give(at.coach.personId)).toMatchObject({ ok: false, reasons: [{ path: 'personId' }] })
    expect(await give(at.guardianId)).toMatchObject({ ok: false, reasons: [{ path: 'personId' }] })
    expect(await give(nextId, '2026-12-27')).toMatchObject({ ok: false, reasons: [{ path: 'day' }] })
    await expect(give(newId())).rejects.toMatchObject({ code: 'notFound' })
    for (const viewer of [coachOf(at), guardianOf(at)])
      await expect(give(nextId, '2027-01-04', viewer)).rejects.toMatchObject({ code: 'notAllowed' })
    expect(await at.run((tx) => listSquadCoaches(tx, at.squadId))).toHaveLength(1)
  })
})
