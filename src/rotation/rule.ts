import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'

/** A rule that a plan breaks: in which turn (from 0), and which players have part in it. */
export type RuleBreak = {
  readonly rule:
    | 'presence'
    | 'seats'
    | 'keepers'
    | 'sides'
    | 'keepersStay'
    | 'apart'
    | 'fixed'
    | 'restLimit'
    | 'mostTurns'
    | 'restsAfterTurn'
    | 'neverRestsAlone'
  readonly turn: number
  readonly players: readonly number[]
}

/** A hard rule: every break of it in a plan. */
export type Rule = (problem: RotationProblem, plan: RotationPlan) => readonly RuleBreak[]
