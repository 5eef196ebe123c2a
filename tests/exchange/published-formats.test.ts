import { describe, expect, it } from 'vitest'
import { readPublishedFormats } from '#exchange/published-formats-json'
import { formatChanges } from '#match/format/format-changes'
import { formatFaults } from '#match/format/format-faults'
import guidance from '../../seeds/published/guidance.json'
import file from '../../seeds/published/match-formats.json'

const { formats, leastTimes } = readPublishedFormats(file)
const ours = formats.filter(({ format }) => format.source === null)
const bodies = formats.filter(({ format }) => format.source !== null)

describe('the formats that a club can begin with', () => {
  it('each make sense, under a key and a name of their own', () => {
    for (const { key, format } of formats) expect([key, formatFaults(format)]).toEqual([key, []])
    expect(new Set(formats.map(({ key }) => key)).size).toBe(formats.length)
    expect(new Set(formats.map(({ format }) => format.name)).size).toBe(formats.length)
  })

  it('ours are of every size, with and without a keeper, of one to four periods, and days of short games', () => {
    const sizes = new Set(ours.map(({ format }) => format.aSide))
    expect([...sizes].sort((one, other) => one - other)).toEqual([3, 4, 5, 6, 7, 8, 9, 10, 11])
    const lengths = ours
      .filter(({ format }) => !format.isShortGames)
      .map(({ format }) => format.periodSeconds.length)
    expect(new Set(lengths)).toEqual(new Set([1, 2, 3, 4]))
    expect(new Set(ours.map(({ format }) => format.hasKeeper))).toEqual(new Set([true, false]))
    expect(ours.some(({ format }) => format.isShortGames && format.periodSeconds.length > 4)).toBe(true)
    for (const { format } of ours) expect(format.note).toMatch(/no source/)
  })

  // The table of small-sided games of the U.S. body's initiatives, mandated from August 2017, in a club's reprint; the
  // length for the youngest is from memory, and says so.
  it.each([
    [6, 8, 4, false, [10, 10, 10, 10]],
    [9, 10, 7, true, [25, 25]],
    [11, 12, 9, true, [30, 30]],
    [13, 14, 11, true, [35, 35]],
    [15, 16, 11, true, [40, 40]],
    [17, 19, 11, true, [45, 45]],
  ])('under %i to %i: as the table has it', (from, to, aSide, hasKeeper, minutes) => {
    const [found] = bodies.filter(({ format }) => format.ages?.[0] === from)
    expect(found?.format).toMatchObject({ ages: [from, to], aSide, hasKeeper })
    expect(found?.format.periodSeconds.map((seconds) => seconds / 60)).toEqual(minutes)
    expect(found?.format.source?.isFromMemory).toBe(from === 6)
  })

  it('have the players of the pitches that the same body publishes for the age', () => {
    const pitches = guidance.pitches.filter(({ source }) => source === 'usaPitches')
    expect(pitches.length).toBeGreaterThan(3)
    for (const { format } of bodies.filter(({ key }) => key.startsWith('usa-'))) {
      const age = format.ages?.[0] ?? 0
      const pitch = pitches.find(({ ages }) => (ages[0] ?? 99) <= age && age <= (ages[1] ?? 0))
      expect([pitch?.aSide, pitch?.hasKeeper]).toEqual([format.aSide, format.hasKeeper])
    }
  })

  it('refuse a source that the file does not have, and what is no format', () => {
    const [first] = file.formats
    const one = { ...file, formats: [{ ...first, source: 'nobody' }] }
    expect(() => readPublishedFormats(one)).toThrow(/no source nobody/)
    const other = { ...file, formats: [{ ...first, format: { ...first?.format, aSide: 12 } }] }
    expect(() => readPublishedFormats(other)).toThrow(/aSide/)
  })
})

describe('rules of least time', () => {
  it('fit a format with as many periods as they speak of, and say where they are from', () => {
    for (const rule of leastTimes) {
      const fits = ours.find(
        ({ format }) =>
          format.hasKeeper && (rule.periods ?? format.periodSeconds.length) === format.periodSeconds.length,
      )
      const { leastTime, mostKeeperPeriods } = rule
      expect(fits).toBeDefined()
      if (fits) expect(formatFaults({ ...fits.format, leastTime, mostKeeperPeriods })).toEqual([])
      expect(rule.source.readAt).not.toBe('')
    }
  })
})

describe('what a club has changed of a format', () => {
  it('is named by part, whatever the order of the keys and the name', () => {
    const [first] = formats
    if (!first) throw new Error('no format')
    const turned = JSON.parse(JSON.stringify(first.format), (_key, value) =>
      value && typeof value === 'object' && !Array.isArray(value)
        ? Object.fromEntries(Object.entries(value).reverse())
        : value,
    )
    expect(formatChanges(first.format, { ...turned, name: 'Ours' })).toEqual([])
    expect(formatChanges(first.format, { ...turned, periodSeconds: [300, 300], mayReturn: false })).toEqual([
      'periodSeconds',
      'mayReturn',
    ])
  })
})
