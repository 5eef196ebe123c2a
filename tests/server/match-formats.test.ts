import { describe, expect, it, vi } from 'vitest'
import { listAudit } from '#data/audit'
import { newId } from '#data/ids'
import {
  findFormatOfSquad,
  getMatchFormat,
  listMatchFormats,
  listSquadFormats,
  recordMatchFormats,
} from '#data/match-formats'
import { plainFormat } from '#lineup/draft/plain-format'
import type { ClubFormat } from '#match/format/club-format'
import type { MatchFormat } from '#match/format/match-format'
import { chooseFormat, putFormatAway, saveFormat, takeFormat, takeLeastTime } from '#server/format-actions'
import { saveFormatInput } from '#server/format-input'
import { formatVersion } from '#server/format-version'
import { loadFormat, loadFormatForm, loadFormats, loadNewFormat } from '#server/format-views'
import { publishedFormats } from '#server/published-formats'
import { fieldGroups, lateField, nameField, sourceFields } from '#ui/formats/format-fields'
import { formOfFields } from '../support/form-of-fields'
import { redirectOf } from '../support/next-request'
import { typedFormat } from '../support/typed-format'
import { aClubForWriting, askAs, idle, viewerOf } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

const aFormat = async (parts: Partial<MatchFormat> = {}, takenFrom: string | null = null) => {
  const id = newId()
  const format = { ...plainFormat, name: 'Our sevens', ...parts }
  await at.club.run((tx) => recordMatchFormats(tx, [{ id, format, takenFrom }]))
  return at.club.run((tx) => getMatchFormat(tx, id))
}
const held = (id: string) => at.club.run((tx) => getMatchFormat(tx, id))
const every = () => at.club.run(listMatchFormats)
const deeds = async () => (await at.club.run((tx) => listAudit(tx, { limit: 9 }))).map(({ action }) => action)
const sent = (fields: Readonly<Record<string, string>>) => formOfFields(fields)

/** The form of the page, filled as it comes to whoever opens it. */
function openedForm({ id, format }: ClubFormat, typed: Readonly<Record<string, string>> = {}) {
  const late = [1, 2, 3].map(lateField)
  const fields = [nameField, ...fieldGroups.flatMap((group) => group.fields), ...late, ...sourceFields]
  const texts = fields.map((field): readonly [string, string] => [
    field.name,
    'value' in field ? field.value(format) : field.isTicked(format) ? 'on' : '',
  ])
  const version = formatVersion(format)
  return { ...Object.fromEntries(texts), note: format.note, formatId: id, version, ...typed }
}
const save = (format: ClubFormat, typed: Readonly<Record<string, string>> = {}) =>
  leadsTo(saveFormat(idle, sent(openedForm(format, typed))))

async function leadsTo(answer: Promise<unknown>): Promise<unknown> {
  return answer.catch((error) => redirectOf(error) ?? Promise.reject(error))
}

