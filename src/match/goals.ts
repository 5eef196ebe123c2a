/** Goals of a match, ours and the other side's. Never a child's: nobody is compared by them. */
export type Goals = { readonly ours: number; readonly theirs: number }

/** What is more is a slip. */
export const mostGoals = 99

/** "3–1", ours first. */
export function sayGoals({ ours, theirs }: Goals): string {
  return `${ours}–${theirs}`
}
