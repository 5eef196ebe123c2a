import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { getClub } from '#data/clubs'
import { listDesigns } from '#data/designs'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listMatchFormats } from '#data/match-formats'
import { recordPeople } from '#data/people'
import { listSeasons } from '#data/seasons'
import { listSquads } from '#data/squads'
import { listThemes } from '#data/themes'
import { changeClub, saveSeason, saveSquad, takeOurContent } from '#server/club-actions'
import { loadClubHome, loadClubSeasons, loadClubSquads, loadNoSeason } from '#server/club-views'
import { findViewer } from '#server/find-viewer'
import { loadToday } from '#server/today-views'
import { formOfFields } from '../support/form-of-fields'
import { askAsPerson } from '../support/next-request'
import { enterSession, ownerDatabase } from '../support/test-club'
import { aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

type Row = readonly [id: string, name: string, firstDay: string, lastDay: string]
const seasonForm = ([seasonId, name, firstDay, lastDay]: Row, terms: readonly Row[]) =>
  formOfFields({
    seasonId,
    name,
    firstDay,
    lastDay,
    ...Object.fromEntries(
      terms.flatMap(([id, termName, from, to], row) => [
        [`termId-${row}`, id],
        [`termName-${row}`, termName],
        [`termFirstDay-${row}`, from],
        [`termLastDay-${row}`, to],
      ]),
    ),
  })
const next = () =>
  saveSeason(
    idle,
    seasonForm(['', '2027/28', '2027-08-01', '2028-06-30'], [['', 'All', '2027-08-01', '2028-06-30']]),
  )
const squad = (fields: { squadId?: string; name?: string; ageLimit?: string } = {}) =>
  saveSquad(idle, formOfFields({ squadId: '', name: 'Herons', ageLimit: '12', ...fields }))
const renamed = () => changeClub(idle, formOfFields({ name: 'Marlwater', timeZone: 'Europe/Oslo' }))
const everyDoor = async () => [
  await next(),
  await squad(),
  await renamed(),
  await takeOurContent(idle, new FormData()),
]
const read = <Answer>(work: Parameters<typeof at.club.run<Answer>>[0]) => at.club.run(work)

describe('the club’s own doors and pages', () => {
  it.each(['coach', 'otherCoach', 'guardian'] as const)(
    'are closed to %s, and nothing changes',
    async (who) => {
      askAs(at.club, who)
      for (const answer of await everyDoor())
        expect(answer).toMatchObject({
          problems: [{ message: expect.stringContaining('not yours to change') }],
        })
      expect(await read(listSeasons)).toHaveLength(1)
      expect(await read(listSquads)).toHaveLength(1)
      expect((await read(getClub)).name).toBe('Reedwater')
      expect(await read((tx) => listAudit(tx, { limit: 9 }))).toEqual([])
      const viewer = await viewerOf(at, who)
      for (const load of [loadClubHome, loadClubSeasons, loadClubSquads])
        await expect(load(viewer)).rejects.toMatchObject({ code: 'notAllowed' })
    },
  )

  it('are open to the head coach, each with its row in the record, but for people, requests and the record', async () => {
    askAs(at.club, 'headCoach')
    const answers = await everyDoor()
    expect(answers.map(({ status }) => status)).toEqual(['done', 'done', 'done', 'refused'])
    const deeds = (await read((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)
    expect(deeds.sort()).toEqual(['addSeason', 'addSquad', 'changeClub'])
    expect(await loadClubHome(await viewerOf(at, 'headCoach'))).toMatchObject({
      name: 'Marlwater',
      timeZone: 'Europe/Oslo',
      canManagePeople: false,
      canAnswerRequests: false,
      canSeeRecord: false,
      frame: { tabs: expect.arrayContaining(['club']) },
    })
  })

  it('are open to the administrator with all of it', async () => {
    const id = newId()
    await read((tx) => recordPeople(tx, [{ id, name: 'Runa Hale', role: 'administrator' }]))
    askAsPerson({ clubId: at.club.club.id, personId: id })
    for (const answer of (await everyDoor()).slice(0, 3)) expect(answer).toMatchObject({ status: 'done' })
    const viewer = await findViewer({ clubId: at.club.club.id, personId: id })
    expect(viewer && (await loadClubHome(viewer))).toMatchObject({
      canManagePeople: true,
      canSeeRecord: true,
    })
  })
})

describe('a season', () => {
  const [autumn, spring] = [0, 1] as const
  const save = (days: readonly [string, string], terms: readonly Row[]) =>
    saveSeason(idle, seasonForm([at.club.seasonId, '2026/27', ...days], terms))

  it('moves its terms into each other’s days, keeps their ids, and takes another term', async () => {
    askAs(at.club, 'headCoach')
    const { termIds } = at.club
    const answer = await save(
      ['2026-09-01', '2027-07-31'],
      [
        [termIds[autumn], 'Autumn', '2026-09-01', '2027-02-01'],
        [termIds[spring], 'Spring', '2027-02-02', '2027-05-31'],
        ['', 'Summer', '2027-06-01', '2027-07-31'],
      ],
    )
    expect(answer).toMatchObject({ status: 'done' })
    const [season] = await read(listSeasons)
    expect(season).toMatchObject({ id: at.club.seasonId, firstDay: '2026-09-01', lastDay: '2027-07-31' })
    expect(season?.terms.map(({ id, lastDay }) => [id, lastDay])).toEqual([
      [termIds[autumn], '2027-02-01'],
      [termIds[spring], '2027-05-31'],
      [expect.any(String), '2027-07-31'],
    ])
  })

  it('leaves no practice outside, loses no term, and takes no other season’s', async () => {
    askAs(at.club, 'headCoach')
    await enterSession(at.club, { day: '2026-08-20' })
    const before = await read(listSeasons)
    const { termIds } = at.club
    const both: readonly Row[] = [
      [termIds[autumn], 'Autumn', '2026-09-01', '2026-12-31'],
      [termIds[spring], 'Spring', '2027-01-01', '2027-06-30'],
    ]
    expect(await save(['2026-09-01', '2027-06-30'], both)).toMatchObject({
      problems: [{ path: 'firstDay', message: expect.stringContaining('2026-08-20') }],
    })
    expect(await save(['2026-08-01', '2027-06-30'], both.slice(1))).toMatchObject({
      problems: [{ message: expect.stringContaining('Autumn') }],
    })
    expect(
      await save(['2026-08-01', '2027-06-30'], [...both, [newId(), 'Odd', '2026-08-01', '2026-08-02']]),
    ).toMatchObject({ problems: [{ path: 'terms.2.name' }] })
    expect(await read(listSeasons)).toEqual(before)
  })

  it('is refused with each problem beside its field', async () => {
    askAs(at.club, 'headCoach')
    const answer = await saveSeason(
      idle,
      seasonForm(['', ' ', '2027-13-01', '0027-06-30'], [['', 'A', '', '2028-01-01']]),
    )
    expect('problems' in answer && answer.problems.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['name', 'firstDay', 'lastDay']),
    )
    expect(await read(listSeasons)).toHaveLength(1)
  })
})

describe('squads', () => {
  it('have names of their own and an age, and stand in its order', async () => {
    askAs(at.club, 'headCoach')
    expect(await squad({ name: 'otters' })).toMatchObject({ problems: [{ path: 'name' }] })
    for (const ageLimit of ['2', '100', 'ten', '9.5', ''])
      expect(await squad({ ageLimit })).toMatchObject({ problems: [{ path: 'ageLimit' }] })
    expect(await squad()).toMatchObject({ status: 'done' })
    expect(await squad({ squadId: at.club.squadId, name: 'Otters', ageLimit: '14' })).toMatchObject({
      status: 'done',
    })
    const { squads } = await loadClubSquads(await viewerOf(at, 'headCoach'))
    expect(
      squads.map(({ name, ageLimit, members, coachNames }) => [name, ageLimit, members, coachNames]),
    ).toEqual([
      ['Herons', 12, 0, []],
      ['Otters', 14, 5, ['Kit Vale']],
    ])
  })
})

describe('our themes and designs', () => {
  it('become the club’s once, where it has none, each design under its theme', async () => {
    await inClub(
      at.club.club.id,
      async ({ db, clubId }) => {
        await db.theme.deleteMany({ where: { clubId, parentId: { not: null } } })
        await db.theme.deleteMany({ where: { clubId } })
      },
      { database: ownerDatabase() },
    )
    askAs(at.club, 'headCoach')
    const answers = await Promise.all([
      takeOurContent(idle, new FormData()),
      takeOurContent(idle, new FormData()),
    ])
    expect(answers.map(({ status }) => status).sort()).toEqual(['done', 'refused'])
    const [themes, designs] = [await read(listThemes), await read(listDesigns)]
    expect(themes).toHaveLength(8)
    const sizes = (await read(listMatchFormats)).map(({ format }) => format.aSide)
    expect([...new Set(sizes)]).toEqual([3, 4, 5, 6, 7, 8, 9, 10, 11])
    expect(designs.length).toBeGreaterThan(12)
    const names = new Map(themes.map(({ id, name }) => [id, name]))
    const back = designs.find(({ name }) => name === 'Back to back')
    expect(names.get(back?.themeId ?? '')).toBe('Using the extra player')
    expect(names.get(themes.find(({ name }) => name === 'Finishing')?.parentId ?? '')).toBe('With the ball')
  })
})

describe('a club without a season', () => {
  it('says so on pages of its squads, to whoever may open them', async () => {
    await inClub(
      at.club.club.id,
      async ({ db, clubId }) => {
        await db.term.deleteMany({ where: { clubId } })
        await db.season.deleteMany({ where: { clubId } })
      },
      { database: ownerDatabase() },
    )
    const { squadId } = at.club
    await expect(loadToday(await viewerOf(at, 'coach'), { squadId })).rejects.toMatchObject({
      code: 'noSeason',
    })
    await expect(loadToday(await viewerOf(at, 'guardian'), { squadId })).rejects.toMatchObject({
      code: 'notAllowed',
    })
    expect(await loadNoSeason(await viewerOf(at, 'coach'))).toMatchObject({ canArrange: false })
    expect(await loadNoSeason(await viewerOf(at, 'headCoach'))).toMatchObject({ canArrange: true })
  })
})

describe('Today', () => {
  it('has the next session, and what else its day has', async () => {
    const day = '2026-10-03'
    const match = await enterSession(at.club, { kind: 'match', day, startsAt: null, lengthSeconds: null })
    const practice = await enterSession(at.club, { day, startsAt: '17:00' })
    await enterSession(at.club, { day: '2026-10-04' })
    const { next, alsoThatDay } = await loadToday(await viewerOf(at, 'coach'), { squadId: at.club.squadId })
    expect([next?.id, ...alsoThatDay.map(({ id }) => id)]).toEqual([match, practice])
  })
})
