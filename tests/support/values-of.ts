import { type LineUp, type LineUpValues, lineUpGoals } from '#lineup/line-up'

/** What a line-up says that it comes to, goal by goal. */
export function valuesOf({ proofs }: LineUp): LineUpValues {
  return Object.fromEntries(lineUpGoals.map((goal) => [goal, proofs[goal].value])) as LineUpValues
}
