import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAccounts } from '#data/accounts'
import { recordAdjustment } from '#data/adjustments'
import { recordRequest } from '#data/child-requests'
import { listClubPlayers } from '#data/club-players'
import { recordConsent } from '#data/consents'
import { listFlagStates } from '#data/flag-states'
import { listChildrenOf } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listLineWishes } from '#data/line-wishes'
import { listAway, recordAway } from '#data/player-away'
import { listSquadPlayers } from '#data/players'
import { findMatchPlan, getMatchPlan, listPlanned, savePlan } from '#data/session-plans'
import { noWishes } from '#match/format/line-wish'
import { loadSeasonBook } from '#server/book-views'
import { eraseChildOf } from '#server/change-rights'
import { loadChildCopy } from '#server/child-copy'
import { exportFile } from '#server/export-file'
import { findViewer } from '#server/find-viewer'
import { loadImportBook } from '#server/import-book'
import { planLog } from '#server/import-log'
import { loadPlanCast } from '#server/plan-cast'
import { loadPlayerBook } from '#server/player-views'
import { loadPlayers } from '#server/players-views'
import { rebuildSquad } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { clubId, demoSeason, demoSquads, membersOf, personId } from '../../seeds/club'
import { demoId } from '../../seeds/ids'
import { playerId } from '../../seeds/names'
import { askAs, failureOf } from '../support/ask-as'
import { loadDemoBook } from '../support/demo-book'
import { aMatchPlan } from '../support/match-pitch'
import { testDatabase } from '../support/test-database'

const squadId = demoSquads.underTen.id
const child = playerId('adaeze')
const name = 'Adaeze Fernhollow'
const days = { squadId, from: demoSeason.firstDay, to: demoSeason.lastDay }
const now = new Date('2026-06-08T10:00:00Z')
const fresh = { isFresh: true, now }
const sessionId = newId()
const matchPlayed = demoId('underTen/match/2026-05-16')
const matchToCome = demoId('underTen/match/2026-06-13')
let admin: Viewer
let headCoach: Viewer
let folder: string

const run = <Answer>(work: Parameters<typeof inClub<Answer>>[1]) => inClub(clubId, work)
const owner = <Answer>(
  work: (client: Parameters<Parameters<typeof askAs<Answer>>[1]>[0]) => Promise<Answer>,
) =>
  askAs(testDatabase().ownerUrl, async (client) => {
    await client.query(`select set_config('app.club_id', $1, false)`, [clubId])
    return work(client)
  })
const figures = () => run((tx) => listAccounts(tx, days))
const rowsOf = async () => {
  const { members, guests } = (await loadSeasonBook(headCoach, { squadId, query: {} })) as never as {
    members: readonly { player: { id: string; name: string } }[]
    guests?: readonly unknown[]
  }
  return { members: members.filter(({ player }) => player.id !== child), guests }
}
const askForIt = () =>
  run((tx) =>
    recordRequest(tx, {
      id: newId(),
      playerId: child,
      kind: 'erasure',
      text: `Please forget ${name}.`,
      askedById: personId('chinwe'),
      receivedOn: '2026-06-05',
      dueOn: '2026-07-06',
    }),
  )

type Book = {
  readonly figures: Awaited<ReturnType<typeof figures>>
  readonly rows: Awaited<ReturnType<typeof rowsOf>>
  readonly log: string
}
let before: Book

