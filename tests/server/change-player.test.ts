import { describe, expect, it, vi } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAdjustments } from '#data/adjustments'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import { listKeepsChanges } from '#data/keeps-changes'
import { listLineWishes } from '#data/line-wishes'
import { listMemberships, recordMemberships } from '#data/memberships'
import { getPlayer, listSquadPlayers, recordPlayers } from '#data/players'
import { recordRegister } from '#data/register-lines'
import { markWritten } from '#data/sessions'
import { recordSquads } from '#data/squads'
import { recordTurns } from '#data/turn-events'
import { loadFilesPage } from '#server/files-views'
import { findViewer } from '#server/find-viewer'
import {
  addPlayer,
  agree,
  changeAboutPlayer,
  changeKeeps,
  changeLines,
  changeMembership,
  endAgreement,
} from '#server/player-actions'
import { loadPlayerBook } from '#server/player-views'
import { loadPlayers } from '#server/players-views'
import { rebuildSession } from '#server/rebuild'
import { formOfFields as form } from '../support/form-of-fields'
import { aRosterPlayer, enterSession } from '../support/test-club'
import { type Asker, aClubForWriting, askAs, idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

const ofPlayer = (index = 0) => ({ squadId: at.club.squadId, playerId: at.club.playerIds[index] as string })
const today = '2026-10-01'

/** A practice of the five: one against one with a keeper, in which the others wait. A turn is 100 s. */
async function practise(day: string, keeper = 4): Promise<string> {
  const { club } = at
  const sessionId = await enterSession(club, { day, lengthSeconds: 3600 })
  const [a, b] = club.playerIds.filter((_, index) => index !== keeper) as [string, string]
  await club.run(async (tx) => {
    await recordRegister(tx, {
      sessionId,
      lines: club.playerIds.map((playerId) => ({ playerId, state: 'here' as const, from: 0, to: 3600 })),
      by: club.coach,
    })
    const stations = [{ attack: [a], defend: [b], keep: [club.playerIds[keeper] as string] }]
    await recordTurns(tx, {
      sessionId,
      turns: [{ start: 0, end: 100, themeId: null, stations }],
      by: club.coach,
    })
    await markWritten(tx, { sessionIds: [sessionId], written: 'tapped', by: club.coach })
    await rebuildSession(tx, sessionId)
  })
  return sessionId
}

/** What a player was due of goal in each session, by day. */
async function goalDue(playerId: string): Promise<readonly (readonly [string, number])[]> {
  const { club } = at
  const accounts = await club.run((tx) =>
    listAccounts(tx, { squadId: club.squadId, from: '2026-08-01', to: '2027-06-30' }),
  )
  return accounts
    .filter(({ written }) => written !== 'notWritten')
    .map(({ day, lines }) => {
      const line = lines.find((one) => one.playerId === playerId && one.role === 'keep')
      return [day, line?.fairSeconds ?? 0] as const
    })
}

const viewerOf = async (who: Asker) => {
  const { club, coach, headCoachId, guardianId } = at.club
  const personId = who === 'coach' ? coach.personId : who === 'headCoach' ? headCoachId : guardianId
  const viewer = await findViewer({ clubId: club.id, personId })
  if (!viewer) throw new Error(`no ${who}`)
  return viewer
}

const everyDoor = () => [
  addPlayer(idle, form({ squadId: at.club.squadId, name: 'Ivo Weld', keeps: 'on', firstDay: today })),
  changeAboutPlayer(idle, form({ ...ofPlayer(), name: 'Ada Gorse' })),
  changeKeeps(idle, form({ ...ofPlayer(1), keeps: 'no', day: today })),
  changeLines(idle, form({ ...ofPlayer(1), back: 'learning', middle: 'open', forward: 'likes' })),
  changeMembership(
    idle,
    form({ ...ofPlayer(2), heldFrom: '2026-08-01', firstDay: '2026-08-01', lastDay: '2026-09-30' }),
  ),
  agree(idle, form({ ...ofPlayer(3), kind: 'sameSide', duePercent: '', firstDay: today, lastDay: '' })),
]

describe('the doors of a player', () => {
  it.each(['otherCoach', 'guardian'] as const)('are closed to %s, and nothing changes', async (who) => {
    askAs(at.club, who)
    for (const answer of await Promise.all(everyDoor()))
      expect(answer).toMatchObject({
        status: 'refused',
        problems: [{ message: expect.stringContaining('not yours to change') }],
      })
    const { club } = at
    expect((await club.run((tx) => listSquadPlayers(tx, club.squadId))).map(({ name }) => name)).toEqual([
      'Ada Fenn',
      'Bo Larch',
      'Cy Marrow',
      'Di Quill',
      'Eli Rook',
    ])
    expect(await club.run((tx) => listKeepsChanges(tx, club.playerIds))).toEqual([])
    expect(await club.run((tx) => listAdjustments(tx, club.playerIds))).toEqual([])
    expect((await club.run((tx) => listLineWishes(tx, club.playerIds))).size).toBe(0)
    expect(await club.run((tx) => listAudit(tx, { limit: 9 }))).toEqual([])
  })

  it.each(['coach', 'headCoach'] as const)('are open to %s, each with its audit row', async (who) => {
    askAs(at.club, who)
    for (const answer of await Promise.all(everyDoor())) expect(answer).toMatchObject({ status: 'done' })
    const deeds = (await at.club.run((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)
    expect(deeds.sort()).toEqual([
      'addPlayer',
      'agree',
      'changeKeeps',
      'changeLines',
      'changeMembership',
      'changePlayer',
    ])
    const text = JSON.stringify(await at.club.run((tx) => listAudit(tx, { limit: 9 })))
    expect(text).not.toMatch(/Ada|Ivo|Gorse/)
  })

  it('keep what is said of lines, and refuse what leaves a player nowhere to play', async () => {
    askAs(at.club, 'coach')
    const said = { back: 'learning', middle: 'open', forward: 'likes' }
    const change = (lines: object) => changeLines(idle, form({ ...ofPlayer(), ...lines }))
    expect(await change(said)).toMatchObject({ status: 'done' })
    const { club } = at
    const [player = ''] = club.playerIds
    const kept = async () => (await club.run((tx) => listLineWishes(tx, [player]))).get(player)
    expect(await kept()).toEqual(said)
    expect(
      (await loadPlayerBook(await viewerOf('coach'), { ...ofPlayer(), query: {} })).settings?.wishes,
    ).toEqual(said)
    for (const [wrong, message] of [
      [said, 'Nothing is different'],
      [{ back: 'notYet', middle: 'notYet', forward: 'notYet' }, 'no line out of goal'],
      [{ ...said, back: 'best' }, 'choose one of the four'],
    ] as const)
      expect(await change(wrong)).toMatchObject({
        status: 'refused',
        problems: [{ message: expect.stringContaining(message) }],
      })
    expect(await kept()).toEqual(said)
    expect(await change({ back: 'open', middle: 'open', forward: 'open' })).toMatchObject({ status: 'done' })
    expect(await kept()).toBeUndefined()
  })

  it('of one squad do not open by a player of another', async () => {
    const stranger = aRosterPlayer({ name: 'Jo Yarrow' })
    await at.club.run((tx) => recordPlayers(tx, [stranger]))
    const answer = await changeKeeps(
      idle,
      form({ squadId: at.club.squadId, playerId: stranger.id, keeps: 'no', day: today }),
    )
    expect(answer).toMatchObject({ problems: [{ message: 'This is no longer there. Reload the page.' }] })
  })
})

describe('a player who has gone to another squad', () => {
  it('is changed by the coaches there; its coaches of before set its days with them, and no more', async () => {
    const { club } = at
    const other = newId()
    const [playerId = ''] = club.playerIds
    await club.run(async (tx) => {
      await recordSquads(tx, [{ id: other, name: 'Herons', ageLimit: 12 }])
      await recordMemberships(tx, {
        squadId: other,
        memberships: [{ playerId, firstDay: '2026-09-15', lastDay: null }],
      })
    })
    const days = { heldFrom: '2026-08-01', firstDay: '2026-08-01', lastDay: '2026-09-14' }
    expect(await changeMembership(idle, form({ ...ofPlayer(), ...days }))).toMatchObject({ status: 'done' })
    const notYours = { problems: [{ message: expect.stringContaining('not yours to change') }] }
    expect(await changeKeeps(idle, form({ ...ofPlayer(), keeps: 'no', day: today }))).toMatchObject(notYours)
    expect(await changeAboutPlayer(idle, form({ ...ofPlayer(), name: 'Ada Gorse' }))).toMatchObject(notYours)
    const before = { ...days, lastDay: '2026-09-13' }
    expect(await changeMembership(idle, form({ ...ofPlayer(), ...before }))).toMatchObject({ status: 'done' })
    const { settings } = await loadPlayerBook(await viewerOf('coach'), { ...ofPlayer(), query: {} })
    expect(settings?.mayChangePlayer).toBe(false)
    askAs(club, 'headCoach')
    expect(await changeKeeps(idle, form({ ...ofPlayer(), keeps: 'no', day: today }))).toMatchObject({
      status: 'done',
    })
  })
})

describe('who may be put in goal', () => {
  it('changes what is due from that day on, and nothing before it', async () => {
    await practise('2026-09-10')
    await practise('2026-09-20')
    const [ada = '', bo = ''] = at.club.playerIds
    // Everyone but Eli may keep; Eli did, and so counts as able in that turn: one keeper place among five.
    expect(await goalDue(ada)).toEqual([
      ['2026-09-10', 20],
      ['2026-09-20', 20],
    ])
    const answer = await changeKeeps(idle, form({ ...ofPlayer(), keeps: 'no', day: '2026-09-15' }))
    expect(answer).toMatchObject({
      status: 'done',
      message: 'Ada Fenn is not to be put in goal from 2026-09-15 on. One written session was counted anew.',
    })
    expect(await goalDue(ada)).toEqual([
      ['2026-09-10', 20],
      ['2026-09-20', 0],
    ])
    expect(await goalDue(bo)).toEqual([
      ['2026-09-10', 20],
      ['2026-09-20', 25],
    ])
    expect((await at.club.run((tx) => getPlayer(tx, ada))).keeps).toBe(false)
  })

  it('changed before a later change holds until that one', async () => {
    await practise('2026-09-10')
    await practise('2026-09-20')
    await changeKeeps(idle, form({ ...ofPlayer(4), keeps: 'yes', day: '2026-09-18' }))
    const answer = await changeKeeps(idle, form({ ...ofPlayer(4), keeps: 'yes', day: '2026-09-05' }))
    expect(answer).toMatchObject({
      message:
        'Eli Rook may be put in goal from 2026-09-05 to 2026-09-17. One written session was counted anew.',
    })
    const { settings } = await loadPlayerBook(await viewerOf('coach'), { ...ofPlayer(4), query: {} })
    expect(settings).toMatchObject({ keeps: true, mayChangePlayer: true, name: 'Eli Rook' })
  })

  it('is refused where nothing changes, and for a day to come', async () => {
    const problems = async (fields: { keeps: string; day: string }) => {
      const answer = await changeKeeps(idle, form({ ...ofPlayer(), ...fields }))
      return answer.status === 'refused' ? answer.problems : []
    }
    expect(await problems({ keeps: 'yes', day: today })).toEqual([
      {
        path: 'keeps',
        message: 'Ada Fenn may be put in goal on 2026-10-01 already; choose the other answer, or another day',
      },
    ])
    expect(await problems({ keeps: 'no', day: '2026-10-02' })).toEqual([
      {
        path: 'day',
        message: 'has not come yet; write it on that day, or choose 2026-10-01 or an earlier day',
      },
    ])
    expect(await problems({ keeps: 'no', day: '0026-09-01' })).toMatchObject([
      { path: 'day', message: 'is before 1990-01-01; look at the year' },
    ])
    expect(await at.club.run((tx) => listKeepsChanges(tx, at.club.playerIds))).toEqual([])
  })

  it('raises the flag of being kept unwillingly only for what came after', async () => {
    await practise('2026-09-10', 0)
    await practise('2026-09-20', 0)
    await changeKeeps(idle, form({ ...ofPlayer(), keeps: 'no', day: '2026-09-15' }))
    const { flags } = await loadPlayerBook(await viewerOf('coach'), { ...ofPlayer(), query: {} })
    const kept = flags.find(({ told }) => JSON.stringify(told).includes('marked not to'))
    expect(JSON.stringify(kept?.told)).toContain('Was put in goal once')
  })

  it('is told beside the files when it changed within their days', async () => {
    const page = async () =>
      await loadFilesPage(await viewerOf('coach'), { squadId: at.club.squadId, term: null })
    expect((await page()).keepsChanged).toBe(0)
    await changeKeeps(idle, form({ ...ofPlayer(), keeps: 'no', day: '2026-09-15' }))
    expect((await page()).keepsChanged).toBe(1)
  })
})

describe('the days of a player in the squad', () => {
  it('end, and from then on it is not missed', async () => {
    await practise('2026-09-10')
    const days = { heldFrom: '2026-08-01', firstDay: '2026-08-01', lastDay: '2026-09-09' }
    const answer = await changeMembership(idle, form({ ...ofPlayer(), ...days }))
    expect(answer).toMatchObject({
      status: 'done',
      message:
        'Ada Fenn belongs to the squad from 2026-08-01 to 2026-09-09. One written session was counted anew.',
    })
    const { club } = at
    const [account] = await club.run((tx) =>
      listAccounts(tx, { squadId: club.squadId, from: '2026-09-10', to: '2026-09-10' }),
    )
    expect(account?.presences.find(({ playerId }) => playerId === club.playerIds[0])?.isMember).toBe(false)
    const { members, former } = await loadPlayers(await viewerOf('coach'), { squadId: club.squadId })
    expect(members.map(({ name }) => name)).toEqual(['Bo Larch', 'Cy Marrow', 'Di Quill', 'Eli Rook'])
    expect(former.map(({ name }) => name)).toEqual(['Ada Fenn'])
  })

  it('begin again, but never twice at one time, and never after they end', async () => {
    const end = { heldFrom: '2026-08-01', firstDay: '2026-08-01', lastDay: '2026-09-09' }
    const again = (firstDay: string, lastDay = '') =>
      changeMembership(idle, form({ ...ofPlayer(), heldFrom: '', firstDay, lastDay }))
    await changeMembership(idle, form({ ...ofPlayer(), ...end }))
    expect(await again('2026-09-09')).toMatchObject({
      problems: [
        {
          path: 'firstDay',
          message:
            'these days meet others in the same squad, from 2026-08-01 to 2026-09-09; choose days before or after those',
        },
      ],
    })
    expect(await again('2026-09-20', '2026-09-10')).toMatchObject({ problems: [{ path: 'lastDay' }] })
    expect(await again('2026-09-20')).toMatchObject({ status: 'done' })
    const own = (await at.club.run((tx) => listMemberships(tx, at.club.squadId))).filter(
      ({ playerId }) => playerId === at.club.playerIds[0],
    )
    expect(own.map(({ firstDay, lastDay }) => [firstDay, lastDay])).toEqual([
      ['2026-08-01', '2026-09-09'],
      ['2026-09-20', null],
    ])
  })
})

describe('what is agreed with a family', () => {
  const agreeing = (fields: Readonly<Record<string, string>>) =>
    agree(
      idle,
      form({
        ...ofPlayer(),
        kind: 'fewerTurns',
        duePercent: '50',
        firstDay: '2026-09-01',
        lastDay: '',
        ...fields,
      }),
    )

  it('lowers what is due on the page, and can be ended', async () => {
    for (const day of ['2026-09-10', '2026-09-11', '2026-09-12', '2026-09-13']) await practise(day)
    const due = async () => {
      const { row } = await loadPlayerBook(await viewerOf('coach'), { ...ofPlayer(), query: {} })
      return row?.figures.find(({ role }) => role === 'attack')?.figure.dueSeconds ?? 0
    }
    const before = await due()
    expect(await agreeing({})).toMatchObject({ status: 'done', message: 'Agreed. No reason is kept.' })
    expect(await due()).toBeCloseTo(before / 2, 9)
    const [agreed] = await at.club.run((tx) => listAdjustments(tx, at.club.playerIds))
    expect(agreed).toMatchObject({ kind: 'fewerTurns', dueShare: 0.5, firstDay: '2026-09-01', lastDay: null })
    const ended = await endAgreement(
      idle,
      form({ ...ofPlayer(), agreementId: agreed?.id ?? '', lastDay: '2026-09-11' }),
    )
    expect(ended).toMatchObject({ status: 'done', message: 'Ended on 2026-09-11, that day included.' })
    expect(await due()).toBeCloseTo(before * 0.75, 9)
  })

  it('is refused twice at one time, without its share, and when it ends before it begins', async () => {
    await agreeing({})
    expect(await agreeing({ firstDay: '2026-10-01' })).toMatchObject({
      problems: [
        {
          path: 'kind',
          message: 'is agreed already from 2026-09-01 on; end that first, or choose other days',
        },
      ],
    })
    expect(await agreeing({ kind: 'fewerTurns', duePercent: '5,5' })).toMatchObject({
      problems: [{ path: 'duePercent', message: 'write a whole number of per cent, 0 to 99' }],
    })
    expect(await agreeing({ kind: 'sameSide', lastDay: '2026-08-31' })).toMatchObject({
      problems: [{ path: 'lastDay' }],
    })
    expect(await agreeing({ kind: 'sameSide', duePercent: '' })).toMatchObject({ status: 'done' })
  })

  it('of one player is not ended by way of another', async () => {
    await agreeing({})
    const [agreed] = await at.club.run((tx) => listAdjustments(tx, at.club.playerIds))
    const answer = await endAgreement(
      idle,
      form({ ...ofPlayer(1), agreementId: agreed?.id ?? '', lastDay: today }),
    )
    expect(answer).toMatchObject({ problems: [{ message: 'This is no longer there. Reload the page.' }] })
  })
})

describe('a new player', () => {
  const adding = (fields: Readonly<Record<string, string>>) =>
    addPlayer(idle, form({ squadId: at.club.squadId, firstDay: '2026-09-01', keeps: 'on', ...fields }))

  it('of a name that is there is asked about once, and then stays apart', async () => {
    const asked = await adding({ name: ' bo  LARCH' })
    expect(asked).toMatchObject({
      status: 'refused',
      problems: [
        {
          path: 'who',
          message: 'There is a Bo Larch already: is this another player? Choose below, and add again.',
        },
      ],
      typed: { name: ' bo  LARCH' },
    })
    expect(await adding({ name: 'Bo Larch', who: 'another' })).toMatchObject({ status: 'done' })
    const { members } = await loadPlayers(await viewerOf('coach'), { squadId: at.club.squadId })
    expect(members.map(({ name }) => name)).toContain('Bo Larch (2)')
    expect(await adding({ name: 'Bo Larch' })).toMatchObject({
      problems: [
        {
          message:
            'There are 2 players called Bo Larch already: is this another one? Choose below, and add again.',
        },
      ],
    })
  })

  it('can be a guest who joins, with what was written of it', async () => {
    const { club } = at
    const guest = aRosterPlayer({ name: 'Kai Vetch' })
    const sessionId = await practise('2026-09-10')
    await club.run(async (tx) => {
      await recordPlayers(tx, [guest])
      await recordRegister(tx, {
        sessionId,
        lines: [
          ...club.playerIds.map((playerId) => ({ playerId, state: 'here' as const, from: 0, to: 3600 })),
          { playerId: guest.id, state: 'here', from: 0, to: 3600 },
        ],
        by: club.coach,
      })
      await rebuildSession(tx, sessionId)
    })
    expect(await adding({ name: 'Kai Vetch' })).toMatchObject({ problems: [{ path: 'who' }] })
    const before = await club.run((tx) => listSquadPlayers(tx, club.squadId))
    expect(await adding({ name: 'Kai Vetch', who: guest.id })).toMatchObject({ status: 'done' })
    expect(await club.run((tx) => listSquadPlayers(tx, club.squadId))).toEqual(before)
    const { members, guests } = await loadPlayers(await viewerOf('coach'), { squadId: club.squadId })
    expect(members.map(({ id }) => id)).toContain(guest.id)
    expect(guests).toEqual([])
    const { row } = await loadPlayerBook(await viewerOf('coach'), {
      squadId: club.squadId,
      playerId: guest.id,
      query: {},
    })
    expect(row?.sessionsThere).toBe(1)
  })

  it('cannot be a member who is one already, nor somebody of another name', async () => {
    const [ada = '', bo = ''] = at.club.playerIds
    expect(await adding({ name: 'Ada Fenn', who: ada })).toMatchObject({ problems: [{ path: 'firstDay' }] })
    expect(await adding({ name: 'Ada Fenn', who: bo })).toMatchObject({ problems: [{ path: 'who' }] })
    expect(await adding({ name: '  ' })).toMatchObject({
      problems: [{ path: 'name', message: 'is empty; write the player’s name' }],
    })
  })
})
