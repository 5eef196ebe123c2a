import type { PlayerId } from '#squad/player'

type PlayerButtonProps = {
  readonly playerId: PlayerId
  readonly name: string
  /** Minutes so far, or why it is off. */
  readonly note: string | null
  readonly onOpen: (playerId: PlayerId) => void
}

/** A name to be read at arm's length; a tap says what else there is to say of the player. */
export function PlayerButton({ playerId, name, note, onOpen }: PlayerButtonProps) {
  return (
    <button
      type="button"
      onClick={() => onOpen(playerId)}
      className="tap flex w-full min-w-0 cursor-pointer touch-manipulation flex-wrap items-center gap-x-2 border border-ink bg-leaf px-2 py-1 text-left text-2xl leading-none font-bold"
    >
      <span className="min-w-0">{name}</span>
      {note ? <span className="text-base leading-tight font-medium tabular-nums">{note}</span> : null}
    </button>
  )
}
