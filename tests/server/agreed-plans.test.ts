import { describe, expect, it, vi } from 'vitest'
import { listAdjustments, recordAdjustment } from '#data/adjustments'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import { findPlan } from '#data/session-plans'
import type { PlayerAgreement } from '#planning/agreed-today'
import { planOfDraft } from '#planning/plan-draft'
import type { PracticePlan } from '#planning/practice-plan'
import { findViewer } from '#server/find-viewer'
import { forgetTodayWhenDue } from '#server/forget-today'
import { savePracticePlan } from '#server/plan-actions'
import { loadPlanPage, loadPlanSheet } from '#server/plan-views'
import { writeAsPlanned, writeFromPitch } from '#server/whistle-actions'
import { firstDraft } from '#ui/planning/first-draft'
import { aPlan, fetchPack, planIt, send as sendTaps, wholePractice } from '../support/pitch-club'
import { aPlanRound } from '../support/plan-builder'
import { formOf } from '../support/typed-session'
import { aClubForWriting, askAs, idle, versionNow, write } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
const day = '2026-09-08'
const place = () => ({ squadId: at.club.squadId, sessionId: at.sessionId })
const stored = () => at.club.run((tx) => findPlan(tx, at.sessionId))

async function agree(index: number, agreement: PlayerAgreement): Promise<string> {
  const id = newId()
  const common = { id, playerId: at.club.playerIds[index] ?? '', firstDay: day, lastDay: null }
  await at.club.run((tx) => recordAdjustment(tx, { ...common, ...agreement }))
  return id
}

async function page() {
  const { club, coach } = at.club
  const viewer = await findViewer({ clubId: club.id, personId: coach.personId })
  if (!viewer) throw new Error('no coach')
  return { viewer, page: await loadPlanPage(viewer, place()) }
}

/** The plan that the page opens with, two attackers against one defender and a keeper where none is saved. */
async function opened(): Promise<PracticePlan> {
  const { page: own } = await page()
  const round = aPlanRound({ turnCount: 4, stations: [{ attack: 2, defend: 1, keep: 1 }] })
  const sheet = {
    ...{ id: newId(), name: 'Two against one', themeId: null, rounds: [round], adaptations: [], sides: null },
    ...{ areaLengthM: 30, areaWidthM: 20, areaUnit: 'm', isMirrored: false, hasHeading: false, note: '' },
    ...{ copiedFromId: null, isPutAway: false },
  } as const
  const start = { ...own, designs: [sheet], session: { day, designId: sheet.id } }
  const plan = planOfDraft(firstDraft(start as Parameters<typeof firstDraft>[0]))
  if (!plan) throw new Error('no plan')
  return { ...plan, design: { ...plan.design, id: null } }
}

const save = (plan: PracticePlan, knownVersion = 0) =>
  savePracticePlan(idle, formOf({ ...place(), knownVersion, plan }))

describe('a plan with what is agreed', () => {
  it('is opened with it, is saved with it, and one that forgets it is refused', async () => {
    await agree(1, { kind: 'neverWaitsAlone' })
    await agree(2, { kind: 'fewerTurns', dueShare: 0.5 })
    const plan = await opened()
    expect(plan.players.map(({ agreed }) => agreed)).toEqual([
      undefined,
      { neverWaitsAlone: true },
      { dueShare: 0.5 },
      undefined,
      undefined,
    ])
    const forgetful = { ...plan, players: plan.players.map(({ agreed: _agreed, ...player }) => player) }
    expect(await save(forgetful)).toMatchObject({
      problems: [{ message: expect.stringMatching(/^What is agreed with Bo Larch has changed since/) }, {}],
    })
    expect(await save(plan)).toMatchObject({ status: 'done' })
    const letGo = plan.players.map((player, index) =>
      index === 1 ? { ...player, agreed: { neverWaitsAlone: false } } : player,
    )
    expect(await save({ ...plan, players: letGo }, 1)).toMatchObject({ status: 'done' })
  })

  it('remembers a first partner who is named once, and opens the next plan beside the same', async () => {
    const id = await agree(0, { kind: 'sameFirstPartner', partnerId: null })
    const [ada = '', , , di = '', eli = ''] = at.club.playerIds
    const plan = await opened()
    const named = (partner: string) => ({
      ...plan,
      players: plan.players.map((player) =>
        player.playerId === ada ? { ...player, agreed: { firstPartner: partner } } : player,
      ),
    })
    expect(await save(named(ada))).toMatchObject({ status: 'refused' })
    expect(await save(named(newId()))).toMatchObject({ status: 'refused' })
    expect(await save(named(di))).toMatchObject({ status: 'done' })
    expect(await save(named(eli), 1)).toMatchObject({ status: 'done' })
    const [adjustment] = await at.club.run((tx) => listAdjustments(tx, [ada]))
    expect(adjustment).toMatchObject({ id, partnerId: di })
    const next = await opened()
    expect(next.players[0]?.agreed).toEqual({ firstPartner: eli })
  })

  it('holds what it shows, on the sheet says nothing of it, nor on a helper’s phone', async () => {
    await agree(3, { kind: 'planShownEarly' })
    await agree(1, { kind: 'sameSide' })
    await save(await opened())
    const plan = await stored()
    expect(plan?.plan.locks.filter(({ agreed }) => agreed === 'shown')).toHaveLength(4)
    const sheet = JSON.stringify(await loadPlanSheet((await page()).viewer, place()))
    for (const word of ['agreed', 'shown', 'sameSide', 'locks']) expect(sheet).not.toContain(word)
    expect(JSON.parse(sheet).players.map(({ side }: { side: unknown }) => side)).toEqual(Array(5).fill(null))
  })

  it('has on the coach’s phone what was agreed since it was saved', async () => {
    await planIt(at.club, at.sessionId)
    await agree(4, { kind: 'neverWaitsAlone' })
    const { body } = await fetchPack(at.sessionId)
    expect(body.plan?.players[4]?.agreed).toEqual({ neverWaitsAlone: true })
  })
})

