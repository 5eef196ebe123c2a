import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { beforeEach, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAudit } from '#data/audit'
import { listNewestPages, recordFamilyPages } from '#data/family-pages'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { endMembership, recordMemberships } from '#data/memberships'
import { changeShowsComing } from '#data/shows-coming'
import { recordSquadCoach } from '#data/squad-coaches'
import { recordSquads } from '#data/squads'
import { showsFrom } from '#family/shows-from'
import { confirmPagesOf } from '#server/confirm-family-pages'
import { loadFamilies } from '#server/families-views'
import { loadFamilyPreview } from '#server/family-preview-views'
import { loadFamilyPage } from '#server/family-views'
import { findViewer } from '#server/find-viewer'
import { saveFamilyNoteOf } from '#server/save-family-note'
import { switchComingOf } from '#server/switch-coming'
import { FamilyBody } from '#ui/family/family-body'
import { askAs } from '../support/ask-as'
import { aClub, enterSession, ownerDatabase, type TestClub } from '../support/test-club'
import { testDatabase } from '../support/test-database'

// Half past six in the evening of 5 September 2026 in London, and around eight on the morning after.
const evening = new Date('2026-09-05T17:30:00Z')
const beforeEight = new Date('2026-09-06T06:59:59Z')
const atEight = new Date('2026-09-06T07:00:00Z')

let club: TestClub
let [ada, bo, cy] = ['', '', '']

beforeEach(async () => {
  club = await aClub({ players: 3 })
  ;[ada = '', bo = '', cy = ''] = club.playerIds
  const { squadId, coach, guardianId } = club
  await club.run(async (tx) => {
    const { personId } = coach
    await recordSquadCoach(tx, { squadId, personId, kind: 'coach', firstDay: '2020-08-01', lastDay: null })
    await recordGuardianships(tx, [{ personId: guardianId, playerId: ada, claimedAt: coach.at }])
  })
})

async function viewer(who: 'coach' | 'guardian' | 'headCoach'): Promise<Viewer> {
  const personId = { coach: club.coach.personId, guardian: club.guardianId, headCoach: club.headCoachId }[who]
  const found = await findViewer({ clubId: club.club.id, personId })
  if (!found) throw new Error(`no ${who}`)
  return found
}

const squadId = () => club.squadId
const familyReads = async (now: Date, playerId = ada) =>
  loadFamilyPage(await viewer('guardian'), { playerId, now })
const shownNote = async (now: Date) => (await familyReads(now)).squads[0]?.shown?.page.note ?? null

async function write(
  text: string,
  { playerId = ada, saidYesTo = '', who = 'coach' as 'coach' | 'guardian' } = {},
) {
  return saveFamilyNoteOf(await viewer(who), { squadId: squadId(), playerId, text, saidYesTo }, evening)
}

async function confirm(playerIds: readonly string[] = [ada], now = evening) {
  const coach = await viewer('coach')
  const { rows } = await loadFamilies(coach, { squadId: squadId(), now })
  const seen = rows
    .filter(({ playerId }) => playerIds.includes(playerId))
    .map(({ playerId, mark }) => ({ playerId, mark }))
  return confirmPagesOf(coach, { squadId: squadId(), seen }, now)
}

