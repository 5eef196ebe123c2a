/** What a reckoning in slices comes to, when nobody needs to stop it. `tell` is told the part that is done, 0-1. */
export function inOneGo<Result>(slices: Generator<number, Result>, tell?: (part: number) => void): Result {
  for (;;) {
    const step = slices.next()
    if (step.done) return step.value
    tell?.(step.value)
  }
}