describe('the doors of match formats', () => {
  const everyDoor = (one: ClubFormat) => [
    () => saveFormat(idle, sent({ ...typedFormat, formatId: '', version: '' })),
    () => saveFormat(idle, sent(openedForm(one, { note: 'Other.' }))),
    () => takeFormat(idle, sent({ key: 'ours-5-halves' })),
    () => takeLeastTime(idle, sent({ formatId: one.id, key: 'half-recreational' })),
    () => chooseFormat(idle, sent({ squadId: at.club.squadId, formatId: one.id })),
    () => chooseFormat(idle, sent({ squadId: at.club.squadId, formatId: '' })),
    () => putFormatAway(idle, sent({ formatId: one.id, what: 'putAway' })),
    () => putFormatAway(idle, sent({ formatId: one.id, what: 'takeOut' })),
  ]

  it.each(['coach', 'otherCoach', 'guardian'] as const)(
    'are closed to %s, and nothing changes',
    async (who) => {
      const one = await aFormat()
      askAs(at.club, who)
      for (const door of everyDoor(one))
        expect(await door()).toMatchObject({
          problems: [{ message: expect.stringContaining('not yours to change') }],
        })
      expect(await every()).toEqual([one])
      expect(await at.club.run(listSquadFormats)).toEqual(new Map())
      expect(await deeds()).toEqual([])
    },
  )

  it('are open to the head coach, each with its row in the record', async () => {
    const one = await aFormat()
    askAs(at.club, 'headCoach')
    for (const door of everyDoor(one)) {
      const answer = await leadsTo(door())
      expect(typeof answer === 'string' || answer).toEqual(
        typeof answer === 'string' ? true : expect.objectContaining({ status: 'done' }),
      )
    }
    expect((await deeds()).toSorted()).toEqual([
      ...['addFormat', 'changeFormat', 'chooseFormat', 'chooseFormat'],
      ...['putFormatAway', 'takeFormat', 'takeFormatOut', 'takeLeastTime'],
    ])
  })

  it('let coaches read, and nobody else', async () => {
    const one = await aFormat()
    for (const who of ['coach', 'headCoach'] as const) {
      const viewer = await viewerOf(at, who)
      const page = await loadFormats(viewer)
      expect(page.mayChange).toBe(who === 'headCoach')
      expect(page.formats.map(({ id }) => id)).toEqual([one.id])
      expect((await loadFormat(viewer, one.id)).format.format).toEqual(one.format)
    }
    await expect(loadNewFormat(await viewerOf(at, 'coach'))).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(loadFormatForm(await viewerOf(at, 'coach'), one.id)).rejects.toMatchObject({
      code: 'notAllowed',
    })
    expect(await loadNewFormat(await viewerOf(at, 'headCoach'))).toHaveProperty('frame')
    expect((await loadFormatForm(await viewerOf(at, 'headCoach'), one.id)).version).toBe(
      formatVersion(one.format),
    )
    const guardian = await viewerOf(at, 'guardian')
    await expect(loadFormats(guardian)).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(loadFormat(guardian, one.id)).rejects.toMatchObject({ code: 'notAllowed' })
    const [head, missing] = [await viewerOf(at, 'headCoach'), newId()]
    await expect(loadFormat(head, missing)).rejects.toMatchObject({ code: 'notFound' })
    await expect(loadFormat(head, 'new')).rejects.toMatchObject({ code: 'notFound' })
  })
})

/** Each alone: what is typed, the field, and what its sentence must say. */
const slips: readonly (readonly [typed: Readonly<Record<string, string>>, path: string, words: RegExp])[] = [
  [{ name: ' ' }, 'name', /is empty; write what/],
  [{ aSide: '2' }, 'aSide', /players, 3 to 11/],
  [{ aSide: '7.5' }, 'aSide', /whole number/],
  [{ shapes: 'diamond' }, 'shapes', /“diamond” is no shape.*2-3-1/],
  [{ shapes: '2-2-1' }, 'shapes', /come to 6, the keeper not counted/],
  [{ shapes: ',' }, 'shapes', /is empty/],
  [{ periods: '13' }, 'periods', /1 to 12/],
  [{ minutes: '0,5' }, 'minutes', /1 to 60/],
  [{ periods: '3', minutes: '20 10' }, 'minutes', /2 lengths for 3 periods/],
  [{ breakMinutes: '' }, 'breakMinutes', /0 to 60/],
  [{ leastShare: '120' }, 'leastShare', /0 to 100/],
  [{ leastPeriods: '3' }, 'leastPeriods', /1 to 2/],
  [{ agesFrom: '9' }, 'agesTo', /both ages, or neither/],
  [{ agesFrom: '12', agesTo: '10' }, 'agesTo', /below 12/],
  [{ mostKeeperPeriods: '3' }, 'mostKeeperPeriods', /1 to 2/],
  [{ 'late-1': 'two' }, 'late-1', /whole number of periods/],
  [{ 'late-2': '1' }, 'late-2', /no period is left/],
  [{ sourceSeason: '2026' }, 'sourceBody', /is empty/],
  [{ leastShare: '50', mostPlayers: '15' }, 'leastShare', /14 at most/],
  [{ note: 'x'.repeat(601) }, 'note', /601 letters; 600/],
  [{ name: ' our  SEVENS two' }, 'name', /Our sevens two already/],
]

