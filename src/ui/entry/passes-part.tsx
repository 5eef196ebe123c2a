'use client'

import type { SeatRole } from '#practice/turn'
import type { PracticeDraft } from '#ui/entry/practice-draft'
import { words } from '#ui/words'

export type StandingPass = {
  readonly eventId: string
  readonly playerId: string
  readonly role: SeatRole
}

type PassesPartProps = {
  readonly passes: readonly StandingPass[]
  readonly draft: PracticeDraft
  readonly names: ReadonlyMap<string, string>
  readonly onEdit: (change: (draft: PracticeDraft) => PracticeDraft) => void
}

/** Passes that are written already: each can be corrected away. */
export function PassesPart({ passes, draft, names, onEdit }: PassesPartProps) {
  if (passes.length === 0) return null
  return (
    <ul className="space-y-1">
      {passes.map(({ eventId, playerId, role }) => {
        const isVoid = draft.voidPasses.includes(eventId)
        return (
          <li key={eventId} className="flex flex-wrap items-center gap-3">
            <span className={isVoid ? 'line-through' : undefined}>
              {names.get(playerId)} {words.passed} ({words.doing[role]})
            </span>
            <button
              type="button"
              className="tap cursor-pointer text-accent underline"
              onClick={() =>
                onEdit((own) => ({
                  ...own,
                  voidPasses: isVoid
                    ? own.voidPasses.filter((id) => id !== eventId)
                    : [...own.voidPasses, eventId],
                }))
              }
            >
              {isVoid ? 'keep it' : 'it was not so'}
            </button>
          </li>
        )
      })}
    </ul>
  )
}
