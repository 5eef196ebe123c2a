import { beforeAll, describe, expect, it } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { listFlagStates } from '#data/flag-states'
import { inClub } from '#data/in-club'
import { listPolicies } from '#data/policies'
import { changePolicyOf, problemsOfChange } from '#server/change-policy'
import { policyInput } from '#server/policy-input'
import { loadPolicy } from '#server/policy-views'
import { defaultPolicy, type Policy } from '#squad/policy'
import { calendarDay, clubId, demoSeason, demoSquads } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

const change = (policy: Partial<Policy>, at: { ageLimit?: number | null; effectiveFrom?: string } = {}) => ({
  ageLimit: at.ageLimit ?? null,
  effectiveFrom: at.effectiveFrom ?? calendarDay,
  policy: { ...defaultPolicy, ...policy },
})

const accountsOf = (squadId: string) =>
  inClub(clubId, (tx) => listAccounts(tx, { squadId, from: demoSeason.firstDay, to: demoSeason.lastDay }))

const sumOf = (accounts: Awaited<ReturnType<typeof accountsOf>>, role: string) =>
  accounts
    .flatMap(({ lines }) => lines)
    .filter((line) => line.role === role)
    .reduce((sum, line) => sum + line.seconds, 0)

describe('the form of the rules', () => {
  const form = {
    ageLimit: '',
    effectiveFrom: '2026-06-08',
    toleranceMinutes: '7,5',
    tolerancePercent: '12.5',
    middleAttackPercent: '40',
    restLimitTurns: '3',
    goalPercent: '50',
    leastMatchPercent: '50',
    writtenPercent: '60',
    sessionsBeforeFlags: '4',
    matchesBeforeRoles: '4',
  }

  it('is read as people type numbers', () => {
    expect(policyInput.parse(form)).toEqual(
      change({ toleranceSeconds: 450, toleranceShare: 0.125, middleAttackShare: 0.4, restLimitTurns: 3 }),
    )
    expect(policyInput.parse({ ...form, ageLimit: '10' }).ageLimit).toBe(10)
  })

  it.each([
    ['restLimitTurns', '2.5', 'write a whole number of turns, 1 to 20'],
    ['restLimitTurns', '', 'write a number of turns, 1 to 20'],
    ['goalPercent', '120', 'write a number of per cent, 0 to 100'],
    ['toleranceMinutes', 'ten', 'write a number of minutes, 0 to 120'],
    ['effectiveFrom', '2026-02-30', 'write a day of the calendar, such as 2026-03-31'],
  ])('refuses %s = “%s” and says what would be right', (name, value, message) => {
    const parsed = policyInput.safeParse({ ...form, [name]: value })
    expect(parsed.error?.issues.map((issue) => [issue.path.join('.'), issue.message])).toContainEqual([
      name,
      message,
    ])
  })
})

