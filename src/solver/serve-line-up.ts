import type { LineUpCall, LineUpWord } from '#solver/line-up-messages'
import { solveLineUp } from '#solver/solve-line-up'

/** Does what a worker was asked for and says so, word by word; never throws. */
export async function serveLineUp(call: LineUpCall, say: (word: LineUpWord) => void): Promise<void> {
  const began = performance.now()
  try {
    const answer = await solveLineUp(call.problem, {
      ...call.settings,
      began,
      onBetter: (lineUp) => say({ kind: 'progress', lineUp, elapsedMs: performance.now() - began }),
    })
    say(answer)
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) })
  }
}
