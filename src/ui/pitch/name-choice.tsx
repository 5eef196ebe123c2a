import type { PlayerId } from '#squad/player'
import { PitchButton } from '#ui/pitch/pitch-button'

type NameChoiceProps = {
  readonly ids: readonly PlayerId[]
  readonly nameOf: (playerId: PlayerId) => string
  readonly onChoose: (playerId: PlayerId) => void
}

/** Names to choose one of. */
export function NameChoice({ ids, nameOf, onChoose }: NameChoiceProps) {
  if (ids.length === 0) return <p>Nobody is free for it.</p>
  return (
    <ul className="grid grid-cols-2 gap-2">
      {ids.map((id) => (
        <li key={id} className="flex">
          <PitchButton className="w-full min-w-0 text-xl break-words" onClick={() => onChoose(id)}>
            {nameOf(id)}
          </PitchButton>
        </li>
      ))}
    </ul>
  )
}
