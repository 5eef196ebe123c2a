import type { KeyboardEvent } from 'react'

export type PlaceButtonProps = {
  readonly id: string
  /** Who and when; how it stands is said after it. */
  readonly label: string
  readonly look: { readonly text: string; readonly word: string; readonly look: string }
  /** An empty place is paler. */
  readonly isPale?: boolean
  readonly isThere: boolean
  readonly change: 'on' | 'off' | null
  readonly isHeld: boolean
  readonly heldWord: string
  readonly isChosen: boolean
  readonly isDimmed: boolean
  readonly tabIndex: number
  readonly onFocus: () => void
  readonly onTap: () => void
  readonly onKey: (event: KeyboardEvent) => void
}

/** One player's place at one time of a plan: a tap chooses it, the arrow keys lead on. */
export function PlaceButton(props: PlaceButtonProps) {
  const { look, isPale = false, isThere, change, isHeld } = props
  const changed = change === 'on' ? ', comes on' : change === 'off' ? ', goes off' : ''
  const ground = isHeld ? 'bg-accent-pale' : isPale ? 'bg-paper' : 'bg-leaf'
  return (
    <button
      type="button"
      id={props.id}
      tabIndex={props.tabIndex}
      aria-pressed={props.isChosen}
      aria-disabled={isThere ? undefined : true}
      aria-label={`${props.label}: ${look.word}${changed}${isHeld ? `, ${props.heldWord}` : ''}`}
      onFocus={props.onFocus}
      onKeyDown={props.onKey}
      onClick={() => isThere && props.onTap()}
      className={`relative block h-11 w-full min-w-10 scroll-mb-40 scroll-ml-28 cursor-pointer border border-rule-strong text-center select-none aria-pressed:outline-3 aria-pressed:-outline-offset-3 aria-pressed:outline-accent ${isThere ? `${ground} ${look.look}` : 'cursor-default bg-band text-soft'} ${props.isDimmed ? 'opacity-45' : ''}`}
    >
      {look.text}
      {change ? (
        <span aria-hidden="true" className="absolute top-0 left-0.5 text-[0.625rem] leading-none font-normal">
          {change === 'on' ? '▲' : '▽'}
        </span>
      ) : null}
      {isHeld ? (
        <span
          aria-hidden="true"
          className="absolute top-0 right-0.5 text-[0.625rem] leading-none font-normal"
        >
          ■
        </span>
      ) : null}
    </button>
  )
}
