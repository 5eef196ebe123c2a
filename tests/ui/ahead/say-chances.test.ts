import { describe, expect, it } from 'vitest'
import { chanceWord } from '#ahead/chance/chance-word'
import type { ChanceInside, Chances, WayChances } from '#ahead/chance/chances'
import type { HardestToLose, LostPractice } from '#ahead/chance/hardest-in-slices'
import type { AheadProblem } from '#ahead/problem'
import { rotationColumns } from '#rotation/problem'
import { chanceText } from '#ui/ahead/chance-text'
import { chancesSentences, hardestSentence, openColumns, playedSentence } from '#ui/ahead/say-chances'

const inside = (chance: number, reach = 0): ChanceInside => ({
  chance,
  low: Math.max(0, chance - reach),
  high: Math.min(1, chance + reach),
  word: chanceWord(chance),
})

function wayOf(players: readonly { readonly seats: number; readonly themes: number }[]): WayChances {
  return {
    players: players.map(({ seats, themes }) => ({
      all: inside(Math.min(seats, themes)),
      seats: inside(seats),
      themes: inside(themes),
      columns: Object.fromEntries(
        rotationColumns.map((column) => [column, inside(column === 'attack' ? seats : 1)]),
      ) as WayChances['players'][number]['columns'],
      byTheme: [inside(themes), inside(seats), inside(1)],
    })),
    everyone: inside(0),
    meanInside: { all: 0, seats: 0 },
  }
}

const chances = (carryOn: WayChances | null): Chances => ({
  isExact: false,
  played: 1000,
  plan: wayOf([
    { seats: 0.9, themes: 0.7 },
    { seats: 0.8, themes: 0.5 },
    { seats: 0.2, themes: 0.1 },
  ]),
  carryOn,
})

/** The third is not asked for. */
const themes = [0.5, 0.5, 0].map((wishedShare, at) => ({
  id: `t${at}`,
  wishedShare,
})) as unknown as AheadProblem['themes']

describe('chances in sentences', () => {
  it('say how many are likely to end inside, with the plan and as so far', () => {
    expect(chancesSentences(chances(wayOf([{ seats: 0.9, themes: 0 }])), { themes })).toEqual([
      'In roles and situations, 2 of 3 are likely to end the term inside the band with this plan, and 1 if all goes on as so far.',
      'Of the 2 themes that are asked for, a player is likely to get enough of 1 on average with this plan, and of 0.3 if all goes on as so far.',
    ])
  })

  it('leave out what was not played so far, and themes where none is asked for', () => {
    expect(chancesSentences(chances(null), { themes: [] })).toEqual([
      'In roles and situations, 2 of 3 are likely to end the term inside the band with this plan.',
    ])
  })

  it('name what stands in the way of one who is not likely to end inside', () => {
    const { players } = chances(null).plan
    expect(players.map(openColumns)).toEqual([[], [], ['attack']])
  })

  it('say on what they rest', () => {
    expect(playedSentence({ isExact: false, played: 1000 })).toContain('1,000 times, drawing by chance')
    expect(playedSentence({ isExact: true, played: 512 })).toContain('All 512 ways')
    expect(playedSentence({ isExact: true, played: 1 })).toContain('certain who comes')
  })
})

describe('the practice hardest to lose in a sentence', () => {
  const same = { mean: 0, low: 0, high: 0 }
  const loss = (mean: number) => ({ mean, low: mean, high: mean })
  const lost: LostPractice = { practice: 2, fewerInside: same, fewerInSeats: same, moreOutside: same }
  const sentence = (hardest: HardestToLose['hardest']) =>
    hardestSentence({ hardest }, (practice) => `Practice ${practice + 1}`)

  it('names what it costs in players, or where none, in minutes', () => {
    expect(sentence({ lost: { ...lost, fewerInside: loss(1.44) }, by: 'inside' })).toBe(
      'Practice 3 would be hardest to lose: without it, on average, 1.4 players fewer would end inside.',
    )
    expect(sentence({ lost: { ...lost, fewerInSeats: loss(0.02) }, by: 'seats' })).toBe(
      'Practice 3 would be hardest to lose: without it, on average, 0.1 players fewer would end inside in roles and situations.',
    )
    expect(sentence({ lost: { ...lost, moreOutside: loss(1500) }, by: 'seconds' })).toBe(
      'Practice 3 would be hardest to lose: over everyone about 25 min more would end outside the band.',
    )
  })

  it('says that none is where all can be made up for', () => {
    expect(sentence(null)).toMatch(/^No practice would be hard to lose/)
  })
})

describe('a chance in figures', () => {
  it('has its interval, and is never certain where it is not', () => {
    expect(chanceText(inside(0.5, 0.03))).toBe('50 % (47–53)')
    expect(chanceText(inside(0.999, 0.0005))).toBe('99 %')
    expect(chanceText(inside(1))).toBe('100 %')
    expect(chanceText(inside(0))).toBe('0 %')
  })
})