describe('a format that is written', () => {
  it('is kept as it was typed, and its page follows', async () => {
    askAs(at.club, 'headCoach')
    const href = await leadsTo(saveFormat(idle, sent({ ...typedFormat, formatId: '', version: '' })))
    const [one] = await every()
    expect(href).toBe(`/club/formats/${one?.id}`)
    expect(one).toMatchObject({ takenFrom: null, isPutAway: false })
    expect(one?.format).toEqual({
      name: 'Sevens of our league',
      ages: [9, 10],
      aSide: 7,
      hasKeeper: true,
      periodSeconds: [720, 720, 720, 720],
      breakSeconds: 180,
      isShortGames: false,
      mostSubstitutions: null,
      changesAtBreaksOnly: false,
      mayReturn: true,
      leastTime: {
        share: 0.5,
        periods: null,
        late: [
          { arrivesIn: 1, periods: 2 },
          { arrivesIn: 2, periods: 1 },
          { arrivesIn: 3, periods: 1 },
        ],
        wherePossible: false,
      },
      mostKeeperPeriods: 2,
      mostSecondsADay: null,
      mostPlayers: 12,
      fewestPlayers: 5,
      shapes: [
        { name: '2-3-1', places: { keeper: 1, back: 2, middle: 3, forward: 1 } },
        { name: '3-2-1', places: { keeper: 1, back: 3, middle: 2, forward: 1 } },
      ],
      source: { body: 'The league of the valley', season: '2026/27', readAt: '', isFromMemory: false },
      note: '',
    })
  })

  it('comes out of its own form as it went in, each of those to begin with too', () => {
    for (const { format } of publishedFormats.formats) {
      const form = openedForm({ id: newId(), format, takenFrom: null, isPutAway: false })
      const source = format.source && { ...format.source, isFromMemory: false }
      expect(saveFormatInput.parse(form).format).toEqual({ ...format, source })
    }
  })

  it('takes lengths that differ, and halves of minutes with a point or a comma', async () => {
    askAs(at.club, 'headCoach')
    const one = await aFormat()
    await save(one, { periods: '3', minutes: '20 20 12,5', breakMinutes: '2.5' })
    const { format } = await held(one.id)
    expect([format.periodSeconds, format.breakSeconds]).toEqual([[1200, 1200, 750], 150])
  })

  it('is refused with a slip, beside its field, and nothing is lost', async () => {
    askAs(at.club, 'headCoach')
    const one = await aFormat()
    await aFormat({ name: 'Our sevens two' })
    for (const [typed, path, words] of slips) {
      const answer = await save(one, typed)
      const problems = [{ path, message: expect.stringMatching(words) }]
      expect([typed, answer]).toMatchObject([typed, { status: 'refused', problems, typed }])
    }
    expect(await held(one.id)).toEqual(one)
  })

  it('is told of all its slips at once', async () => {
    askAs(at.club, 'headCoach')
    const one = await aFormat()
    await aFormat({ name: 'Our sevens two' })
    const answer = await save(one, { minutes: '99', shapes: '2-2-1', agesFrom: '9', name: 'Our sevens two' })
    const paths = ['agesTo', 'minutes', 'shapes', 'name'].map((path) => ({ path }))
    expect(answer).toMatchObject({ problems: paths })
  })

  it('is not written over when somebody else saved meanwhile', async () => {
    askAs(at.club, 'headCoach')
    const one = await aFormat()
    const answers = await Promise.all([save(one, { note: 'One.' }), save(one, { note: 'Two.' })])
    const refused = answers.filter((answer) => typeof answer !== 'string')
    expect(refused).toMatchObject([{ problems: [{ message: expect.stringContaining('at the same time') }] }])
  })
})

describe('a format that is taken over', () => {
  it('keeps its source, and what the club changes of it is said', async () => {
    askAs(at.club, 'headCoach')
    const href = await leadsTo(takeFormat(idle, sent({ key: 'usa-9' })))
    const [one] = await every()
    expect(href).toBe(`/club/formats/${one?.id}`)
    if (!one) throw new Error('nothing was taken over')
    const viewer = await viewerOf(at, 'headCoach')
    expect((await loadFormats(viewer)).published.map(({ key }) => key)).not.toContain('usa-9')
    expect((await loadFormat(viewer, one.id)).format.changed).toEqual([])
    await save(one, { minutes: '25', sourceBody: 'Somebody else' })
    const page = await loadFormat(viewer, one.id)
    expect(page.format.changed).toEqual(['periodSeconds'])
    expect(page.format.format.source).toEqual(one.format.source)
    expect(await takeFormat(idle, sent({ key: 'usa-9' }))).toMatchObject({
      problems: [{ message: expect.stringContaining('of this name already') }],
    })
  })

  it('is refused where there is none', async () => {
    askAs(at.club, 'headCoach')
    expect(await takeFormat(idle, sent({ key: 'nobody-12' }))).toMatchObject({ status: 'refused' })
    expect(await every()).toEqual([])
  })

  it('is taken over once where the button is pressed twice', async () => {
    askAs(at.club, 'headCoach')
    const press = () => leadsTo(takeFormat(idle, sent({ key: 'usa-9' })))
    await Promise.all([press(), press()])
    expect((await every()).filter(({ takenFrom }) => takenFrom === 'usa-9')).toHaveLength(1)
  })
})

