import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import type { WorkerCall, WorkerWord } from '#solver/rotation-messages'
import { solveRotation } from '#solver/solve-rotation'

/** Does what a worker was asked for and says so, word by word; never throws. */
export async function serveRotation(call: WorkerCall, say: (word: WorkerWord) => void): Promise<void> {
  const began = performance.now()
  try {
    const { problem, settings } = call
    const isAnswered =
      settings.start !== undefined && checkPlan({ ...problem, restLimit: null }, settings.start).length === 0
    const clash = isAnswered ? [] : findClash(problem)
    if (clash.length > 0) return say({ kind: 'impossible', clash })
    const rotation = await solveRotation(problem, {
      ...settings,
      began,
      onProgress: (progress) => say({ kind: 'progress', progress }),
    })
    say({ kind: 'solved', rotation })
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) })
  }
}
