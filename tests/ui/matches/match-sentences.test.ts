import { describe, expect, it } from 'vitest'
import {
  belowText,
  leastTimeSentence,
  linesSentence,
  longDayText,
  promiseSentence,
  rangeSentence,
  startsSentence,
  widestSentence,
} from '#ui/matches/match-sentences'

describe('sentences of the matches', () => {
  it('say between which parts of their time everyone was on', () => {
    expect(rangeSentence({ matches: 9, least: 0.414, most: 0.577 })).toBe(
      'Over 9 matches everyone had between 41 and 58 % of the time they were there for.',
    )
    expect(rangeSentence({ matches: 1, least: 0.7, most: 0.7 })).toBe(
      'Over 1 match everyone had 70 % of the time they were there for.',
    )
  })

  it('name everyone at the widest difference, and nobody where there is none', () => {
    const rows = [
      { name: 'Ada', gapSeconds: -1320 },
      { name: 'Bo', gapSeconds: 1310 },
      { name: 'Cy', gapSeconds: 60 },
    ]
    expect(widestSentence(rows)).toBe(
      'Widest difference from an even share: Ada, 22 min less; Bo, 22 min more.',
    )
    expect(widestSentence([{ name: 'Ada', gapSeconds: 20 }])).toBeNull()
    expect(widestSentence([])).toBeNull()
  })

  it('say what is promised', () => {
    expect(promiseSentence(null, 0.5)).toBe(
      'Everyone is promised, in each match: 50 % of the time they are there for.',
    )
    expect(promiseSentence(null, 0)).toBe('No least time is promised.')
    const late = [{ arrivesIn: 1, periods: 2 }]
    expect(promiseSentence({ share: 0.5, periods: 3, late, wherePossible: true }, 0.25)).toBe(
      'Everyone is promised, in each match: 50 % of the time they are there for, 3 whole periods for who is there throughout and 2 periods for who comes during period 1, where the numbers allow it.',
    )
  })

  it('say what was missing, in seconds where minutes would hide it', () => {
    const late = { playedSeconds: 720, leastSeconds: 1500, reason: 'late' } as const
    expect(belowText(late)).toBe('12 min of the 25 promised, came late')
    expect(belowText({ playedSeconds: 1490, leastSeconds: 1500, reason: null })).toBe(
      '10 s less than the 25 min promised',
    )
  })

  it('say starts and lines of one player, the parts adding up to all', () => {
    const match = { isStart: true, dueStarts: 0.7, lines: { keeper: 0, back: 400, middle: 0, forward: 200 } }
    expect(startsSentence([match, { ...match, isStart: false }])).toBe(
      'Started 1 of 2 matches; an even sharing of the first places would give 1.4.',
    )
    expect(linesSentence([match])).toBe('Of the time on the pitch: back 67 %, forward 33 %.')
    expect(linesSentence([])).toBe('')
  })

  it('say in how many matches the least time was kept', () => {
    const kept = { share: 0.5, matches: 9, matchesBelow: 0, timesBelow: 0, timesThroughout: 0 }
    expect(leastTimeSentence(kept)).toBe('Everyone had at least 50 % of the time there in all 9 matches.')
    expect(leastTimeSentence({ ...kept, matches: 1 })).toBe(
      'Everyone had at least 50 % of the time there in the one match.',
    )
    expect(leastTimeSentence({ ...kept, matchesBelow: 2, timesBelow: 3, timesThroughout: 1 })).toBe(
      'In 2 of 9 matches somebody had less than 50 % of the time there: 3 times in all, 1 of them there throughout.',
    )
  })

  it('say when a day was too long, and never round it away', () => {
    const day = { name: 'Bo', day: '2025-10-04', matches: 3, playedSeconds: 3601, mostSecondsADay: 3600 }
    expect(longDayText(day)).toBe(
      'Bo played 61 min on Sat, 4 Oct 2025 in 3 matches; the format allows 60 min a day.',
    )
  })
})
