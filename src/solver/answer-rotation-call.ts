import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import type { WorkerCall, WorkerWord } from '#solver/rotation-messages'
import { solveRotation } from '#solver/solve-rotation'

/** Does what a worker was asked for; tells of its progress on the way. */
export async function answerRotationCall(
  { problem, settings }: WorkerCall,
  say: (word: WorkerWord) => void,
): Promise<WorkerWord> {
  const began = performance.now()
  const isAnswered =
    settings.start !== undefined && checkPlan({ ...problem, restLimit: null }, settings.start).length === 0
  const clash = isAnswered ? [] : findClash(problem)
  if (clash.length > 0) return { kind: 'impossible', clash }
  const rotation = await solveRotation(problem, {
    ...settings,
    began,
    onProgress: (progress) => say({ kind: 'progress', progress }),
  })
  return { kind: 'solved', rotation }
}
