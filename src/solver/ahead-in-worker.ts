import type { OtherPlan } from '#ahead/draft/ahead-engine'
import type { AheadSearchEnd, AheadSearchWatch } from '#ahead/draft/ahead-solver'
import type { SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { AheadCall, AheadWord, AheadWorkerSettings } from '#solver/ahead-messages'
import { type AskedWorker, askWorker } from '#solver/ask-worker'
import type { ReachableEnds } from '#solver/reachable'

export type AheadWorker = AskedWorker<AheadCall, AheadWord>

function pageWorker(): AheadWorker {
  const worker = new Worker(new URL('./ahead-worker.ts', import.meta.url), { type: 'module' })
  // Its handlers take any message; what comes is what ahead-worker.ts says.
  return worker as unknown as AheadWorker
}

/** Plans the weeks ahead beside the page, which stays free; an `AheadSolver`. */
export async function solveAheadInWorker(
  problem: AheadProblem,
  { start, seed, timeLimitMs, signal, onBetter }: AheadSearchWatch,
  open: () => AheadWorker = pageWorker,
): Promise<AheadSearchEnd> {
  let best: SolvedAhead | null = null
  const settings = { seed, timeLimitMs, workLimit: null, ...(start ? { start } : {}) }
  const last = await askWorker(
    { kind: 'solve', problem, settings },
    {
      signal,
      start: open,
      hear: (word) => {
        best = word.best
        onBetter?.(word.best)
      },
    },
  )
  if (last.kind === 'solved') return { kind: 'solved', best: last.solved }
  if (last.kind === 'impossible') return last
  return { kind: last.kind === 'stopped' ? 'stopped' : 'failed', best }
}

type Asked = { readonly settings: AheadWorkerSettings; readonly signal?: AbortSignal }

/** Plans nearly as good that begin otherwise. Empty where that was stopped. */
export async function aheadAlternativesInWorker(
  problem: AheadProblem,
  { settings, solved, practice, signal }: Asked & { readonly solved: SolvedAhead; readonly practice: number },
  open: () => AheadWorker = pageWorker,
): Promise<readonly OtherPlan[]> {
  const call = { kind: 'alternatives', problem, settings, solved, practice } as const
  const last = await askWorker(call, { signal, start: open })
  if (last.kind === 'failed') throw new Error(last.message)
  return last.kind === 'alternatives' ? last.alternatives : []
}

/** What any plan could bring inside. Null where that was stopped. */
export async function reachableInWorker(
  problem: AheadProblem,
  { settings, signal }: Asked,
  open: () => AheadWorker = pageWorker,
): Promise<ReachableEnds | null> {
  const last = await askWorker({ kind: 'reachable', problem, settings }, { signal, start: open })
  if (last.kind === 'failed') throw new Error(last.message)
  return last.kind === 'reachable' ? last.ends : null
}
