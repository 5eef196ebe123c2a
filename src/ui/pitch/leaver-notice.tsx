import type { PlayerId } from '#squad/player'
import type { Cast } from '#ui/pitch/cast'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import { listed } from '#ui/plural'

type LeaverNoticeProps = {
  /** Who was planned to leave by now and is still here. */
  readonly playerIds: readonly PlayerId[]
  readonly cast: Cast
  readonly onDeeds: OnDeeds
  /** A new rotation with all who are here; null: this phone makes none. */
  readonly onPlanAnew: (() => void) | null
}

/** Whoever was to leave has gone, or stays and gets a place again: nobody is left standing by a plan. */
export function LeaverNotice({ playerIds, cast, onDeeds, onPlanAnew }: LeaverNoticeProps) {
  if (playerIds.length === 0) return null
  const isOne = playerIds.length === 1
  return (
    <div className="space-y-2 border-2 border-ink p-2">
      <p className="font-semibold">
        {listed(playerIds.map(cast.nameOf))} {isOne ? 'was' : 'were'} to leave by now.
      </p>
      <div className="flex flex-wrap gap-2">
        {playerIds.map((playerId) => (
          <PitchButton
            key={playerId}
            className="flex-1 whitespace-nowrap"
            onClick={() => onDeeds([{ kind: 'register', playerId, state: 'gone' }])}
          >
            {cast.nameOf(playerId)} has gone
          </PitchButton>
        ))}
        {onPlanAnew ? (
          <PitchButton className="flex-1 whitespace-nowrap" onClick={onPlanAnew}>
            {isOne ? 'Stays' : 'They stay'}: new rotation
          </PitchButton>
        ) : null}
      </div>
    </div>
  )
}
