import type { LineUpCall, LineUpWord } from '#solver/line-up-messages'
import { lineUpTradeOffs } from '#solver/line-up-trade-offs'
import { lineUpWaysOut } from '#solver/line-up-ways-out'
import { solveLineUp } from '#solver/solve-line-up'

/** Does what a worker was asked for; tells of every better line-up on the way to one. */
export async function answerLineUpCall(
  call: LineUpCall,
  say: (word: LineUpWord) => void,
): Promise<LineUpWord> {
  const began = performance.now()
  const { problem } = call
  const settings = { ...call.settings, began }
  switch (call.kind) {
    case 'waysOut':
      return { kind: 'waysOut', ways: await lineUpWaysOut(problem, { ...settings, missed: call.missed }) }
    case 'tradeOffs':
      return { kind: 'tradeOffs', offers: await lineUpTradeOffs(problem, call.lineUp, settings) }
    case 'solve':
      return solveLineUp(problem, {
        ...settings,
        onBetter: (lineUp) => say({ kind: 'progress', lineUp, elapsedMs: performance.now() - began }),
      })
  }
}
