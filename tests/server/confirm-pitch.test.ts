import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { listPitchEvents } from '#data/pitch-events'
import { listRegister } from '#data/register-lines'
import { cancelSession, getSession } from '#data/sessions'
import { listEvents } from '#data/turn-events'
import type { PitchEvent } from '#pitch/pitch-event'
import type { PracticePlan } from '#planning/practice-plan'
import { checkPractice } from '#practice/checks/check-practice'
import { eventsThatStand, replayPractice } from '#practice/replay'
import { rebuildSession } from '#server/rebuild'
import { writeAsPlanned, writeFromPitch } from '#server/whistle-actions'
import { formOfFields as form } from '../support/form-of-fields'
import { kickOff, otherPhone, phone, planIt, send, tapped, wholePractice } from '../support/pitch-club'
import { seededRandom } from '../support/seeded-random'
import { enterSession } from '../support/test-club'
import { aClubForWriting, askAs, idle, reopened, versionNow, write } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
let plan: PracticePlan
beforeEach(async () => {
  plan = await planIt(at.club, at.sessionId)
})

type More = Readonly<Record<string, string | readonly string[]>>
const place = async (sessionId = at.sessionId) => ({
  squadId: at.club.squadId,
  sessionId,
  version: await versionNow({ club: at.club, sessionId }),
})
const confirm = async (more: More = {}, sessionId = at.sessionId) =>
  writeFromPitch(idle, form({ ...(await place(sessionId)), ...more }))
const asPlanned = async (more: More = {}) => writeAsPlanned(idle, form({ ...(await place()), ...more }))
const book = (sessionId = at.sessionId) =>
  at.club.run(async (tx) => ({
    session: await getSession(tx, sessionId),
    register: await listRegister(tx, sessionId),
    events: await listEvents(tx, sessionId),
    ...replayPractice(await listEvents(tx, sessionId)),
  }))
const account = async () =>
  (
    await at.club.run((tx) =>
      listAccounts(tx, { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }),
    )
  ).at(0)
const says = (text: RegExp) => ({ status: 'refused', problems: [{ message: expect.stringMatching(text) }] })

