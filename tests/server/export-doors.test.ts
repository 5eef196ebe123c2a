import { describe, expect, it } from 'vitest'
import { viewerRoles } from '#access/viewer'
import { listAudit } from '#data/audit'
import { exportKinds } from '#server/export-file'
import { loadExport } from '#server/export-views'
import { loadFilesPage } from '#server/files-views'
import { coachOf, emptySquad, headCoachOf } from '../support/import-input'
import { aClub } from '../support/test-club'

const wish = (squadId: string, what = 'roster') => ({ squadId, what, from: null, to: null })

describe('files go out', () => {
  it.each(viewerRoles)('to a %s only of the squads it reaches, by a table written by hand', async (role) => {
    const at = await aClub()
    const other = await emptySquad(at)
    const viewer = { ...coachOf(at), role, playerIds: [at.playerIds[0] as string] }
    const expected = {
      administrator: [true, true],
      headCoach: [true, true],
      coach: [true, false],
      helper: [false, false],
      guardian: [false, false],
    }[role]
    const isGiven = (squadId: string) =>
      loadExport(viewer, wish(squadId)).then(
        () => true,
        (error) => error.code !== 'notAllowed',
      )
    expect([await isGiven(at.squadId), await isGiven(other)]).toEqual(expected)
    const isShown = (squadId: string) =>
      loadFilesPage(viewer, { squadId, term: null, now: new Date('2026-10-01') }).then(
        () => true,
        () => false,
      )
    expect([await isShown(at.squadId), await isShown(other)]).toEqual(expected)
  })

  it.each(exportKinds)('of an empty squad too: %s', async (what) => {
    const at = await aClub({ players: 0 })
    const file = await loadExport(headCoachOf(at), wish(at.squadId, what))
    expect(file.fileName).toMatch(/^Otters .*\.(?:csv|ics|json)$/)
    expect(file.text.length).toBeGreaterThan(10)
  })

  it('and that they did is in the audit', async () => {
    const at = await aClub()
    await loadExport(headCoachOf(at), { ...wish(at.squadId, 'book'), from: '2026-08-01', to: 'nonsense' })
    const [entry] = await at.run((tx) => listAudit(tx, { limit: 1 }))
    expect(entry).toMatchObject({
      action: 'exportFile',
      objectId: at.squadId,
      detail: { what: 'book', from: '2026-08-01', to: '9999-12-31' },
    })
  })

  it('not when there is no such file, squad or club', async () => {
    const [at, other] = [await aClub(), await aClub()]
    for (const asked of [wish(at.squadId, 'everything'), wish('x'), wish(other.squadId)]) {
      await expect(loadExport(headCoachOf(at), asked)).rejects.toMatchObject({ code: 'notFound' })
    }
  })
})
