'use client'

import { useMemo } from 'react'
import { type AheadDraft, aheadDraft } from '#ahead/draft/ahead-draft'
import type { AheadSolver } from '#ahead/draft/ahead-solver'
import { expectedEnd } from '#ahead/expected-end'
import { countInside } from '#ahead/explain/ends-inside'
import { type ColumnSeconds, rotationColumns } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { DoWhatIf } from '#ui/ahead/do-what-if'
import { EndsTables } from '#ui/ahead/ends-tables'
import { useAheadDraft } from '#ui/ahead/use-ahead-draft'
import type { WhatIf, WhatIfSends } from '#ui/ahead/what-if-types'
import { wholeMinutes } from '#ui/figures/minutes'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { RunningSearch } from '#ui/planning/running-search'

type WhatIfResultProps = {
  readonly squadId: string
  readonly asked: WhatIf
  /** The plan as it stands on the page. */
  readonly base: AheadDraft
  readonly solver: AheadSolver
  readonly nameOf: NameOfPlace
  readonly sends: WhatIfSends
  readonly onClose: () => void
}

/** Every bar as the plan has it, beside what it would be; then the deed itself, if the coach wants it. */
export function WhatIfResult({ squadId, asked, base, solver, nameOf, sends, onClose }: WhatIfResultProps) {
  const { draft, search, stop } = useAheadDraft(() => aheadDraft(asked.request, { firm: base.firm }), solver)
  const before = useMemo(() => (base.best ? expectedEnd(base.asked, base.best.plan) : null), [base])
  const after = useMemo(() => (draft.best ? expectedEnd(draft.asked, draft.best.plan) : null), [draft])
  const gaps = before && after && { before: before.map(({ gap }) => gap), after: after.map(({ gap }) => gap) }
  return (
    <div className="space-y-4 border-l-4 border-accent pl-4" data-part="what-if">
      <h3 className="font-semibold">What if {asked.title}?</h3>
      {draft.best === null ? (
        <Notice>
          Then no plan keeps all that is asked: something held, or a rule, would have to give way.
        </Notice>
      ) : null}
      {gaps && base.best && draft.best ? (
        <>
          <p className="max-w-prose" role="status">
            {comparison({
              of: base.asked.players.length,
              inside: [
                countInside(base.asked.players, gaps.before),
                countInside(draft.asked.players, gaps.after),
              ],
              minutes: [minutesOf(gaps.before), minutesOf(gaps.after)],
            })}
          </p>
          <EndsTables
            problem={draft.asked}
            {...gaps}
            nameOf={nameOf}
            was="with the plan as it is"
            is="then"
            captionOf={(of) => `${of} at the end of the term`}
          />
        </>
      ) : null}
      {search ? (
        <RunningSearch search={search} says="Looking for the best plan for this" onStop={stop} />
      ) : null}
      <div className="flex flex-wrap items-end gap-3">
        <DoWhatIf squadId={squadId} deed={asked.deed} sends={sends} />
        <Button type="button" weight="plain" onClick={onClose}>
          Leave it as it is
        </Button>
      </div>
    </div>
  )
}

type Pair = readonly [number, number]

function comparison({
  of,
  inside,
  minutes,
}: {
  readonly of: number
  readonly inside: Pair
  readonly minutes: Pair
}): string {
  const [was, is] = inside
  const ends =
    was === is
      ? `As with the plan as it is, ${is} of ${of} would end inside the tolerance.`
      : `${is} of ${of} would end inside the tolerance, instead of ${was}.`
  const more = minutes[1] - minutes[0]
  const cost =
    more === 0
      ? 'The differences would be as large as they are with it.'
      : `All differences together would be ${Math.abs(more).toLocaleString('en-GB')} min ${more > 0 ? 'larger' : 'smaller'}.`
  return `${ends} ${cost} All in expectation, if they come as often as so far.`
}

/** All differences of everyone together, in whole minutes. */
function minutesOf(gaps: readonly ColumnSeconds[]): number {
  const seconds = gaps.flatMap((gap) => rotationColumns.map((column) => Math.abs(gap[column])))
  return wholeMinutes(seconds.reduce((sum, own) => sum + own, 0))
}