describe('into the book', () => {
  it('goes what was tapped, to the second, with account, flags and one audit row', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/^Written/) })
    const { session, register, turns } = await book()
    expect(session).toMatchObject({
      written: 'roundByRound',
      lengthSeconds: 420,
      writtenById: at.club.coach.personId,
    })
    // Laid back from each tap: 180 and 400 seconds after the beginning, a minute a turn, ten seconds between them.
    expect(turns.map(({ start, end, round }) => [start, end, round])).toEqual([
      [50, 110, 'First'],
      [120, 180, 'First'],
      [270, 330, 'Second'],
      [340, 400, 'Second'],
    ])
    expect(turns.map(({ stations }) => stations)).toEqual(plan.turns.map(({ stations }) => stations))
    expect(turns.every(({ themeId }) => themeId === at.club.themeIds[1])).toBe(true)
    expect(register).toHaveLength(5)
    expect(register.every(({ from, to, state }) => from === 0 && to === 420 && state === 'here')).toBe(true)
    // What a player had in all is the time the ball was in play: 4 turns of 60 seconds.
    const { seconds } = await sumsOf(at.club.playerIds[0] as string)
    expect(seconds).toBe(240)
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({
      action: 'writeFromPitch',
      objectId: at.sessionId,
      detail: { upTo: 9, written: 'roundByRound', turns: 4, events: 4, voided: 0, registered: 5 },
    })
  })

  async function sumsOf(playerId: string) {
    const own = (await account())?.lines.filter((column) => column.playerId === playerId) ?? []
    return { seconds: own.reduce((sum, column) => sum + column.seconds, 0) }
  }

  it('writes nothing when it is pressed again', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    await confirm()
    const before = await book()
    const audit = await at.club.run((tx) => listAudit(tx, { limit: 50 }))
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/Nothing new/) })
    expect(await book()).toEqual(before)
    expect(await at.club.run((tx) => listAudit(tx, { limit: 50 }))).toEqual(audit)
  })

  it('writes only what differs when more arrives from another phone afterwards', async () => {
    const events = wholePractice(at.club, plan)
    await send(at.sessionId, { events })
    await confirm()
    const before = await book()
    const [, , , , e] = at.club.playerIds as [string, string, string, string, string]
    const gone = tapped(300, { kind: 'register', playerId: e, state: 'gone' }, { deviceId: otherPhone })
    await send(at.sessionId, { deviceId: otherPhone, events: [gone] })
    expect(await confirm({ cursor: '9' })).toMatchObject(says(/More was tapped/))
    expect(await confirm({ cursor: '10' })).toMatchObject({ status: 'done' })
    const after = await book()
    expect(after.events.slice(0, 4)).toEqual(before.events)
    const written = after.events.slice(4)
    // The third turn ends at 300 for who left and goes on without, the fourth is played without: two were voided.
    expect(written.filter(({ kind }) => kind === 'void')).toHaveLength(2)
    expect(after.turns.map(({ start, end, continuesTurn }) => [start, end, continuesTurn])).toEqual([
      [50, 110, false],
      [120, 180, false],
      [270, 300, false],
      [300, 330, true],
      [340, 400, false],
    ])
    expect(after.register.find(({ playerId }) => playerId === e)).toMatchObject({ from: 0, to: 300 })
  })

  it('never writes over what somebody typed meanwhile unless the coach says so', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    await confirm()
    askAs(at.club, 'headCoach')
    const change = await reopened(at, (grid) => {
      const marks = grid.rows[0]?.marks
      if (marks) marks[0] = 'W'
      return grid
    })
    const registered = await at.club.run((tx) => listRegister(tx, at.sessionId))
    expect(
      await write(at, {
        ...change,
        lengthSeconds: 420,
        register: registered.map(({ playerId }) => ({
          playerId,
          segments: [{ from: 0, to: null, state: 'here' }],
        })),
      }),
    ).toMatchObject({ status: 'done' })
    const typed = await book()
    askAs(at.club, 'coach')
    expect(await confirm()).toMatchObject(says(/by hand/))
    expect(await book()).toEqual(typed)
    expect(await confirm({ overTyped: 'on' })).toMatchObject({ status: 'done' })
    expect((await book()).turns.map(({ stations }) => stations)).toEqual(
      plan.turns.map(({ stations }) => stations),
    )
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/Nothing new/) })
  })

  it('asks before it writes over a practice that was typed in before anything was written from the taps', async () => {
    await write(at)
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    expect(await confirm()).toMatchObject(says(/by hand/))
    expect(await confirm({ overTyped: 'on' })).toMatchObject({ status: 'done' })
    expect((await book()).session.written).toBe('roundByRound')
  })

  it('is refused when the book was written in since the page was opened', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    const opened = await place()
    await confirm()
    expect(await writeFromPitch(idle, form(opened))).toMatchObject(says(/Somebody else wrote this/))
  })

  it('takes nobody back from being out for today without a second answer', async () => {
    const [a] = at.club.playerIds as [string]
    const out = tapped(200, { kind: 'register', playerId: a, state: 'out' })
    await send(at.sessionId, { events: [...wholePractice(at.club, plan), out] })
    expect(await confirm()).toMatchObject({ status: 'done' })
    expect(
      (await book()).register.filter(({ playerId }) => playerId === a).map(({ state }) => state),
    ).toEqual(['here', 'out'])
    const undo = tapped(500, { kind: 'undo', undoes: out.id, secondAnswer: true })
    await send(at.sessionId, { events: [undo] })
    expect(await confirm()).toMatchObject(says(/out for today/))
    expect(await confirm({ takenBack: a })).toMatchObject({ status: 'done' })
    expect(
      (await book()).register.filter(({ playerId }) => playerId === a).map(({ state }) => state),
    ).toEqual(['here'])
  })

  it('is refused while nothing was tapped, before the day, and once cancelled', async () => {
    expect(await confirm()).toMatchObject(says(/Nothing was tapped/))
    const toCome = await enterSession(at.club, { day: '2026-10-09' })
    await planIt(at.club, toCome)
    await send(toCome, { events: wholePractice(at.club, plan) })
    expect(await confirm({}, toCome)).toMatchObject(says(/still to come/))
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    await at.club.run((tx) => cancelSession(tx, { sessionId: at.sessionId, by: at.club.coach }))
    expect(await confirm()).toMatchObject(says(/cancelled/))
  })

  it.each(['otherCoach', 'guardian'] as const)('is not for %s', async (who) => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    askAs(at.club, who)
    expect(await confirm()).toMatchObject(says(/not yours to change/))
    expect(await asPlanned()).toMatchObject(says(/not yours to change/))
    expect((await book()).events).toEqual([])
  })

  it('is one book, in whatever order the taps of two phones arrived and however often: 15 orders', async () => {
    const [a, , , , e] = at.club.playerIds as [string, string, string, string, string]
    const mine = wholePractice(at.club, plan)
    const theirs = [
      tapped(150, { kind: 'register', playerId: e, state: 'notPlaying' }, { deviceId: otherPhone }),
      tapped(182, { kind: 'roundDone', round: 0, turns: plan.turns.slice(0, 2) }, { deviceId: otherPhone }),
      tapped(250, { kind: 'register', playerId: e, state: 'here' }, { deviceId: otherPhone }),
      tapped(360, { kind: 'register', playerId: a, state: 'gone' }, { deviceId: otherPhone }),
    ]
    const books = new Set<string>()
    for (let round = 0; round < 15; round += 1) {
      const random = seededRandom(round + 1)
      const sessionId = await enterSession(at.club, { title: `Order ${round}` })
      await planIt(at.club, sessionId, plan)
      const own = (events: readonly PitchEvent[]) =>
        events.map((event) => ({ ...event, id: tapped((event.at - kickOff) / 1000, event.deed).id }))
      const all = [...own(mine), ...own(theirs)]
      const waiting = random.shuffle([...all, ...all])
      while (waiting.length > 0) {
        const events = waiting.splice(0, random.whole(1, 7))
        await send(sessionId, { deviceId: random.chance(0.5) ? phone : otherPhone, events })
        // Some confirm too early, and again.
        if (random.chance(0.15)) await confirm({}, sessionId)
      }
      expect(await confirm({}, sessionId)).toMatchObject({ status: 'done' })
      const { turns, passes, register, session } = await book(sessionId)
      expect(
        checkPractice({
          lengthSeconds: session.lengthSeconds,
          turns,
          register: register.filter(({ state }) => state === 'here'),
        }),
      ).toEqual([])
      books.add(JSON.stringify([turns, passes, register, session.written, session.lengthSeconds]))
    }
    expect(books.size).toBe(1)
  }, 120_000)

  it('and its account is the fold of what was written', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    await confirm()
    const kept = await account()
    await at.club.run((tx) => rebuildSession(tx, at.sessionId))
    expect(await account()).toEqual(kept)
  })
})

