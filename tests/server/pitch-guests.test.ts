import { beforeEach, describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { listClubPlayers } from '#data/club-players'
import { forgetGuestNames, listGuests, recordGuests } from '#data/guests'
import { newId } from '#data/ids'
import { listSpells, recordSpells } from '#data/match-spells'
import { recordMemberships } from '#data/memberships'
import { findPlayer } from '#data/players'
import { listRegister, recordRegister } from '#data/register-lines'
import { getSession, markWritten } from '#data/sessions'
import { listEvents } from '#data/turn-events'
import type { PracticePlan } from '#planning/practice-plan'
import { replayPractice } from '#practice/replay'
import { loadExport } from '#server/export-views'
import { loadPlayers } from '#server/players-views'
import { loadToday } from '#server/today-views'
import { joinGuestToPlayer, writeFromPitch } from '#server/whistle-actions'
import { loadWhistle } from '#server/whistle-views'
import { isNameGone } from '#squad/guest'
import { forgetGuestNames as forgetAtStart } from '../../src/boot/forget-guests.mjs'
import { askAs as askDatabaseAs } from '../support/ask-as'
import { formOfFields as form } from '../support/form-of-fields'
import { fetchPack, otherPhone, planIt, send, tapped } from '../support/pitch-club'
import { enterSession, ownerDatabase } from '../support/test-club'
import { testDatabase } from '../support/test-database'
import { aClubForWriting, askAs, idle, versionNow, viewerOf, write } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()
let plan: PracticePlan
let guestId: string
beforeEach(async () => {
  plan = await planIt(at.club, at.sessionId)
  guestId = newId()
})

const place = () => ({ squadId: at.club.squadId, sessionId: at.sessionId })
const confirm = async () => writeFromPitch(idle, form({ ...place(), version: await versionNow(at) }))
const join = (playerId: string, more: Readonly<Record<string, string>> = {}) =>
  joinGuestToPlayer(idle, form({ ...place(), guestId, playerId, ...more }))
const viewer = () => viewerOf(at, 'coach')
const book = () =>
  at.club.run(async (tx) => ({
    register: await listRegister(tx, at.sessionId),
    ...replayPractice(await listEvents(tx, at.sessionId)),
  }))

/** Four of the squad and a new face, who attacks in both turns of the first round. */
async function aPracticeWithGuest() {
  const [, b, c, d, e] = at.club.playerIds as [string, string, string, string, string]
  const turns = plan.turns.slice(0, 2).map((turn) => ({
    ...turn,
    stations: [{ attack: [guestId, c], defend: [b], keep: [d] }],
  }))
  await send(at.sessionId, {
    events: [
      ...[b, c, d, e].map((playerId, index) =>
        tapped(index - 20, { kind: 'register', playerId, state: 'here' }),
      ),
      tapped(-10, { kind: 'guest', playerId: guestId, name: 'Zoe Pike' }),
      tapped(0, { kind: 'begin' }),
      tapped(180, { kind: 'roundDone', round: 0, turns }),
      tapped(190, { kind: 'passed', turn: 1, playerId: guestId, role: 'keep' }),
      tapped(200, { kind: 'stop' }),
    ],
  })
}

describe('a new face tapped at the pitch', () => {
  it('goes into the book as a guest: with its turns, outside every mean and flag', async () => {
    await aPracticeWithGuest()
    expect(await confirm()).toMatchObject({ status: 'done' })
    const { register, turns } = await book()
    expect(register.find(({ playerId }) => playerId === guestId)).toMatchObject({ from: 0, to: 200 })
    expect(turns[0]?.stations[0]?.attack).toContain(guestId)
    const [account] = await at.club.run((tx) =>
      listAccounts(tx, { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }),
    )
    expect(account?.presences.find(({ playerId }) => playerId === guestId)).toMatchObject({ isMember: false })
    expect(
      account?.lines
        .filter(({ playerId }) => playerId === guestId)
        .every((line) => line.fullFairSeconds === 0),
    ).toBe(true)
    const page = await loadPlayers(await viewer(), { squadId: at.club.squadId })
    expect(page.guests.map(({ name }) => name)).toEqual(['Zoe Pike'])
    expect(page.members.map(({ name }) => name)).not.toContain('Zoe Pike')
  })

  it('is joined to a player: what was written is voided and written anew under it, and counts', async () => {
    const [a] = at.club.playerIds as [string]
    await aPracticeWithGuest()
    await confirm()
    const before = await at.club.run((tx) => listEvents(tx, at.sessionId))
    expect(await join(a)).toMatchObject({ status: 'done', message: expect.stringMatching(/Ada Fenn/) })
    const after = await at.club.run((tx) => listEvents(tx, at.sessionId))
    expect(after.slice(0, before.length)).toEqual(before)
    expect(after.slice(before.length).map(({ kind }) => kind)).toEqual([
      'void',
      'void',
      'void',
      'turn',
      'turn',
      'passed',
    ])
    const { register, turns, passes } = await book()
    expect(JSON.stringify([register, turns, passes])).not.toContain(guestId)
    expect(turns.map(({ stations }) => stations[0]?.attack[0])).toEqual([a, a])
    expect(passes).toMatchObject([{ playerId: a, role: 'keep' }])
    expect(register.filter(({ playerId }) => playerId === a)).toMatchObject([
      { from: 0, to: 200, state: 'here' },
    ])
    const [account] = await at.club.run((tx) =>
      listAccounts(tx, { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }),
    )
    expect(account?.presences.find(({ playerId }) => playerId === a)).toMatchObject({
      isMember: true,
      liveSeconds: 120,
    })
    expect(account?.presences.some(({ playerId }) => playerId === guestId)).toBe(false)
    const actions = (await at.club.run((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)
    expect(actions).toEqual(expect.arrayContaining(['joinGuest', 'joinGuestInSession']))
    // Written again from the taps, it stays with the player, and joining is nobody's typing.
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/Nothing new/) })
    expect(await book()).toEqual({ register, turns, passes })
    expect(await join(a)).toMatchObject({ status: 'refused' })
  })

  it('that is joined before anything is written goes into the book under the player', async () => {
    const [a] = at.club.playerIds as [string]
    await aPracticeWithGuest()
    expect(await join(a)).toMatchObject({ status: 'done' })
    expect(await confirm()).toMatchObject({ status: 'done' })
    expect(JSON.stringify(await book())).not.toContain(guestId)
    expect((await book()).turns[0]?.stations[0]?.attack).toContain(a)
  })

  it('is not joined to somebody who was there at the same time, nor by anybody else’s coach', async () => {
    const [a, b] = at.club.playerIds as [string, string]
    await aPracticeWithGuest()
    await confirm()
    const before = await book()
    expect(await join(b)).toMatchObject({
      status: 'refused',
      problems: [{ path: 'playerId', message: expect.stringMatching(/at the same time/) }],
    })
    expect(await join(newId())).toMatchObject({ problems: [{ path: 'playerId' }] })
    expect(await join(a, { guestId: b })).toMatchObject({ problems: [{ path: 'guestId' }] })
    for (const who of ['otherCoach', 'guardian'] as const) {
      askAs(at.club, who)
      expect(await join(a)).toMatchObject({ problems: [{ message: expect.stringMatching(/not yours/) }] })
    }
    expect(await book()).toEqual(before)
  })

  it('is joined in a match too', async () => {
    const [a] = at.club.playerIds as [string]
    const match = await enterSession(at.club, { kind: 'match' })
    const by = at.club.coach
    await at.club.run(async (tx) => {
      await recordGuests(tx, { guests: [{ id: guestId, name: 'Zoe Pike' }], since: '2026-09-08' })
      await recordRegister(tx, {
        sessionId: match,
        lines: [{ playerId: guestId, state: 'here', from: 0, to: 1200 }],
        by,
      })
      const spells = [{ playerId: guestId, line: 'back', start: 0, end: 600 } as const]
      await recordSpells(tx, { matches: [{ sessionId: match, spells }], by })
      await markWritten(tx, { sessionIds: [match], written: 'typedLater', by })
    })
    expect(await join(a, { sessionId: match })).toMatchObject({ status: 'done' })
    expect(await at.club.run((tx) => listSpells(tx, match))).toEqual([
      { playerId: a, line: 'back', start: 0, end: 600 },
    ])
    expect(await at.club.run((tx) => listRegister(tx, match))).toMatchObject([{ playerId: a }])
    expect((await at.club.run((tx) => getSession(tx, match))).written).toBe('typedLater')
  })
})

