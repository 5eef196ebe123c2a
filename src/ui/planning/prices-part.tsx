'use client'

import { useRef, useState } from 'react'
import type { MadePlan } from '#planning/plan-draft'
import type { PlanSolver } from '#planning/plan-solver'
import type { PlanRequest } from '#planning/practice-plan'
import { type Price, type PricedRule, pricedRules, priceOfRule } from '#planning/price-tags'
import { problemOfRequest, withFreeGames } from '#planning/problem-of-request'
import { planValues } from '#rotation/plan-values'
import { Button } from '#ui/page/button'
import type { NameOf } from '#ui/planning/planning-types'
import { ProgressBar } from '#ui/planning/progress-bar'

type PricesPartProps = {
  readonly request: PlanRequest
  readonly made: MadePlan
  readonly nameOf: NameOf
  readonly solver: PlanSolver
}

type Priced = {
  readonly made: MadePlan
  readonly prices: ReadonlyMap<string, Price>
  readonly isRunning: boolean
}

/** How long the exact solver may look at the practice without one rule. */
const limitMs = 4_000

/** What each rule costs in evenness, worked out when it is asked for: the practice is planned once more without it. */
export function PricesPart({ request, made, nameOf, solver }: PricesPartProps) {
  const [priced, setPriced] = useState<Priced | null>(null)
  const running = useRef<AbortController | null>(null)
  const rules = pricedRules(request, nameOf)
  // Prices of another plan say nothing of this one.
  const own = priced?.made === made ? priced : null
  const start = async () => {
    running.current?.abort()
    const control = new AbortController()
    running.current = control
    setPriced({ made, prices: new Map(), isRunning: true })
    for (const rule of rules) {
      if (control.signal.aborted) break
      const price = await priceOf(rule, { made, solver, signal: control.signal })
      setPriced((now) => now && { ...now, prices: new Map([...now.prices, [rule.key, price]]) })
    }
    setPriced((now) => now && { ...now, isRunning: false })
  }
  if (rules.length === 0) return <p className="text-soft">No rule is set that could cost anything.</p>
  return (
    <div className="space-y-3" data-part="prices">
      <ul className="border-t border-rule">
        {rules.map((rule) => (
          <li key={rule.key} className="flex flex-wrap justify-between gap-x-6 border-b border-rule py-2">
            <span>{rule.words}</span>
            <span className="figures text-soft" aria-live="polite">
              {priceText(own?.prices.get(rule.key), own?.isRunning ?? false)}
            </span>
          </li>
        ))}
      </ul>
      {own?.isRunning ? (
        <div className="flex flex-wrap items-center gap-3">
          <ProgressBar label="Working out the prices" value={own.prices.size} max={rules.length} />
          <span>
            {own.prices.size} of {rules.length} worked out
          </span>
          <Button type="button" weight="plain" onClick={() => running.current?.abort()}>
            Stop
          </Button>
        </div>
      ) : (
        <Button type="button" weight="plain" onClick={() => void start()}>
          {own ? 'Work them out again' : 'What does each rule cost?'}
        </Button>
      )}
    </div>
  )
}

async function priceOf(
  rule: PricedRule,
  {
    made,
    solver,
    signal,
  }: { readonly made: MadePlan; readonly solver: PlanSolver; readonly signal: AbortSignal },
): Promise<Price> {
  // The free games stay as they stand, so that the two plans differ by the rule alone.
  const problem = withFreeGames(problemOfRequest(rule.without), { request: rule.without, plan: made.plan })
  const end = await solver(problem, { start: made.plan, timeLimitMs: limitMs, signal })
  const best = end.kind === 'impossible' ? null : end.best
  if (!best) return { kind: 'unknown' }
  return priceOfRule(
    { value: planValues(made.problem, made.plan).unfairness, bound: made.bound },
    { value: best.value, bound: best.bound },
  )
}

function priceText(price: Price | undefined, isRunning: boolean): string {
  if (!price) return isRunning ? '…' : ''
  if (price.kind === 'free') return 'costs nothing'
  if (price.kind === 'unknown') return 'not known'
  const percent = price.share * 100
  const said = percent < 0.1 ? 'less than 0.1 %' : `${Math.round(percent * 10) / 10} %`
  return price.kind === 'costs' ? `costs ${said} of evenness` : `costs at most ${said} of evenness`
}
