export const chanceWords = ['likely', 'even', 'unlikely'] as const
export type ChanceWord = (typeof chanceWords)[number]

/** A hair: a chance that is two thirds but for the last digit is two thirds. */
const hair = 1e-9

/** Two in three or more is likely, one in three or fewer unlikely: our own judgement. */
export function chanceWord(chance: number): ChanceWord {
  if (chance >= 2 / 3 - hair) return 'likely'
  return chance <= 1 / 3 + hair ? 'unlikely' : 'even'
}
