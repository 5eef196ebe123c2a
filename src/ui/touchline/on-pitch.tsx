import type { PlacedPlayer } from '#touchline/match-deed'
import { byLine, lineHeading } from '#ui/touchline/line-words'
import { PlayerButtons, type PlayerButtonsProps } from '#ui/touchline/player-buttons'

type OnPitchProps = Omit<PlayerButtonsProps, 'playerIds'> & {
  readonly title: string
  readonly on: readonly PlacedPlayer[]
  /** Places that nobody fills. */
  readonly missing: number
}

/** Who is on, line by line from goal to goal. */
export function OnPitch({ title, on, missing, ...players }: OnPitchProps) {
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
          <PlayerButtons playerIds={placed.map(({ playerId }) => playerId)} {...players} />
        </div>
      ))}
    </section>
  )
}
