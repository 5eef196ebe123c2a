import { describe, expect, it } from 'vitest'
import { endAdjustment, fewerTurnsOf, listAdjustments, recordAdjustment } from '#data/adjustments'
import { findDesign, getDesign, listDesigns, recordDesigns } from '#data/designs'
import { newId } from '#data/ids'
import { listPolicies, recordPolicy } from '#data/policies'
import { changeTheme, listProgramme, listThemes, recordThemes, saveProgramme } from '#data/themes'
import { type DesignSheet, plainSheet } from '#practice/design-sheet'
import { defaultPolicy, policyInForce } from '#squad/policy'
import { aClub, aTheme, noon } from '../support/test-club'

describe('themes', () => {
  it('are a tree in an order of its own', async () => {
    const { run, themeIds } = await aClub()
    const child = aTheme({ name: 'Over the top', order: 7, asks: 'Look before it comes.', code: 't9' })
    await run((tx) => recordThemes(tx, [child]))
    await run((tx) => changeTheme(tx, child.id, { parentId: themeIds[1], order: 0 }))
    const themes = await run(listThemes)
    expect(themes[0]).toEqual({ ...child, parentId: themeIds[1], order: 0 })
    expect(themes.find(({ id }) => id === themeIds[1])?.parentId).toBe(themeIds[0])
  })

  it('are wished for by a programme, and a new one takes the place of the old', async () => {
    const { run, themeIds, squadId, termIds } = await aClub()
    const at = { squadId, termId: termIds[0] }
    const wish = (themeId: string, wishedShare: number) => ({ themeId, wishedShare })
    await run((tx) => saveProgramme(tx, { ...at, programme: [wish(themeIds[0], 0.25)] }))
    const programme = [wish(themeIds[0], 0.5), wish(themeIds[1], 1 / 3)]
    await run((tx) => saveProgramme(tx, { ...at, programme }))
    expect(await run((tx) => listProgramme(tx, at))).toEqual(programme)
    expect(await run((tx) => listProgramme(tx, { squadId, termId: termIds[1] }))).toEqual([])
  })
})

describe('practice designs', () => {
  it('are read as they were entered', async () => {
    const { run, themeIds } = await aClub()
    const design: DesignSheet = {
      ...plainSheet,
      id: newId(),
      name: 'Gates',
      themeId: themeIds[1],
      areaLengthM: 22.5,
      areaWidthM: 15,
      note: 'Cones, two colours.\nKeepers change with the round.',
      rounds: [
        {
          title: 'Two against one',
          turnCount: 8,
          turnSeconds: 45,
          gapSeconds: 15,
          stations: [
            { attack: 2, defend: 1, keep: 1 },
            { attack: 2, defend: 1, keep: 0 },
          ],
        },
      ],
    }
    await run((tx) => recordDesigns(tx, [design]))
    expect(await run(listDesigns)).toEqual([design])
    expect(await run((tx) => getDesign(tx, design.id))).toEqual(design)
    expect(await run((tx) => findDesign(tx, newId()))).toBeNull()
  })
})

describe('agreements', () => {
  it('are read as they were made, and only fewer turns lower what is due', async () => {
    const { run, playerIds } = await aClub()
    const playerId = playerIds[2] as string
    const fewer = {
      id: newId(),
      playerId,
      firstDay: '2026-09-01',
      lastDay: null,
      kind: 'fewerTurns',
      dueShare: 0.6,
    } as const
    const side = {
      id: newId(),
      playerId,
      firstDay: '2026-10-01',
      lastDay: '2026-11-01',
      kind: 'sameSide',
    } as const
    await run((tx) => recordAdjustment(tx, fewer))
    await run((tx) => recordAdjustment(tx, side))
    await run((tx) => endAdjustment(tx, { id: fewer.id, lastDay: '2026-12-01' }))
    const ended = { ...fewer, lastDay: '2026-12-01' }
    const adjustments = await run((tx) => listAdjustments(tx, playerIds))
    expect(adjustments).toEqual([ended, side])
    expect(fewerTurnsOf(adjustments)).toEqual([ended])
  })
})

describe('the policy', () => {
  it('is a row of versions of which the newest in force counts, of two from one day the later made', async () => {
    const { run, coach } = await aClub()
    const version = (toleranceSeconds: number, ageLimit: number | null, effectiveFrom: string) => ({
      id: newId(),
      ageLimit,
      effectiveFrom,
      policy: { ...defaultPolicy, toleranceSeconds, toleranceShare: 1 / 7 },
    })
    const made = [
      version(1, null, '2026-08-01'),
      version(2, null, '2026-09-01'),
      version(3, null, '2026-09-01'),
      version(4, 12, '2026-09-01'),
    ]
    for (const [minute, one] of made.entries()) {
      const by = { ...coach, at: new Date(noon.getTime() + minute * 60_000) }
      await run((tx) => recordPolicy(tx, { version: one, by }))
    }
    const versions = await run(listPolicies)
    expect(versions.find(({ id }) => id === made[1]?.id)).toEqual({
      ...made[1],
      madeBy: 'Kit Vale',
      madeAt: new Date('2026-09-01T12:01:00.000Z'),
    })
    const tolerance = (ageLimit: number, day: string) =>
      policyInForce(versions, { ageLimit, day }).toleranceSeconds
    expect([tolerance(10, '2026-08-31'), tolerance(10, '2026-09-01'), tolerance(12, '2026-09-01')]).toEqual([
      1, 3, 4,
    ])
  })
})
