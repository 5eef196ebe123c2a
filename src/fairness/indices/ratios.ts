/**
 * Share ÷ fair share of each player, the numbers that indices are made of. Who was due nothing (a fair share of zero)
 * is left out: nothing was due, so nothing can be fair or unfair. Who was due something and got nothing stays, as 0.
 */
export function sharesOfFair(
  figures: readonly { readonly seconds: number; readonly fairSeconds: number }[],
): readonly number[] {
  return figures
    .filter((figure) => figure.fairSeconds > 0)
    .map((figure) => figure.seconds / figure.fairSeconds)
}
