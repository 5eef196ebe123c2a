/** Milliseconds in one go: between two of them the page draws and answers. */
const burstMs = 12

/**
 * Works off what is reckoned in slices, a few thousandths of a second at a time. Null: it was stopped.
 */
export async function runSlices<Result>(
  slices: Generator<number, Result>,
  { signal, onPart }: { readonly signal: AbortSignal; readonly onPart: (part: number) => void },
): Promise<Result | null> {
  while (!signal.aborted) {
    const until = performance.now() + burstMs
    let step = slices.next()
    while (!step.done && performance.now() < until) step = slices.next()
    if (step.done) return step.value
    onPart(step.value)
    await new Promise((resolve) => setTimeout(resolve))
  }
  return null
}