describe('what a family reads', () => {
  it('is nothing before a coach has confirmed, and then changes at eight the next morning', async () => {
    await write('First.')
    expect(await shownNote(evening)).toBeNull()
    expect((await confirm()).ok).toBe(true)
    expect(await shownNote(evening)).toBeNull()
    expect(await shownNote(beforeEight)).toBeNull()
    expect(await shownNote(atEight)).toBe('First.')
  })

  it('stays as it was confirmed, whatever is written after', async () => {
    await write('First.')
    await confirm()
    await write('Second.')
    expect(await shownNote(atEight)).toBe('First.')
    await confirm([ada], atEight)
    expect(await shownNote(new Date('2026-09-06T20:00:00Z'))).toBe('First.')
    expect(await shownNote(new Date('2026-09-07T07:00:00Z'))).toBe('Second.')
  })

  it('is said in a friendly sentence while nothing is confirmed', async () => {
    const { squads, askWhom } = await familyReads(evening)
    const html = renderToStaticMarkup(createElement(FamilyBody, { squads, askWhom }))
    expect(html).toContain('There is nothing to read yet.')
    expect(html).not.toMatch(/\d+ of \d+|Days there and days away/)
  })

  it('reads “fewer” from its day on, without another confirmation', async () => {
    const page = pageWithFewer('2026-09-20')
    await keepPage(page)
    const htmlOn = async (now: Date) => {
      const { squads, askWhom } = await familyReads(now)
      return renderToStaticMarkup(createElement(FamilyBody, { squads, askWhom }))
    }
    const before = await htmlOn(new Date('2026-09-19T22:59:00Z'))
    expect(before).toContain('turns at defending have been about even')
    expect(before).not.toContain('fewer')
    const after = await htmlOn(new Date('2026-09-19T23:00:00Z'))
    expect(after).toContain('fewer turns at attacking')
    expect(after).toContain('had not said a next step')
  })

  it('has nothing of another child in it, neither name nor key, in the object and in the page', async () => {
    await write('Ada is doing well.')
    await confirm([ada, bo, cy])
    const book = await familyReads(atEight)
    const text = JSON.stringify(book)
    const html = renderToStaticMarkup(createElement(FamilyBody, book))
    for (const secret of [bo, cy, 'Bo', 'Larch', 'Cy', 'Marrow'])
      for (const shown of [text, html]) expect(shown).not.toMatch(new RegExp(`\\b${secret}\\b`))
    expect(html).toContain('Ada is doing well.')
    expect(html).not.toContain(ada)
  })

  it('is of each squad the child is in, and no coach reads another squad’s', async () => {
    const other = newId()
    await club.run(async (tx) => {
      await recordSquads(tx, [{ id: other, name: 'Herons', ageLimit: 12 }])
      await recordMemberships(tx, {
        squadId: other,
        memberships: [{ playerId: ada, firstDay: '2026-08-01', lastDay: null }],
      })
    })
    await confirm()
    const { squads } = await familyReads(atEight)
    expect(squads.map(({ squadName, shown }) => [squadName, shown !== null])).toEqual([
      ['Otters', true],
      ['Herons', false],
    ])
    const seen = await loadFamilyPage(await viewer('coach'), { playerId: ada, now: atEight })
    expect(seen.squads.map(({ squadName }) => squadName)).toEqual(['Otters'])
  })

  it('is whole for a coach who is the child’s guardian too', async () => {
    const { coach } = club
    await club.run((tx) =>
      recordGuardianships(tx, [{ personId: coach.personId, playerId: bo, claimedAt: coach.at }]),
    )
    const own = await loadFamilyPage(await viewer('coach'), { playerId: bo, now: atEight })
    expect([own.isFamily, own.squads.length]).toEqual([true, 1])
    const other = await loadFamilyPage(await viewer('coach'), { playerId: ada, now: atEight })
    expect(other.isFamily).toBe(false)
  })

  it('is gone with a child that is erased, for coaches too', async () => {
    await confirm()
    await inClub(
      club.club.id,
      (tx) => tx.db.player.updateMany({ where: { id: ada }, data: { erasedAt: evening } }),
      { database: ownerDatabase() },
    )
    const coach = await viewer('coach')
    await expect(familyReads(atEight)).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(loadFamilyPage(coach, { playerId: ada, now: atEight })).rejects.toMatchObject({
      code: 'notFound',
    })
    const { rows } = await loadFamilies(coach, { squadId: squadId(), now: atEight })
    expect(rows.map(({ playerId }) => playerId)).toEqual([bo, cy])
  })

  it('stays to be read when the child has left, without what comes next', async () => {
    await enterSession(club, { day: '2026-09-10', startsAt: '17:30', place: 'Mill Field' })
    await confirm()
    expect((await familyReads(atEight)).squads[0]?.coming).toEqual({ themeName: null, when: null })
    await club.run((tx) => endMembership(tx, { squadId: squadId(), playerId: ada, lastDay: '2026-09-05' }))
    const [squad] = (await familyReads(atEight)).squads
    expect(squad?.shown).not.toBeNull()
    expect(squad?.coming).toBeNull()
    const { rows } = await loadFamilies(await viewer('coach'), { squadId: squadId(), now: atEight })
    expect(rows.find(({ playerId }) => playerId === ada)?.leftOn).toBe('2026-09-05')
  })
})

describe('time and place', () => {
  const when = { day: '2026-09-10', startsAt: '17:30', place: 'Mill Field' }
  const told = async () => (await familyReads(evening)).squads[0]?.coming?.when

  it('are told only where the coach switched them on, and not to whom they are withheld from', async () => {
    await enterSession(club, when)
    expect(await told()).toBeNull()
    await switchComingOf(await viewer('coach'), { squadId: squadId(), showsComing: 'yes' })
    expect(await told()).toEqual(when)
    await club.run((tx) =>
      tx.db.guardianship.updateMany({
        where: { clubId: tx.clubId, personId: club.guardianId },
        data: { withholdsComing: true },
      }),
    )
    expect(await told()).toBeNull()
    expect(JSON.stringify(await familyReads(evening))).not.toMatch(/Mill Field|17:30|2026-09-10/)
  })

  it('are switched by nobody but coaches of the squad', async () => {
    await expect(
      switchComingOf(await viewer('guardian'), { squadId: squadId(), showsComing: 'yes' }),
    ).rejects.toMatchObject({ code: 'notAllowed' })
  })
})

