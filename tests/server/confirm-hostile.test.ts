import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { listFlagStates } from '#data/flag-states'
import { listJoined } from '#data/guests'
import { newId } from '#data/ids'
import { listRegister } from '#data/register-lines'
import { cancelSession, getSession } from '#data/sessions'
import { listEvents } from '#data/turn-events'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { PracticePlan } from '#planning/practice-plan'
import { checkPractice } from '#practice/checks/check-practice'
import { replayPractice } from '#practice/replay'
import type { Station } from '#practice/turn'
import { rebuildSquad } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { joinGuestToPlayer, writeFromPitch } from '#server/whistle-actions'
import { formOfFields as form } from '../support/form-of-fields'
import { otherPhone, phone, planIt, send, tapped, wholePractice } from '../support/pitch-club'
import { type SeededRandom, seededRandom } from '../support/seeded-random'
import { enterSession } from '../support/test-club'
import { aClubForWriting, askAs, idle, versionNow, write } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
let plan: PracticePlan
beforeEach(async () => {
  plan = await planIt(at.club, at.sessionId)
})

const confirmForm = async (sessionId: string, more: Readonly<Record<string, string | readonly string[]>>) =>
  form({
    squadId: at.club.squadId,
    sessionId,
    version: await versionNow({ club: at.club, sessionId }),
    ...more,
  })
const confirm = async (sessionId = at.sessionId, more = {}) =>
  writeFromPitch(idle, await confirmForm(sessionId, more))
const join = (guestId: string, playerId: string, sessionId = at.sessionId) =>
  joinGuestToPlayer(idle, form({ squadId: at.club.squadId, sessionId, guestId, playerId }))
const book = (sessionId = at.sessionId) =>
  at.club.run(async (tx) => {
    const events = await listEvents(tx, sessionId)
    const session = await getSession(tx, sessionId)
    return { session, events, register: await listRegister(tx, sessionId), ...replayPractice(events) }
  })
const says = (text: RegExp) => ({ status: 'refused', problems: [{ message: expect.stringMatching(text) }] })

describe('taps with times that cannot be', () => {
  it.each([
    ['a phone in 1970', { kind: 'begin' }, 5000, /20,727 days/],
    ['a stop in 2099', { kind: 'stop' }, Date.UTC(2099, 0, 1), /how many minutes the practice was/],
  ] as const)(
    '%s keep the practice out of the book, until they are taken back',
    async (_what, deed, when, why) => {
      const odd = { ...tapped(0, deed), at: when }
      const events = wholePractice(at.club, plan).filter((event) => event.deed.kind !== deed.kind)
      await send(at.sessionId, { events: [...events, odd] })
      expect(await confirm()).toMatchObject(says(why))
      expect((await book()).session).toMatchObject({ written: 'notWritten', lengthSeconds: null })
      const back = tapped(500, { kind: 'undo', undoes: odd.id })
      await send(at.sessionId, { events: [back, tapped(420, { kind: 'stop' })] })
      expect(await confirm()).toMatchObject({ status: 'done' })
      const { session, turns } = await book()
      expect(turns).toHaveLength(4)
      expect(session.lengthSeconds).toBeLessThan(3600)
    },
  )

  it('all of one phone whose clock was years off are a practice like any other', async () => {
    const off = Date.UTC(2001, 0, 1) - Date.UTC(2026, 9, 1)
    const events = wholePractice(at.club, plan).map((event) => ({ ...event, at: event.at + off }))
    await send(at.sessionId, { events })
    expect(await confirm()).toMatchObject({ status: 'done' })
    expect((await book()).session.lengthSeconds).toBe(420)
  })
})

