import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import type { SolvedAhead } from '#ahead/plan'
import { reachableInWorker, solveAheadInWorker } from '#solver/ahead-in-worker'
import { randomAhead } from '../support/random-ahead'
import { threadAheadWorker } from '../support/thread-worker'

const watch = { start: null, seed: 1, timeLimitMs: 20_000 }

describe('the weeks ahead in a worker', { timeout: 60_000 }, () => {
  it('come back solved, told of on the way, none worse than the one before', async () => {
    const problem = randomAhead(3, { practices: 3, themes: 4, designs: 4, players: 6 })
    const told: SolvedAhead[] = []
    const signal = new AbortController().signal
    const onBetter = (own: SolvedAhead) => told.push(own)
    const end = await solveAheadInWorker(problem, { ...watch, signal, onBetter }, threadAheadWorker)
    if (end.kind !== 'solved' || !end.best) throw new Error(end.kind)
    expect(checkAhead(problem, end.best.plan.choices)).toEqual([])
    const values = [...told, end.best].map(({ proof }) => proof.value)
    expect(told.length).toBeGreaterThan(0)
    expect(values).toEqual([...values].sort((one, other) => other - one))
  })

  it('stop at once when told to, with the best plan so far', async () => {
    const problem = randomAhead(2, { practices: 20, themes: 20, designs: 15, players: 16 })
    const stop = new AbortController()
    let stoppedAt = 0
    const onBetter = () => {
      stoppedAt = performance.now()
      stop.abort()
    }
    const end = await solveAheadInWorker(
      problem,
      { ...watch, signal: stop.signal, onBetter },
      threadAheadWorker,
    )
    expect(performance.now() - stoppedAt).toBeLessThan(1000)
    if (end.kind !== 'stopped' || !end.best) throw new Error(end.kind)
    expect(checkAhead(problem, end.best.plan.choices)).toEqual([])
  })

  it('say what can be reached', async () => {
    const problem = randomAhead(4, { practices: 3, themes: 4, designs: 4, players: 6 })
    const settings = { seed: 1, timeLimitMs: 5000, workLimit: null }
    const ends = await reachableInWorker(problem, { settings }, threadAheadWorker)
    expect(ends?.players).toHaveLength(6)
    expect(ends?.outside.bound).toBeLessThanOrEqual(ends?.outside.value ?? -1)
  })
})
