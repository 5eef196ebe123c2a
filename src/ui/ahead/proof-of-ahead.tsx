'use client'

import { sayAheadClash } from '#ahead/say-ahead-clash'
import { sayAheadLeft, sayAheadStanding } from '#ahead/say-ahead-proof'
import type { AheadEditing } from '#ui/ahead/use-ahead-draft'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { RunningSearch } from '#ui/planning/running-search'

/** What the plan is worth and how far from the best it is; why there is none; and the search for a better one. */
export function ProofOfAhead({ editing }: { readonly editing: AheadEditing }) {
  const { draft, search, fault } = editing
  const { best, clash, asked, isSettled } = draft
  return (
    <div className="space-y-3">
      {best ? (
        <div
          className="border-l-4 border-accent py-1 pl-4"
          data-part="proof"
          data-settled={search === null && isSettled ? 'yes' : 'no'}
        >
          <p className="font-semibold">{sayAheadStanding(best.proof)}</p>
          <p className="mt-1 text-sm text-soft">{sayAheadLeft(best.proof)}</p>
        </div>
      ) : (
        <Notice>
          No plan keeps all that is asked.{' '}
          {clash.length > 0
            ? clash.map((own) => sayAheadClash(asked, own, formatDay)).join(' ')
            : 'Free what you hold, or take a rule of the programme back.'}
        </Notice>
      )}
      {draft.firm.size > 0 ? (
        <p className="flex flex-wrap items-center gap-3 text-soft">
          What was firm in the saved plan is kept.
          <Button
            type="button"
            weight="plain"
            onClick={() => editing.ask((same) => ({ ...same }), { firm: () => new Map() })}
          >
            Plan it anew too
          </Button>
        </p>
      ) : null}
      {fault ? <Notice>{fault}</Notice> : null}
      {search ? (
        <RunningSearch search={search} says="Looking for a better plan" onStop={editing.stop} />
      ) : best && !best.proof.proven ? (
        <Button type="button" weight="plain" onClick={editing.searchNow}>
          Look for a better plan
        </Button>
      ) : null}
    </div>
  )
}