describe('a guest', () => {
  const guestId = newId()
  const arrives = tapped(-5, { kind: 'guest', playerId: guestId, name: 'Zoe Pike' })

  it('is not joined to somebody who was tapped as here, though nothing is in the book yet', async () => {
    const [a = ''] = at.club.playerIds
    await send(at.sessionId, { events: [...wholePractice(at.club, plan), arrives] })
    expect(await join(guestId, a)).toMatchObject({
      status: 'refused',
      problems: [{ path: 'playerId', message: expect.stringMatching(/at the same time/) }],
    })
    expect(await at.club.run((tx) => listJoined(tx, [guestId]))).toEqual(new Map())
    expect(await confirm()).toMatchObject({ status: 'done' })
  })

  it('joined to somebody whom another phone had as here is said, and taking one back mends it', async () => {
    const [a = ''] = at.club.playerIds
    const events = wholePractice(at.club, plan).filter(
      ({ deed }) => deed.kind !== 'register' || deed.playerId !== a,
    )
    await send(at.sessionId, { events: [...events, arrives] })
    expect(await join(guestId, a)).toMatchObject({ status: 'done' })
    const seen = tapped(-4, { kind: 'register', playerId: a, state: 'here' }, { deviceId: otherPhone })
    await send(at.sessionId, { deviceId: otherPhone, events: [seen] })
    expect(await confirm()).toMatchObject(says(/^Ada Fenn was tapped as here at the same time as the guest/))
    await send(at.sessionId, { events: [tapped(500, { kind: 'undo', undoes: seen.id })] })
    expect(await confirm()).toMatchObject({ status: 'done' })
    expect((await book()).register.filter(({ playerId }) => playerId === a)).toHaveLength(1)
  })

  it('is joined once, whoever else joins it at the same moment', async () => {
    const [a = '', b = ''] = at.club.playerIds
    const events = wholePractice(at.club, plan).filter(
      ({ deed }) => deed.kind !== 'register' || ![a, b].includes(deed.playerId),
    )
    await send(at.sessionId, { events: [arrives, ...events] })
    const answers = await Promise.all([join(guestId, a), join(guestId, b), join(guestId, a)])
    expect(answers.filter(({ status }) => status === 'done')).toHaveLength(1)
    const audit = await at.club.run((tx) => listAudit(tx, { limit: 50 }))
    expect(audit.filter(({ action }) => action === 'joinGuest')).toHaveLength(1)
  })
})

describe('pressed at once', () => {
  it('by several coaches, a practice is written once', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    const forms = await Promise.all([1, 2, 3, 4].map(() => confirmForm(at.sessionId, {})))
    const answers = await Promise.all(forms.map((one) => writeFromPitch(idle, one)))
    expect(answers.filter(({ status }) => status === 'done')).toHaveLength(1)
    expect((await book()).events).toHaveLength(4)
  })

  it('with somebody who types, one is kept and the other is told', async () => {
    await send(at.sessionId, { events: wholePractice(at.club, plan) })
    const [typed, tappedIn] = await Promise.all([write(at), confirm()])
    expect([typed.status, tappedIn.status].sort()).toEqual(['done', 'refused'])
    const { session, turns } = await book()
    expect(session.written).toBe(typed.status === 'done' ? 'typedLater' : 'roundByRound')
    expect(turns).toHaveLength(4)
  })

  it('while taps arrive, what is written is what had arrived, and the rest is written next', async () => {
    const events = wholePractice(at.club, plan)
    await send(at.sessionId, { events: events.slice(0, 7) })
    const answers = await Promise.all([
      confirm(),
      ...events.slice(7).map((event) => send(at.sessionId, { events: [event] })),
    ])
    expect(answers.slice(1)).toMatchObject([{ status: 200 }, { status: 200 }])
    await confirm()
    expect((await book()).turns).toHaveLength(4)
    expect(await confirm()).toMatchObject({ message: expect.stringMatching(/Nothing new/) })
  })
})

