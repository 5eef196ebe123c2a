import { describe, expect, it } from 'vitest'
import type { RunningSpell } from '#lineup/problem'
import { keeperForPeriodRule } from '#lineup/rules/keeper-for-period-rule'
import { mostChangesRule } from '#lineup/rules/most-changes-rule'
import { mostKeeperPeriodsRule } from '#lineup/rules/most-keeper-periods-rule'
import { mostSecondsRule } from '#lineup/rules/most-seconds-rule'
import { mostSubstitutionsRule } from '#lineup/rules/most-substitutions-rule'
import { planOf, smallLineUp } from '../../support/line-up-builder'

function since(line: RunningSpell['line'], seconds: number, periodsKept = 0) {
  return { running: { line, seconds, hasComeOff: false, periodsKept } }
}

describe('one keeper for a period', () => {
  const rules = { keeperForPeriod: true }

  it('is broken where goal changes hands inside one', () => {
    const problem = smallLineUp({ rules })
    expect(keeperForPeriodRule(problem, planOf('KB BB', 'BK MM', 'MM KK', '-- --'))).toEqual([
      { rule: 'keeperForPeriod', window: 1, players: [0] },
    ])
    expect(keeperForPeriodRule(problem, planOf('KK BB', 'BB KK', 'MM MM', '-- --'))).toEqual([])
  })

  it('is not broken where the keeper has to leave', () => {
    const problem = smallLineUp({ rules, players: [{ isThere: [true, false, false, false] }] })
    expect(keeperForPeriodRule(problem, planOf('K- --', 'BK BB', 'MM KK', '-B MM'))).toEqual([])
  })

  it('holds for the keeper of a period that is running', () => {
    const players = [since('keeper', 60), since('back', 60)]
    const problem = smallLineUp({ rules, players, hasStart: false })
    expect(keeperForPeriodRule(problem, planOf('BB BB', 'KK KK', 'MM MM', '-- --'))).toEqual([
      { rule: 'keeperForPeriod', window: 0, players: [0] },
    ])
  })
})

describe('most periods in goal', () => {
  it('counts periods, not spells', () => {
    const problem = smallLineUp({ periods: 3, windows: 2, rules: { mostKeeperPeriods: 2 } })
    const plan = planOf('K- KK -K', 'BK BB KB', 'MM MM MM', '-B -- B-')
    expect(mostKeeperPeriodsRule(problem, plan)).toEqual([
      { rule: 'mostKeeperPeriods', window: 5, players: [0] },
    ])
  })

  it('counts those before, and lets a keeper end the one that runs', () => {
    const players = [since('keeper', 60, 1), since('back', 60, 2)]
    const problem = smallLineUp({ players, hasStart: false, rules: { mostKeeperPeriods: 2 } })
    expect(mostKeeperPeriodsRule(problem, planOf('KK KB', 'BB BK', 'MM MM', '-- --'))).toEqual([
      { rule: 'mostKeeperPeriods', window: 2, players: [0] },
      { rule: 'mostKeeperPeriods', window: 3, players: [1] },
    ])
  })
})

describe('most time on', () => {
  it('is over all windows', () => {
    const problem = smallLineUp({
      players: [{ mostSeconds: 600 }, { mostSeconds: 899 }, { mostSeconds: null }],
    })
    expect(mostSecondsRule(problem, planOf('KK --', 'BB B-', 'MM MM', '-- KK'))).toEqual([
      { rule: 'mostSeconds', window: 0, players: [1] },
    ])
  })
})

describe('changes', () => {
  const plan = planOf('KK KK', 'B- BB', 'MM -M', '-B M-')

  it('are players coming on inside a period; breaks cost nothing', () => {
    expect(mostChangesRule(smallLineUp({ rules: { mostChanges: 2 } }), plan)).toEqual([])
    expect(mostChangesRule(smallLineUp({ rules: { mostChanges: 1 } }), plan)).toHaveLength(1)
  })

  it('count at the first window where its period is running', () => {
    const players = [since('keeper', 60), since(null, 60), since('middle', 60), since('back', 60)]
    const rules = { mostChanges: 2 }
    expect(mostChangesRule(smallLineUp({ rules, players, hasStart: false }), plan)).toHaveLength(1)
  })
})

describe('most players coming on in a match', () => {
  it('counts breaks too, not the start', () => {
    const plan = planOf('KK KK', 'B- BB', 'MM --', '-B MM')
    expect(mostSubstitutionsRule(smallLineUp({ rules: { mostSubstitutions: 2 } }), plan)).toEqual([])
    expect(mostSubstitutionsRule(smallLineUp({ rules: { mostSubstitutions: 1 } }), plan)).toEqual([
      { rule: 'mostSubstitutions', window: 2, players: [1] },
    ])
  })

  it('counts who was off at the last whistle, where a later period begins', () => {
    const players = [since('keeper', 0), since('back', 0), since(null, 0), since('middle', 0)]
    const problem = smallLineUp({ players, hasStart: false, rules: { mostSubstitutions: 0 } })
    expect(mostSubstitutionsRule(problem, planOf('KK KK', 'BB BB', 'MM MM', '-- --'))).toEqual([
      { rule: 'mostSubstitutions', window: 0, players: [2] },
    ])
  })
})
