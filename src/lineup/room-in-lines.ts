import type { FairLineUp } from '#lineup/fair-line-up'
import { placeSeconds } from '#lineup/place-seconds'
import type { LineUpProblem } from '#lineup/problem'
import { type FieldLine, fieldLines } from '#match/format/line-wish'

/**
 * Seconds that each player may play in each line now, so that lines even out over a term and not inside one match: all
 * that it is due of this match, and what it is behind in that line so far, or less what it is ahead. Behind and ahead of
 * an even share: the line's places among all places of the field, of its time in all lines. Common practice, no source.
 * A line that it likes or is learning has room without end.
 */
export function roomInLines(
  problem: LineUpProblem,
  fair: FairLineUp,
): readonly Readonly<Record<FieldLine, number>>[] {
  const inLine = (line: FieldLine) => placeSeconds(problem.windows, line)
  const field = fieldLines.reduce((sum, line) => sum + inLine(line), 0)
  return problem.players.map(({ wishes, metSeconds }, player) => {
    const met = fieldLines.reduce((sum, line) => sum + metSeconds[line], 0)
    const due = (fair.play[player] ?? 0) - (fair.keep[player] ?? 0)
    const roomIn = (line: FieldLine) =>
      wishes[line] === 'likes' || wishes[line] === 'learning' || field === 0
        ? Number.POSITIVE_INFINITY
        : Math.max(0, due + (inLine(line) / field) * met - metSeconds[line])
    return { back: roomIn('back'), middle: roomIn('middle'), forward: roomIn('forward') }
  })
}
