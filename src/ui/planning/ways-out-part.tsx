'use client'

import { useMemo } from 'react'
import type { PlanRequest } from '#planning/practice-plan'
import { problemOfRequest } from '#planning/problem-of-request'
import { sayPlanClash } from '#planning/say-plan-clash'
import { waysOut } from '#planning/ways-out'
import type { ClashPart } from '#rotation/clash'
import { Button } from '#ui/page/button'
import type { NameOf } from '#ui/planning/planning-types'
import { counted } from '#ui/plural'

type WaysOutPartProps = {
  readonly request: PlanRequest
  readonly clash: readonly ClashPart[]
  readonly nameOf: NameOf
  readonly onTake: (request: PlanRequest) => void
}

const mostSaid = 4

/** Why there is no plan, and the nearest that works, one tap to take it. */
export function WaysOutPart({ request, clash, nameOf, onTake }: WaysOutPartProps) {
  const said = useMemo(() => {
    const problem = problemOfRequest(request)
    return [...new Set(clash.map((part) => sayPlanClash(problem, { part, nameOf })))]
  }, [request, clash, nameOf])
  const ways = useMemo(() => waysOut(request, nameOf, clash), [request, nameOf, clash])
  return (
    <div role="alert" className="border-l-4 border-warn bg-warn-pale px-4 py-3" data-part="ways-out">
      <p className="font-semibold text-warn">There is no plan for this</p>
      <ul className="mt-1">
        {said.slice(0, mostSaid).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {said.length > mostSaid ? <li>The same in {counted(said.length - mostSaid, 'more turn')}.</li> : null}
      </ul>
      {ways.length > 0 ? <p className="mt-3 font-medium">What would work</p> : null}
      <ul className="mt-1 space-y-3">
        {ways.map((way) => (
          <li key={way.sentences.join(' ')} className="flex flex-wrap items-start gap-x-4 gap-y-2">
            <span className="max-w-prose flex-1 basis-72">{way.sentences.join(' ')}</span>
            <Button type="button" weight="plain" onClick={() => onTake(way.request)}>
              Take this
            </Button>
          </li>
        ))}
      </ul>
      {ways.length === 0 ? <p className="mt-2">Tick more names above, or choose a smaller design.</p> : null}
    </div>
  )
}
