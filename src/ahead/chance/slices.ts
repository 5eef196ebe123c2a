/** What a reckoning in slices comes to, when nobody needs to stop it. */
export function inOneGo<Result>(slices: Generator<number, Result>): Result {
  for (;;) {
    const step = slices.next()
    if (step.done) return step.value
  }
}
