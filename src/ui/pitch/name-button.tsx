import type { PlayerId } from '#squad/player'
import type { Cast } from '#ui/pitch/cast'

type NameButtonProps = {
  readonly playerId: PlayerId
  readonly cast: Cast
  /** It comes on with this ball. */
  readonly isOn?: boolean
  readonly note?: string
  readonly onOpen: (playerId: PlayerId) => void
}

/** A name to be read at arm's length; a tap says what else there is to say of the player. */
export function NameButton({ playerId, cast, isOn = false, note, onOpen }: NameButtonProps) {
  const side = cast.sideOf(playerId)
  const isNeutral = cast.bibs !== null && side === null
  return (
    <button
      type="button"
      onClick={() => onOpen(playerId)}
      className={`tap flex w-full min-w-0 cursor-pointer touch-manipulation flex-wrap items-center gap-x-2 px-2 py-1 text-left text-[1.75rem] leading-none font-bold ${isOn ? 'bg-ink text-white' : 'bg-leaf'}`}
    >
      <span className="min-w-0">{cast.nameOf(playerId)}</span>
      {isOn ? <span className="text-base leading-tight">ON</span> : null}
      {isNeutral ? <span className="text-base leading-tight font-medium">neutral</span> : null}
      {note ? <span className="text-base leading-tight font-medium tabular-nums">{note}</span> : null}
    </button>
  )
}
