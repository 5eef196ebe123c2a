import type { PlayerId } from '#squad/player'
import { PlayerButton } from '#ui/touchline/player-button'

type OffListProps = {
  readonly title: string
  readonly playerIds: readonly PlayerId[]
  readonly nameOf: (playerId: PlayerId) => string
  readonly noteOf: (playerId: PlayerId) => string | null
  readonly onOpen: (playerId: PlayerId) => void
}

/** Who is not on, in the order given. */
export function OffList({ title, playerIds, nameOf, noteOf, onOpen }: OffListProps) {
  if (playerIds.length === 0) return null
  return (
    <section aria-label={title} className="space-y-2">
      <h3 className="text-lg font-bold">{title}</h3>
      <ul className="grid grid-cols-2 gap-1">
        {playerIds.map((playerId) => (
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
    </section>
  )
}