describe('confirming', () => {
  it('is refused as a whole where the book says something else by now', async () => {
    const coach = await viewer('coach')
    const { rows } = await loadFamilies(coach, { squadId: squadId(), now: evening })
    await write('Written meanwhile.')
    const seen = rows.map(({ playerId, mark }) => ({ playerId, mark }))
    const done = await confirmPagesOf(coach, { squadId: squadId(), seen }, evening)
    expect(done).toMatchObject({ ok: false, reasons: [{ message: expect.stringContaining('Ada Fenn') }] })
    expect(await confirmedPages()).toEqual([])
  })

  it('is refused for a child that is none of the squad', async () => {
    const seen = [{ playerId: newId(), mark: '' }]
    const done = await confirmPagesOf(await viewer('coach'), { squadId: squadId(), seen }, evening)
    expect(done.ok).toBe(false)
  })

  it('says what is new, what waits, when families see it and who can read it', async () => {
    const rowOf = async (playerId: string, now: Date) => {
      const book = await loadFamilies(await viewer('coach'), { squadId: squadId(), now })
      return { ...book.rows.find((row) => row.playerId === playerId), seenOn: book.seenOn }
    }
    expect(await rowOf(ada, evening)).toMatchObject({
      changes: ['first'],
      waits: [],
      confirmedOn: null,
      readers: { recorded: 1, claimed: 1 },
      seenOn: '2026-09-06',
    })
    expect(await rowOf(bo, evening)).toMatchObject({ readers: { recorded: 0, claimed: 0 } })
    await confirm()
    expect(await rowOf(ada, evening)).toMatchObject({
      changes: [],
      confirmedOn: '2026-09-05',
      isOnItsWay: true,
    })
    await write('New.')
    expect(await rowOf(ada, atEight)).toMatchObject({
      changes: ['note'],
      isOnItsWay: false,
      seenOn: '2026-09-07',
    })
  })

  it('leaves a line in the record for each page, and is not for families', async () => {
    await confirm([ada, bo])
    const deeds = await club.run((tx) => listAudit(tx, { limit: 50 }))
    const confirmed = deeds.filter(({ action }) => action === 'confirmFamilyPage')
    expect(confirmed.map(({ objectId }) => objectId).sort()).toEqual([ada, bo].sort())
    const at = { squadId: squadId(), seen: [{ playerId: ada, mark: '' }] }
    await expect(confirmPagesOf(await viewer('guardian'), at, evening)).rejects.toMatchObject({
      code: 'notAllowed',
    })
    await expect(loadFamilies(await viewer('guardian'), at)).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(
      loadFamilyPreview(await viewer('guardian'), { squadId: squadId(), playerId: ada }),
    ).rejects.toMatchObject({ code: 'notAllowed' })
  })

  it('shows the coach the very page that the family then reads', async () => {
    await write('Well done.')
    const { next, now } = await loadFamilyPreview(await viewer('coach'), {
      squadId: squadId(),
      playerId: ada,
      now: evening,
    })
    expect(now.shown).toBeNull()
    await confirm()
    const [squad] = (await familyReads(atEight)).squads
    expect(squad?.shown).toEqual(next.shown)
  })
})

describe('a note for the family', () => {
  it('asks before it names another child, and asks anew when it then names a third', async () => {
    const asked = await write('Ada and Bo pass well.')
    const question = 'This note names Bo. Families read only about their own child. Keep it so?'
    expect(asked).toEqual({ ok: false, reasons: [{ path: 'saidYesTo', message: question }] })
    expect((await write('Ada and Cy pass well.', { saidYesTo: question })).ok).toBe(false)
    expect(await note()).toBe('')
    expect((await write('Ada and Bo pass well.', { saidYesTo: question })).ok).toBe(true)
    expect(await note()).toBe('Ada and Bo pass well.')
    const { rows } = await loadFamilies(await viewer('coach'), { squadId: squadId(), now: evening })
    expect(rows.find(({ playerId }) => playerId === ada)?.waits).toEqual([
      { what: 'noteNames', names: ['Bo'] },
    ])
  })

  it('is taken away by an empty one, and is for coaches to write', async () => {
    await write('Well done.')
    await write('')
    expect(await note()).toBe('')
    await expect(write('Mine.', { who: 'guardian' })).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(write('Nobody’s.', { playerId: newId() })).rejects.toMatchObject({ code: 'notFound' })
  })
})

