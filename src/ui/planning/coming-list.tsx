'use client'

import { type ReactNode, useState } from 'react'

type Listed = { readonly id: string; readonly name: string; readonly isMember: boolean }

type ComingListProps = {
  /** The squad's, and guests it knows, by name. */
  readonly players: readonly Listed[]
  readonly isComing: (playerId: string) => boolean
  readonly onToggle: (playerId: string) => void
  /** What opens the settings of one of them: "For today". */
  readonly settingsName: string
  /** What is set for it so far; empty: nothing. */
  readonly settingsWords: (playerId: string) => string
  readonly settings: (playerId: string) => ReactNode
  /** Below each who comes, whether or not its settings are open. */
  readonly beside?: (playerId: string) => ReactNode
}

/** Who comes: a tick each, and what holds for one of them on this day alone. */
export function ComingList(props: ComingListProps) {
  const { players, isComing, onToggle, settingsName, settingsWords, settings, beside } = props
  const [open, setOpen] = useState<string | null>(null)
  return (
    <ul className="border-t border-rule sm:columns-2 sm:gap-8 lg:columns-3">
      {players.map(({ id, name, isMember }) => (
        <li key={id} className="break-inside-avoid border-b border-rule py-0.5">
          <div className="flex items-center gap-2">
            <label className="tap flex flex-1 cursor-pointer items-center gap-3">
              <input
                type="checkbox"
                className="size-6 shrink-0 accent-accent"
                checked={isComing(id)}
                onChange={() => onToggle(id)}
              />
              <span className={isComing(id) ? 'font-medium' : 'text-soft'}>
                {name}
                {isMember ? '' : ', guest'}
              </span>
            </label>
            {isComing(id) ? (
              <button
                type="button"
                aria-expanded={open === id}
                aria-label={`${settingsName}: ${name}`}
                className="tap cursor-pointer px-2 text-sm text-accent underline underline-offset-4"
                onClick={() => setOpen(open === id ? null : id)}
              >
                {settingsWords(id) || settingsName.toLowerCase()}
              </button>
            ) : null}
          </div>
          {isComing(id) && open === id ? settings(id) : null}
          {isComing(id) && beside ? beside(id) : null}
        </li>
      ))}
    </ul>
  )
}
