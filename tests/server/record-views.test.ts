import { beforeEach, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { recordAudit } from '#data/audit'
import { recordGuardianships } from '#data/guardianships'
import { newId } from '#data/ids'
import { recordPair } from '#data/player-pairs'
import { loadFamilyLinks } from '#server/family-links-views'
import { loadPlayerBook } from '#server/player-views'
import { loadRecord, loadRecordFile } from '#server/record-views'
import { aLinkingClub, type LinkingClub } from '../support/linking-club'

let at: LinkingClub
let administrator: Viewer
let coach: Viewer

beforeEach(async () => {
  at = await aLinkingClub()
  administrator = await at.viewerOf(at.administratorId)
  coach = await at.viewerOf(at.coach.personId)
})

const sentences = async (query: object = {}) =>
  (await loadRecord(administrator, { query })).lines.map(({ sentence }) => sentence)
const ofChild = () => ({ squadId: at.squadId, playerId: at.childId })
const seasonNow = new Date('2026-10-01T12:00:00Z')
const look = () => loadPlayerBook(coach, { ...ofChild(), query: {}, now: seasonNow })

describe('the record of changes and looks', () => {
  it('says in a sentence who looked at which child', async () => {
    await look()
    await loadFamilyLinks(coach, { ...ofChild(), address: 'https://book.example.org' })
    expect(await sentences()).toEqual([
      'Kit Vale looked at the links for guardians of Ada Fenn.',
      'Kit Vale looked at the season of Ada Fenn.',
    ])
  })

  it('writes no look of whoever was refused', async () => {
    const guardian = await at.viewerOf(at.guardianId)
    await expect(loadPlayerBook(guardian, { ...ofChild(), query: {}, now: seasonNow })).rejects.toMatchObject(
      { code: 'notAllowed' },
    )
    expect(await sentences()).toEqual([])
  })

  it('is narrowed to a child, with what is about it alone, to a person, to looks, and to days of the club', async () => {
    const pairId = newId()
    const by = { personId: at.administratorId, at: new Date('2026-09-30T23:30:00Z') }
    await at.run(async (tx) => {
      const [one = '', other = '', third = ''] = at.playerIds
      const pair = { id: pairId, squadId: at.squadId, kind: 'apart', firstDay: '2026-10-01' } as const
      await recordPair(tx, { ...pair, playerIds: [one, other], lastDay: null, madeById: null })
      await recordGuardianships(tx, [{ personId: at.guardianId, playerId: one, claimedAt: null }])
      await recordAudit(tx, { action: 'addPair', objectKind: 'playerPair', objectId: pairId, by })
      await recordAudit(tx, {
        action: 'recordGuardian',
        objectKind: 'person',
        objectId: at.guardianId,
        detail: { playerId: one },
        by: { ...by, at: new Date('2026-10-02T12:00:00Z') },
      })
      await recordAudit(tx, { action: 'changePlayer', objectKind: 'player', objectId: third, by: at.coach })
    })
    await look()
    const guardian = 'Oda Birch wrote down Mo Fenn as a guardian of Ada Fenn.'
    const pair = 'Oda Birch noted a pair of players.'
    expect(new Set(await sentences({ child: at.childId, kind: 'changes' }))).toEqual(
      new Set([guardian, pair]),
    )
    expect(await sentences({ child: at.playerIds[1] ?? '' })).toEqual([pair])
    expect(await sentences({ kind: 'looks' })).toEqual(['Kit Vale looked at the season of Ada Fenn.'])
    expect(await sentences({ person: at.administratorId, to: '2026-09-30' })).toEqual([])
    // Half past eleven at night by UTC is the next day in London's summer.
    expect(await sentences({ from: '2026-10-01', to: '2026-10-01' })).toEqual([pair])
    expect(await sentences({ child: 'x', from: 'soon', kind: ['a'], page: '-1' })).toHaveLength(4)
  })

  it('has fifty lines a page, and all of them are reached', async () => {
    await at.run(async (tx) => {
      for (let line = 0; line < 51; line++)
        await recordAudit(tx, {
          action: 'changePolicy',
          objectKind: 'policy',
          objectId: newId(),
          by: at.coach,
        })
    })
    const first = await loadRecord(administrator, { query: {} })
    const second = await loadRecord(administrator, { query: { page: '2' } })
    expect([first.lines.length, first.hasMore, second.lines.length, second.hasMore]).toEqual([
      50,
      true,
      1,
      false,
    ])
    expect(first.lines.map(({ id }) => id)).not.toContain(second.lines[0]?.id)
  })

  it('goes out as a file that is safe in spreadsheets, and says that it went', async () => {
    await at.run(async (tx) => {
      await tx.db.player.update({
        where: { clubId_id: { clubId: tx.clubId, id: at.childId } },
        data: { name: '=1+1' },
      })
      await tx.db.person.update({
        where: { clubId_id: { clubId: tx.clubId, id: at.coach.personId } },
        data: { name: '=HYPERLINK("x")' },
      })
    })
    await look()
    const file = await loadRecordFile(administrator, { query: { kind: 'looks' } })
    expect(file.text).toMatch(/^\uFEFFWhen,What\r\n\d{4}-\d\d-\d\dT[\d:.]+Z,"'=HYPERLINK/)
    expect(await sentences({ person: at.administratorId })).toEqual([
      'Oda Birch took away this record as a file.',
    ])
  })

  it.each(['coach', 'head coach', 'guardian'] as const)('is closed to a %s', async (who) => {
    const id = { coach: at.coach.personId, 'head coach': at.headCoachId, guardian: at.guardianId }[who]
    const viewer = await at.viewerOf(id)
    await expect(loadRecord(viewer, { query: {} })).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(loadRecordFile(viewer, { query: {} })).rejects.toMatchObject({ code: 'notAllowed' })
  })

  it('has none of what was done in another club', async () => {
    const other = await aLinkingClub('Elsewhere')
    await look()
    const theirs = await loadRecord(await other.viewerOf(other.administratorId), {
      query: { child: at.childId },
    })
    expect(theirs.lines).toEqual([])
  })
})
