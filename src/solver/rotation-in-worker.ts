import type { ClashPart } from '#rotation/clash'
import type { RotationProblem } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import { type AskedWorker, askWorker } from '#solver/ask-worker'
import type { WorkerCall, WorkerWord } from '#solver/rotation-messages'
import { rotationSoFar } from '#solver/rotation-so-far'
import type { SolveProgress } from '#solver/solve-progress'

export type RotationWorker = AskedWorker<WorkerCall, WorkerWord>

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

/** Solves a rotation beside the page, which stays free; with the worker that waits, where one does. */
export async function solveInWorker(
  problem: RotationProblem,
  settings: WorkerCall['settings'],
  { onProgress, signal }: WorkerWatch = {},
  start: () => RotationWorker = pageWorker,
): Promise<WorkedRotation> {
  let best: SolveProgress | null = null
  const take = () => {
    const worker = waiting ?? start()
    waiting = null
    return worker
  }
  const last = await askWorker(
    { kind: 'solve', problem, settings },
    {
      signal,
      start: take,
      hear: ({ progress }) => {
        best = progress
        onProgress?.(progress)
      },
      ended: () => {
        waiting ??= startNext?.() ?? null
      },
    },
  )
  if (last.kind === 'solved' || last.kind === 'impossible') return last
  return { ...last, rotation: best && rotationSoFar(problem, best) }
}
