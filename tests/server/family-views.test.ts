import { beforeAll, describe, expect, it } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listFlagStates } from '#data/flag-states'
import { inClub } from '#data/in-club'
import type { SessionAccount } from '#fairness/account'
import type { FamilyPage } from '#family/family-page'
import { answerFlagOf } from '#server/answer-flag'
import { loadFamilyPreview } from '#server/family-preview-views'
import { loadFamilyPage } from '#server/family-views'
import { loadPlayerBook } from '#server/player-views'
import { calendarDay, clubId, demoSeason, demoSquads } from '../../seeds/club'
import { demoPlayers, type PlayerKey, playerId } from '../../seeds/names'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

const underTen = demoSquads.underTen.id

/** What the book says of a child today, before it is confirmed. */
async function bookOf(key: PlayerKey, squadId: string = underTen): Promise<FamilyPage> {
  const { next } = await loadFamilyPreview(await demoViewer('maren'), { squadId, playerId: playerId(key) })
  if (!next.shown) throw new Error(`no page of ${key}`)
  return next.shown.page
}

describe('the family’s page', () => {
  it('is open to a parent for its own child and for no other', async () => {
    const parent = await demoViewer('chinwe')
    expect((await loadFamilyPage(parent, { playerId: playerId('adaeze') })).isFamily).toBe(true)
    for (const other of demoPlayers.filter(({ id }) => !parent.playerIds.includes(id)))
      await expect(loadFamilyPage(parent, { playerId: other.id })).rejects.toMatchObject({
        code: 'notAllowed',
      })
    for (const odd of ['', 'x', "' or 1=1", '00000000-0000-0000-0000-000000000000'])
      await expect(loadFamilyPage(parent, { playerId: odd })).rejects.toMatchObject({ code: 'notAllowed' })
  })

  it('has no other child’s name or key in it', async () => {
    const parent = await demoViewer('chinwe')
    const text = JSON.stringify(await loadFamilyPage(parent, { playerId: playerId('adaeze') }))
    expect(text).toContain('Adaeze')
    for (const { id, name } of demoPlayers.filter((player) => !parent.playerIds.includes(player.id))) {
      expect(text).not.toContain(id)
      expect(text).not.toContain(name)
      expect(text).not.toContain(name.split(' ')[0])
    }
  })

  it('is seen by the squad’s coach exactly as the family sees it, and not by another squad’s', async () => {
    const at = { playerId: playerId('adaeze') }
    const family = await loadFamilyPage(await demoViewer('chinwe'), at)
    const coach = await loadFamilyPage(await demoViewer('idris'), at)
    expect(coach.isFamily).toBe(false)
    expect(coach.squads).toEqual(family.squads)
    expect(family.squads[0]?.shown).not.toBeNull()
    expect((await loadFamilyPage(await demoViewer('maren'), at)).squads).toEqual(family.squads)
    await expect(loadFamilyPage(await demoViewer('samir'), at)).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(loadFamilyPage(await demoViewer('maren'), { playerId: 'x' })).rejects.toMatchObject({
      code: 'notFound',
    })
  })
})

describe('what the book says to a family', () => {
  it('rests on as many sessions as there were, and counts what the player’s page counts', async () => {
    const headCoach = await demoViewer('maren')
    const at = { squadId: underTen, playerId: playerId('adaeze') }
    const accounts = await inClub(clubId, (tx) =>
      listAccounts(tx, { squadId: underTen, from: demoSeason.firstDay, to: calendarDay }),
    )
    for (const of of (await bookOf('adaeze')).kinds) {
      // Tonight's practice is still to come.
      const isHeld = ({ day, written }: SessionAccount) => day < calendarDay || written !== 'notWritten'
      const held = accounts.filter((account) => account.kind === of.kind && isHeld(account))
      expect(of.held).toBe(held.length)
      expect(of.written).toBe(held.filter(({ written }) => written !== 'notWritten').length)
      const { row, attendance } = await loadPlayerBook(headCoach, { ...at, query: { kind: of.kind } })
      expect(of.attendance).toEqual(
        attendance
          .filter(({ day }) => day < calendarDay)
          .map((one) => ({ day: one.day, attendance: one.attendance })),
      )
      // To the nearest five minutes, so no role is further off than two and a half.
      for (const role of ['keep', 'rest'] as const) {
        const seconds = row?.figures.find((figure) => figure.role === role)?.figure.seconds ?? 0
        const did = of.said?.did.find(({ doing }) => doing === (role === 'rest' ? 'waiting' : role))
        expect(Math.abs((did?.minutes ?? 0) * 60 - seconds)).toBeLessThanOrEqual(150)
      }
    }
  })

  it('tells the one who was sent to defend what comes next, and nothing of a coach’s own words', async () => {
    const coach = await demoViewer('idris')
    const said = async () => (await bookOf('adaeze')).kinds[0]?.said?.sentences
    // Nobody has answered for longer than the days there were for it.
    expect((await said())?.[0]).toMatchObject({
      says: 'fewer',
      topic: 'attack',
      nextStep: null,
      waitsUntil: null,
    })
    expect((await said())?.[1]).toMatchObject({ says: 'more', topic: 'defend', moreOf: 'attack' })
    const at = { squadIds: [underTen], seasonId: demoSeason.id }
    const flags = await inClub(clubId, (tx) => listFlagStates(tx, at))
    const own = flags.find((flag) => flag.rule === 'attackShort' && flag.playerId === playerId('adaeze'))
    const flagId = own?.id ?? ''
    await answerFlagOf(coach, { flagId, reason: 'Putting right next time', ownWords: '' })
    expect((await said())?.[0]).toMatchObject({ nextStep: 'the coach puts it right next time' })
    await answerFlagOf(coach, { flagId, reason: '', ownWords: 'Swaps with Bao every round' })
    expect((await said())?.[0]).toMatchObject({ nextStep: 'the coach will tell you' })
  })

  it('tells the one who missed a lot and was treated evenly nothing but even', async () => {
    const said = (await bookOf('freya')).kinds.flatMap((kind) => kind.said?.sentences ?? [])
    expect(said.length).toBeGreaterThan(1)
    expect(said.every(({ says }) => says === 'even')).toBe(true)
    expect(said.some((sentence) => sentence.says === 'even' && sentence.isPartMissed)).toBe(true)
  })

  it('counts for who joined in January from January on', async () => {
    const days = (await bookOf('chiara', demoSquads.underTwelve.id)).kinds.flatMap(({ attendance }) =>
      attendance.map(({ day }) => day),
    )
    expect(days.length).toBeGreaterThan(10)
    expect(days.every((day) => day >= '2026-01-05')).toBe(true)
  })
})
