import { type Replan, replan } from '#rotation/replan'
import { replanCase } from '../support/replan-cases'
import { quantile } from './quantile'

type Timed = { readonly ms: number; readonly cpuMs: number; readonly found: Replan; readonly turns: number }

/**
 * A new plan in the middle of a practice: what a coach waits for after somebody left. Seeded practices of 8 to 24 players
 * and 10 to 40 turns; the target is a tenth of a second at the 95th percentile.
 */
export function benchReplan({ isFull }: { readonly isFull: boolean }): string {
  const timed: Timed[] = []
  for (let seed = 1; timed.length < (isFull ? 300 : 60); seed += 1) {
    const own = replanCase(seed)
    if (own === null) continue
    const began = performance.now()
    const cpuBegan = process.cpuUsage()
    const found = replan(own)
    const { user, system } = process.cpuUsage(cpuBegan)
    timed.push({
      ms: performance.now() - began,
      cpuMs: (user + system) / 1000,
      found,
      turns: own.problem.turns.length - own.fromTurn,
    })
  }
  return [
    '| a new plan after something happened | practices | median | 95th percentile | its processor time | longest | within 100 ms | too few, with smaller shapes |',
    '|---|---|---|---|---|---|---|---|',
    row('all', timed),
    row(
      'more than 15 turns left',
      timed.filter(({ turns }) => turns > 15),
    ),
  ].join('\n')
}

function row(what: string, timed: readonly Timed[]): string {
  const ms = timed.map((own) => own.ms)
  const within = ms.filter((own) => own <= 100).length
  const few = timed.filter(({ found }) => found.kind === 'tooFew')
  const withPlan = few.filter(({ found }) => found.kind === 'tooFew' && found.smaller !== null)
  return `| ${[
    what,
    timed.length,
    `${quantile(ms, 0.5).toFixed(0)} ms`,
    `${quantile(ms, 0.95).toFixed(0)} ms`,
    `${quantile(
      timed.map(({ cpuMs }) => cpuMs),
      0.95,
    ).toFixed(0)} ms`,
    `${Math.max(...ms).toFixed(0)} ms`,
    `${((100 * within) / Math.max(1, ms.length)).toFixed(1)} %`,
    `${withPlan.length} of ${few.length}`,
  ].join(' | ')} |`
}
