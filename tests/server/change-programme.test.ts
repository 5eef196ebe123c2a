import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { listProgramme, listThemes } from '#data/themes'
import { addTheme, changeProgramme, changeTheme, moveTheme } from '#server/theme-actions'
import { loadThemes } from '#server/theme-views'
import { themeLines } from '#themes/theme-lines'
import { ownerDatabase } from '../support/test-club'
import { aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

const form = (fields: Readonly<Record<string, string>>) => {
  const data = new FormData()
  data.set('squadId', at.club.squadId)
  for (const [name, value] of Object.entries(fields)) data.set(name, value)
  return data
}
const adding = (name: string, parentId = '') => addTheme(idle, form({ name, parentId, asks: '' }))
const planning = (percents: Readonly<Record<string, string>>, termId: string = at.club.termIds[0]) =>
  changeProgramme(
    idle,
    form({
      termId,
      ...Object.fromEntries(Object.entries(percents).map(([id, percent]) => [`share-${id}`, percent])),
    }),
  )
const lines = async () =>
  themeLines(await at.club.run(listThemes)).map(({ theme, depth }) => `${depth} ${theme.name}`)
const programme = () =>
  at.club.run((tx) => listProgramme(tx, { squadId: at.club.squadId, termId: at.club.termIds[0] }))

describe('the doors of the programme', () => {
  const everyDoor = () => {
    const [top, below] = at.club.themeIds
    return [
      adding('Pressing'),
      changeTheme(idle, form({ themeId: below, name: 'Three against two', parentId: top, asks: '' })),
      moveTheme(idle, form({ themeId: top, step: 'down' })),
      planning({ [below]: '40' }),
    ]
  }

  it.each(['otherCoach', 'guardian'] as const)('are closed to %s, and nothing changes', async (who) => {
    askAs(at.club, who)
    for (const answer of await Promise.all(everyDoor()))
      expect(answer).toMatchObject({
        problems: [{ message: expect.stringContaining('not yours to change') }],
      })
    expect(await lines()).toEqual(['0 Attacking', '1 Two against one'])
    expect(await programme()).toEqual([])
    expect(await at.club.run((tx) => listAudit(tx, { limit: 9 }))).toEqual([])
  })

  it.each(['coach', 'headCoach'] as const)('are open to %s, each with its audit row', async (who) => {
    askAs(at.club, who)
    await adding('Changing over')
    for (const answer of await Promise.all(everyDoor())) expect(answer).toMatchObject({ status: 'done' })
    const deeds = (await at.club.run((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)
    expect(deeds.sort()).toEqual(['addTheme', 'addTheme', 'changeProgramme', 'changeTheme', 'moveTheme'])
  })
})

describe('the themes of a club', () => {
  it('are added at the end, renamed, put under another and moved', async () => {
    const [top, below] = at.club.themeIds
    await adding('  Without the   ball ')
    await adding('Slowing down', top)
    expect(await lines()).toEqual([
      '0 Attacking',
      '1 Two against one',
      '1 Slowing down',
      '0 Without the ball',
    ])
    const other = (await at.club.run(listThemes)).find(({ name }) => name === 'Without the ball')?.id ?? ''
    await changeTheme(
      idle,
      form({
        themeId: below,
        name: 'The extra player',
        parentId: other,
        asks: ' Draw one, find the free one. ',
      }),
    )
    expect(await lines()).toEqual([
      '0 Attacking',
      '1 Slowing down',
      '0 Without the ball',
      '1 The extra player',
    ])
    expect((await at.club.run(listThemes)).find(({ id }) => id === below)?.asks).toBe(
      'Draw one, find the free one.',
    )
    expect(await moveTheme(idle, form({ themeId: other, step: 'up' }))).toMatchObject({
      message: 'Without the ball stands one place higher.',
    })
    expect(await lines()).toEqual([
      '0 Without the ball',
      '1 The extra player',
      '0 Attacking',
      '1 Slowing down',
    ])
    expect(await moveTheme(idle, form({ themeId: other, step: 'up' }))).toMatchObject({
      problems: [{ message: 'Without the ball is the first there already.' }],
    })
  })

  it('do not stand under one of their own, nor twice under one name, nor without one', async () => {
    const [top, below] = at.club.themeIds
    const change = (fields: { name?: string; parentId: string }) =>
      changeTheme(idle, form({ themeId: top, name: 'Attacking', asks: '', ...fields }))
    for (const parentId of [top, below])
      expect(await change({ parentId })).toMatchObject({ problems: [{ path: 'parentId' }] })
    expect(await adding('attacking')).toMatchObject({
      problems: [
        { path: 'name', message: 'there is a theme Attacking at the top already; choose another name' },
      ],
    })
    expect(await adding('Attacking', top)).toMatchObject({ status: 'done' })
    expect(await adding(' ')).toMatchObject({ problems: [{ path: 'name' }] })
    expect(await adding('x'.repeat(81))).toMatchObject({
      problems: [{ path: 'name', message: 'has 81 letters; 80 at most would be right' }],
    })
  })
})

describe('the programme of a squad’s term', () => {
  it('takes the place of the one before, and the page shows it', async () => {
    const [top, below] = at.club.themeIds
    expect(await planning({ [top]: '60', [below]: '40' })).toMatchObject({
      message: 'The programme of Autumn is saved.',
    })
    await planning({ [top]: '', [below]: ' 35 ' })
    expect(await programme()).toEqual([{ themeId: below, wishedShare: 0.35 }])
    const book = await loadThemes(await viewerOf(at, 'coach'), { squadId: at.club.squadId, query: {} })
    expect(book).toMatchObject({ mayChange: true, isTermOver: false, programme: await programme() })
    expect(book.rows.map(({ coverage }) => coverage?.wishedShare ?? null)).toEqual([null, 0.35])
  })

  it('is at most the whole, in whole per cent', async () => {
    const [top, below] = at.club.themeIds
    await planning({ [top]: '60', [below]: '40' })
    expect(await planning({ [top]: '65', [below]: '40' })).toMatchObject({
      problems: [
        {
          path: '',
          message:
            'Together these are 105 % of the practices; 100 % at most can be planned. Take 5 % away somewhere.',
        },
      ],
      typed: { [`share-${top}`]: '65' },
    })
    for (const wrong of ['12.5', '-1', 'ten', '101', '1e1'])
      expect(await planning({ [top]: wrong })).toMatchObject({
        problems: [
          {
            path: `share-${top}`,
            message: 'write a whole number of per cent, 0 to 100, or leave it empty',
          },
        ],
      })
    expect((await programme()).map(({ wishedShare }) => wishedShare)).toEqual([0.6, 0.4])
  })

  it('stays once the term is over', async () => {
    const data = { calendarDay: new Date('2027-01-01T00:00:00Z') }

    const id = at.club.club.id
    await inClub(id, (tx) => tx.db.club.update({ where: { id }, data }), { database: ownerDatabase() })
    const [top] = at.club.themeIds
    expect(await planning({ [top]: '60' })).toMatchObject({
      problems: [
        { message: expect.stringContaining('Autumn is over since 2026-12-31; its programme stays.') },
      ],
    })
    expect(await planning({ [top]: '60' }, at.club.termIds[1])).toMatchObject({ status: 'done' })
  })
})
