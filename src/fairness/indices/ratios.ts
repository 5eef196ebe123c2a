/**
 * Share ÷ what was due of each player, the numbers that indices are made of. Due is the fair share after agreements of
 * fewer turns, as everywhere on the page: a squad that keeps to what was agreed is even. Who was due nothing is left
 * out: nothing was due, so nothing can be fair or unfair. Who was due something and got nothing stays, as 0.
 */
export function sharesOfDue(
  figures: readonly { readonly seconds: number; readonly dueSeconds: number }[],
): readonly number[] {
  return figures.filter((figure) => figure.dueSeconds > 0).map((figure) => figure.seconds / figure.dueSeconds)
}
