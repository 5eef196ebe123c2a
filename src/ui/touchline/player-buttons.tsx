import type { PlayerId } from '#squad/player'

export type PlayerButtonsProps = {
  readonly playerIds: readonly PlayerId[]
  readonly nameOf: (playerId: PlayerId) => string
  /** Minutes so far, or why it is off. */
  readonly noteOf: (playerId: PlayerId) => string | null
  readonly onOpen: (playerId: PlayerId) => void
}

/** Names to be read at arm's length; a tap says what else there is to say of the player. */
export function PlayerButtons({ playerIds, nameOf, noteOf, onOpen }: PlayerButtonsProps) {
  return (
    <ul className="grid grid-cols-2 gap-1">
      {playerIds.map((playerId) => {
        const note = noteOf(playerId)
        return (
          <li key={playerId} className="flex">
            <button
              type="button"
              onClick={() => onOpen(playerId)}
              className="tap flex w-full min-w-0 cursor-pointer touch-manipulation flex-wrap items-center gap-x-2 border border-ink bg-leaf px-2 py-1 text-left text-2xl leading-none font-bold"
            >
              <span className="min-w-0">{nameOf(playerId)}</span>
              {note ? <span className="text-base leading-tight font-medium tabular-nums">{note}</span> : null}
            </button>
          </li>
        )
      })}
    </ul>
  )
}
