import type { Seconds } from '#common/time'
import type { LineUpOffer } from '#lineup/draft/line-up-solver'
import type { LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import { type AskedWorker, askWorker } from '#solver/ask-worker'
import type { LineUpCall, LineUpWord, LineUpWorkerSettings } from '#solver/line-up-messages'
import type { WayOut } from '#solver/line-up-ways-out'

export type LineUpWorker = AskedWorker<LineUpCall, LineUpWord>

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

/** Solves a line-up beside the page, which stays free. */
export async function solveLineUpInWorker(
  problem: LineUpProblem,
  settings: LineUpWorkerSettings,
  { onBetter, signal }: LineUpWatch = {},
  start: () => LineUpWorker = pageWorker,
): Promise<WorkedLineUp> {
  let best: LineUp | null = null
  const last = await askWorker(
    { kind: 'solve', problem, settings },
    {
      signal,
      start,
      hear: ({ lineUp, elapsedMs }) => {
        best = lineUp
        onBetter?.(lineUp, elapsedMs)
      },
    },
  )
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
