'use client'

import { useMemo } from 'react'
import { expectedEnd } from '#ahead/expected-end'
import { countInside } from '#ahead/explain/ends-inside'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { ColumnSeconds } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { EndsTables } from '#ui/ahead/ends-tables'

type EndsPartProps = {
  readonly problem: AheadProblem
  readonly plan: AheadPlan
  readonly nameOf: NameOfPlace
}

/** Where everyone is expected to stand at the end of the term, beside where it stands now. */
export function EndsPart({ problem, plan, nameOf }: EndsPartProps) {
  const before = useMemo(() => problem.players.map(({ gap }) => gap), [problem])
  const after = useMemo(() => expectedEnd(problem, plan).map(({ gap }) => gap), [problem, plan])
  return (
    <div className="space-y-4">
      <p className="max-w-prose" data-part="ends">
        {endsSentence(problem, { before, after })}
      </p>
      <EndsTables
        {...{ problem, before, after, nameOf }}
        was="now"
        is="at the end"
        captionOf={(of) => `${of}, now and at the end of the term`}
      />
    </div>
  )
}

function endsSentence(
  { players }: Pick<AheadProblem, 'players'>,
  { before, after }: { readonly before: readonly ColumnSeconds[]; readonly after: readonly ColumnSeconds[] },
): string {
  const [now, end] = [countInside(players, before), countInside(players, after)]
  return `If everyone comes as often as so far, ${end} of ${players.length} end the term inside the tolerance in every role and situation; now it is ${now}.`
}
