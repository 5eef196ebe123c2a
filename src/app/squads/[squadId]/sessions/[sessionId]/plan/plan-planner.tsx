'use client'

import { type ComponentProps, useEffect } from 'react'
import type { PlanSolver, SolvedSoFar } from '#planning/plan-solver'
import type { Rotation } from '#rotation/rotation'
import { prepareRotationWorker, solveInWorker } from '#solver/rotation-in-worker'
import { PlanForm } from '#ui/planning/plan-form'

const seed = 1

/** The exact solver of this page: in a worker, so that the page stays free. */
const solver: PlanSolver = async (problem, { start, timeLimitMs, signal, onProgress }) => {
  const end = await solveInWorker(
    problem,
    { seed, timeLimitMs, workLimit: null, start },
    { signal, ...(onProgress ? { onProgress } : {}) },
  )
  return end.kind === 'impossible' ? end : { kind: end.kind, best: end.rotation && bestOf(end.rotation) }
}

function bestOf({ plan, restLimit, unfairness }: Rotation): SolvedSoFar {
  return { plan, restLimitUsed: restLimit.used, value: unfairness.value, bound: unfairness.bound }
}

/** The planning page with its solver. */
export function PlanPlanner(props: Omit<ComponentProps<typeof PlanForm>, 'solver'>) {
  useEffect(() => prepareRotationWorker(), [])
  return <PlanForm {...props} solver={solver} />
}