describe('one of ours that is taken over', () => {
  it('has no source to keep: the club can name its league', async () => {
    askAs(at.club, 'headCoach')
    await leadsTo(takeFormat(idle, sent({ key: 'ours-7-halves' })))
    const [one] = await every()
    if (one) await save(one, { sourceBody: 'The league of the valley' })
    const page = await loadFormat(await viewerOf(at, 'headCoach'), one?.id ?? '')
    expect(page.format.format.source).toMatchObject({ body: 'The league of the valley' })
    expect(page.format.changed).toEqual(['source'])
  })
})

describe('a published rule of least time', () => {
  it('is offered where it fits, put in with where it is from, and replaces the one before', async () => {
    askAs(at.club, 'headCoach')
    const one = await aFormat({ periodSeconds: [720, 720, 720, 720], note: 'Ours.' })
    const viewer = await viewerOf(at, 'headCoach')
    const offered = (await loadFormat(viewer, one.id)).leastTimes.map(({ key }) => key)
    expect(offered).toContain('three-of-four')
    for (const key of ['half', 'three-of-four'])
      expect(await takeLeastTime(idle, sent({ formatId: one.id, key }))).toMatchObject({ status: 'done' })
    const { format } = await held(one.id)
    expect(format.leastTime).toEqual({ share: null, periods: 3, late: [], wherePossible: true })
    expect(format.mostKeeperPeriods).toBe(2)
    expect(format.note.split('\n')).toEqual(['Ours.', expect.stringMatching(/^Least time: one AYSO region/)])
  })

  it('is refused where it does not fit, with what would', async () => {
    askAs(at.club, 'headCoach')
    const halves = await aFormat()
    expect(
      (await loadFormat(await viewerOf(at, 'headCoach'), halves.id)).leastTimes.map(({ key }) => key),
    ).not.toContain('three-of-four')
    expect(await takeLeastTime(idle, sent({ formatId: halves.id, key: 'three-of-four' }))).toMatchObject({
      problems: [{ message: expect.stringMatching(/4 periods, and Our sevens has 2/) }],
    })
    const many = await aFormat({ name: 'For many', mostPlayers: 16 })
    expect(await takeLeastTime(idle, sent({ formatId: many.id, key: 'half-recreational' }))).toMatchObject({
      problems: [{ message: expect.stringMatching(/16 players.*14 at most/) }],
    })
    expect(await held(many.id)).toEqual(many)
  })
})

describe('what a squad plays', () => {
  it('is chosen, and such a format is not put away', async () => {
    askAs(at.club, 'headCoach')
    const one = await aFormat()
    const { squadId } = at.club
    expect(await at.club.run((tx) => findFormatOfSquad(tx, squadId))).toBeNull()
    await chooseFormat(idle, sent({ squadId, formatId: one.id }))
    expect(await at.club.run((tx) => findFormatOfSquad(tx, squadId))).toEqual(one)
    const away = (what: string) => putFormatAway(idle, sent({ formatId: one.id, what }))
    expect(await away('putAway')).toMatchObject({
      problems: [{ message: expect.stringMatching(/plays Our sevens/) }],
    })
    await chooseFormat(idle, sent({ squadId, formatId: '' }))
    expect(await away('putAway')).toMatchObject({ status: 'done' })
    expect(await chooseFormat(idle, sent({ squadId, formatId: one.id }))).toMatchObject({
      problems: [{ path: 'formatId', message: expect.stringContaining('is put away') }],
    })
    expect(await chooseFormat(idle, sent({ squadId, formatId: newId() }))).toMatchObject({
      status: 'refused',
    })
    expect(await chooseFormat(idle, sent({ squadId: newId(), formatId: '' }))).toMatchObject({
      status: 'refused',
    })
  })
})
