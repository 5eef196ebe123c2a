import { describe, expect, it } from 'vitest'
import { findClub, getClub, listClubIds } from '#data/clubs'
import { listChildrenOf, listGuardiansOf, recordGuardianships, removeGuardianship } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { findPerson, listDemoPeople, listPeople } from '#data/people'
import { changePlayer, findPlayer, getPlayer, listPlayers, recordPlayers } from '#data/players'
import { aClub, aRosterPlayer, noon, ownerDatabase } from '../support/test-club'

describe('clubs', () => {
  it('are read as they were entered', async () => {
    const { club, run } = await aClub()
    expect(await run(findClub)).toEqual(club)
    expect(await run(getClub)).toEqual(club)
  })

  it('are listed for the owner of the tables', async () => {
    const { club } = await aClub()
    expect(await listClubIds(ownerDatabase())).toContain(club.id)
  })

  it('are not found by what is no id, and one that is not there is null', async () => {
    await expect(inClub("' or true --", findClub)).rejects.toMatchObject({ code: 'notFound' })
    expect(await inClub(newId(), findClub)).toBeNull()
  })
})

describe('people', () => {
  it('are listed by name and found by id', async () => {
    const { run, coach } = await aClub()
    expect((await run(listPeople)).map(({ name, role }) => [name, role])).toEqual([
      ['Kit Vale', 'coach'],
      ['Lou Wynd', 'headCoach'],
      ['Mo Fenn', 'guardian'],
    ])
    expect(await run((tx) => findPerson(tx, coach.personId))).toMatchObject({ name: 'Kit Vale' })
    expect(await run((tx) => findPerson(tx, 'nobody'))).toBeNull()
  })

  it('of demo clubs are listed before a club is chosen, and those of other clubs never', async () => {
    const demo = await aClub({ isDemo: true, name: 'Demo' })
    const real = await aClub({ name: 'Real' })
    const listed = await listDemoPeople()
    expect(listed.filter(({ clubId }) => clubId === demo.club.id).map(({ name }) => name)).toEqual([
      'Lou Wynd',
      'Kit Vale',
      'Mo Fenn',
    ])
    expect(listed.map(({ clubId }) => clubId)).not.toContain(real.club.id)
  })
})

describe('guardians', () => {
  it('have their own children, and a child its guardians', async () => {
    const { run, guardianId, playerIds } = await aClub()
    const own = { personId: guardianId, playerId: playerIds[0] as string, claimedAt: noon }
    await run((tx) =>
      recordGuardianships(tx, [{ ...own, playerId: playerIds[2] as string, claimedAt: null }]),
    )
    await run((tx) => recordGuardianships(tx, [own]))
    await run((tx) => recordGuardianships(tx, [own, { ...own, playerId: playerIds[1] as string }]))
    expect((await run((tx) => listChildrenOf(tx, guardianId))).map(({ name }) => name)).toEqual([
      'Ada Fenn',
      'Bo Larch',
    ])
    expect(await run((tx) => listGuardiansOf(tx, own.playerId))).toMatchObject([{ name: 'Mo Fenn' }])
    await run((tx) => removeGuardianship(tx, own))
    expect(await run((tx) => listGuardiansOf(tx, own.playerId))).toEqual([])
  })
})

describe('players', () => {
  it('are read as they were entered, whatever their names are made of', async () => {
    const { run } = await aClub()
    const names = [
      "O'Brien-Łukasz",
      'עדי כהן',
      '李小龙',
      '🦦 Otter',
      'null',
      '{"a":1}',
      `a\\b"c'd`,
      'x'.repeat(80),
    ]
    const players = names.map((name) =>
      aRosterPlayer({ name, keeps: false, wantsToKeep: true, code: `#${name}` }),
    )
    await run((tx) => recordPlayers(tx, players))
    const ids = players.map(({ id }) => id)
    const read = await run((tx) => listPlayers(tx, [...ids, newId(), 'no id']))
    expect(new Set(read)).toEqual(new Set(players))
  })

  it('of one name stay apart', async () => {
    const { run } = await aClub()
    const twins = [aRosterPlayer({ name: 'Sam Sole' }), aRosterPlayer({ name: 'Sam Sole' })]
    await run((tx) => recordPlayers(tx, twins))
    expect(await run((tx) => getPlayer(tx, twins[1]?.id ?? ''))).toEqual(twins[1])
  })

  it('can be renamed and asked about goal; the rest stays', async () => {
    const { run, playerIds } = await aClub()
    const id = playerIds[0] as string
    await run((tx) => changePlayer(tx, id, { keeps: false }))
    await run((tx) => changePlayer(tx, id, { name: 'Ada Fenn-Lowe' }))
    expect(await run((tx) => findPlayer(tx, id))).toEqual({
      id,
      name: 'Ada Fenn-Lowe',
      keeps: false,
      wantsToKeep: false,
      code: null,
    })
    await expect(run((tx) => changePlayer(tx, newId(), { keeps: true }))).rejects.toMatchObject({
      code: 'notFound',
    })
  })
})