/** What a hostile or broken phone may send of a practice: any deed, at any time near it, of anybody. */
function oddDeed(
  random: SeededRandom,
  known: { ids: readonly string[]; events: readonly PitchEvent[] },
): Deed {
  const playerId = random.pick([...known.ids])
  const station = (): Station => {
    const [a = '', b = '', c = '', d = ''] = random.shuffle([...known.ids])
    return { attack: [a, b], defend: [c], keep: [random.chance(0.8) ? d : a] }
  }
  const turn = random.whole(0, 5)
  const before = known.events.length > 0 ? random.pick([...known.events]).id : newId()
  const turns = Array.from({ length: random.whole(1, 4) }, () => ({
    round: random.whole(0, 1),
    seconds: random.whole(1, 120),
    gapSeconds: random.whole(0, 30),
    stations: [station()],
  }))
  return random.pick<() => Deed>([
    () => ({ kind: 'begin' }),
    () => ({
      kind: 'register',
      playerId,
      state: random.pick(['here', 'here', 'here', 'notPlaying', 'gone', 'out']),
    }),
    () => ({ kind: 'register', playerId, state: 'here' }),
    () => ({ kind: 'replan', fromTurn: turn, turns, sentence: 'Anew.' }),
    () => ({ kind: 'roundDone', round: random.whole(0, 2), turns }),
    () => ({ kind: 'roundDone', round: random.whole(0, 2), turns }),
    () => ({ kind: 'turnStart', turn, stations: [station()] }),
    () => ({ kind: 'change', start: before, stations: [station()] }),
    () => ({ kind: 'turnEnd', start: before, endings: [] }),
    () => ({ kind: 'passed', turn, playerId, role: 'attack' }),
    () => ({ kind: 'choice', turn, by: 'attack', size: 0, side: null }),
    () => ({ kind: 'asPlanned', turns }),
    () => ({ kind: 'undo', undoes: before, secondAnswer: true }),
    () => ({ kind: 'stop' }),
  ])()
}

describe('whatever is tapped, written, joined, typed over and cancelled', () => {
  it.each([1, 2])(
    'the season’s book and flags are what a rebuild makes of them (%i)',
    async (seed) => {
      const random = seededRandom(seed)
      const { squadId, seasonId, playerIds, run, coach } = at.club
      const season = () =>
        run(async (tx) => ({
          accounts: await listAccounts(tx, { squadId, from: '2026-08-01', to: '2027-06-30' }),
          flags: await listFlagStates(tx, { squadIds: [squadId], seasonId }),
        }))
      const rebuild = () =>
        run(async (tx) => {
          await rebuildSquad(tx, { squadId })
          await refreshFlags(tx, { squadId, seasonId, today: '2026-10-01', now: new Date() })
        })
      const practices = await Promise.all(
        ['2026-09-01', '2026-09-03', '2026-09-08', '2026-09-10', '2026-09-15', '2026-09-22'].map(
          async (day) => {
            const sessionId = await enterSession(at.club, { day })
            if (random.chance(0.8)) await planIt(at.club, sessionId, plan)
            return { sessionId, events: [] as PitchEvent[], guests: [] as string[] }
          },
        ),
      )
      // What entering a practice does on its page.
      await rebuild()
      const done = { written: 0, joined: 0 }
      for (let step = 0; step < 24; step += 1) {
        const own = random.pick(practices)
        const { sessionId } = own
        const guestId = newId()
        const ids = [...playerIds, ...own.guests, newId()]
        const events = Array.from({ length: random.whole(1, 12) }, () => {
          const deed = oddDeed(random, { ids, events: own.events })
          const deviceId = random.pick([phone, otherPhone])
          const event = tapped(random.whole(-60, 1200), deed, { deviceId })
          own.events.push(event)
          return event
        })
        if (own.guests.length < 3 && random.chance(0.3)) {
          own.guests.push(guestId)
          events.push(tapped(random.whole(-60, 1200), { kind: 'guest', playerId: guestId, name: 'Zoe Pike' }))
        }
        await send(sessionId, { events })
        const more = { takenBack: playerIds, ...(random.chance(0.5) ? { overTyped: 'on' } : {}) }
        if (random.chance(0.6) && (await confirm(sessionId, more)).status === 'done') done.written += 1
        const [guest] = own.guests
        if (guest && random.chance(0.4)) {
          const joined = await join(guest, random.pick([...playerIds]), sessionId)
          if (joined.status === 'done') done.joined += 1
        }
        if (random.chance(0.05)) await write({ club: at.club, sessionId })
        if (step === 16) {
          askAs(at.club, 'coach')
          const first = practices[0]?.sessionId ?? ''
          await run((tx) => cancelSession(tx, { sessionId: first, by: coach }))
          await rebuild()
        }
        const { session, register, turns } = await book(sessionId)
        const present = register.filter(({ state }) => state === 'here')
        expect(checkPractice({ lengthSeconds: session.lengthSeconds, register: present, turns })).toEqual([])
        if (step % 6 === 5) {
          const kept = await season()
          await rebuild()
          expect(await season()).toEqual(kept)
        }
      }
      expect(done.written).toBeGreaterThan(3)
    },
    60_000,
  )
})