describe('one question, for a practice that nobody tapped', () => {
  it('writes the plan as planned', async () => {
    expect(await asPlanned()).toMatchObject({ status: 'done' })
    const { session, turns, register } = await book()
    expect(session.written).toBe('asPlanned')
    expect(turns.map(({ start, end }) => [start, end])).toEqual([
      [0, 60],
      [70, 130],
      [140, 200],
      [210, 270],
    ])
    expect(register).toHaveLength(5)
  })

  it('up to a round, with who left after which and who was not there', async () => {
    const [a, , , , e] = at.club.playerIds as [string, string, string, string, string]
    expect(await asPlanned({ stoppedAfterRound: '1', left: [`${a}:0`, '', `${e}:none`] })).toMatchObject({
      status: 'done',
    })
    const { turns, register } = await book()
    expect(register.map(({ playerId }) => playerId)).not.toContain(e)
    expect(register.find(({ playerId }) => playerId === a)).toMatchObject({ from: 0, to: 130 })
    const seated = turns.map(({ stations }) =>
      stations.flatMap(({ attack, defend, keep }) => [...attack, ...defend, ...keep]),
    )
    expect(seated.flat()).not.toContain(e)
    expect(seated.map((ids) => ids.includes(a))).toEqual([true, false, false, false])
  })

  it('stops after the first round', async () => {
    expect(await asPlanned({ stoppedAfterRound: '0' })).toMatchObject({ status: 'done' })
    expect((await book()).turns).toHaveLength(2)
  })

  it('is not answered twice, nor over what was tapped or typed, and leaves no tap behind when it is refused', async () => {
    await write(at, { ...(await reopened(at, (grid) => grid)), way: 'typedLater' })
    await write(at)
    expect(await asPlanned()).toMatchObject(says(/by hand/))
    expect((await at.club.run((tx) => listPitchEvents(tx, { sessionId: at.sessionId }))).events).toEqual([])
    const sessionId = await enterSession(at.club, { title: 'Unplanned' })
    const unplanned = await writeAsPlanned(idle, form(await place(sessionId)))
    expect(unplanned).toMatchObject(says(/Nothing was planned/))
  })

  it('is refused once turns were tapped', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    expect(await asPlanned()).toMatchObject(says(/were tapped/))
  })
})

