import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { recordDesigns } from '#data/designs'
import { newId } from '#data/ids'
import { listProgrammeBlocks } from '#data/programme-blocks'
import { listProgrammeRules } from '#data/programme-rules'
import { recordSquads } from '#data/squads'
import { listThemeDesigns } from '#data/theme-designs'
import { listThemes, recordThemes } from '#data/themes'
import {
  changeProgramme,
  changeProgrammeBlocks,
  changeProgrammeRules,
  changeThemeFocus,
  takeProgramme,
} from '#server/theme-actions'
import { loadThemes } from '#server/theme-views'
import { noRule } from '#themes/programme-rule'
import { themeLines } from '#themes/theme-lines'
import { aSheet } from '../support/design-builder'
import { formOfFields } from '../support/form-of-fields'
import { aTheme } from '../support/test-club'
import { aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

const ofTerm = (squadId = at.club.squadId) => ({ squadId, termId: at.club.termIds[0] })
const form = (fields: Readonly<Record<string, string | readonly string[]>>, squadId?: string) =>
  formOfFields({ ...ofTerm(squadId), ...fields })
const rules = (squadId?: string) => at.club.run((tx) => listProgrammeRules(tx, ofTerm(squadId)))
const blocks = () => at.club.run((tx) => listProgrammeBlocks(tx, ofTerm()))
const deeds = async () =>
  (await at.club.run((tx) => listAudit(tx, { limit: 20 }))).map(({ action }) => action)
const wish = (percents: Readonly<Record<string, string>>) =>
  changeProgramme(
    idle,
    form(Object.fromEntries(Object.entries(percents).map(([id, percent]) => [`share-${id}`, percent]))),
  )
const now = new Date('2026-10-01T12:00:00Z')
const settings = async () =>
  (await loadThemes(await viewerOf(at, 'coach'), { squadId: at.club.squadId, query: {}, now })).settings

describe('the doors of a programme’s rules', () => {
  const everyDoor = async () => {
    const [top, below] = at.club.themeIds
    return [
      await changeProgrammeRules(idle, form({ [`first-${below}`]: '2' })),
      await changeProgrammeBlocks(
        idle,
        form({ 'blockTheme-0': top, 'blockFirst-0': '2', 'blockLast-0': '3' }),
      ),
      await changeThemeFocus(idle, form({ themeId: below, roles: 'attack' })),
      await takeProgramme(idle, form({ from: 'ours firstSteps' })),
    ]
  }

  it.each(['otherCoach', 'guardian'] as const)('are closed to %s, and nothing changes', async (who) => {
    await wish({ [at.club.themeIds[1]]: '40' })
    askAs(at.club, who)
    for (const answer of await everyDoor())
      expect(answer).toMatchObject({
        problems: [{ message: expect.stringContaining('not yours to change') }],
      })
    expect(await rules()).toEqual([{ ...noRule, themeId: at.club.themeIds[1], wishedShare: 0.4 }])
    expect([await blocks(), await deeds()]).toEqual([[], ['changeProgramme']])
  })

  it.each(['coach', 'headCoach'] as const)(
    'are open to %s, each with its line in the record',
    async (who) => {
      await wish({ [at.club.themeIds[1]]: '40' })
      askAs(at.club, who)
      for (const answer of await everyDoor()) expect(answer).toMatchObject({ status: 'done' })
      expect((await deeds()).sort()).toEqual([
        ...['changeProgramme', 'changeProgramme', 'changeProgramme', 'changeProgramme', 'changeTheme'],
      ])
    },
  )

  it('a programme of a squad that is not one’s own is not to be taken', async () => {
    const other = { id: newId(), name: 'Stoats', ageLimit: 12 }
    await at.club.run((tx) => recordSquads(tx, [other]))
    expect(await takeProgramme(idle, form({ from: `${other.id} ${at.club.termIds[0]}` }))).toMatchObject({
      problems: [{ message: expect.stringContaining('not yours to change') }],
    })
    askAs(at.club, 'headCoach')
    expect(await takeProgramme(idle, form({ from: `${other.id} ${at.club.termIds[0]}` }))).toMatchObject({
      problems: [{ path: 'from', message: expect.stringContaining('has no programme') }],
    })
  })
})

describe('when themes may come', () => {
  it('is kept beside the parts, and stays when these are changed', async () => {
    const [top, below] = at.club.themeIds
    await wish({ [top]: '10', [below]: '40' })
    const sent = { [`first-${below}`]: '2', [`last-${below}`]: '', [`after-${below}`]: top }
    await changeProgrammeRules(idle, form({ ...sent, [`least-${below}`]: '2', [`most-${below}`]: '4' }))
    const rule = {
      ...{ themeId: below, wishedShare: 0.4, firstWeek: 2, lastWeek: null, afterThemeId: top },
      ...{ leastWeeksBetween: 2, mostWeeksBetween: 4 },
    }
    expect(await rules()).toContainEqual(rule)
    await wish({ [below]: '55' })
    expect(await rules()).toEqual([{ ...rule, wishedShare: 0.55 }])
    expect((await settings())?.rules).toEqual(await rules())
  })

  it('is refused with where and what would be right, and nothing of it is kept', async () => {
    const [top, below] = at.club.themeIds
    await wish({ [below]: '40' })
    const before = await rules()
    const wrong = [
      [{ [`first-${below}`]: '0' }, `first-${below}`, /1 to 60/],
      [{ [`first-${below}`]: 'soon' }, `first-${below}`, /1 to 60/],
      [{ [`first-${below}`]: '60' }, `first-${below}`, /this term has weeks 1 to \d+/],
      [{ [`first-${below}`]: '3', [`last-${below}`]: '2' }, `last-${below}`, /before the first one, 3/],
      [{ [`after-${below}`]: below }, `after-${below}`, /the theme itself/],
      [{ [`after-${below}`]: 'x' }, `after-${below}`, /one of the themes/],
      // Not in the programme, and in no club.
      [{ [`first-${top}`]: '2' }, '', /no longer there/],
      [{ [`after-${below}`]: newId() }, '', /no longer there/],
    ] as const
    for (const [fields, path, message] of wrong)
      expect(await changeProgrammeRules(idle, form(fields))).toMatchObject({
        problems: [{ path, message: expect.stringMatching(message) }],
      })
    expect(await rules()).toEqual(before)
  })

  it('weeks kept for one theme are told by their rows, empty ones between them', async () => {
    const [top, below] = at.club.themeIds
    const row = (index: number, themeId: string, [first, last]: readonly [string, string]) => ({
      [`blockTheme-${index}`]: themeId,
      [`blockFirst-${index}`]: first,
      [`blockLast-${index}`]: last,
    })
    const good = { ...row(0, top, ['2', '3']), ...row(1, '', ['', '']), ...row(2, below, ['5', '5']) }
    await changeProgrammeBlocks(idle, form(good))
    const kept = [
      { themeId: top, firstWeek: 2, lastWeek: 3 },
      { themeId: below, firstWeek: 5, lastWeek: 5 },
    ]
    expect(await blocks()).toEqual(kept)
    const wrong = [
      [{ ...good, ...row(2, below, ['3', '5']) }, 'blockFirst-2', /kept for Attacking/],
      [{ ...good, ...row(2, below, ['', '5']) }, 'blockFirst-2', /1 to 60/],
    ] as const
    for (const [fields, path, message] of wrong)
      expect(await changeProgrammeBlocks(idle, form(fields))).toMatchObject({
        problems: [{ path, message: expect.stringMatching(message) }],
      })
    expect(await blocks()).toEqual(kept)
    await changeProgrammeBlocks(idle, form({}))
    expect(await blocks()).toEqual([])
  })
})

describe('a programme taken over', () => {
  const names = async () =>
    themeLines(await at.club.run(listThemes)).map(({ theme, depth }) => `${depth} ${theme.name}`)

  it('of ours brings the themes that the club has not, once, and uses those it has', async () => {
    const own = aTheme({ name: 'finding  SPACE', order: 3 })
    await at.club.run((tx) => recordThemes(tx, [own]))
    for (const _time of [1, 2])
      expect(await takeProgramme(idle, form({ from: 'ours firstSteps' }))).toMatchObject({ status: 'done' })
    expect(await names()).toEqual([
      ...['0 Attacking', '1 Two against one', '0 finding  SPACE', '0 With the ball'],
      ...['1 Using the extra player', '1 Finishing', '0 Without the ball', '1 Slowing them down'],
    ])
    const taken = await rules()
    expect(taken.find(({ themeId }) => themeId === own.id)?.wishedShare).toBe(0.3)
    expect(taken.reduce((sum, { wishedShare }) => sum + wishedShare, 0)).toBeCloseTo(1, 12)
    expect((await settings())?.sources.map(({ value }) => value).slice(0, 3)).toContain('ours firstSteps')
  })

  it('of another squad comes with its rules and its weeks, in the place of what stood', async () => {
    const [top, below] = at.club.themeIds
    await wish({ [top]: '30', [below]: '20' })
    await changeProgrammeRules(idle, form({ [`after-${below}`]: top, [`first-${below}`]: '3' }))
    await changeProgrammeBlocks(idle, form({ 'blockTheme-0': top, 'blockFirst-0': '1', 'blockLast-0': '2' }))
    const other = { id: newId(), name: 'Stoats', ageLimit: 12 }
    await at.club.run((tx) => recordSquads(tx, [other]))
    askAs(at.club, 'headCoach')
    const from = `${at.club.squadId} ${at.club.termIds[0]}`
    expect(await takeProgramme(idle, form({ from }, other.id))).toMatchObject({ status: 'done' })
    expect(await rules(other.id)).toEqual(await rules())
    expect(await at.club.run((tx) => listProgrammeBlocks(tx, ofTerm(other.id)))).toEqual(await blocks())
  })

  it('is one of the list', async () => {
    for (const from of ['', 'ours', 'ours nothing', 'theirs x', `${newId()}`])
      expect(await takeProgramme(idle, form({ from }))).toMatchObject({ status: 'refused' })
    expect(await rules()).toEqual([])
  })
})

describe('what a theme is about', () => {
  it('is kept with the designs that serve it besides its own', async () => {
    const [, below] = at.club.themeIds
    const own = aSheet({ id: newId(), name: 'Gates', themeId: below })
    const other = aSheet({ id: newId(), name: 'Bridge', themeId: null })
    await at.club.run((tx) => recordDesigns(tx, [own, other]))
    const sent = { themeId: below, roles: ['attack', 'keep'], situations: 'outnumbering' }
    await changeThemeFocus(idle, form({ ...sent, designIds: [own.id, other.id] }))
    const theme = (await at.club.run(listThemes)).find(({ id }) => id === below)
    expect(theme?.focus).toEqual({ roles: ['attack', 'keep'], situations: ['outnumbering'] })
    expect(await at.club.run(listThemeDesigns)).toEqual([{ themeId: below, designId: other.id }])
    const wrongs: readonly Readonly<Record<string, string>>[] = [
      { roles: 'rest' },
      { designIds: newId() },
      { situations: 'x' },
    ]
    for (const wrong of wrongs)
      expect(await changeThemeFocus(idle, form({ ...sent, ...wrong }))).toMatchObject({ status: 'refused' })
    await changeThemeFocus(idle, form({ themeId: below }))
    expect(await at.club.run(listThemeDesigns)).toEqual([])
  })
})