/** Whatever of a plan is of one day or one child alone, by the words it is stored under. */
const ofToday = /agreed|"mostTurns":\d|"notInGoal":true|"waitsAfterEachTurn":true|"side":\d|mayMeet|held fast/

function isForgotten(plan: PracticePlan | undefined): boolean {
  if (!plan) return false
  const { apart, together, locks } = plan
  return apart.length + together.length + locks.length === 0 && !ofToday.test(JSON.stringify(plan))
}

/** A plan with everything in it that a practice forgets. */
function fullPlan(): PracticePlan {
  const plan = aPlan(at.club)
  const [a = '', b = ''] = at.club.playerIds
  const agreed = {
    dueShare: 0.5,
    sameSide: true,
    neverWaitsAlone: true,
    planShownEarly: true,
    firstPartner: b,
  }
  return {
    ...plan,
    mayMeet: [[a, b]],
    players: plan.players.map((player) => ({ ...player, side: 1, agreed })),
    locks: [...plan.locks, { turn: 2, playerId: a, place: 'rest', agreed: 'shown' }],
    proof: { ...plan.proof, sentence: 'As fair as five allow around what is held fast.' },
  }
}

describe('what was set for the day', () => {
  const fields = async () => {
    const form = new FormData()
    for (const [name, value] of Object.entries({
      ...place(),
      version: await versionNow(at),
    }))
      form.append(name, value)
    return form
  }

  it.each([
    [
      'from what was tapped',
      async () => {
        await sendTaps(at.sessionId, { events: wholePractice(at.club, fullPlan()) })
        return writeFromPitch(idle, await fields())
      },
    ],
    ['as planned', async () => writeAsPlanned(idle, await fields())],
    ['by hand', () => write(at)],
  ] as const)('is gone from the plan once the practice is written %s', async (_how, writeIt) => {
    await planIt(at.club, at.sessionId, fullPlan())
    expect(isForgotten((await stored())?.plan)).toBe(false)
    expect(await writeIt().catch(() => 'redirected')).not.toMatchObject({ status: 'refused' })
    const after = await stored()
    expect(after?.plan).toMatchObject({ turns: fullPlan().turns, design: fullPlan().design })
    expect(isForgotten(after?.plan)).toBe(true)
    const audit = JSON.stringify(await at.club.run((tx) => listAudit(tx, { limit: 50 })))
    expect(audit).not.toMatch(/agreed|locks|mostTurns|dueShare/)
  })

  it('is gone after 28 days where nobody wrote the practice, and not before', async () => {
    await planIt(at.club, at.sessionId, fullPlan())
    const pass = (today: string) => at.club.run((tx) => forgetTodayWhenDue(tx, { today }))
    await pass('2026-10-05')
    expect(isForgotten((await stored())?.plan)).toBe(false)
    await pass('2026-10-06')
    expect(isForgotten((await stored())?.plan)).toBe(true)
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({ action: 'forgetToday', detail: { plans: 1, today: '2026-10-06' } })
    await pass('2026-10-07')
    expect(await at.club.run((tx) => listAudit(tx, { limit: 50 }))).toContainEqual(audit)
    expect(
      (await at.club.run((tx) => listAudit(tx, { limit: 50 }))).filter(
        ({ action }) => action === 'forgetToday',
      ),
    ).toHaveLength(1)
  })

  it('is no reason to trouble a plan that has nothing of it', async () => {
    const plain = { ...aPlan(at.club), apart: [], together: [], locks: [] }
    const players = plain.players.map((own) => ({
      ...own,
      ...{ notInGoal: false, waitsAfterEachTurn: false, mostTurns: null },
    }))
    await planIt(at.club, at.sessionId, { ...plain, players })
    const before = (await stored())?.plan
    askAs(at.club, 'coach')
    await write(at).catch(() => null)
    expect((await stored())?.plan).toEqual(before)
  })
})
