import { counted } from '#ui/plural'

type TurnsProps = {
  readonly minutes: number
  /** Null in matches, which are counted in minutes only. */
  readonly turns: number | null
}

/** Time and, always beside it, the number of turns: children count goes. */
export function Turns({ minutes, turns }: TurnsProps) {
  return (
    <>
      {minutes} min{turns === null ? null : ` · ${counted(turns, 'turn')}`}
    </>
  )
}
