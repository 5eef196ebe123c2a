import type { UpcomingRound } from '#pitch/upcoming'
import type { Cast } from '#ui/pitch/cast'
import { listed } from '#ui/plural'
import { words } from '#ui/words'

type RoundHeadProps = {
  readonly round: UpcomingRound
  readonly roundCount: number
  readonly cast: Cast
  /** Of a round played ball by ball: which ball is next. */
  readonly ball?: { readonly number: number; readonly of: number }
}

/** Which round it is, what holds in it, and who keeps goal: said when it begins. */
export function RoundHead({ round, roundCount, cast, ball }: RoundHeadProps) {
  const keepers = round.keepers.filter(({ playerIds }) => playerIds.length > 0)
  const conditions = round.design?.conditions ?? []
  return (
    <header>
      <h2 id="round" className="text-2xl leading-tight font-bold">
        Round {round.round + 1} of {roundCount}
        {ball ? `, ball ${ball.number} of ${ball.of}` : ''}
        {round.title ? <span className="block text-xl font-semibold">{round.title}</span> : null}
      </h2>
      {conditions.length > 0 ? <p>{conditions.join(' · ')}</p> : null}
      {keepers.map(({ station, playerIds }) => (
        <p key={station}>
          <strong>In goal{round.keepers.length > 1 ? `, ${words.area.one} ${station + 1}` : ''}:</strong>{' '}
          {listed(playerIds.map(cast.nameOf))}
        </p>
      ))}
    </header>
  )
}
