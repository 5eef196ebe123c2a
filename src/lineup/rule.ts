import type { LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'

/** A rule that a plan breaks: in which window (from 0; the first where it is several), and which players have part in it. */
export type LineUpFault = {
  readonly rule:
    | 'places'
    | 'keeper'
    | 'presence'
    | 'mostSeconds'
    | 'keeperForPeriod'
    | 'mostKeeperPeriods'
    | 'leastSpell'
    | 'longestSpell'
    | 'longestOff'
    | 'mostChanges'
    | 'mostSubstitutions'
    | 'mayReturn'
    | 'apart'
    | 'fixed'
    | 'notYet'
  readonly window: number
  readonly players: readonly number[]
}

/** A hard rule: every break of it in a plan. */
export type LineUpRule = (problem: LineUpProblem, plan: LineUpPlan) => readonly LineUpFault[]
