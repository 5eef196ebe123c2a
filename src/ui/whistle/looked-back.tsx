import type { AfterTheWhistle } from '#pitch/after-the-whistle'
import type { PitchSide } from '#pitch/side-points'
import type { DesignRound } from '#practice/design'
import { capital } from '#ui/capital'
import { durationText } from '#ui/duration-text'
import { Details } from '#ui/page/details'
import { sizeWords } from '#ui/pitch/choice-size'
import { counted, listed } from '#ui/plural'
import { words } from '#ui/words'

type LookedBackProps = {
  readonly after: AfterTheWhistle
  readonly nameOf: (playerId: string) => string
  readonly roundName: (round: number) => string
  /** Of the plan, by the place of a turn in its list; null: the plan does not know the turn. */
  readonly roundOfTurn: (turn: number) => DesignRound | null
  /** Colours of the bibs, where there are sides. */
  readonly bibs: readonly [string, string] | null
}

/** One practice looked back on: ball in play, the longest wait, and what the sides won and chose. */
export function LookedBack({ after, nameOf, roundName, roundOfTurn, bibs }: LookedBackProps) {
  const { ballInPlay, longestWait, points, pointsInAll, choices, choosers } = after
  const sideName = (side: PitchSide) =>
    typeof side === 'number' ? `${bibs?.[side] ?? `side ${side + 1}`} bibs` : words.role[side]
  return (
    <div className="space-y-3">
      <p className="max-w-prose">
        Ball in play: {durationText(ballInPlay.seconds)}
        {ballInPlay.share === null ? '' : `, ${Math.round(ballInPlay.share * 100)} % of the practice`}.{' '}
        {longestWait
          ? `Longest wait by the clock: ${nameOf(longestWait.playerId)}, ${durationText(longestWait.to - longestWait.from)}, time between the balls included.`
          : 'Nobody waited.'}
      </p>
      {points.length > 0 ? (
        <Details summary="Points of the sides">
          <p className="font-medium">
            {pointsInAll.map(({ side, points: won }) => `${capital(sideName(side))} ${won}`).join(' · ')}
          </p>
          <ul className="mt-1 space-y-1">
            {points.map(({ round, side, points: won }) => (
              <li key={`${round} ${side}`}>
                {round === null ? 'Beyond the plan' : roundName(round)}: {sideName(side)}{' '}
                {counted(won, 'point')}
              </li>
            ))}
          </ul>
          <p className="mt-2 text-sm text-soft">
            Points belong to a side and to this practice. They are counted for no child and kept in no sum.
          </p>
        </Details>
      ) : null}
      {choices.length > 0 ? (
        <Details summary="What was chosen, and who got to choose">
          <ul className="space-y-1">
            {choices.map(({ eventId, turn, by, size, side }) => {
              const chosen = roundOfTurn(turn)?.choice?.sizes[size]
              const who = by === 'coach' ? 'the coach' : side === null ? 'the attackers' : sideName(side)
              return (
                <li key={eventId}>
                  Turn {Math.floor(turn) + 1}: {who} chose {chosen ? sizeWords(chosen) : `size ${size + 1}`}
                </li>
              )
            })}
          </ul>
          {choosers.length > 0 ? (
            <p className="mt-2 max-w-prose text-sm text-soft">
              On the side that chose:{' '}
              {listed(
                choosers.map(
                  ({ playerId, chose, choiceTurns }) => `${nameOf(playerId)} ${chose} of ${choiceTurns}`,
                ),
              )}
              .
            </p>
          ) : null}
        </Details>
      ) : null}
    </div>
  )
}
