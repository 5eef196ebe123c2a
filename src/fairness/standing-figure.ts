import type { Figure } from '#fairness/account'

/** A figure summed over sessions, with what was agreed and what the causes need beside it. */
export type StandingFigure = Figure & {
  /** `fairSeconds` after agreements of fewer turns: what pages show as due and flags judge. */
  readonly dueSeconds: number
  readonly dueTurns: number
  /** Members' mean of `fullFairSeconds`, summed over the sessions in which the player was a member. */
  readonly membersMeanSeconds: number
}

export const noFigure: StandingFigure = {
  seconds: 0,
  turns: 0,
  fairSeconds: 0,
  fairTurns: 0,
  fullFairSeconds: 0,
  openGoalFairSeconds: 0,
  dueSeconds: 0,
  dueTurns: 0,
  membersMeanSeconds: 0,
}

export function addFigures(a: StandingFigure, b: StandingFigure): StandingFigure {
  return {
    seconds: a.seconds + b.seconds,
    turns: a.turns + b.turns,
    fairSeconds: a.fairSeconds + b.fairSeconds,
    fairTurns: a.fairTurns + b.fairTurns,
    fullFairSeconds: a.fullFairSeconds + b.fullFairSeconds,
    openGoalFairSeconds: a.openGoalFairSeconds + b.openGoalFairSeconds,
    dueSeconds: a.dueSeconds + b.dueSeconds,
    dueTurns: a.dueTurns + b.dueTurns,
    membersMeanSeconds: a.membersMeanSeconds + b.membersMeanSeconds,
  }
}

/** Share less what was due after agreements: negative is short. The number flags judge. */
export function dueGapSeconds(figure: StandingFigure): number {
  return figure.seconds - figure.dueSeconds
}