beforeAll(async () => {
  await loadDemoBook()
  folder = await mkdtemp(join(tmpdir(), 'turnbook-erased-'))
  process.env.TURNBOOK_DATA = folder
  headCoach = (await findViewer({ clubId, personId: personId('maren') })) as Viewer
  admin = { ...headCoach, role: 'administrator' }
  await run(async (tx) => {
    const by = { personId: admin.personId, at: now }
    const agreed = {
      id: newId(),
      kind: 'sameFirstPartner',
      firstDay: demoSeason.firstDay,
      lastDay: null,
    } as const
    await recordAdjustment(tx, { ...agreed, playerId: playerId('bao'), partnerId: child })
    await recordAdjustment(tx, { ...agreed, id: newId(), kind: 'sameSide', playerId: child })
    await recordAway(tx, { id: newId(), playerId: child, firstDay: '2026-06-20', lastDay: '2026-06-27' })
    const consent = { id: newId(), playerId: child, kind: 'messages', wording: name, givenOn: '2026-06-01' }
    await recordConsent(tx, { ...consent, givenById: personId('chinwe'), by })
    const [bao, elif] = [playerId('bao'), playerId('elif')]
    const plan = aMatchPlan(membersOf.underTen.slice(0, 10).map((key) => playerId(key)))
    const held = { start: 0, end: 300, place: 'on' } as const
    await savePlan(tx, {
      sessionId: matchPlayed,
      plan: {
        ...plan,
        players: plan.players.map((one) => ({ ...one, wishes: { ...noWishes, forward: 'likes' } })),
        apart: [[child, bao]],
        mayMeet: [
          [child, bao],
          [elif, bao],
        ],
        together: [[elif, child]],
        locks: [
          { playerId: child, ...held },
          { playerId: bao, ...held },
        ],
      },
      knownVersion: 0,
      by,
    })
  })
  await owner(async (client) => {
    const login = [newId(), 'chinwe.fernhollow@example.org', 'Chinwe Fernhollow']
    await client.query('insert into "Login" (id, email, name) values ($1, $2, $3)', login)
    await client.query(
      `insert into "LoginSession" (id, "loginId", token, "expiresAt") values ($1, $2, repeat('a', 64), now() + interval '1 day')`,
      [sessionId, login[0]],
    )
    const ofGuardian = [login[0], login[1], personId('chinwe')]
    await client.query('update "Person" set "loginId" = $1, email = $2 where id = $3', ofGuardian)
  })
  const { text: log } = await run((tx) => exportFile(tx, 'log', days))
  before = { figures: await figures(), rows: await rowsOf(), log }
}, 60_000)

afterAll(() => rm(folder, { recursive: true, force: true }))

describe('before a child is erased', () => {
  it('nobody but the administrator may', async () => {
    await expect(eraseChildOf(headCoach, { playerId: child, name }, fresh)).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })

  it('it is asked for, by its whole name, by somebody who has just signed in; else nothing changes', async () => {
    const stale = await eraseChildOf(admin, { playerId: child, name }, { isFresh: false, now })
    expect(stale).toMatchObject({
      ok: false,
      reasons: [{ message: expect.stringContaining('sign in again') }],
    })
    const unasked = await eraseChildOf(admin, { playerId: child, name }, fresh)
    expect(unasked).toMatchObject({
      ok: false,
      reasons: [{ message: expect.stringContaining('Nobody has asked') }],
    })
    await askForIt()
    const slip = await eraseChildOf(admin, { playerId: child, name: 'Adaeze' }, fresh)
    expect(slip).toMatchObject({ ok: false, reasons: [{ path: 'name' }] })
    expect((await run((tx) => loadChildCopy(tx, { playerId: child, forId: null, now }))).child.name).toBe(
      name,
    )
    expect(await figures()).toEqual(before.figures)
    await expect(readFile(join(folder, 'erased.jsonl'))).rejects.toMatchObject({ code: 'ENOENT' })
  })

  it('a guardian’s own transaction cannot', async () => {
    const erasing = inClub(
      clubId,
      (tx) => tx.db.$queryRaw`select erase_child(${child}::uuid, 'request', now(), null)`,
      {
        guardianId: personId('chinwe'),
      },
    )
    await expect(erasing).rejects.toThrow()
  })
})

