import type { AheadProblem } from '#ahead/problem'
import type { SeatSeconds } from '#ahead/seat-column'
import type { Proof } from '#common/proof'
import type { ColumnSeconds } from '#rotation/problem'

/** By practice: the place of the chosen offer in its list. */
export type AheadChoices = readonly number[]

/**
 * What is chosen, and what it is played for: `leans[practice][player]` are expected seconds above (below: negative) the
 * even share in each seat column. Over the players of a practice every column sums to 0.
 */
export type AheadPlan = {
  readonly choices: AheadChoices
  readonly leans: readonly (readonly SeatSeconds[])[]
}

/** How a player is expected to stand after the last practice of the plan. */
export type ExpectedEnd = {
  readonly gap: ColumnSeconds
  readonly playedSeconds: number
  /** By theme: expected time played in it, and what is due of it by its wished share. */
  readonly themeSeconds: readonly number[]
  readonly themeDue: readonly number[]
}

/** Minutes: gaps and shortfalls, each counted ten times beyond its tolerance. Lower is better. */
export type AheadValue = { readonly balance: number; readonly themes: number; readonly all: number }

/** A plan with what is proven of its value (in expectation, minutes). */
export type SolvedAhead = { readonly plan: AheadPlan; readonly proof: Proof }

/** The offer chosen for a practice. @throws never: choices of a checked plan are places in the list. */
export function chosenOffer(problem: AheadProblem, choices: AheadChoices, practice: number) {
  return problem.practices[practice]?.offers[choices[practice] ?? -1] ?? null
}
