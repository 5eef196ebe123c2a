import { describe, expect, it } from 'vitest'
import { sayChange } from '#ahead/explain/say-change'
import { whatChanged } from '#ahead/explain/what-changed'
import type { AheadPlan } from '#ahead/plan'
import type { PlannedPractice } from '#ahead/term-plan'
import { plainAhead } from '../../support/plain-ahead'

const problem = plainAhead({ weeks: [3, 4, 5], themes: [{}, {}], designs: 2 })
const planned = (sessionId: string, theme: number, design = theme * 2): PlannedPractice => ({
  ...{ sessionId, themeId: `t${theme}`, designId: `d${design}` },
  isHeld: false,
})
const now = (choices: readonly number[]): { problem: typeof problem; plan: AheadPlan } => ({
  problem,
  plan: { choices, leans: [] },
})
const words = {
  ...{ problem, plan: now([0, 2, 2]).plan, nameOf: () => 'Ada', sayDay: (day: string) => day },
  themeName: (id: string) => `Theme ${id.slice(1)}`,
  designName: (id: string) => `Design ${id.slice(1)}`,
  dayOf: () => null,
}

describe('what changed since a plan was saved', () => {
  it('is nothing where it is the plan that was saved', () => {
    const practices = [planned('s1', 0), planned('s2', 1), planned('s3', 1)]
    expect(whatChanged({ practices, asOf: '2026-01-06' }, now([0, 2, 2]), [])).toEqual([])
  })

  it('says of every practice that was written whether it was as planned', () => {
    const practices = [
      planned('w1', 0),
      planned('w2', 0),
      planned('s1', 0),
      planned('s2', 1),
      planned('s3', 1),
    ]
    const record = [
      { sessionId: 'w1', day: '2026-01-08', themeIds: ['t0', 'top'] },
      { sessionId: 'w2', day: '2026-01-12', themeIds: ['t1'] },
      { sessionId: 'w3', day: '2026-01-13', themeIds: ['t1'] },
    ]
    const changes = whatChanged({ practices, asOf: '2026-01-06' }, now([0, 2, 2]), record)
    expect(changes.map((own) => own.kind === 'written' && [own.planned, own.isAsPlanned])).toEqual([
      ['t0', true],
      ['t0', false],
      [null, false],
    ])
    expect(changes.map((own) => sayChange(own, words))).toEqual([
      '2026-01-08 is in the book now, with “Theme 0” as planned.',
      '2026-01-12 is in the book now, without “Theme 0”, which was planned for it: what it was to make up for is open again.',
      '2026-01-13 is in the book now; it was not planned here, and counts all the same.',
    ])
  })

  it('says which practice has gone, is new, or is about something else, and why', () => {
    const practices = [planned('gone', 1), planned('s2', 0), planned('s3', 1, 3)]
    const changes = whatChanged({ practices, asOf: null }, now([0, 2, 2]), [])
    expect(changes.map(({ kind }) => kind)).toEqual(['gone', 'new', 'other', 'other'])
    const said = changes.map((own) => sayChange(own, words))
    expect(said[0]).toContain('A practice with “Theme 1” is no longer to come')
    expect(said[1]).toContain('is new in the plan: “Theme 0”')
    expect(said[2]).toContain('is “Theme 1” instead of “Theme 0”. “Theme 1”')
    expect(said[3]).toContain('stays “Theme 1”, with another design than “Design 3”')
  })

  it('says where what was planned cannot be played any more', () => {
    const practices = [planned('s1', 0, 9), planned('s2', 1), planned('s3', 1)]
    const [change] = whatChanged({ practices, asOf: null }, now([0, 2, 2]), [])
    expect(change && sayChange(change, words)).toContain('“Design 9” cannot be played then any more')
  })
})
