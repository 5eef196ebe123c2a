'use client'

import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { ChanceFigures } from '#ui/ahead/chance-figures'
import { ChancesTable } from '#ui/ahead/chances-table'
import { practiceDay } from '#ui/ahead/practice-day'
import { chancesSentences, hardestSentence } from '#ui/ahead/say-chances'
import { useChances } from '#ui/ahead/use-chances'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { ProgressBar } from '#ui/planning/progress-bar'

type ChancesPartProps = {
  readonly problem: AheadProblem
  readonly plan: AheadPlan
  /** No better plan is being looked for just now: the chances of this one are worth working out. */
  readonly isResting: boolean
  readonly nameOf: NameOfPlace
}

/** Will it work: how likely everyone is to end inside with the plan and as so far, and what would be hardest to lose. */
export function ChancesPart({ problem, plan, isResting, nameOf }: ChancesPartProps) {
  const { part, chances, hardest, start, stop } = useChances(problem, plan, { isResting })
  return (
    <div className="space-y-4" data-part="chances" data-settled={hardest ? 'yes' : 'no'}>
      {chances ? (
        <>
          <div className="max-w-prose space-y-2">
            {chancesSentences(chances, problem).map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
            {hardest ? <p>{hardestSentence(hardest, (practice) => practiceDay(problem, practice))}</p> : null}
          </div>
          <ChancesTable {...{ problem, chances, nameOf }} />
          <Details summary="The numbers">
            <ChanceFigures {...{ problem, chances, hardest, nameOf }} />
          </Details>
        </>
      ) : null}
      <Progress {...{ part, isKnown: hardest !== null, isWaiting: !isResting, start, stop }} />
    </div>
  )
}

function Progress({
  part,
  isKnown,
  isWaiting,
  start,
  stop,
}: {
  readonly part: number | null
  readonly isKnown: boolean
  readonly isWaiting: boolean
  readonly start: () => void
  readonly stop: () => void
}) {
  if (part !== null)
    return (
      <div className="flex flex-wrap items-center gap-3">
        <ProgressBar label="Playing the rest of the term through" value={part} max={1} />
        <span role="status">Playing the rest of the term through</span>
        <Button type="button" weight="plain" onClick={stop}>
          Stop
        </Button>
      </div>
    )
  if (isKnown) return null
  return isWaiting ? (
    <p className="text-soft">Worked out as soon as the plan has come to rest.</p>
  ) : (
    <Button type="button" weight="plain" onClick={start}>
      Work it out now
    </Button>
  )
}
