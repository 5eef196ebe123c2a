import type { ClashPart } from '#rotation/clash'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import type { WorkerCall, WorkerSettings, WorkerWord } from '#solver/rotation-messages'
import { rotationSoFar } from '#solver/rotation-so-far'
import type { SolveProgress } from '#solver/solve-progress'

/** As much of a worker as is needed here: a page's own, or a thread's that looks like one. */
export type RotationWorker = {
  onmessage: ((event: { readonly data: WorkerWord }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  readonly postMessage: (call: WorkerCall) => void
  readonly terminate: () => void
}

/**
 * What came of a search in a worker. `stopped` and `failed` have the best plan so far with what is proven of it, or null
 * when there was none yet.
 */
export type WorkedRotation =
  | { readonly kind: 'solved'; readonly rotation: Rotation }
  | { readonly kind: 'stopped'; readonly rotation: Rotation | null }
  | { readonly kind: 'impossible'; readonly clash: readonly ClashPart[] }
  | { readonly kind: 'failed'; readonly rotation: Rotation | null; readonly message: string }

export type WorkerWatch = {
  readonly onProgress?: (progress: SolveProgress) => void
  /** Aborted: the search ends at once, with the best plan so far. */
  readonly signal?: AbortSignal
}

function pageWorker(): RotationWorker {
  const worker = new Worker(new URL('./rotation-worker.ts', import.meta.url), { type: 'module' })
  // Its handlers take any message; what comes is what rotation-worker.ts says.
  return worker as unknown as RotationWorker
}

/** The worker that waits for the next call. */
let waiting: RotationWorker | null = null
/** How to start the one after it; null: nobody asked for one beforehand. */
let startNext: (() => RotationWorker) | null = null

/** Keeps a worker ready from now on, so that no call waits for one to start. Returns what ends that. */
export function prepareRotationWorker(start: () => RotationWorker = pageWorker): () => void {
  startNext = start
  waiting ??= start()
  return () => {
    if (startNext !== start) return
    startNext = null
    waiting?.terminate()
    waiting = null
  }
}

/**
 * Solves a rotation beside the page, which stays free. A running solver hears nothing, so a stop ends its worker, and the
 * next call gets a new one. So does every call after a search: the solver's memory only ever grows.
 */
export function solveInWorker(
  problem: RotationProblem,
  settings: WorkerSettings,
  { onProgress, signal }: WorkerWatch = {},
  start: () => RotationWorker = pageWorker,
): Promise<WorkedRotation> {
  if (signal?.aborted) return Promise.resolve({ kind: 'stopped', rotation: null })
  const worker = waiting ?? start()
  waiting = null
  return new Promise((resolve) => {
    let best: SolveProgress | null = null
    const soFar = () => best && rotationSoFar(problem, best)
    const end = (outcome: WorkedRotation) => {
      signal?.removeEventListener('abort', stop)
      worker.onmessage = null
      worker.onerror = null
      worker.terminate()
      waiting ??= startNext?.() ?? null
      resolve(outcome)
    }
    const stop = () => end({ kind: 'stopped', rotation: soFar() })
    signal?.addEventListener('abort', stop)
    worker.onerror = ({ message = '' }) => end({ kind: 'failed', rotation: soFar(), message })
    worker.onmessage = ({ data }) => {
      if (data.kind === 'progress') {
        best = data.progress
        onProgress?.(data.progress)
      } else if (data.kind === 'failed') end({ ...data, rotation: soFar() })
      else end(data)
    }
    worker.postMessage({ kind: 'solve', problem, settings })
  })
}
