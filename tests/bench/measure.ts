/** One line of a table: what was measured against which peer, medians in milliseconds, and how often each ran. */
export type Measured = {
  readonly what: string
  readonly ms: number
  readonly peer: string
  readonly peerMs: number
  readonly runs: number
}

/** Median time of `runs` runs in milliseconds, after one run that is not counted. */
export async function medianMs(runs: number, work: () => unknown): Promise<number> {
  await work()
  const times: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now()
    await work()
    times.push(performance.now() - start)
  }
  return median(times)
}

/** Both sides in turn, run by run, so that a slow moment of the machine falls on both. */
export async function medianPair(
  runs: number,
  works: { readonly ours: () => unknown; readonly peer: () => unknown },
): Promise<{ readonly ms: number; readonly peerMs: number }> {
  await works.ours()
  await works.peer()
  const ours: number[] = []
  const peers: number[] = []
  for (let run = 0; run < runs; run += 1) {
    ours.push(await timeOnce(works.ours))
    peers.push(await timeOnce(works.peer))
  }
  return { ms: median(ours), peerMs: median(peers) }
}

async function timeOnce(work: () => unknown): Promise<number> {
  const start = performance.now()
  await work()
  return performance.now() - start
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length / 2
  const at = (index: number) => sorted[index] ?? Number.NaN
  return Number.isInteger(middle) ? (at(middle - 1) + at(middle)) / 2 : at(Math.floor(middle))
}
