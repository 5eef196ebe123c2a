import { describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listRegister } from '#data/register-lines'
import { getSession } from '#data/sessions'
import { listCorrectedLines, listHandsOfEvents } from '#data/written-history'
import { eventsThatStand } from '#practice/replay'
import { writePractice } from '#server/session-actions'
import type { PracticeInput } from '#server/session-input'
import { hereThroughout, setFrom } from '#squad/register-segments'
import { formOf, typedPractice } from '../support/typed-session'
import {
  aClubForWriting,
  askAs,
  eventsNow,
  idle,
  reopened,
  twoRounds,
  versionNow,
  write,
} from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

describe('correcting a practice', () => {
  it('voids the turn that changed and writes it anew in one go; everything else stands as it was written', async () => {
    await write(at)
    const before = await eventsNow(at)
    const change = await reopened(at, (grid) => {
      const marks = grid.rows[0]?.marks
      if (marks) marks[1] = 'W'
      return grid
    })
    askAs(at.club, 'headCoach')
    expect(await write(at, { ...change, way: 'asPlanned' })).toMatchObject({ status: 'done' })
    const after = await eventsNow(at)
    expect(after.slice(0, before.length)).toEqual(before)
    expect(after.slice(before.length)).toMatchObject([
      { kind: 'void', voids: before[1]?.id },
      { kind: 'turn', turn: { start: 60, end: 120, stations: [{ attack: [at.club.playerIds[1]] }] } },
    ])
    const hands = await at.club.run((tx) => listHandsOfEvents(tx, at.sessionId))
    expect([hands.get(before[1]?.id ?? '')?.byName, hands.get(after.at(-1)?.id ?? '')?.byName]).toEqual([
      'Kit Vale',
      'Lou Wynd',
    ])
    // A correction does not change how it was first written, nor by whom.
    expect(await at.club.run((tx) => getSession(tx, at.sessionId))).toMatchObject({
      written: 'typedLater',
      writtenById: at.club.coach.personId,
    })
  })

  it('a correction that changes nothing writes nothing', async () => {
    await write(at)
    const before = await eventsNow(at)
    expect(await write(at, await reopened(at, (grid) => grid))).toMatchObject({ status: 'done' })
    expect(await eventsNow(at)).toEqual(before)
    expect(await at.club.run((tx) => listCorrectedLines(tx, at.sessionId))).toEqual([])
  })

  it('moves the book by exactly the turn', async () => {
    await write(at)
    const attackOf = async () => {
      const days = { squadId: at.club.squadId, from: '2026-09-08', to: '2026-09-08' }
      const [account] = await at.club.run((tx) => listAccounts(tx, days))
      const own =
        account?.lines.filter((line) => line.playerId === at.club.playerIds[0] && line.role === 'attack') ??
        []
      return own.reduce((sum, line) => sum + line.seconds, 0)
    }
    expect(await attackOf()).toBe(120)
    const change = await reopened(at, (grid) => {
      const marks = grid.rows[0]?.marks
      if (marks) marks[0] = 'W'
      return grid
    })
    await write(at, change)
    expect(await attackOf()).toBe(60)
  })

  it('a pass can be corrected away', async () => {
    const typed = typedPractice(at.club, ['A', 'A', 'D', 'pD', 'K'], {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    await writePractice(idle, formOf(typed))
    const passes = eventsThatStand(await eventsNow(at)).filter(({ kind }) => kind === 'passed')
    expect(passes).toHaveLength(2)
    await write(at, { ...(await reopened(at, (grid) => grid)), voidPasses: [passes[0]?.id ?? ''] })
    expect(eventsThatStand(await eventsNow(at)).filter(({ kind }) => kind === 'passed')).toEqual([passes[1]])
  })

  it('a register that changed keeps its old lines, with who corrected them', async () => {
    await write(at)
    const change = await reopened(at, (grid) => grid)
    const typed = typedPractice(at.club, twoRounds, { sessionId: at.sessionId, version: '' })
    const register = typed.register.map((own, index) =>
      index === 3 ? { ...own, segments: [...setFrom(hereThroughout, 300, 'away')] } : own,
    )
    expect(await write(at, { ...change, register })).toMatchObject({ status: 'done' })
    const corrected = await at.club.run((tx) => listCorrectedLines(tx, at.sessionId))
    expect(corrected).toMatchObject([
      {
        value: { playerId: at.club.playerIds[3], state: 'here', from: 0, to: 3600 },
        corrected: { byName: 'Kit Vale' },
      },
    ])
  })
})

describe('out for today', () => {
  const outFrom = (at: number) => [...setFrom(hereThroughout, at, 'out')]

  async function writeWith(
    segments: PracticeInput['register'][number]['segments'],
    takenBack: string[] = [],
  ) {
    const typed = typedPractice(at.club, twoRounds, {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    const register = typed.register.map((own, index) => (index === 3 ? { ...own, segments } : own))
    return writePractice(idle, formOf({ ...typed, grid: { columns: [], rows: [] }, register, takenBack }))
  }

  it('is not taken back without a second answer, whatever is sent instead', async () => {
    await writeWith(outFrom(300))
    for (const segments of [[...hereThroughout], outFrom(600), []]) {
      expect(await writeWith(segments)).toMatchObject({
        status: 'refused',
        problems: [
          {
            message: expect.stringContaining(
              'Di Quill is out for today, and only a second answer takes that back',
            ),
          },
        ],
      })
    }
    const own = (await at.club.run((tx) => listRegister(tx, at.sessionId))).filter(
      ({ playerId }) => playerId === at.club.playerIds[3],
    )
    expect(own.at(-1)).toMatchObject({ state: 'out', from: 300 })
  })

  it('is taken back with one', async () => {
    await writeWith(outFrom(300))
    expect(await writeWith([...hereThroughout], [at.club.playerIds[3] ?? ''])).toMatchObject({
      status: 'done',
    })
  })

  it('gives no place after it', async () => {
    const typed = typedPractice(at.club, twoRounds, {
      sessionId: at.sessionId,
      version: await versionNow(at),
    })
    const register = typed.register.map((own, index) =>
      index === 0 ? { ...own, segments: outFrom(90) } : own,
    )
    expect(await writePractice(idle, formOf({ ...typed, register }))).toMatchObject({
      status: 'refused',
      problems: [
        { message: expect.stringContaining('Round 2: Ada Fenn has a place but was not there then') },
      ],
    })
  })
})