describe('a guest’s name', () => {
  const nameOf = async (id: string) => (await at.club.run((tx) => findPlayer(tx, id)))?.name
  const entered = (id: string, name: string, since: string) =>
    at.club.run((tx) => recordGuests(tx, { guests: [{ id, name }], since }))

  it('goes after 28 days: the rule', () => {
    expect(isNameGone('2026-09-03', '2026-09-30')).toBe(false)
    expect(isNameGone('2026-09-03', '2026-10-01')).toBe(true)
    // A leap day is a day like any other.
    expect(isNameGone('2028-02-20', '2028-03-18')).toBe(false)
    expect(isNameGone('2028-02-20', '2028-03-19')).toBe(true)
  })

  it('goes by the pages and by the start alike, and nobody else’s does', async () => {
    const everyone = async () => {
      const rows = ['2026-09-02', '2026-09-03', '2026-09-04', '2026-10-01'].map((since) => ({
        id: newId(),
        since,
      }))
      for (const { id, since } of rows) await entered(id, `Guest of ${since}`, since)
      const member = newId()
      await entered(member, 'Now a Member', '2026-08-05')
      await at.club.run((tx) =>
        recordMemberships(tx, {
          squadId: at.club.squadId,
          memberships: [{ playerId: member, firstDay: '2026-09-01', lastDay: null }],
        }),
      )
      return { ids: [...rows.map(({ id }) => id), member, at.club.playerIds[0] as string] }
    }
    const names = async (ids: readonly string[]) => Promise.all(ids.map(nameOf))
    const left = ['Guest', 'Guest', 'Guest of 2026-09-04', 'Guest of 2026-10-01', 'Now a Member', 'Ada Fenn']
    // The club's calendar stands still on 1 October 2026.
    const byPages = await everyone()
    expect(await at.club.run((tx) => forgetGuestNames(tx, '2026-10-01'))).toBe(2)
    expect(await names(byPages.ids)).toEqual(left)
    expect(await at.club.run((tx) => forgetGuestNames(tx, '2026-10-01'))).toBe(0)
    const atStart = await everyone()
    const gone = await askDatabaseAs(testDatabase().ownerUrl, (owner) => forgetAtStart(owner))
    expect(gone).toBe(2)
    expect(await names(atStart.ids)).toEqual(left)
  })

  it('is in no page, no file and no pack after that; what was played stays', async () => {
    await aPracticeWithGuest()
    await confirm()
    const before = await book()
    await ownerClub((tx) =>
      tx.db.club.update({
        where: { id: at.club.club.id },
        data: { calendarDay: new Date('2026-10-06T00:00:00Z') },
      }),
    )
    await loadToday(await viewer(), { squadId: at.club.squadId })
    expect(await nameOf(guestId)).toBe('Guest')
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({ action: 'forgetGuestNames', detail: { names: 1 }, personName: null })
    const scope = { squadId: at.club.squadId, from: null, to: null }
    const files = await Promise.all(
      ['log', 'book', 'roster', 'attendance', 'turns'].map(
        async (what) => (await loadExport(await viewer(), { ...scope, what })).text,
      ),
    )
    const page = await loadPlayers(await viewer(), { squadId: at.club.squadId })
    const whistle = await loadWhistle(await viewer(), place())
    const { body: pack } = await fetchPack(at.sessionId)
    const { body: answer } = await send(at.sessionId, { deviceId: otherPhone, events: [] })
    expect(pack.events).toHaveLength(answer.events.length)
    expect(JSON.stringify([files, page, whistle, pack, answer])).not.toContain('Zoe')
    expect(page.guests.map(({ name }) => name)).toEqual(['Guest'])
    expect(
      await at.club.run(async (tx) => (await listClubPlayers(tx)).some(({ id }) => id === guestId)),
    ).toBe(false)
    expect(await book()).toEqual(before)
    expect(await confirm()).toMatchObject({ message: expect.stringMatching(/Nothing new/) })
  })

  it('of a guest who was typed in goes as well', async () => {
    await write(at, {
      guests: [{ id: 'new1', name: 'Typed Guest' }],
      register: [{ playerId: 'new1', segments: [{ from: 0, to: null, state: 'here' }] }],
      grid: { columns: [], rows: [] },
    })
    const [line] = (await book()).register
    expect(await at.club.run((tx) => listGuests(tx, [line?.playerId ?? '']))).toMatchObject([
      { name: 'Typed Guest', guestSince: '2026-09-08', joinedToId: null },
    ])
  })

  const ownerClub: typeof at.club.run = async (work) => {
    const { inClub } = await import('#data/in-club')
    return inClub(at.club.club.id, work, { database: ownerDatabase() })
  }
})