describe('a register taken before the practice', () => {
  it('stays for those of whom nothing was tapped, where nobody took it at the pitch', async () => {
    await write(at, {
      grid: { columns: [], rows: [] },
      register: [
        { playerId: at.club.playerIds[3] as string, segments: [{ from: 0, to: null, state: 'here' }] },
      ],
    })
    const done = tapped(180, {
      kind: 'roundDone',
      round: 0,
      turns: [
        {
          round: 0,
          seconds: 60,
          gapSeconds: 10,
          stations: [{ attack: [at.club.playerIds[0] as string], defend: [], keep: [] }],
        },
      ],
    })
    await send(at.sessionId, { events: [done] })
    expect(await confirm()).toMatchObject({ status: 'done' })
    const { register, turns } = await book()
    expect(register.map(({ playerId }) => playerId).sort()).toEqual(
      [at.club.playerIds[0], at.club.playerIds[3]].sort(),
    )
    expect(turns).toHaveLength(1)
    expect(eventsThatStand((await book()).events)).toHaveLength(1)
  })

  it('keeps out of the plan, as planned, who is out for today or not playing, unless the coach says when it left', async () => {
    const [, , c, d, e] = at.club.playerIds as [string, string, string, string, string]
    const states = { [c]: 'notPlaying', [d]: 'out', [e]: 'here' } as const
    await write(at, {
      grid: { columns: [], rows: [] },
      register: Object.entries(states).map(([playerId, state]) => ({
        playerId,
        segments: [{ from: 0, to: null, state }],
      })),
    })
    expect(await asPlanned({ left: [`${c}:0`] })).toMatchObject({ status: 'done' })
    const { register, turns } = await book()
    const linesOf = (id: string) =>
      register
        .filter(({ playerId }) => playerId === id)
        .map(({ from, to, state }) => `${from}-${to} ${state}`)
    expect(linesOf(c)).toEqual(['0-130 here'])
    expect(linesOf(d)).toEqual([expect.stringMatching(/^0-\d+ out$/)])
    expect(linesOf(e)).toEqual([expect.stringMatching(/^0-\d+ here$/)])
    const seated = turns.flatMap(({ stations }) =>
      stations.flatMap(({ attack, defend, keep }) => [...attack, ...defend, ...keep]),
    )
    expect(seated).not.toContain(d)
    expect(seated).toContain(e)
  })
})

describe('a practice whose length nobody tapped', () => {
  const here = () =>
    at.club.playerIds.map((playerId) => tapped(-5, { kind: 'register', playerId, state: 'here' }))
  const minutes = (problem: RegExp) => ({
    status: 'refused',
    problems: [{ path: 'lengthMinutes', message: expect.stringMatching(problem) }],
  })

  it('with a stop in the morning is written as the coach says it was', async () => {
    const events = wholePractice(at.club, plan).filter(({ deed }) => deed.kind !== 'stop')
    await send(at.sessionId, { events: [...events, tapped(13 * 3600, { kind: 'stop' })] })
    expect(await confirm()).toMatchObject(minutes(/how many minutes/))
    expect(await confirm({ lengthMinutes: 'an hour' })).toMatchObject(minutes(/whole number of minutes/))
    expect(await confirm({ lengthMinutes: '2000' })).toMatchObject(minutes(/longer than a day/))
    expect((await book()).session).toMatchObject({ written: 'notWritten', lengthSeconds: null })
    expect(await confirm({ lengthMinutes: '75' })).toMatchObject({ status: 'done' })
    const { session, register } = await book()
    expect(session.lengthSeconds).toBe(4500)
    expect(register.every(({ to }) => to === 4500)).toBe(true)
    expect(await confirm({ lengthMinutes: '75' })).toMatchObject({
      message: expect.stringMatching(/Nothing new/),
    })
  })

  it('with a register and no stop is not said to be nothing', async () => {
    await send(at.sessionId, { events: [...here(), tapped(0, { kind: 'begin' })] })
    expect(await confirm()).toMatchObject(minutes(/how many minutes/))
    expect(await confirm({ lengthMinutes: '60' })).toMatchObject({ status: 'done' })
    const { session, register } = await book()
    expect(session).toMatchObject({ written: 'notWritten', lengthSeconds: 3600 })
    expect(register.map(({ to }) => to)).toEqual(Array(5).fill(3600))
  })
})
