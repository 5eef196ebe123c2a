'use client'

import type { AheadEngine, ReachOfPlayer } from '#ahead/draft/ahead-engine'
import { expectedEnd } from '#ahead/expected-end'
import { columnsOutside } from '#ahead/explain/ends-inside'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { andList } from '#common/and-list'
import type { RotationColumn } from '#rotation/problem'
import type { NameOfPlace } from '#ui/ahead/ahead-types'
import { columnName } from '#ui/ahead/column-names'
import { useErrand } from '#ui/ahead/use-errand'
import { Button } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { RunningSearch } from '#ui/planning/running-search'

type ReachPartProps = {
  /** What a solver is asked, and its plan. */
  readonly problem: AheadProblem
  readonly plan: AheadPlan
  readonly engine: AheadEngine
  readonly nameOf: NameOfPlace
}

/** Who ends outside the tolerance, and whether any plan could have brought it inside. Nothing where nobody does. */
export function ReachPart({ problem, plan, engine, nameOf }: ReachPartProps) {
  const { found, search, hasFailed, run, stop } = useErrand<readonly ReachOfPlayer[]>(plan)
  const outside = expectedEnd(problem, plan).flatMap(({ gap }, player) => {
    const own = problem.players[player]
    const columns = own ? columnsOutside(own, gap) : []
    return columns.length > 0 ? [{ player, columns }] : []
  })
  if (outside.length === 0) return null
  return (
    <div className="space-y-2" data-part="reach">
      <p className="max-w-prose">Outside the tolerance at the end, as far as is expected:</p>
      <ul className="list-disc space-y-1 pl-5">
        {outside.map(({ player, columns }) => (
          <li key={player}>
            {nameOf(player)}: {columns.map((column) => saidOf(column, found?.[player])).join('; ')}
          </li>
        ))}
      </ul>
      {search ? (
        <RunningSearch search={search} says="Looking at what any plan could reach" onStop={stop} />
      ) : found ? null : (
        <Button
          type="button"
          weight="plain"
          onClick={() => run((watch) => engine.reach(problem, { ...watch, start: plan }))}
        >
          Could any plan bring {outside.length === 1 ? 'this' : 'these'} inside?
        </Button>
      )}
      {hasFailed ? <Notice>That could not be found out on this device.</Notice> : null}
      {found ? <p className="max-w-prose text-soft">{summary(outside, found)}</p> : null}
    </div>
  )
}

const reachWords = {
  yes: 'another plan could, at a cost for others',
  no: 'no plan could bring it inside',
  open: 'not decided in this time',
}

function saidOf(column: RotationColumn, reach: ReachOfPlayer | undefined): string {
  const name = columnName(column).toLowerCase()
  return reach ? `${name} (${reachWords[reach[column]]})` : name
}

function summary(
  outside: readonly { readonly player: number; readonly columns: readonly RotationColumn[] }[],
  found: readonly ReachOfPlayer[],
): string {
  const all = outside.flatMap(({ player, columns }) => columns.map((column) => found[player]?.[column]))
  const counts = [
    [
      all.filter((reach) => reach === 'no').length,
      'beyond what any plan can do in the practices that are left',
    ],
    [all.filter((reach) => reach === 'yes').length, 'left where it is because it would cost others more'],
    [all.filter((reach) => reach === 'open').length, 'not decided'],
  ] as const
  return `Of these ${all.length}: ${andList(counts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`))}.`
}
