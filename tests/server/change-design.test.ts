import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { getDesign, listDesigns, listEveryDesign, recordDesigns } from '#data/designs'
import { newId } from '#data/ids'
import type { DesignSheet } from '#practice/design-sheet'
import { nameOfCopy } from '#server/change-design'
import { addDesign, changeDesign, copyDesign, putDesignAway } from '#server/design-actions'
import { designVersion } from '#server/design-version'
import { loadDesign, loadDesignForm, loadDesigns } from '#server/design-views'
import { draftOf } from '#ui/designs/form/draft'
import { aRound, aSheet } from '../support/design-builder'
import { redirectOf } from '../support/next-request'
import { aClubForWriting, askAs, idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

const sent = (fields: object) => {
  const form = new FormData()
  form.set('json', JSON.stringify({ squadId: at.club.squadId, isForOthers: false, ...fields }))
  return form
}
/** What the form of a page sends of a design. */
const typed = (parts: Partial<DesignSheet> = {}) => draftOf(aSheet({ name: 'Gates', ...parts })).design

/** Where an accepted form led. */
const leadsTo = async (answer: Promise<unknown>): Promise<string> => {
  const href = await answer.then(
    (reply) => `stayed with ${JSON.stringify(reply)}`,
    (error) => redirectOf(error),
  )
  return href ?? 'nowhere'
}
const aDesign = async (parts: Partial<DesignSheet> = {}): Promise<DesignSheet> => {
  const sheet = aSheet({ id: newId(), name: 'Lanes', ...parts })
  await at.club.run((tx) => recordDesigns(tx, [sheet]))
  return at.club.run((tx) => getDesign(tx, sheet.id))
}
const changing = (held: DesignSheet, parts: Partial<DesignSheet>) =>
  changeDesign(
    idle,
    sent({ designId: held.id, version: designVersion(held), design: typed({ ...held, ...parts }) }),
  )
const deeds = async () => (await at.club.run((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)

describe('the doors of designs', () => {
  const everyDoor = (held: DesignSheet) => [
    () => addDesign(idle, sent({ design: typed() })),
    () => changing(held, { note: 'Other.' }),
    () => copyDesign(idle, sent({ designId: held.id })),
    () => putDesignAway(idle, sent({ designId: held.id, what: 'putAway' })),
  ]

  it.each(['otherCoach', 'guardian'] as const)('are closed to %s, and nothing changes', async (who) => {
    const held = await aDesign()
    askAs(at.club, who)
    for (const door of everyDoor(held))
      expect(await door()).toMatchObject({
        problems: [{ message: expect.stringContaining('not yours to change') }],
      })
    expect(await at.club.run(listEveryDesign)).toEqual([held])
    expect(await deeds()).toEqual([])
  })

  it.each(['coach', 'headCoach'] as const)('are open to %s, each with its audit row', async (who) => {
    const held = await aDesign()
    askAs(at.club, who)
    for (const door of everyDoor(held)) await leadsTo(door() as Promise<unknown>)
    expect((await deeds()).toSorted()).toEqual(['addDesign', 'changeDesign', 'copyDesign', 'putDesignAway'])
    expect((await at.club.run(listEveryDesign)).map(({ name, isPutAway }) => [name, isPutAway])).toEqual([
      ['Gates', false],
      ['Lanes', true],
      ['Lanes, copy', false],
    ])
  })
})

describe('a design', () => {
  it('is kept whole, and its page follows', async () => {
    const design = typed({
      areaUnit: 'yd',
      sides: { names: ['Yellow', 'Blue'], swap: 'eachRound' },
      hasHeading: true,
      rounds: [
        aRound(['3v1+1'], {
          isUntilDead: true,
          keepersStay: true,
          conditions: ['Two touches'],
          endings: [{ id: 'goal', words: 'Goal', side: 'attack', points: 2 }],
          choice: {
            by: 'coach',
            sizes: [
              { shape: { attack: 3, defend: 1, keep: 1 }, points: 1 },
              { shape: { attack: 2, defend: 1, keep: 1 }, points: 2 },
            ],
          },
        }),
      ],
      adaptations: [
        {
          ...{
            id: 'a1',
            kind: 'space',
            title: 'Smaller',
            makes: 'harder',
            forWhom: 'attack',
            why: 'Less time.',
          },
          changes: [{ what: 'area', lengthTimes: 0.75, widthTimes: 1 }],
        },
      ],
    })
    const href = await leadsTo(addDesign(idle, sent({ design })))
    const [kept] = await at.club.run(listDesigns)
    expect(href).toBe(`/squads/${at.club.squadId}/designs/${kept?.id}`)
    expect(kept).toEqual({ ...design, id: kept?.id, copiedFromId: null, isPutAway: false })
  })

  it.each([
    ['without places', { rounds: [aRound([])] }, 'rounds.0.stations', /no places/],
    [
      'with more places than children',
      { rounds: [aRound(['3v3'])] },
      'rounds.0.stations',
      /6 places, and .* has 5 children; 2v1 would fit/,
    ],
    [
      'of turns of no length',
      { rounds: [aRound(['2v1'], { turnSeconds: 0 })] },
      'rounds.0.turnSeconds',
      /45 seconds/,
    ],
    ['of a theme that is not there', { themeId: newId() }, 'themeId', /choose another, or none/],
    ['without a name', { name: ' ' }, 'name', /is empty/],
  ])('%s is refused in words and nothing is kept', async (_what, parts, path, message) => {
    const answer = await addDesign(idle, sent({ design: typed(parts) }))
    expect(answer).toMatchObject({
      status: 'refused',
      problems: [{ path, message: expect.stringMatching(message) }],
    })
    expect(await at.club.run(listEveryDesign)).toEqual([])
  })

  it('for more children than the squad has is kept when it is said to be for another squad', async () => {
    const design = typed({ rounds: [aRound(['3v3+1'])] })
    const answer = await addDesign(idle, sent({ design }))
    expect(answer).toMatchObject({ problems: [{ message: expect.stringMatching(/7 places/) }] })
    const other = await leadsTo(addDesign(idle, sent({ design, isForOthers: true })))
    expect(other).toMatch(/\/designs\//)
  })

  it('of a name that another has is refused, also when that one is put away', async () => {
    await aDesign({ name: 'Gates' })
    expect(await addDesign(idle, sent({ design: typed({ name: ' gates ' }) }))).toMatchObject({
      problems: [{ path: 'name', message: expect.stringContaining('Gates already; choose another name') }],
    })
  })

  it('that somebody else changed meanwhile is not laid over', async () => {
    const held = await aDesign()
    await leadsTo(changing(held, { note: 'First.' }))
    const second = await changing(held, { note: 'Second.' })
    expect(second).toMatchObject({ problems: [{ message: expect.stringContaining('same time') }] })
    expect((await at.club.run((tx) => getDesign(tx, held.id))).note).toBe('First.')
  })

  it('saved by two at once is saved by one', async () => {
    const held = await aDesign()
    const answers = await Promise.all(
      ['First.', 'Second.'].map((note) => leadsTo(changing(held, { note }) as Promise<unknown>)),
    )
    expect(answers.filter((answer) => answer.startsWith('/squads/'))).toHaveLength(1)
  })

  it('that is copied is its own: a change of the copy leaves it, and the copy knows it', async () => {
    const held = await aDesign({ themeId: at.club.themeIds[1] })
    const href = await leadsTo(copyDesign(idle, sent({ designId: held.id })))
    const copyId = href.split('/').at(-2) ?? ''
    expect(href).toMatch(/\/edit$/)
    const copy = await at.club.run((tx) => getDesign(tx, copyId))
    expect(copy).toEqual({ ...held, id: copyId, name: 'Lanes, copy', copiedFromId: held.id })
    await leadsTo(changing(copy, { name: 'Wide lanes', areaWidthM: 40 }))
    expect(await at.club.run((tx) => getDesign(tx, held.id))).toEqual(held)
    expect(await at.club.run((tx) => getDesign(tx, copyId))).toMatchObject({
      name: 'Wide lanes',
      areaWidthM: 40,
      copiedFromId: held.id,
    })
  })

  it('that is put away is offered no more until it is taken out', async () => {
    const held = await aDesign()
    const away = (what: string) => putDesignAway(idle, sent({ designId: held.id, what }))
    expect(await away('putAway')).toEqual({ status: 'done', message: 'Lanes is put away.' })
    expect(await at.club.run(listDesigns)).toEqual([])
    await away('takeOut')
    expect(await at.club.run(listDesigns)).toEqual([held])
  })

  it.each([
    ['Lanes', [], 'Lanes, copy'],
    ['Lanes', ['LANES, copy'], 'Lanes, copy 2'],
    ['Lanes, copy', ['Lanes, copy', 'Lanes, copy 2'], 'Lanes, copy 3'],
    ['é'.repeat(80), [], `${'é'.repeat(74)}, copy`],
  ])('%s copied beside %j is %s', (name, taken, copy) => {
    expect(nameOfCopy(name, taken)).toBe(copy)
  })
})

describe('the pages of designs', () => {
  const viewerOf = async (who: 'coach' | 'guardian' | 'otherCoach') => {
    askAs(at.club, who)
    const { getViewer } = await import('#server/viewer')
    return getViewer()
  }
  const squad = () => ({ squadId: at.club.squadId })

  it.each(['guardian', 'otherCoach'] as const)('are not there for %s', async (who) => {
    const held = await aDesign()
    const viewer = await viewerOf(who)
    const query = {}
    await expect(loadDesigns(viewer, { ...squad(), query })).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(loadDesign(viewer, { ...squad(), designId: held.id, query })).rejects.toMatchObject({
      code: 'notAllowed',
    })
    await expect(loadDesignForm(viewer, { ...squad(), designId: null })).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })

  it('show what is asked for: a theme with those below it, a number of children, a kind of round', async () => {
    const [top, below] = at.club.themeIds
    await aDesign({ name: 'A', themeId: below })
    await aDesign({ name: 'B', rounds: [aRound(['2v3', '2v3'])] })
    await aDesign({
      name: 'C',
      isPutAway: false,
      rounds: [aRound(['1v1']), aRound(['4v4'], { isFreeGame: true, turnCount: 2 })],
    })
    const viewer = await viewerOf('coach')
    const names = async (query: Readonly<Record<string, string>>) =>
      (await loadDesigns(viewer, { ...squad(), query })).designs.map(({ name }) => name)
    expect(await names({})).toEqual(['A', 'B', 'C'])
    expect(await names({ theme: top })).toEqual(['A'])
    expect(await names({ theme: 'nonsense' })).toEqual(['A', 'B', 'C'])
    expect(await names({ kind: 'outnumbered' })).toEqual(['B'])
    expect(await names({ kind: 'free' })).toEqual(['C'])
    // A: 3 to 6, B: 6 to 20, C: 2 to 4.
    expect(await names({ children: '4' })).toEqual(['A', 'C'])
    expect(await names({ children: '6' })).toEqual(['A', 'B'])
    expect(await names({ away: 'yes' })).toEqual([])
  })

  it('reckon for the squad, or for how many are asked', async () => {
    const held = await aDesign()
    const viewer = await viewerOf('coach')
    const page = (query: Readonly<Record<string, string>>) =>
      loadDesign(viewer, { ...squad(), designId: held.id, query })
    expect(await page({})).toMatchObject({ turnout: 5, cast: { children: 5 }, mayChange: true, usedOn: [] })
    expect(await page({ children: '9' })).toMatchObject({ turnout: 9 })
    expect(await page({ children: '999' })).toMatchObject({ turnout: 5 })
    expect((await page({})).cautions.map(({ subject }) => subject)).toContain('concussion')
    await expect(loadDesign(viewer, { ...squad(), designId: newId(), query: {} })).rejects.toMatchObject({
      code: 'notFound',
    })
  })
})
