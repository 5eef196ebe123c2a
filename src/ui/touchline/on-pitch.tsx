import type { PlayerId } from '#squad/player'
import type { PlacedPlayer } from '#touchline/match-deed'
import { byLine, lineHeading } from '#ui/touchline/line-words'
import { PlayerButton } from '#ui/touchline/player-button'

type OnPitchProps = {
  readonly title: string
  readonly on: readonly PlacedPlayer[]
  /** Places that nobody fills. */
  readonly missing: number
  readonly nameOf: (playerId: PlayerId) => string
  readonly noteOf: (playerId: PlayerId) => string | null
  readonly onOpen: (playerId: PlayerId) => void
}

/** Who is on, line by line from goal to goal. */
export function OnPitch({ title, on, missing, nameOf, noteOf, onOpen }: OnPitchProps) {
  return (
    <section aria-label={title} className="space-y-2">
      <h3 className="text-lg font-bold">
        {title}
        {missing > 0 ? (
          <strong className="ml-2 bg-ink px-2 text-white">{missing} fewer than there could be</strong>
        ) : null}
      </h3>
      {byLine(on).map(({ line, placed }) => (
        <div key={line}>
          <h4 className="text-base font-semibold">{lineHeading(line)}</h4>
          <ul className="grid grid-cols-2 gap-1">
            {placed.map(({ playerId }) => (
              <li key={playerId} className="flex">
                <PlayerButton
                  playerId={playerId}
                  name={nameOf(playerId)}
                  note={noteOf(playerId)}
                  onOpen={onOpen}
                />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  )
}
