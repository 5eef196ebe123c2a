import { beforeAll, describe, expect, it } from 'vitest'
import { listAudit } from '#data/audit'
import { listFlagStates } from '#data/flag-states'
import { inClub } from '#data/in-club'
import { cureGroups } from '#fairness/flags/flag-rule'
import { answerFlagOf, flagAnswerInput } from '#server/answer-flag'
import { loadFlags } from '#server/flag-views'
import { loadPlayerBook } from '#server/player-views'
import { clubId, demoSeason, demoSquads } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

const squadId = demoSquads.underTen.id

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

const flagsFor = async (query: Record<string, string>) => {
  const book = await loadFlags(await demoViewer('idris'), { squadId, query })
  return { ...book, flags: book.parts.flatMap(({ flags }) => flags) }
}

describe('the page of flags', () => {
  it('shows by name, never by size, open, answered and cleared apart', async () => {
    const { flags, counts } = await flagsFor({})
    const names = flags.map(({ playerName }) => playerName)
    expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, 'en')))
    expect(flags.length).toBe(counts.open)
    expect(flags.every(({ status }) => status === 'open')).toBe(true)
    const answered = await flagsFor({ status: 'acknowledged' })
    expect(answered.flags.length).toBe(counts.acknowledged)
    expect(answered.flags[0]?.answer).toMatchObject({ by: 'Idris Fallowmere', on: '2026-06-03' })
  })

  it('filters by cause, and counts of a cause what its filter shows', async () => {
    const { causes } = await flagsFor({})
    expect(causes.length).toBeGreaterThan(1)
    for (const { cause, count } of causes) {
      const { flags } = await flagsFor({ cause })
      expect(flags.length).toBe(count)
      expect(flags.every((flag) => flag.causes.includes(cause))).toBe(true)
    }
    expect((await flagsFor({ cause: 'gone', order: 'size', status: 'all' })).filter).toEqual({
      status: 'open',
      cause: null,
      order: 'name',
    })
  })

  it('puts flags under what there is to do, when asked', async () => {
    const { parts, flags, counts } = await flagsFor({ order: 'cure' })
    expect(flags.length).toBe(counts.open)
    const groups = parts.map(({ group }) => group)
    expect(groups).toEqual(cureGroups.filter((group) => groups.includes(group)))
  })

  it('shows the parts of the difference that the player’s own page shows', async () => {
    const viewer = await demoViewer('idris')
    const { flags } = await flagsFor({ cause: 'attack' })
    const flag = flags.find(({ told }) => told.scope === 'practice')
    const at = { squadId, playerId: flag?.playerId ?? '', query: {} }
    const { row } = await loadPlayerBook(viewer, at)
    const own = row?.figures.find(({ role }) => role === 'attack')?.figure
    expect(flag?.figure?.cause?.whileHere).toBeCloseTo(own?.cause?.whileHere ?? Number.NaN, 6)
    expect(flag?.figure?.cause?.missed).toBeCloseTo(own?.cause?.missed ?? Number.NaN, 6)
    expect(flag?.figure?.cause?.goalDuty).toBeCloseTo(own?.cause?.goalDuty ?? Number.NaN, 6)
  })

  it('has no quiet note', async () => {
    const quiet = await inClub(clubId, (tx) =>
      listFlagStates(tx, { squadIds: [squadId], seasonId: demoSeason.id }),
    )
    expect(quiet.some(({ rule }) => rule === 'passedRunning')).toBe(true)
    const all = [...(await flagsFor({})).flags, ...(await flagsFor({ status: 'acknowledged' })).flags]
    expect(all.some(({ told }) => told.rule === 'passedRunning')).toBe(false)
  })

  it.each(['samir', 'chinwe', 'petra'] as const)('is not %s’s to see or to answer', async (key) => {
    const viewer = await demoViewer(key)
    const flagId = (await flagsFor({})).flags[0]?.id ?? ''
    await expect(loadFlags(viewer, { squadId, query: {} })).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(answerFlagOf(viewer, { flagId, reason: 'x', ownWords: '' })).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })
})

describe('an answer to a flag', () => {
  it('is kept with who and when, leaves a trace without its words, and moves the flag', async () => {
    const viewer = await demoViewer('idris')
    const before = await flagsFor({})
    const flagId = before.flags[0]?.id ?? ''
    const done = await answerFlagOf(viewer, { flagId, reason: 'Agreed with family', ownWords: '' })
    expect(done.ok).toBe(true)
    const after = await flagsFor({ status: 'acknowledged' })
    expect(after.flags.find(({ id }) => id === flagId)?.answer).toMatchObject({
      by: 'Idris Fallowmere',
      reason: 'Agreed with family',
    })
    expect(after.counts.open).toBe(before.counts.open - 1)
    const [entry] = await inClub(clubId, (tx) => listAudit(tx, { limit: 1 }))
    expect(entry).toMatchObject({ action: 'answerFlag', objectId: flagId, personName: 'Idris Fallowmere' })
    expect(JSON.stringify(entry)).not.toContain('Agreed')
  })

  it('is refused empty, too long, and for what is not there', async () => {
    const viewer = await demoViewer('maren')
    const flagId = (await flagsFor({})).flags[0]?.id ?? ''
    const empty = await answerFlagOf(viewer, { flagId, reason: '', ownWords: '' })
    expect(empty).toMatchObject({ ok: false, reasons: [{ path: 'ownWords' }] })
    expect(flagAnswerInput.safeParse({ flagId, ownWords: 'x'.repeat(301) }).success).toBe(false)
    expect(flagAnswerInput.safeParse({ flagId: 'x', reason: 'y' }).success).toBe(false)
    const gone = '018f5c3e-0000-7000-8000-000000000000'
    await expect(answerFlagOf(viewer, { flagId: gone, reason: 'x', ownWords: '' })).rejects.toMatchObject({
      code: 'notFound',
    })
  })
})
