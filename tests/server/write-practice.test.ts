import { describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { listSquadPlayers } from '#data/players'
import { listRegister } from '#data/register-lines'
import { getSession } from '#data/sessions'
import { getVersion } from '#data/written-history'
import { replayPractice } from '#practice/replay'
import { writeMatch, writePractice } from '#server/session-actions'
import { hereThroughout } from '#squad/register-segments'
import { askAsPerson, redirectOf } from '../support/next-request'
import { aClub, enterSession } from '../support/test-club'
import { formOf, typedMatch, typedPractice } from '../support/typed-session'
import {
  aClubForWriting,
  askAs,
  eventsNow,
  idle,
  twoRounds,
  versionNow,
  write,
} from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

describe('writing a practice', () => {
  it('writes register, turns and passes, the account, the way of writing and an audit row', async () => {
    expect(await write(at)).toMatchObject({ status: 'done' })
    const { turns } = replayPractice(await eventsNow(at))
    expect(turns.map(({ start, end }) => [start, end])).toEqual([
      [0, 60],
      [60, 120],
      [120, 180],
      [180, 240],
    ])
    const [ann, bo, cy, , eli] = at.club.playerIds
    expect(turns[0]?.stations).toEqual([{ attack: [ann, bo], defend: [cy], keep: [eli] }])
    expect(await at.club.run((tx) => listRegister(tx, at.sessionId))).toHaveLength(5)
    expect(await at.club.run((tx) => getSession(tx, at.sessionId))).toMatchObject({
      written: 'typedLater',
      writtenById: at.club.coach.personId,
      lengthSeconds: 3600,
    })
    const days = { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }
    const [account] = await at.club.run((tx) => listAccounts(tx, days))
    const attacked = account?.lines.filter(
      (line) => line.playerId === ann && line.role === 'attack' && line.seconds > 0,
    )
    // Two turns of a minute, two against one: "more of us".
    expect(attacked).toMatchObject([{ situation: 'outnumbering', seconds: 120, turns: 2 }])
    const [audit] = await at.club.run((tx) => listAudit(tx, { limit: 1 }))
    expect(audit).toMatchObject({
      action: 'writePractice',
      objectId: at.sessionId,
      personName: 'Kit Vale',
      detail: { turns: 4, voided: 0 },
    })
  })

  it.each(['coach', 'headCoach'] as const)('is allowed to a %s', async (person) => {
    askAs(at.club, person)
    expect(await write(at)).toMatchObject({ status: 'done' })
  })

  it.each(['otherCoach', 'guardian'] as const)(
    'is refused to a %s, and nothing is written',
    async (person) => {
      askAs(at.club, person)
      expect(await write(at)).toMatchObject({
        status: 'refused',
        problems: [{ message: expect.stringContaining('not yours to change') }],
      })
      expect(await eventsNow(at)).toEqual([])
      expect(await at.club.run((tx) => listRegister(tx, at.sessionId))).toEqual([])
    },
  )

  it('sends whoever is not signed in to the first page', async () => {
    askAsPerson(null)
    const answer = await write(at).catch(redirectOf)
    expect(answer).toBe('/')
    expect(await eventsNow(at)).toEqual([])
  })

  it('knows no session of another squad, nor of another club', async () => {
    const other = await aClub({ players: 2, name: 'Millbrook' })
    const theirs = await enterSession(other)
    expect(await write(at, { sessionId: theirs })).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('no longer there') }],
    })
    askAs(at.club, 'headCoach')
    expect(await write(at, { squadId: other.squadId })).toMatchObject({ status: 'refused' })
  })

  it('without any letters only the register is written, and the practice stays not written', async () => {
    const typed = typedPractice(at.club, ['.', '.', '.', '.', '.'], {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    expect(await writePractice(idle, formOf(typed))).toMatchObject({ status: 'done' })
    expect(await at.club.run((tx) => getSession(tx, at.sessionId))).toMatchObject({ written: 'notWritten' })
    expect(await at.club.run((tx) => listRegister(tx, at.sessionId))).toHaveLength(5)
  })

  it('says how it was written', async () => {
    await write(at, { way: 'roundByRound' })
    expect(await at.club.run((tx) => getSession(tx, at.sessionId))).toMatchObject({ written: 'roundByRound' })
  })

  it('a guest by name is a player without a membership', async () => {
    const typed = typedPractice(at.club, twoRounds, {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    const guest = { id: 'guest-1', name: '  Zoe Guest ' }
    const reply = await writePractice(
      idle,
      formOf({
        ...typed,
        guests: [guest],
        register: [...typed.register, { playerId: guest.id, segments: hereThroughout }],
        grid: { ...typed.grid, rows: [...typed.grid.rows, { playerId: guest.id, marks: ['D', 'A'] }] },
      }),
    )
    expect(reply).toMatchObject({ status: 'done' })
    const players = await at.club.run((tx) => listSquadPlayers(tx, at.club.squadId))
    const zoe = players.find(({ name }) => name === 'Zoe Guest')
    expect(replayPractice(await eventsNow(at)).turns[0]?.stations[0]?.defend).toContain(zoe?.id)
    const days = { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }
    const [account] = await at.club.run((tx) => listAccounts(tx, days))
    expect(account?.presences.find(({ playerId }) => playerId === zoe?.id)).toMatchObject({ isMember: false })
  })
})

describe('what is refused while writing a practice', () => {
  it('is refused in sentences, whole, with what was typed, and nothing is written', async () => {
    const typed = typedPractice(at.club, ['A1 D', 'A2 D', 'A2 A', 'D .', 'D K'], {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    const guests = [{ id: 'guest-1', name: 'Zoe Guest' }]
    const form = formOf({ ...typed, guests })
    const reply = await writePractice(idle, form)
    expect(reply).toEqual({
      status: 'refused',
      problems: [
        {
          path: '',
          message:
            'Round 1: 3 attacking do not go evenly into 2 areas. Write the area behind every A and D (A1, A2), or make it 2 or 4.',
        },
      ],
      typed: { json: form.get('json') },
    })
    expect(await eventsNow(at)).toEqual([])
    expect(await at.club.run((tx) => listSquadPlayers(tx, at.club.squadId))).toHaveLength(5)
  })

  it.each([
    [
      'a mark that is none',
      { grid: { columns: [], rows: [{ playerId: 'x', marks: ['Q'] }] } },
      'grid.rows.0.marks.0',
    ],
    ['a guest without a name', { guests: [{ id: 'g', name: ' ' }] }, 'guests.0.name'],
    ['a way of writing there is not', { way: 'guessed' }, 'way'],
    ['a length of a fraction', { lengthSeconds: 60.5 }, 'lengthSeconds'],
    [
      'a time that ends before it begins',
      { register: [{ playerId: 'x', segments: [{ from: 60, to: 30, state: 'here' }] }] },
      'register.0.segments.0',
    ],
  ])('%s is refused with its place', async (_what, change, path) => {
    const typed = typedPractice(at.club, twoRounds, {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    const reply = await writePractice(idle, formOf({ ...typed, ...change }))
    expect(reply).toMatchObject({ status: 'refused', problems: [{ path }] })
    expect(await eventsNow(at)).toEqual([])
  })

  it('somebody the club does not know is refused', async () => {
    const typed = typedPractice(at.club, twoRounds, {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    const other = await aClub({ players: 1, name: 'Millbrook' })
    const stranger = { playerId: other.playerIds[0] ?? '', marks: ['A'] as ['A'] }
    expect(await write(at, { grid: { ...typed.grid, rows: [...typed.grid.rows, stranger] } })).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('no longer known in the club') }],
    })
  })

  it('turns are no part of a match, nor spells of a practice', async () => {
    const matchId = await enterSession(at.club, { kind: 'match' })
    const version = await at.club.run((tx) => getVersion(tx, matchId))
    expect(await write(at, { sessionId: matchId, version })).toMatchObject({ status: 'refused' })
    const typed = typedMatch(at.club, ['K K K'], { sessionId: at.sessionId, version: await versionNow(at) })
    expect(await writeMatch(idle, formOf(typed))).toMatchObject({ status: 'refused' })
  })

  it('who writes over what somebody else wrote meanwhile is told, and nothing of either is lost', async () => {
    const version = await versionNow(at)
    expect(await write(at, { version })).toMatchObject({ status: 'done' })
    askAs(at.club, 'headCoach')
    const before = await eventsNow(at)
    expect(await write(at, { version, way: 'asPlanned' })).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('Somebody else wrote this at the same time') }],
    })
    expect(await eventsNow(at)).toEqual(before)
  })

  it('of two who write at the same moment one is told', async () => {
    const version = await versionNow(at)
    const replies = await Promise.all([write(at, { version }), write(at, { version })])
    expect(replies.map((reply) => reply.status).sort()).toEqual(['done', 'refused'])
    expect(replayPractice(await eventsNow(at)).turns).toHaveLength(4)
  })
})
