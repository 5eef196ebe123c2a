import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { endMembership, listMemberships, listSquadIdsOf, recordMemberships } from '#data/memberships'
import { findSeasonOn, getSeason, listSeasons, recordSeason } from '#data/seasons'
import { handOverSquad, listSquadCoaches, listSquadIdsOfCoach, recordSquadCoach } from '#data/squad-coaches'
import { findSquad, getSquad, listSquads, recordSquads } from '#data/squads'
import { aClub } from '../support/test-club'

describe('seasons', () => {
  it('are read with their terms in order of time', async () => {
    const { run, seasonId } = await aClub()
    const next = {
      id: newId(),
      name: '2027/28',
      firstDay: '2027-07-01',
      lastDay: '2028-06-30',
      terms: [
        { id: newId(), name: 'Second', firstDay: '2028-01-01', lastDay: '2028-06-30' },
        { id: newId(), name: 'First', firstDay: '2027-07-01', lastDay: '2027-12-31' },
      ],
    }
    await run((tx) => recordSeason(tx, next))
    const seasons = await run(listSeasons)
    expect(seasons.map(({ name }) => name)).toEqual(['2026/27', '2027/28'])
    expect(seasons[1]).toEqual({ ...next, terms: next.terms.toReversed() })
    expect((await run((tx) => getSeason(tx, seasonId))).terms.map(({ name }) => name)).toEqual([
      'Autumn',
      'Spring',
    ])
  })

  it('are found by a day, both ends included', async () => {
    const { run, seasonId } = await aClub()
    for (const day of ['2026-08-01', '2026-12-31', '2027-06-30']) {
      expect((await run((tx) => findSeasonOn(tx, day)))?.id).toBe(seasonId)
    }
    for (const day of ['2026-07-31', '2027-07-01'])
      expect(await run((tx) => findSeasonOn(tx, day))).toBeNull()
  })

  it('keep their days in every time zone of the machine, over clock changes and the end of a year', async () => {
    const { run } = await aClub()
    const zone = process.env.TZ
    try {
      for (const [index, timeZone] of [
        'Pacific/Kiritimati',
        'Pacific/Niue',
        'Europe/London',
        'America/St_Johns',
      ].entries()) {
        process.env.TZ = timeZone
        const year = 2030 + index
        // Days on which clocks change somewhere, and ends of months and years.
        const season = {
          id: newId(),
          name: timeZone,
          firstDay: `${year}-01-01`,
          lastDay: `${year}-12-31`,
          terms: [{ id: newId(), name: 'All', firstDay: `${year}-03-31`, lastDay: `${year}-10-27` }],
        }
        await run((tx) => recordSeason(tx, season))
        expect(await run((tx) => findSeasonOn(tx, `${year}-12-31`))).toEqual(season)
      }
    } finally {
      if (zone === undefined) delete process.env.TZ
      else process.env.TZ = zone
    }
  })
})

describe('squads', () => {
  it('stand in order of age', async () => {
    const { run, squadId } = await aClub()
    await run((tx) =>
      recordSquads(tx, [
        { id: newId(), name: 'Herons', ageLimit: 14 },
        { id: newId(), name: 'Newts', ageLimit: 8 },
      ]),
    )
    expect((await run(listSquads)).map(({ name }) => name)).toEqual(['Newts', 'Otters', 'Herons'])
    expect(await run((tx) => getSquad(tx, squadId))).toEqual({ id: squadId, name: 'Otters', ageLimit: 10 })
    expect(await run((tx) => findSquad(tx, newId()))).toBeNull()
    await expect(run((tx) => getSquad(tx, 'no id'))).rejects.toMatchObject({ code: 'notFound' })
  })

  it('have members from a day to a day', async () => {
    const { run, squadId, playerIds } = await aClub({ players: 2 })
    const [first, second] = playerIds as [string, string]
    const left = { squadId, playerId: second, lastDay: '2026-10-31' }
    expect(await run((tx) => endMembership(tx, left))).toBe(true)
    expect(await run((tx) => endMembership(tx, left))).toBe(false)
    const back = { playerId: second, firstDay: '2027-01-10', lastDay: '2027-03-01' }
    await run((tx) => recordMemberships(tx, { squadId, memberships: [back] }))
    expect(new Set(await run((tx) => listMemberships(tx, squadId)))).toEqual(
      new Set([
        { playerId: first, firstDay: '2026-08-01', lastDay: null },
        { playerId: second, firstDay: '2026-08-01', lastDay: '2026-10-31' },
        back,
      ]),
    )
    expect(await run((tx) => listSquadIdsOf(tx, second))).toEqual([squadId])
  })

  it('are coached from a day to a day, and handed over in one step', async () => {
    const { run, squadId, coach, headCoachId } = await aClub()
    const { personId } = coach
    await run((tx) =>
      recordSquadCoach(tx, { squadId, personId, kind: 'coach', firstDay: '2026-08-01', lastDay: null }),
    )
    await run((tx) =>
      recordSquadCoach(tx, {
        squadId,
        personId: headCoachId,
        kind: 'cover',
        firstDay: '2026-09-01',
        lastDay: null,
      }),
    )
    const squadsOn = (person: string, day: string) =>
      run((tx) => listSquadIdsOfCoach(tx, { personId: person, day }))
    expect(await squadsOn(personId, '2026-07-31')).toEqual([])
    expect(await squadsOn(headCoachId, '2026-09-01')).toEqual([squadId])
    const handOver = (to: string, day: string) =>
      run((tx) => handOverSquad(tx, { squadId, personId: to, day }))
    expect(await handOver(personId, '2026-10-01')).toEqual({ ok: false, reasons: ['isCoach'] })
    expect(await handOver(headCoachId, '2026-08-01')).toEqual({ ok: false, reasons: ['tooEarly'] })
    // 29 March 2027 is the day after clocks go forward in London.
    expect(await handOver(headCoachId, '2027-03-29')).toEqual({ ok: true, value: null })
    expect(await run((tx) => listSquadCoaches(tx, squadId))).toEqual([
      {
        squadId,
        personId,
        personName: 'Kit Vale',
        kind: 'coach',
        firstDay: '2026-08-01',
        lastDay: '2027-03-28',
      },
      {
        squadId,
        personId: headCoachId,
        personName: 'Lou Wynd',
        kind: 'cover',
        firstDay: '2026-09-01',
        lastDay: '2027-03-28',
      },
      {
        squadId,
        personId: headCoachId,
        personName: 'Lou Wynd',
        kind: 'coach',
        firstDay: '2027-03-29',
        lastDay: null,
      },
    ])
    expect(await squadsOn(personId, '2027-03-29')).toEqual([])
  })
})
