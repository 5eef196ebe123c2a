import { countWord } from '#common/count-word'
import type { Proof } from '#common/proof'
import type { LineUpFigures, NameOf } from '#lineup/line-up-figures'
import type { LineUpProblem } from '#lineup/problem'
import { sayTime } from '#lineup/say-clock'

const mostNames = 3

/** Who gets less than it was promised, and whether that can be helped. */
export function sayMissedPromise(
  problem: LineUpProblem,
  said: { readonly figures: LineUpFigures; readonly promise: Proof; readonly nameOf: NameOf },
): string {
  const missed = problem.players.flatMap(({ id, leastSeconds }, player) => {
    const played = said.figures.played[player] ?? 0
    return played < leastSeconds ? [{ id, played, leastSeconds }] : []
  })
  if (missed.length === 0) return ''
  const named = missed
    .slice(0, mostNames)
    .map(
      ({ id, played, leastSeconds }) =>
        `${said.nameOf(id)} gets ${sayTime(played)} of the ${sayTime(leastSeconds)} that were promised.`,
    )
  const others = missed.length - mostNames
  const rest =
    others > 0
      ? `${countWord(others).replace(/^./, (letter) => letter.toUpperCase())} more ${others === 1 ? 'gets' : 'get'} less than was promised.`
      : ''
  const why = said.promise.proven
    ? 'With these players and rules the promise cannot be kept better.'
    : 'Whether the promise can be kept better is not known yet.'
  return [...named, rest, why].filter((sentence) => sentence !== '').join(' ')
}
