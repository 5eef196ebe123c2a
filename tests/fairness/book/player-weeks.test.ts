import { describe, expect, it } from 'vitest'
import { accountPractice } from '#fairness/account-practice'
import { namesApart } from '#fairness/book/names-apart'
import { playerWeeks } from '#fairness/book/player-weeks'
import { runningGaps } from '#fairness/book/running-gaps'
import { countWritten } from '#fairness/book/written-count'
import type { Turn } from '#practice/turn'
import { defaultPolicy } from '#squad/policy'
import type { Written } from '#squad/written'

const station = { attack: ['a'], defend: ['b'], keep: [] }
const turn: Turn = { start: 0, end: 600, themeId: null, stations: [station] }

function held(day: string, written: Written, present: readonly string[] = ['a', 'b']) {
  const register = present.map((playerId) => ({ playerId, from: 0, to: 600 }))
  const turns = present.length === 2 ? [turn] : []
  return accountPractice(
    { id: day, day, lengthSeconds: null, register, turns },
    { able: new Set(['a', 'b']), members: new Set(['a', 'b']), written, middleAttackShare: 0.5 },
  )
}

describe('a season week by week', () => {
  it('keeps what is not written apart from what was nothing', () => {
    const weeks = playerWeeks([held('2026-03-10', 'notWritten'), held('2026-03-03', 'tapped')], 'a')
    expect(weeks.map(({ firstDay, written, notWritten }) => [firstDay, written, notWritten])).toEqual([
      ['2026-03-03', 1, 0],
      ['2026-03-10', 0, 1],
    ])
    expect(weeks[0]?.seconds).toEqual({ attack: 600, defend: 0, keep: 0, rest: 0 })
  })

  it('puts the days about New Year into one ISO week, 53 of 2026', () => {
    // ISO 8601: 2026 has 53 weeks; 31 December 2026 is a Thursday, so Friday 1 January 2027 belongs to the same week.
    const weeks = playerWeeks([held('2026-12-31', 'tapped'), held('2027-01-01', 'asPlanned')], 'b')
    expect(weeks.map(({ week, written, asPlanned }) => [week, written, asPlanned])).toEqual([
      ['2026-W53', 2, 1],
    ])
    expect(weeks[0]?.seconds.defend).toBe(1200)
  })

  it('says how a player was, away too', () => {
    const weeks = playerWeeks([held('2026-03-03', 'tapped'), held('2026-03-05', 'tapped', ['b'])], 'a')
    expect(weeks[0]?.attendance).toEqual(['here', 'away'])
  })
})

describe('running differences', () => {
  it('begin with the first session and add up: ten minutes of attack where five were due, twice', () => {
    const accounts = [
      held('2026-03-10', 'tapped'),
      held('2026-03-03', 'tapped'),
      held('2026-03-17', 'notWritten'),
    ]
    const series = runningGaps({ accounts }, { playerId: 'a', kind: 'practice', policy: defaultPolicy })
    const attack = series.find(({ role }) => role === 'attack')?.points
    expect(attack).toEqual([
      { day: '2026-03-03', gapSeconds: 300, toleranceSeconds: 600 },
      { day: '2026-03-10', gapSeconds: 600, toleranceSeconds: 600 },
    ])
  })
})

describe('how much is written', () => {
  it('is enough from the share of the policy on, edge included, and never of nothing', () => {
    const of = (written: number, not: number) =>
      countWritten(
        [
          ...Array.from({ length: written }, () => ({ written: 'tapped' as const })),
          ...Array.from({ length: not }, () => ({ written: 'notWritten' as const })),
        ],
        { writtenShareNeeded: 0.6 },
      )
    expect(of(9, 5)).toEqual({ held: 14, written: 9, asPlanned: 0, isEnough: true })
    expect(of(3, 2).isEnough).toBe(true)
    expect(of(5, 4).isEnough).toBe(false)
    expect(of(0, 0).isEnough).toBe(false)
  })
})

describe('two players of one name', () => {
  it('stay apart, the same one always first', () => {
    const player = (id: string, name: string) => ({ id, name, keeps: true, wantsToKeep: false })
    const players = [player('2', 'Sam Reed'), player('3', 'Al Orr'), player('1', 'Sam Reed')]
    const names = (list: typeof players) => namesApart(list).map(({ id, name }) => [id, name])
    expect(names(players)).toEqual([
      ['3', 'Al Orr'],
      ['1', 'Sam Reed'],
      ['2', 'Sam Reed (2)'],
    ])
    expect(names([...players].reverse())).toEqual(names(players))
  })
})
