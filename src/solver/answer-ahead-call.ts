import { aheadAlternatives } from '#solver/ahead-alternatives'
import type { AheadCall, AheadWord } from '#solver/ahead-messages'
import { reachableEnds } from '#solver/reachable'
import { solveAhead } from '#solver/solve-ahead'

/** Does what a worker was asked for; tells of every better plan on the way to one. */
export async function answerAheadCall(call: AheadCall, say: (word: AheadWord) => void): Promise<AheadWord> {
  const settings = { ...call.settings, began: performance.now() }
  switch (call.kind) {
    case 'alternatives': {
      const asked = { ...settings, practice: call.practice }
      return {
        kind: 'alternatives',
        alternatives: await aheadAlternatives(call.problem, call.solved, asked),
      }
    }
    case 'reachable':
      return { kind: 'reachable', ends: await reachableEnds(call.problem, settings) }
    case 'solve':
      return solveAhead(call.problem, { ...settings, onBetter: (best) => say({ kind: 'progress', best }) })
  }
}
