import { describe, expect, it } from 'vitest'
import { plainFormat } from '#lineup/draft/plain-format'
import type { MatchFormat } from '#match/format/match-format'
import { periodsText } from '#ui/formats/even-share-part'
import { formatInShort, formatSentences } from '#ui/formats/format-sentences'
import { changedWords, sourceText } from '#ui/formats/source-text'

const said = (parts: Partial<MatchFormat>) =>
  Object.fromEntries(formatSentences({ ...plainFormat, ...parts }).map(({ about, text }) => [about, text]))
const noPromise = plainFormat.leastTime
const quarters = [720, 720, 720, 720]

describe('a format in words', () => {
  it('says players, time, changes and least time, and no limit that there is not', () => {
    expect(said({})).toEqual({
      Players: 'Seven at once, one of them in goal; as 2‑3‑1.',
      Time: 'Two periods of 25 minutes, 10 minutes between them.',
      Changes: 'As many as one likes, at any time. Whoever came off may come on again.',
      'Least time': 'As the club’s fair-play policy says.',
    })
  })

  it('says every limit there is', () => {
    const all = said({
      ...{ ages: [9, 10], mostKeeperPeriods: 1, mostSecondsADay: 3000, mostPlayers: 12, fewestPlayers: 5 },
      ...{ mostSubstitutions: 1, changesAtBreaksOnly: true, mayReturn: false },
    })
    expect(all.Players).toMatch(
      /12 at most may be on the list of a match\. With fewer than 5 a match is not begun\.$/,
    )
    expect(all.Changes).toBe(
      '1 player may come on, between periods only. Whoever came off may not come on again.',
    )
    expect(all.Goal).toBe('One player keeps goal for 1 period of a match at most.')
    expect(all['In a day']).toMatch(/50 minutes at most/)
    expect(all.Ages).toBe('Squads under 9 to under 10.')
  })

  it('says what is promised, and for how many that is possible', () => {
    const least = (leastTime: Partial<MatchFormat['leastTime']>) =>
      said({ periodSeconds: quarters, leastTime: { ...noPromise, ...leastTime } })['Least time']
    expect(least({ share: 0.5 })).toBe(
      'Every player has 50 % of the time there. That is possible for up to 14 players.',
    )
    expect(least({ periods: 3, wherePossible: true })).toBe(
      'Every player who is there throughout has 3 whole periods. That is possible for up to 9 players; with more, as much as everybody can have.',
    )
    expect(least({ share: 0.5, periods: 2, late: [{ arrivesIn: 2, periods: 1 }] })).toMatch(
      /^Every player has 50 % .*, and 2 whole periods where .* Who comes during period 2 has 1 whole period\.$/,
    )
  })

  it('says days of short games, lengths that differ and a single period', () => {
    expect(said({ isShortGames: true, periodSeconds: [480, 480, 480], breakSeconds: 0 }).Time).toBe(
      'Three short games of 8 minutes.',
    )
    expect(said({ periodSeconds: [1200, 750] }).Time).toBe(
      'Two periods of 20 and 12.5 minutes, 10 minutes between them.',
    )
    expect(said({ periodSeconds: [900] }).Time).toBe('One period of 15 minutes.')
    expect(
      formatInShort({ ...plainFormat, hasKeeper: false, periodSeconds: [480, 480], isShortGames: true }),
    ).toBe('7 a side without keepers, 2 games × 8 minutes')
    expect(formatInShort({ ...plainFormat, periodSeconds: [1200, 750] })).toBe('7 a side, 20 + 12.5 minutes')
  })
})

describe('an even match in whole periods', () => {
  // Worked by hand: 28 places in quarters for ten, so eight play three, two play two, nobody four.
  it('says who has how many', () => {
    const format = { ...plainFormat, periodSeconds: quarters }
    expect(periodsText(format, 10)).toBe('8 have 3, 2 have 2')
    expect(periodsText(format, 14)).toBe('all have 2')
    expect(periodsText(format, 7)).toBe('all have 4')
  })
})

describe('where a format is from', () => {
  it('names body, season and place, and says what is from memory', () => {
    const source = { body: 'the valley', season: '2026/27', readAt: 'its page', isFromMemory: false }
    expect(sourceText(source)).toBe('As published by the valley (2026/27). Read at: its page.')
    expect(sourceText({ ...source, season: '', readAt: '', isFromMemory: true })).toBe(
      'As published by the valley. Written from memory in part or whole: check it before you rely on it.',
    )
    expect(changedWords(['name', 'periodSeconds', 'leastTime'])).toEqual(['the periods', 'the least time'])
  })
})