describe('the second wall', () => {
  it('shows a guardian’s transaction neither notes nor other children’s pages, whatever is asked', async () => {
    await write('Not confirmed.')
    await confirm([ada, bo])
    const asked = { seasonId: club.seasonId, playerIds: [ada, bo, cy], squadIds: [squadId()] }
    const seen = await inClub(
      club.club.id,
      async (tx) => ({
        pages: await listNewestPages(tx, asked),
        notes: await tx.db.familyNote.count(),
        people: await tx.db.person.count(),
      }),
      { guardianId: club.guardianId },
    )
    expect(seen.pages.map(({ playerId }) => playerId)).toEqual([ada])
    expect(seen.notes).toBe(0)
    expect(seen.people).toBe(1)
  })

  it('shows it no page before its morning by the database’s own clock', async () => {
    const hour = 3_600_000
    const kept = {
      playerId: ada,
      squadId: squadId(),
      seasonId: club.seasonId,
      page: pageWithFewer('2026-09-20'),
    }
    const by = { confirmedById: club.coach.personId, confirmedBy: 'Kit Vale' }
    const pageOn = (showsFrom: Date) => ({ ...kept, ...by, confirmedAt: evening, showsFrom })
    const seen = () => inClub(club.club.id, (tx) => tx.db.familyPage.count(), { guardianId: club.guardianId })
    await club.run((tx) => recordFamilyPages(tx, [pageOn(new Date(Date.now() + hour))]))
    expect(await seen()).toBe(0)
    await club.run((tx) => recordFamilyPages(tx, [pageOn(new Date(Date.now() - hour))]))
    expect(await seen()).toBe(1)
  })

  it('lets a guardian’s transaction change nothing of it', async () => {
    await inClub(club.club.id, (tx) => changeShowsComing(tx, { squadId: squadId(), showsComing: true }), {
      guardianId: club.guardianId,
    }).catch(() => undefined)
    const squad = await club.run((tx) =>
      tx.db.squad.findFirst({ where: { clubId: tx.clubId, id: squadId() } }),
    )
    expect(squad?.showsComing).toBe(false)
  })
})

it('agrees with PostgreSQL about eight in the morning in every zone it knows well', async () => {
  const zones = ['Europe/London', 'America/Santiago', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'Pacific/Apia']
  const days = ['2026-03-28', '2026-04-04', '2026-09-05', '2026-10-03', '2026-10-24', '2026-12-31']
  await askAs(testDatabase().ownerUrl, async (client) => {
    for (const timeZone of zones)
      for (const confirmedOn of days) {
        const { rows } = await client.query(`select (($1::date + 1) + time '08:00') at time zone $2 as at`, [
          confirmedOn,
          timeZone,
        ])
        expect(showsFrom({ confirmedOn, timeZone })).toEqual(rows[0].at)
      }
  })
})

const confirmedPages = () =>
  club.run((tx) =>
    listNewestPages(tx, { seasonId: club.seasonId, playerIds: club.playerIds, squadIds: [squadId()] }),
  )

const note = async () => {
  const at = { squadId: squadId(), playerId: ada, now: evening }
  return (await loadFamilyPreview(await viewer('coach'), at)).next.shown?.page.note
}

function pageWithFewer(waitsUntil: string) {
  const even = { says: 'even', topic: 'defend', isPartMissed: false } as const
  const fewer = { says: 'fewer', topic: 'attack', isPartMissed: false, nextStep: null, waitsUntil } as const
  return {
    version: 1,
    upTo: '2026-09-05',
    kinds: [
      {
        kind: 'practice',
        held: 5,
        written: 5,
        said: {
          sentences: [fewer, even],
          did: [{ doing: 'defend', minutes: 40, turns: 20 }],
          minutesThere: 60,
        },
        attendance: [],
      },
    ],
    themes: [],
    note: '',
  } as const
}

async function keepPage(page: ReturnType<typeof pageWithFewer>) {
  const kept = { playerId: ada, squadId: squadId(), seasonId: club.seasonId, page }
  await inClub(
    club.club.id,
    (tx) =>
      recordFamilyPages(tx, [
        {
          ...kept,
          confirmedById: club.coach.personId,
          confirmedBy: 'Kit Vale',
          confirmedAt: evening,
          showsFrom: atEight,
        },
      ]),
    { database: ownerDatabase() },
  )
}
