import type { Seconds } from '#common/time'
import type { LineUpOffer } from '#lineup/draft/line-up-solver'
import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import type { LineUpCall, LineUpWord, LineUpWorkerSettings } from '#solver/line-up-messages'
import type { WayOut } from '#solver/line-up-ways-out'

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
export async function solveLineUpInWorker(
  problem: LineUpProblem,
  settings: LineUpWorkerSettings,
  { onBetter, signal }: LineUpWatch = {},
  start: () => LineUpWorker = pageWorker,
): Promise<WorkedLineUp> {
  let best: LineUp | null = null
  const last = await askWorker({ kind: 'solve', problem, settings }, { signal, start }, (word) => {
    if (word.kind !== 'progress') return
    best = word.lineUp
    onBetter?.(word.lineUp, word.elapsedMs)
  })
  if (last.kind === 'solved' || last.kind === 'impossible') return last
  return last.kind === 'failed' ? { ...last, lineUp: best } : { kind: 'stopped', lineUp: best }
}

type Asked = { readonly settings: LineUpWorkerSettings; readonly signal?: AbortSignal }

/** What to let go where there is no line-up, or where a promise is missed. Empty where that was stopped. */
export async function lineUpWaysOutInWorker(
  problem: LineUpProblem,
  { settings, missed, signal }: Asked & { readonly missed: Seconds | null },
  start: () => LineUpWorker = pageWorker,
): Promise<readonly WayOut[]> {
  const last = await askWorker({ kind: 'waysOut', problem, settings, missed }, { signal, start })
  if (last.kind === 'failed') throw new Error(last.message)
  return last.kind === 'waysOut' ? last.ways : []
}

/** What fewer changes would cost. Empty where that was stopped. */
export async function lineUpTradeOffsInWorker(
  problem: LineUpProblem,
  { settings, lineUp, signal }: Asked & { readonly lineUp: LineUp },
  start: () => LineUpWorker = pageWorker,
): Promise<readonly LineUpOffer[]> {
  const last = await askWorker({ kind: 'tradeOffs', problem, settings, lineUp }, { signal, start })
  if (last.kind === 'failed') throw new Error(last.message)
  return last.kind === 'tradeOffs' ? last.offers : []
}

type LastWord = Exclude<LineUpWord, { readonly kind: 'progress' }> | { readonly kind: 'stopped' }

/** One call to a worker of its own, until its last word or until it is stopped. */
function askWorker(
  call: LineUpCall,
  { signal, start }: { readonly signal: AbortSignal | undefined; readonly start: () => LineUpWorker },
  hear: (word: LineUpWord) => void = () => {},
): Promise<LastWord> {
  if (signal?.aborted) return Promise.resolve({ kind: 'stopped' })
  const worker = start()
  return new Promise((resolve) => {
    const end = (word: LastWord) => {
      signal?.removeEventListener('abort', stop)
      worker.onmessage = null
      worker.onerror = null
      worker.terminate()
      resolve(word)
    }
    const stop = () => end({ kind: 'stopped' })
    signal?.addEventListener('abort', stop)
    worker.onerror = ({ message = '' }) => end({ kind: 'failed', message })
    worker.onmessage = ({ data }) => {
      if (data.kind === 'progress') hear(data)
      else end(data)
    }
    worker.postMessage(call)
  })
}
