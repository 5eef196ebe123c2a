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
      className="tap flex w-full min-w-0 cursor-pointer touch-manipulation flex-wrap items-baseline gap-x-2 border-b border-ink bg-leaf px-1 py-1 text-left text-[1.75rem] leading-none font-bold break-words"
    >
      <span className="min-w-0 break-words">{cast.nameOf(playerId)}</span>
      {isOn ? (
        <span className="border-2 border-ink bg-ink px-1 text-base leading-tight text-white">ON</span>
      ) : null}
      {isNeutral ? <span className="text-base font-medium">neutral</span> : null}
      {note ? <span className="text-base font-medium tabular-nums">{note}</span> : null}
    </button>
  )
}
