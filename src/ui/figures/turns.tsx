import { words } from '#ui/words'

type TurnsProps = {
  readonly minutes: number
  readonly turns: number
  /** Matches are counted in minutes only. */
  readonly hasTurns: boolean
}

/** Time and, always beside it, the number of turns: children count goes. */
export function Turns({ minutes, turns, hasTurns }: TurnsProps) {
  return (
    <span className="whitespace-nowrap">
      <span className="font-medium">{minutes} min</span>
      {hasTurns ? <span className="text-soft"> · {words.turns(turns)}</span> : null}
    </span>
  )
}
