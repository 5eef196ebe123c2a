import { describe, expect, it } from 'vitest'
import { findAheadClash } from '#ahead/find-ahead-clash'
import type { AheadProblem } from '#ahead/problem'
import { sayAheadClash } from '#ahead/say-ahead-clash'
import { plainAhead } from '../support/plain-ahead'

const said = (problem: AheadProblem) => findAheadClash(problem).map((clash) => sayAheadClash(problem, clash))

function holding(
  problem: AheadProblem,
  at: number,
  theme: number,
  design: number | null = null,
): AheadProblem {
  return {
    ...problem,
    practices: problem.practices.map((own, index) =>
      index === at ? { ...own, held: { theme, design } } : own,
    ),
  }
}

describe('why no plan of the weeks ahead can be', () => {
  it('is nothing where one can', () => {
    expect(said(plainAhead({ weeks: [1, 2], themes: [{}, {}] }))).toEqual([])
  })

  it('a practice for which no design fits', () => {
    const plain = plainAhead({ weeks: [1], themes: [{}] })
    const practices = plain.practices.map((own) => ({ ...own, offers: [] }))
    expect(said({ ...plain, practices })).toEqual([
      'On 2026-01-05 there is nothing to choose: no design that serves a theme of the programme fits the ground, the time and those expected. Choose another ground, add a design, or leave the practice out.',
    ])
  })

  it('a theme held before its first week', () => {
    const plain = plainAhead({ weeks: [1], themes: [{ firstWeek: 3 }, {}] })
    expect(said(holding(plain, 0, 0))).toEqual([
      'On 2026-01-05 nothing is left to choose: Theme 0 is held there; Theme 0 comes in week 3 at the earliest. Let one of these go, or change it.',
    ])
  })

  it('a theme held that no design serves', () => {
    const plain = plainAhead({ weeks: [1], themes: [{}, {}] })
    const bare = {
      ...plain,
      practices: plain.practices.map((own) => ({ ...own, offers: own.offers.slice(0, 1) })),
    }
    expect(said(holding(bare, 0, 1))).toEqual([
      'On 2026-01-05 Theme 1 is held, and no design that fits the ground, the time and those expected serves it. Hold another theme, add a design to it, or let it go.',
    ])
    expect(said(holding(bare, 0, 1, 1))).toEqual([
      'On 2026-01-05 Theme 1 with Design 1 is held, and that design does not fit the ground, the time or those expected. Hold another design, or let it go.',
    ])
  })

  it('a theme that builds on another, asked for first', () => {
    const plain = plainAhead({
      weeks: [1, 2],
      themes: [{ after: 1 }, {}],
      problem: { blocks: [{ theme: 0, firstWeek: 1, lastWeek: 1 }] },
    })
    expect(said(plain)).toEqual([
      'On 2026-01-05 nothing is left to choose: Theme 0 comes after Theme 1, which cannot be met before it; week 1 is kept for Theme 0. Let one of these go, or change it.',
    ])
  })

  it('a theme that is due and has no room', () => {
    const plain = plainAhead({
      weeks: [2, 3],
      themes: [{ leastWeeksBetween: 3, mostWeeksBetween: 2 }, {}],
      problem: { met: [{ day: '2026-01-05', week: 1, themes: [0], design: null }] },
    })
    expect(said(plain)).toEqual([
      'There is no practice left for Theme 0: Theme 0 comes back after three weeks at the earliest; Theme 0 comes back after two weeks at the latest. Let one of these go, or change it.',
    ])
  })

  it('too few designs to let them rest; days as the page says them', () => {
    const plain = plainAhead({ weeks: [1, 2], themes: [{}], problem: { designRest: 1 } })
    const [clash] = findAheadClash(plain)
    expect(clash && sayAheadClash(plain, clash, (day) => `Monday ${Number(day.slice(8))} January`)).toBe(
      'On Monday 12 January nothing is left to choose: a design rests for one practice after it was used. Let designs come back sooner, or add designs.',
    )
  })
})