describe('the page after the whistle', () => {
  it('shows what was tapped, what it comes to and what it moves, before it is written and after', async () => {
    await aPracticeWithGuest()
    const before = await loadWhistle(await viewer(), place())
    expect(before).toMatchObject({
      isWritten: false,
      lastWrite: null,
      tapCount: 9,
      typed: null,
      closed: null,
    })
    expect(before.book.turns).toHaveLength(2)
    expect(before.after.ballInPlay).toMatchObject({ seconds: 120, share: 0.6 })
    const moved = before.moved.players.map(({ playerId, figures }) => [
      playerId,
      figures.map(({ after }) => Math.round(after.gapSeconds)),
    ])
    await confirm()
    const after = await loadWhistle(await viewer(), place())
    expect(after).toMatchObject({ isWritten: true, tapsSince: 0, lastWrite: { byName: 'Kit Vale', upTo: 9 } })
    expect(after.account).toEqual(before.account)
    expect(
      after.moved.players.map(({ playerId, figures }) => [
        playerId,
        figures.map(({ after: now }) => Math.round(now.gapSeconds)),
      ]),
    ).toEqual(moved)
    // The season had nothing before it: every difference begins at none.
    expect(
      after.moved.players.flatMap(({ figures }) => figures.map(({ before: was }) => was.gapSeconds)),
    ).toEqual(after.moved.players.flatMap(({ figures }) => figures.map(() => 0)))
    expect(after.guests).toEqual([{ id: guestId, name: 'Zoe Pike', joinedToId: null }])
    await send(at.sessionId, {
      events: [tapped(210, { kind: 'points', round: 0, side: 'attack', points: 3 })],
    })
    const more = await loadWhistle(await viewer(), place())
    expect(more).toMatchObject({
      isWritten: true,
      tapsSince: 1,
      after: { pointsInAll: [{ side: 'attack', points: 3 }] },
    })
    expect(await confirm()).toMatchObject({ status: 'done', message: expect.stringMatching(/Written/) })
    expect(await loadWhistle(await viewer(), place())).toMatchObject({ tapsSince: 0 })
  })

  it.each(['otherCoach', 'guardian'] as const)('is not for %s', async (who) => {
    await expect(loadWhistle(await viewerOf(at, who), place())).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })
})
