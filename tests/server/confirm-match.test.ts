import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { setCountsGoals } from '#data/clubs'
import { newId } from '#data/ids'
import { listMatchEvents } from '#data/pitch-events'
import { cancelSession } from '#data/sessions'
import { loadMatch } from '#data/written-sessions'
import type { MatchPlan } from '#lineup/match-plan'
import { checkMatch } from '#match/checks/check-match'
import { loadMatchWhistle } from '#server/match-whistle-views'
import { writeGoals } from '#server/session-actions'
import { joinGuestToPlayer, writeAsPlanned, writeFromPitch } from '#server/whistle-actions'
import type { MatchEvent } from '#touchline/match-pack'
import { formOfFields as form } from '../support/form-of-fields'
import { aMatchPlan, planMatch, tappedInMatch, wholeMatch } from '../support/match-pitch'
import { onByPlan, secondsOfPlayer, secondsOfSpells } from '../support/match-spells'
import { send } from '../support/pitch-club'
import { enterSession } from '../support/test-club'
import { typeMatchIn } from '../support/typed-in-match'
import { aClubForWriting, askAs, idle, versionNow, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting({ players: 10 })
let plan: MatchPlan
beforeEach(async () => {
  at.sessionId = await enterSession(at.club, {
    kind: 'match',
    day: '2026-10-01',
    startsAt: '10:00',
    periods: null,
  })
  plan = aMatchPlan(at.club.playerIds)
  await planMatch(at.club, at.sessionId, plan)
})

type More = Readonly<Record<string, string | readonly string[]>>
const fields = async (more: More) =>
  form({
    squadId: at.club.squadId,
    sessionId: at.sessionId,
    version: await versionNow(at),
    ...more,
  })
const confirm = async (more: More = {}) => writeFromPitch(idle, await fields(more))
const asPlanned = async (more: More = {}) => writeAsPlanned(idle, await fields(more))
/** What a coach sees after the whistle. */
const page = async () =>
  loadMatchWhistle(await viewerOf(at, 'coach'), { squadId: at.club.squadId, sessionId: at.sessionId })
const book = () => at.club.run((tx) => loadMatch(tx, at.sessionId))
const refused = (text: RegExp) => ({
  status: 'refused',
  problems: [{ message: expect.stringMatching(text) }],
})
const typeIn = () =>
  at.club.run((tx) =>
    typeMatchIn(tx, { sessionId: at.sessionId, playerIds: at.club.playerIds.slice(0, 7), by: at.club.coach }),
  )

describe('a match tapped at the touchline, into the book', () => {
  it('goes to the second: periods, register, spells, with one audit row; and a second time nothing', async () => {
    await send(at.sessionId, { events: wholeMatch(plan) })
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/^Written/) })
    const { session, register, match } = await book()
    // Two periods of 25 minutes, ten minutes between them.
    expect(session).toMatchObject({
      written: 'asPlanned',
      periods: [
        { start: 0, end: 1500 },
        { start: 2100, end: 3600 },
      ],
    })
    expect(checkMatch(match)).toEqual([])
    expect(register.map(({ from, to, state }) => [from, to, state])).toEqual(
      at.club.playerIds.map(() => [0, 3600, 'here']),
    )
    for (const id of at.club.playerIds)
      expect(secondsOfPlayer(match.spells, id)).toBe(secondsOfPlayer(plan.spells, id))
    // Seven at once for 3,000 seconds.
    expect(secondsOfSpells(match.spells)).toBe(21_000)
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/^Nothing new/) })
    const written = (await at.club.run((tx) => listAudit(tx, { limit: 20 }))).filter(
      ({ action }) => action === 'writeFromPitch',
    )
    expect(written).toMatchObject([{ detail: { upTo: 15, written: 'asPlanned' } }])
  })

  it('is written again when more was tapped, only where it says otherwise', async () => {
    const events = wholeMatch(plan)
    await send(at.sessionId, { events })
    await confirm()
    const [whistle] = events.filter(({ deed }) => deed.kind === 'periodEnd')
    const late: MatchEvent[] = [
      tappedInMatch(3700, { kind: 'undo', undoes: whistle?.id ?? '' }),
      tappedInMatch(1560, { kind: 'periodEnd', period: 0 }),
    ]
    await send(at.sessionId, { events: late })
    expect(await confirm()).toMatchObject({ message: expect.stringMatching(/^Written/) })
    const { session, match } = await book()
    expect(session.periods).toEqual([
      { start: 0, end: 1560 },
      { start: 2100, end: 3600 },
    ])
    expect(secondsOfSpells(match.spells)).toBe(7 * 3060)
  })

  it('is never put over what was typed unless the coach says so', async () => {
    await typeIn()
    await send(at.sessionId, { events: wholeMatch(plan) })
    expect(await confirm()).toMatchObject(refused(/typed this match in/))
    expect((await book()).session.written).toBe('typedLater')
    expect(await confirm({ overTyped: 'on' })).toMatchObject({ status: 'done' })
    expect((await book()).session.periods).toHaveLength(2)
  })

  it('waits for a look when more was tapped since the page was opened', async () => {
    await send(at.sessionId, { events: wholeMatch(plan) })
    expect(await confirm({ cursor: '3' })).toMatchObject(refused(/More was tapped/))
    expect((await book()).match.spells).toEqual([])
  })

  it('has goals where the club counts them, and nowhere else', async () => {
    const goals = ['ours', 'ours', 'theirs'] as const
    const tapped = goals.map((side, index) => tappedInMatch(300 + index, { kind: 'goal', side }))
    await send(at.sessionId, { events: [...wholeMatch(plan), ...tapped] })
    await confirm()
    expect((await book()).session.goals).toBeNull()
    await at.club.run((tx) => setCountsGoals(tx, true))
    await confirm()
    expect((await book()).session.goals).toEqual({ ours: 2, theirs: 1 })
    const third = tappedInMatch(400, { kind: 'goal', side: 'ours' })
    await send(at.sessionId, { events: [third] })
    await confirm()
    expect((await book()).session.goals).toEqual({ ours: 3, theirs: 1 })
    // What is typed by hand stands, whatever is tapped.
    expect(await writeGoals(idle, await fields({ ours: '4', theirs: '1' }))).toMatchObject({ status: 'done' })
    await send(at.sessionId, { events: [tappedInMatch(500, { kind: 'goal', side: 'theirs' })] })
    expect(await confirm()).toMatchObject({ status: 'done' })
    expect((await book()).session.goals).toEqual({ ours: 4, theirs: 1 })
  })

  it('with more goals than there can be is refused in a sentence', async () => {
    await at.club.run((tx) => setCountsGoals(tx, true))
    const goals = Array.from({ length: 100 }, (_, index) =>
      tappedInMatch(300 + index, { kind: 'goal', side: 'ours' }),
    )
    await send(at.sessionId, { events: [...wholeMatch(plan), ...goals] })
    expect(await confirm()).toMatchObject(refused(/100 goals of one side were tapped, and 99 at most/))
  })

  it('has a new face as a guest, from when it came', async () => {
    const playerId = newId()
    const guest = tappedInMatch(1800, { kind: 'guest', playerId, name: 'Zoe' })
    const on = [...onByPlan(plan, 1500).slice(1), { playerId, line: 'middle' as const }]
    const events = wholeMatch(plan).map((event) =>
      event.deed.kind === 'kickOff' && event.deed.period === 1
        ? { ...event, deed: { ...event.deed, on } }
        : event,
    )
    await send(at.sessionId, { events: [...events, guest] })
    await confirm()
    const { register, match } = await book()
    expect(register.find((line) => line.playerId === playerId)).toMatchObject({ state: 'here', to: 3600 })
    expect(secondsOfPlayer(match.spells, playerId)).toBeGreaterThan(0)
    expect(checkMatch(match)).toEqual([])
  })

  it('has a new face that is nobody who was tapped as here at the same time', async () => {
    const guestId = newId()
    const guest = tappedInMatch(1800, { kind: 'guest', playerId: guestId, name: 'Zoe' })
    await send(at.sessionId, { events: [...wholeMatch(plan), guest] })
    const [ada = ''] = at.club.playerIds
    expect(await joinGuestToPlayer(idle, await fields({ guestId, playerId: ada }))).toMatchObject({
      problems: [{ path: 'playerId', message: expect.stringMatching(/at the same time as this guest/) }],
    })
    expect(await confirm()).toMatchObject({ status: 'done' })
  })

  it.each(['otherCoach', 'guardian'] as const)('is not for %s', async (who) => {
    await send(at.sessionId, { events: wholeMatch(plan) })
    askAs(at.club, who)
    expect(await confirm()).toMatchObject(refused(/not yours to change/))
    expect((await book()).match.spells).toEqual([])
  })

  it('is refused in a sentence where a clock that was years off makes it a match of years', async () => {
    const first = wholeMatch(plan).find(({ deed }) => deed.kind === 'kickOff')
    if (!first) throw new Error('no kick-off')
    const yearsLater = { ...tappedInMatch(0, { kind: 'goal', side: 'ours' }), at: first.at + 1e11 }
    await send(at.sessionId, { events: [first, yearsLater] })
    expect((await page()).book.lastSecond).toBe(1e8)
    expect(await confirm()).toMatchObject(refused(/1,157 days, and a match is a day at most/))
    expect((await book()).match.spells).toEqual([])
  })

  it('is refused in a sentence when nothing was kicked off, or the match was cancelled', async () => {
    expect(await confirm()).toMatchObject(refused(/No kick-off was tapped/))
    await send(at.sessionId, { events: wholeMatch(plan) })
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by: at.club.coach }))
    expect(await confirm()).toMatchObject(refused(/cancelled/))
  })
})

