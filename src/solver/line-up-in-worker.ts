import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import type { LineUpCall, LineUpWord, LineUpWorkerSettings } from '#solver/line-up-messages'

/** As much of a worker as is needed here: a page's own, or a thread's that looks like one. */
export type LineUpWorker = {
  onmessage: ((event: { readonly data: LineUpWord }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  readonly postMessage: (call: LineUpCall) => void
  readonly terminate: () => void
}

/**
 * What came of a search in a worker. `stopped` and `failed` have the best line-up so far with what is proven of it, or
 * null when there was none yet.
 */
export type WorkedLineUp =
  | { readonly kind: 'solved'; readonly lineUp: LineUp }
  | { readonly kind: 'stopped'; readonly lineUp: LineUp | null }
  | { readonly kind: 'impossible'; readonly clash: readonly LineUpClash[] }
  | { readonly kind: 'failed'; readonly lineUp: LineUp | null; readonly message: string }

export type LineUpWatch = {
  /** Told of every better line-up. */
  readonly onBetter?: (lineUp: LineUp, elapsedMs: number) => void
  /** Aborted: the search ends at once, with the best line-up so far. */
  readonly signal?: AbortSignal
}

function pageWorker(): LineUpWorker {
  const worker = new Worker(new URL('./line-up-worker.ts', import.meta.url), { type: 'module' })
  // Its handlers take any message; what comes is what line-up-worker.ts says.
  return worker as unknown as LineUpWorker
}

/**
 * Solves a line-up beside the page, which stays free. A running solver hears nothing, so a stop ends its worker; and each
 * call has a worker of its own, as the solver's memory only ever grows.
 */
export function solveLineUpInWorker(
  problem: LineUpProblem,
  settings: LineUpWorkerSettings,
  { onBetter, signal }: LineUpWatch = {},
  start: () => LineUpWorker = pageWorker,
): Promise<WorkedLineUp> {
  if (signal?.aborted) return Promise.resolve({ kind: 'stopped', lineUp: null })
  const worker = start()
  return new Promise((resolve) => {
    let best: LineUp | null = null
    const end = (outcome: WorkedLineUp) => {
      signal?.removeEventListener('abort', stop)
      worker.onmessage = null
      worker.onerror = null
      worker.terminate()
      resolve(outcome)
    }
    const stop = () => end({ kind: 'stopped', lineUp: best })
    signal?.addEventListener('abort', stop)
    worker.onerror = ({ message = '' }) => end({ kind: 'failed', lineUp: best, message })
    worker.onmessage = ({ data }) => {
      if (data.kind === 'progress') {
        best = data.lineUp
        onBetter?.(data.lineUp, data.elapsedMs)
      } else if (data.kind === 'failed') end({ ...data, lineUp: best })
      else end(data)
    }
    worker.postMessage({ kind: 'solve', problem, settings })
  })
}
