import { describe, expect, it } from 'vitest'
import { checkPlan } from '#rotation/check-plan'
import { findClash } from '#rotation/clash'
import { planValues } from '#rotation/plan-values'
import { prepareRotationWorker, solveInWorker } from '#solver/rotation-in-worker'
import type { SolveProgress } from '#solver/solve-progress'
import { randomRotation } from '../support/random-rotation'
import { aRound, problemOf, smallRequest } from '../support/rotation-builder'
import { threadWorker } from '../support/thread-worker'

const settings = { seed: 1, timeLimitMs: 20_000, workLimit: null }

/** Large, and its limit on rests binds: nothing is proven in half a minute. */
function longRequest() {
  for (let seed = 1; ; seed += 1) {
    const problem = problemOf(randomRotation(seed, { players: 20, turns: 40, restLimit: 1 }))
    if (findClash(problem).length === 0) return problem
  }
}

describe('a rotation in a worker', { timeout: 60_000 }, () => {
  it('comes back solved and proven, told of on the way', async () => {
    const problem = problemOf(smallRequest({ rounds: [aRound({ turns: 4 })] }))
    const told: SolveProgress[] = []
    const worked = await solveInWorker(
      problem,
      settings,
      { onProgress: (own) => told.push(own) },
      threadWorker,
    )
    if (worked.kind !== 'solved') throw new Error(worked.kind)
    expect(worked.rotation.unfairness.proven).toBe(true)
    expect(checkPlan(problem, worked.rotation.plan)).toEqual([])
    expect(told.map(({ stage }) => stage).slice(0, 2)).toEqual(['firstPlan', 'evening'])
    for (const { plan, value } of told) expect(planValues(problem, plan).unfairness).toBeCloseTo(value, 3)
  })

  it('stops at once when told to, with a plan that keeps every rule', async () => {
    const problem = longRequest()
    const stop = new AbortController()
    const began = performance.now()
    let stoppedAt = 0
    const worked = await solveInWorker(
      problem,
      settings,
      {
        signal: stop.signal,
        onProgress: ({ stage }) => {
          if (stage !== 'evening') return
          stoppedAt = performance.now()
          stop.abort()
        },
      },
      threadWorker,
    )
    expect(performance.now() - stoppedAt).toBeLessThan(1000)
    expect(performance.now() - began).toBeLessThan(settings.timeLimitMs)
    if (worked.kind !== 'stopped' || !worked.rotation) throw new Error(worked.kind)
    const restLimit = worked.rotation.restLimit.used
    expect(checkPlan({ ...problem, restLimit }, worked.rotation.plan)).toEqual([])
  })

  it('says what clashes where there is no rotation, and that it broke where it broke', async () => {
    const problem = problemOf(smallRequest({ players: [{ id: 'p1' }, { id: 'p2' }] }))
    const worked = await solveInWorker(problem, settings, {}, threadWorker)
    expect(worked.kind === 'impossible' && worked.clash.map(({ rule }) => rule)).toEqual(['seats', 'seats'])
    const broken = { ...problem, players: null } as unknown as typeof problem
    expect((await solveInWorker(broken, settings, {}, threadWorker)).kind).toBe('failed')
  })

  it('is not begun when it is stopped beforehand', async () => {
    const signal = AbortSignal.abort()
    const started: unknown[] = []
    const worked = await solveInWorker(problemOf(smallRequest()), settings, { signal }, () => {
      started.push(1)
      return threadWorker()
    })
    expect(worked).toEqual({ kind: 'stopped', rotation: null })
    expect(started).toEqual([])
  })
})

describe('a worker that is kept ready', { timeout: 60_000 }, () => {
  it('is there for the next call, and gone when nobody needs one any more', async () => {
    let started = 0
    let ended = 0
    const start = () => {
      started += 1
      const worker = threadWorker()
      const { terminate } = worker
      return Object.assign(worker, {
        terminate: () => {
          ended += 1
          terminate()
        },
      })
    }
    const release = prepareRotationWorker(start)
    expect(started).toBe(1)
    const problem = problemOf(smallRequest())
    for (const calls of [1, 2]) {
      expect((await solveInWorker(problem, settings, {}, start)).kind).toBe('solved')
      expect(started).toBe(calls + 1)
    }
    release()
    expect(ended).toBe(started)
  })
})
