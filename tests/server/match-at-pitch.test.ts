import { beforeEach, describe, expect, it, vi } from 'vitest'
import { recordHelperPass } from '#data/helper-passes'
import { newId } from '#data/ids'
import { listMatchEvents } from '#data/pitch-events'
import type { MatchPlan } from '#lineup/match-plan'
import { hashOfSecret, secretOfPass, signedPass } from '#server/helper-secret'
import { answerToday } from '#server/pitch-door'
import type { MatchPack } from '#touchline/match-pack'
import { aMatchPlan, planMatch, tappedInMatch, wholeMatch } from '../support/match-pitch'
import { onByPlan } from '../support/match-spells'
import { askAsPerson, askWithCookie } from '../support/next-request'
import { fetchPack, otherPhone, read, send, tapped } from '../support/pitch-club'
import { enterSession } from '../support/test-club'
import { aClubForWriting } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting({ players: 10 })
let plan: MatchPlan
const packNow = async () => {
  const { status, body } = await fetchPack(at.sessionId)
  return { status, pack: body as unknown as MatchPack }
}
const eventsNow = () => at.club.run((tx) => listMatchEvents(tx, { sessionId: at.sessionId }))

beforeEach(async () => {
  at.sessionId = await enterSession(at.club, {
    kind: 'match',
    day: '2026-10-01',
    startsAt: '10:00',
    title: 'v Herons',
  })
  plan = aMatchPlan(at.club.playerIds)
  await planMatch(at.club, at.sessionId, plan)
})

/** From here on whoever asks holds a helper's pass of this match. */
async function askAsHelper(): Promise<void> {
  const [clubId, passId] = [at.club.club.id, newId()]
  const secretHash = hashOfSecret(secretOfPass({ clubId, passId }))
  await at.club.run((tx) =>
    recordHelperPass(tx, {
      id: passId,
      sessionId: at.sessionId,
      secretHash,
      expiresAt: new Date('2099-01-01'),
      madeById: at.club.coach.personId,
      madeAt: at.club.coach.at,
    }),
  )
  askAsPerson(null)
  askWithCookie('turnbook-helper', signedPass({ clubId, passId }))
}

describe('a match on the phone', () => {
  it('comes with its plan, its players, and whether goals are counted', async () => {
    const { status, pack } = await packNow()
    expect(status).toBe(200)
    expect(pack).toMatchObject({
      kind: 'match',
      session: { title: 'v Herons', squadName: 'Otters' },
      plan: { spells: plan.spells, leastShare: 0.5 },
      planVersion: 1,
      format: { aSide: 7 },
      policy: { leastMatchShare: 0.5 },
      countsGoals: false,
      viewer: { kind: 'coach', mayReplan: true },
      events: [],
      cursor: 0,
    })
    expect(pack.players.map(({ id }) => id).toSorted()).toEqual(at.club.playerIds.toSorted())
  })

  it('stands in the list of today', async () => {
    expect((await read(await answerToday())).body).toMatchObject({
      practices: [{ sessionId: at.sessionId, kind: 'match', title: 'v Herons' }],
    })
  })

  it('gives a helper places and short names, and nothing that is owed, promised, liked or agreed', async () => {
    const [ada, bo] = at.club.playerIds as [string, string]
    plan = { ...plan, apart: [[ada, bo]], locks: [{ playerId: ada, start: 0, end: 300, place: 'on' }] }
    const other = await enterSession(at.club, { kind: 'match', day: '2026-10-01', startsAt: '14:00' })
    await planMatch(at.club, other, plan)
    at.sessionId = other
    await askAsHelper()
    const { pack } = await packNow()
    expect(pack.viewer).toEqual({ kind: 'helper', name: 'Helper', mayReplan: false })
    expect(pack.plan).toMatchObject({ spells: plan.spells, leastShare: null, apart: [], locks: [] })
    expect(pack.plan?.players.map(({ owed, wishes }) => [owed.playSeconds, wishes.back])).toEqual(
      plan.players.map(() => [0, 'open']),
    )
    expect(pack.plan?.proof.sentence).toBe('')
    expect(JSON.stringify(pack)).not.toMatch(/Fenn|"playSeconds":3600|notYet/)
  })
})

describe('what is tapped beside a match', () => {
  it('is kept once, in its order, and told to the other phones', async () => {
    const events = wholeMatch(plan)
    const sent = await send(at.sessionId, { events })
    expect(sent).toMatchObject({ status: 200, body: { refused: [], cursor: events.length } })
    expect(await send(at.sessionId, { events, cursor: events.length })).toMatchObject({
      body: { refused: [], cursor: events.length },
    })
    expect((await eventsNow()).events).toEqual(events)
    const other = await send(at.sessionId, { deviceId: otherPhone })
    expect(other.body.events).toEqual(events)
  })

  it('is not what is tapped at a practice, nor the other way round', async () => {
    const round = tapped(0, { kind: 'roundDone', round: 0, turns: [] })
    expect((await send(at.sessionId, { events: [round] })).body).toMatchObject({
      stored: [],
      refused: [{ id: round.id, why: expect.stringMatching(/cannot read/) }],
    })
    const practice = await enterSession(at.club, { day: '2026-10-01' })
    const goal = tappedInMatch(60, { kind: 'goal', side: 'ours' })
    expect((await send(practice, { events: [goal] })).body.refused).toMatchObject([{ id: goal.id }])
  })

  it('of a helper is taken, but for a plan made anew and the undoing of one', async () => {
    const replan = tappedInMatch(300, {
      kind: 'replan',
      from: 300,
      spells: plan.spells,
      sentence: 'As fair as ten allow.',
    })
    await send(at.sessionId, { events: [replan] })
    await askAsHelper()
    const made = tappedInMatch(
      310,
      { kind: 'changeMade', due: 300, on: onByPlan(plan, 300) },
      { deviceId: otherPhone },
    )
    const own = tappedInMatch(320, { ...replan.deed, from: 600 } as never, { deviceId: otherPhone })
    const undo = tappedInMatch(330, { kind: 'undo', undoes: replan.id }, { deviceId: otherPhone })
    const { body } = await send(at.sessionId, { deviceId: otherPhone, events: [made, own, undo] })
    expect(body.stored).toEqual([made.id])
    expect(body.refused.map(({ id }) => id)).toEqual([own.id, undo.id])
    for (const { why } of body.refused) expect(why).toMatch(/Only a coach/)
    expect(body.events).toMatchObject([{ id: replan.id, deed: { sentence: '' } }])
  })

  it('of a helper takes nobody back in whom the coach tapped out for today', async () => {
    const [ada = ''] = at.club.playerIds
    const out = tappedInMatch(400, { kind: 'register', playerId: ada, state: 'out' })
    await send(at.sessionId, { events: [out] })
    await askAsHelper()
    const undo = tappedInMatch(
      500,
      { kind: 'undo', undoes: out.id, secondAnswer: true },
      { deviceId: otherPhone },
    )
    const here = tappedInMatch(
      510,
      { kind: 'register', playerId: ada, state: 'here', secondAnswer: true },
      { deviceId: otherPhone },
    )
    const { body } = await send(at.sessionId, { deviceId: otherPhone, events: [undo, here] })
    expect(body.refused).toHaveLength(2)
    for (const { why } of body.refused) expect(why).toMatch(/stays out/)
  })
})