describe('one question after a match that nobody tapped', () => {
  it('writes the plan as it was made', async () => {
    expect(await asPlanned()).toMatchObject({ status: 'done' })
    const { session, match } = await book()
    expect(session.written).toBe('asPlanned')
    for (const id of at.club.playerIds)
      expect(secondsOfPlayer(match.spells, id)).toBe(secondsOfPlayer(plan.spells, id))
  })

  it('is not as planned when somebody of the plan did not come', async () => {
    const here = at.club.playerIds
      .slice(1)
      .map((playerId, index) => tappedInMatch(index - 60, { kind: 'register', playerId, state: 'here' }))
    await send(at.sessionId, { events: here })
    expect(await asPlanned()).toMatchObject(refused(/^Ada Fenn did not come/))
    expect((await book()).match.spells).toEqual([])
  })

  it('leaves no tap behind where it cannot be written', async () => {
    await typeIn()
    expect(await asPlanned()).toMatchObject({ status: 'refused' })
    expect((await at.club.run((tx) => listMatchEvents(tx, { sessionId: at.sessionId }))).events).toEqual([])
  })
})

describe('the page after the whistle', () => {
  it('shows what was tapped before it is written, and that it stands in the book afterwards', async () => {
    await send(at.sessionId, { events: wholeMatch(plan) })
    expect(await page()).toMatchObject({ isWritten: false, tapCount: 15, typed: null })
    await confirm()
    expect(await page()).toMatchObject({ isWritten: true, tapsSince: 0, typed: null })
  })
})
