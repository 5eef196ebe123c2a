'use client'

import { type ReactNode, useState } from 'react'

type Listed = { readonly id: string; readonly name: string; readonly isMember: boolean }

type Coming = {
  /** What is set for it so far; empty: nothing. */
  readonly words: string
  readonly settings: ReactNode
  /** Below it, whether or not its settings are open. */
  readonly beside?: ReactNode
}

type ComingListProps = {
  /** The squad's, and guests it knows, by name. */
  readonly players: readonly Listed[]
  /** Null: stays away. */
  readonly comingOf: (playerId: string) => Coming | null
  readonly onToggle: (playerId: string) => void
  /** What opens the settings of one of them: "For today". */
  readonly settingsName: string
}

/** Who comes: a tick each, and what holds for one of them on this day alone. */
export function ComingList({ players, comingOf, onToggle, settingsName }: ComingListProps) {
  const [open, setOpen] = useState<string | null>(null)
  return (
    <ul className="border-t border-rule sm:columns-2 sm:gap-8 lg:columns-3">
      {players.map(({ id, name, isMember }) => {
        const coming = comingOf(id)
        return (
          <li key={id} className="break-inside-avoid border-b border-rule py-0.5">
            <div className="flex items-center gap-2">
              <label className="tap flex flex-1 cursor-pointer items-center gap-3">
                <input
                  type="checkbox"
                  className="size-6 shrink-0 accent-accent"
                  checked={coming !== null}
                  onChange={() => onToggle(id)}
                />
                <span className={coming ? 'font-medium' : 'text-soft'}>
                  {name}
                  {isMember ? '' : ', guest'}
                </span>
              </label>
              {coming ? (
                <button
                  type="button"
                  aria-expanded={open === id}
                  aria-label={`${settingsName}: ${name}`}
                  className="tap cursor-pointer px-2 text-sm text-accent underline underline-offset-4"
                  onClick={() => setOpen(open === id ? null : id)}
                >
                  {coming.words || settingsName.toLowerCase()}
                </button>
              ) : null}
            </div>
            {open === id ? coming?.settings : null}
            {coming?.beside}
          </li>
        )
      })}
    </ul>
  )
}