describe('once a child is erased', () => {
  beforeAll(async () => {
    expect(await eraseChildOf(admin, { playerId: child, name }, fresh)).toMatchObject({ ok: true })
  })

  it('its name stands nowhere in the database', async () => {
    const found = await owner(async (client) => {
      const { rows: tables } = await client.query<{ table: string }>(
        `select relname as table from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'`,
      )
      const named: string[] = []
      for (const { table } of tables) {
        const { rows } = await client.query(`select from "${table}" t where position($1 in t::text) > 0`, [
          name,
        ])
        if (rows.length > 0) named.push(table)
      }
      return named
    })
    expect(found).toEqual([])
  })

  it('every other child’s figures are the same to the last digit, kept and reckoned anew', async () => {
    expect(await figures()).toEqual(before.figures)
    await run((tx) => rebuildSquad(tx, { squadId, to: '2026-06-07' }))
    const others = (accounts: Book['figures']) =>
      accounts.map((account) => ({
        ...account,
        lines: account.lines.filter((line) => line.playerId !== child),
      }))
    expect(others(await figures())).toEqual(others(before.figures))
    expect(before.rows.members).toHaveLength(13)
    expect(JSON.stringify((await rowsOf()).members)).toBe(JSON.stringify(before.rows.members))
  }, 30_000)

  it('the books still balance with the column that has no name', async () => {
    for (const { lines } of await figures()) {
      const sum = (pick: (line: (typeof lines)[number]) => number) =>
        lines.reduce((all, one) => all + pick(one), 0)
      expect(sum((line) => line.seconds)).toBeCloseTo(
        sum((line) => line.fairSeconds),
        4,
      )
    }
    const { members } = await loadSeasonBook(headCoach, { squadId, query: {} })
    expect(members.find(({ player }) => player.id === child)?.player.name).toBe('Former player 1')
  })

  it('no flag of it comes back, and nobody meets it on a page, in a plan or on a roster', async () => {
    await run((tx) => refreshFlags(tx, { squadId, seasonId: demoSeason.id, today: '2026-06-08', now }))
    const flags = await run((tx) => listFlagStates(tx, { squadIds: [squadId], seasonId: demoSeason.id }))
    expect(flags.filter((flag) => flag.playerId === child)).toEqual([])
    expect(flags.length).toBeGreaterThan(0)
    const { members, former } = await loadPlayers(headCoach, { squadId })
    expect([...members, ...former].map(({ id }) => id)).not.toContain(child)
    expect((await run(listClubPlayers)).map(({ id }) => id)).not.toContain(child)
    const session = { squadId, day: '2026-06-09' }
    const { players } = await run((tx) => loadPlanCast(tx, { session, today: '2026-06-08', alsoIds: [] }))
    expect(players.map(({ id }) => id)).not.toContain(child)
    expect((await loadPlayerBook(headCoach, { squadId, playerId: child, query: {} })).settings).toBeNull()
    const roster = (await run((tx) => exportFile(tx, 'roster', days))).text
    expect(roster).not.toContain('Former player')
    expect(roster).toContain('Bao Quillstone')
  })

  it('plans to come that counted on it are to be made anew, and all others can still be read', async () => {
    const sessions = await run((tx) =>
      tx.db.session.findMany({ where: { clubId, squadId }, select: { id: true } }),
    )
    const planned = await run((tx) =>
      listPlanned(
        tx,
        sessions.map(({ id }) => id),
      ),
    )
    const texts = await owner(async (client) => {
      const { rows } = await client.query<{ text: string }>(
        `select plan::text as text from "SessionPlan" where "sessionId" = any($1)`,
        [[...planned]],
      )
      return rows.map(({ text }) => text)
    })
    for (const text of texts)
      expect(JSON.parse(text).locks.some((lock: { playerId: string }) => lock.playerId === child)).toBe(false)
  })

  it('nothing stands of lines it likes, and a line-up of a match played keeps who was on and nothing said of it', async () => {
    const wishes = await run((tx) => listLineWishes(tx, [child, playerId('bao')]))
    expect([wishes.has(child), wishes.has(playerId('bao'))]).toEqual([false, true])
    expect(await run((tx) => findMatchPlan(tx, matchToCome))).toBeNull()
    const { plan } = await run((tx) => getMatchPlan(tx, matchPlayed))
    const [own, ...others] = plan.players
    expect(own).toMatchObject({ playerId: child, wishes: noWishes, owed: { playSeconds: 0 } })
    expect(others.every(({ wishes: { forward } }) => forward === 'likes')).toBe(true)
    const pair = [playerId('elif'), playerId('bao')]
    expect([plan.apart, plan.together, plan.mayMeet]).toEqual([[], [], [pair]])
    expect(plan.locks.map((lock) => lock.playerId)).toEqual([playerId('bao')])
    expect(plan.spells.some((spell) => spell.playerId === child)).toBe(true)
  })

  it('nothing stands of the days it was to be away; the others’ stay', async () => {
    const [jiho, span] = [playerId('jiho'), { from: '2026-06-01', to: '2026-06-30' }]
    const left = await run((tx) => listAway(tx, { playerIds: [child, jiho], ...span }))
    expect(left.map(({ playerId: of }) => of)).toEqual([jiho])
  })

  it('its guardian, who is nothing else here, has no name and no way in; the other’s stays', async () => {
    const guardian = await run((tx) =>
      tx.db.person.findUniqueOrThrow({ where: { clubId_id: { clubId, id: personId('chinwe') } } }),
    )
    expect(guardian).toMatchObject({ name: 'Former guardian', email: null, loginId: null })
    expect(guardian.accessEndedAt).not.toBeNull()
    const left = await owner(async (client) => {
      const { rows } = await client.query<{ email: string }>(
        'select email from "Login" where email like $1',
        ['%fernhollow%'],
      )
      return rows.map(({ email }) => email)
    })
    expect(left).toEqual([])
    const sessions = await owner(
      async (client) =>
        (await client.query('select from "LoginSession" where id = $1', [sessionId])).rowCount,
    )
    expect(sessions).toBe(0)
    expect(await run((tx) => listChildrenOf(tx, personId('chinwe')))).toEqual([])
  })

  it('it is written that it was done, by ids alone, in the database and outside of it', async () => {
    const kept = await run((tx) => tx.db.erasure.findMany({ where: { clubId } }))
    expect(kept).toMatchObject([{ playerId: child, cause: 'request', erasedById: admin.personId }])
    const text = await readFile(join(folder, 'erased.jsonl'), 'utf8')
    expect(text.endsWith('\n')).toBe(true)
    expect(JSON.parse(text)).toEqual({
      clubId,
      playerId: child,
      erasedAt: now.toISOString(),
      cause: 'request',
    })
    const audit = await run((tx) => tx.db.auditEntry.findMany({ where: { clubId, action: 'eraseChild' } }))
    expect(audit).toMatchObject([{ objectId: child, personId: admin.personId, detail: { cause: 'request' } }])
  })

  it('the request is answered, and its words are gone', async () => {
    const [request] = await run((tx) =>
      tx.db.childRequest.findMany({ where: { clubId, playerId: child, kind: 'erasure' } }),
    )
    expect(request).toMatchObject({ text: '', answer: '', askedById: null, outcome: 'done' })
  })

  it('nobody can give it a name again, or write anything new about it', async () => {
    const at = { clubId, playerId: child }
    const tries: readonly ((tx: Parameters<Parameters<typeof run>[0]>[0]) => Promise<unknown>)[] = [
      (tx) => tx.db.player.update({ where: { clubId_id: { clubId, id: child } }, data: { name } }),
      (tx) => tx.db.guardianship.create({ data: { ...at, personId: personId('chinwe') } }),
      (tx) => tx.db.familyNote.create({ data: { ...at, squadId, text: 'Hello', writtenAt: now } }),
      (tx) =>
        recordConsent(tx, {
          id: newId(),
          playerId: child,
          kind: 'k',
          wording: 'w',
          givenById: null,
          givenOn: '2026-06-01',
          by: { personId: null, at: now },
        }),
      () => askForIt(),
    ]
    for (const work of tries) await expect(run(work)).rejects.toThrow()
    expect(await eraseChildOf(admin, { playerId: child, name: 'Former player 1' }, fresh)).toMatchObject({
      ok: false,
    })
    const again = await run(
      (tx) => tx.db.$queryRaw`select erase_child(${child}::uuid, 'request', now(), null) as done`,
    )
    expect(again).toEqual([{ done: false }])
  })

  it('a season log goes out and finds its column again; an older file never brings the name back by itself', async () => {
    const plan = (text: string) =>
      run(async (tx) =>
        planLog(tx, JSON.parse(text), await loadImportBook(tx, { squadId, viewer: null, now })),
      )
    const { text } = await run((tx) => exportFile(tx, 'log', days))
    expect(text).not.toContain(name)
    expect(text).toContain('Former player 1')
    // Without its practices, which stand in the book already and are refused before anything else.
    const playersOf = (of: string) => JSON.stringify({ ...JSON.parse(of), practices: [], matches: [] })
    // The older file names the child by its id: what it says of it goes to the column, and the name nowhere.
    for (const file of [text, before.log]) {
      const planned = await plan(playersOf(file))
      const players = planned.ok ? planned.value.plan.players : []
      expect(players.map(({ kind }) => kind)).not.toContain('new')
      expect(players).toContainEqual({ kind: 'known', code: child, playerId: child })
      expect(JSON.stringify(planned.ok && planned.value.plan)).not.toContain(name)
    }
  })

  it('the next erased child gets the next number', async () => {
    const other = playerId('bao')
    await run(async (tx) => {
      await recordRequest(tx, {
        id: newId(),
        playerId: other,
        kind: 'erasure',
        text: '',
        askedById: null,
        receivedOn: '2026-06-05',
        dueOn: '2026-07-06',
      })
    })
    expect(await eraseChildOf(admin, { playerId: other, name: 'Bao Quillstone' }, fresh)).toMatchObject({
      ok: true,
    })
    const names = (await run((tx) => listSquadPlayers(tx, squadId))).map((player) => player.name)
    expect(names).toContain('Former player 2')
    expect(new Set(names).size).toBe(names.length)
  })

  it('even the owner of the tables cannot undo it', async () => {
    const failure = await owner((client) =>
      failureOf(client, `update "Player" set "erasedAt" = null where id = '${child}'`),
    )
    expect(failure).toMatchObject({ constraint: 'Player_erased' })
    const tapped = await owner((client) => failureOf(client, `update "PitchEvent" set seq = 9`))
    expect(tapped).toMatchObject({ constraint: 'PitchEvent_append_only' })
  })
})