describe('a change of the rules', () => {
  it('is refused before the newest of its age, without a change, for no squad, or years ahead', async () => {
    const versions = await inClub(clubId, listPolicies)
    const known = { versions, squads: Object.values(demoSquads), today: calendarDay }
    const paths = (input: Parameters<typeof problemsOfChange>[0]) =>
      problemsOfChange(input, known).map(({ path }) => path)
    expect(paths(change({ restLimitTurns: 3 }, { effectiveFrom: '2026-01-04' }))).toEqual(['effectiveFrom'])
    expect(paths(change({ restLimitTurns: 3 }, { effectiveFrom: '2026-01-05' }))).toEqual([])
    expect(paths(change({ restLimitTurns: 3 }, { ageLimit: 10, effectiveFrom: '2025-09-01' }))).toEqual([])
    expect(paths(change({}))).toEqual([''])
    expect(paths(change({ restLimitTurns: 3 }, { ageLimit: 14 }))).toEqual(['ageLimit'])
    expect(paths(change({ restLimitTurns: 3 }, { effectiveFrom: '2036-01-01' }))).toEqual(['effectiveFrom'])
  })

  it.each(['idris', 'chinwe'] as const)('is not %s’s to make', async (key) => {
    await expect(changePolicyOf(await demoViewer(key), change({ restLimitTurns: 3 }))).rejects.toMatchObject({
      code: 'notAllowed',
    })
    expect(await inClub(clubId, listPolicies)).toHaveLength(2)
  })

  it('counts matches from its day on anew where the middle counts otherwise, and leaves earlier ones and practices', async () => {
    const [ten, twelve] = [demoSquads.underTen.id, demoSquads.underTwelve.id]
    const before = await accountsOf(ten)
    const others = await accountsOf(twelve)
    const from = '2026-03-01'
    const done = await changePolicyOf(
      await demoViewer('maren'),
      change({ middleAttackShare: 1 }, { ageLimit: 10, effectiveFrom: from }),
    )
    expect(done).toMatchObject({ ok: true })
    const after = await accountsOf(ten)
    const isFrom = ({ day, kind }: { day: string; kind: string }) => kind === 'match' && day >= from
    const isOther = (account: { day: string; kind: string }) => !isFrom(account)
    expect(after.filter(isOther)).toEqual(before.filter(isOther))
    expect(await accountsOf(twelve)).toEqual(others)
    const [then, now] = [before.filter(isFrom), after.filter(isFrom)]
    expect(now.length).toBeGreaterThan(1)
    // What the middle no longer defends it attacks; nobody's time on the pitch changes.
    expect(sumOf(now, 'attack')).toBeGreaterThan(sumOf(then, 'attack'))
    expect(sumOf(now, 'attack') + sumOf(now, 'defend')).toBeCloseTo(
      sumOf(then, 'attack') + sumOf(then, 'defend'),
      6,
    )
    const counted = now.filter(({ written }) => written !== 'notWritten').length
    expect(done.ok && 'message' in done.value && done.value.message).toContain(
      `${counted} matches were counted anew`,
    )
  })

  it('judges flags anew, keeps the old version to be read, and leaves a trace', async () => {
    const viewer = await demoViewer('maren')
    const at = { squadIds: [demoSquads.underTwelve.id], seasonId: demoSeason.id, statuses: ['open'] as const }
    const open = () => inClub(clubId, (tx) => listFlagStates(tx, at))
    const before = await open()
    const done = await changePolicyOf(viewer, change({ toleranceSeconds: 60, toleranceShare: 0.01 }))
    expect(done.ok).toBe(true)
    expect((await open()).length).toBeGreaterThan(before.length)
    const { bands, canChange } = await loadPolicy(viewer)
    expect(canChange).toBe(true)
    expect(bands.map(({ ageLimit }) => ageLimit)).toEqual([null, 10, 12])
    expect(bands[0]?.history.map(({ from, to, state }) => [from, to, state])).toEqual([
      [calendarDay, null, 'inForce'],
      ['2026-01-05', '2026-06-07', 'past'],
      ['2025-09-01', '2026-01-04', 'past'],
    ])
    expect(bands[1]).toMatchObject({ isOwn: true, inForce: { middleAttackShare: 1, toleranceSeconds: 600 } })
    expect(bands[2]).toMatchObject({ isOwn: false, inForce: { toleranceSeconds: 60 } })
    const [entry] = await inClub(clubId, (tx) => listAudit(tx, { limit: 1 }))
    expect(entry).toMatchObject({ action: 'changePolicy', detail: { effectiveFrom: calendarDay } })
  })

  it('of a day to come changes no flag before that day', async () => {
    const viewer = await demoViewer('maren')
    const at = { squadIds: [demoSquads.underTwelve.id], seasonId: demoSeason.id }
    const flags = () => inClub(clubId, (tx) => listFlagStates(tx, at))
    const before = await flags()
    const done = await changePolicyOf(
      viewer,
      change({ toleranceSeconds: 0 }, { effectiveFrom: '2026-09-01' }),
    )
    expect(done.ok && 'message' in done.value && done.value.message).toBe(
      'The new rules will hold from 2026-09-01.',
    )
    expect(await flags()).toEqual(before)
  })
})

describe('the page of the rules', () => {
  it('is open to every coach, who may not change them, and to no parent', async () => {
    expect((await loadPolicy(await demoViewer('idris'))).canChange).toBe(false)
    await expect(loadPolicy(await demoViewer('chinwe'))).rejects.toMatchObject({ code: 'notAllowed' })
  })
})

describe('a change sent twice at once', () => {
  it('makes one version', async () => {
    const viewer = await demoViewer('maren')
    const next = change({ restLimitTurns: 7 }, { ageLimit: 12, effectiveFrom: '2027-03-01' })
    const answers = await Promise.all([1, 2, 3].map(() => changePolicyOf(viewer, next)))
    expect(answers.filter(({ ok }) => ok)).toHaveLength(1)
    const versions = await inClub(clubId, (tx) => listPolicies(tx))
    expect(versions.filter(({ effectiveFrom }) => effectiveFrom === '2027-03-01')).toHaveLength(1)
  })
})
