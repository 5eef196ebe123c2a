import type { OtherPlan } from '#ahead/draft/ahead-engine'
import type { SolvedAhead } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { quickAhead } from '#ahead/quick-plan'
import { themeWithAbove } from '#ahead/theme-with-above'
import { shareOfTime } from '#solver/deadline'
import { NotDecided } from '#solver/not-decided'
import { type AheadSettings, solveAhead } from '#solver/solve-ahead'

const mostAlternatives = 4

/**
 * Nearly as good, but with another theme in a practice: for the themes that look best there the best plan, cheapest
 * first. A theme that the rules do not let come there is none.
 */
export async function aheadAlternatives(
  problem: AheadProblem,
  { plan, proof }: SolvedAhead,
  { practice, ...settings }: Omit<AheadSettings, 'start' | 'onBetter'> & { readonly practice: number },
): Promise<readonly OtherPlan[]> {
  const own = problem.practices[practice]
  const chosen = own?.offers[plan.choices[practice] ?? -1]
  if (!own || !chosen) return []
  const isOther = (theme: number) =>
    !themeWithAbove(problem.themes, chosen.theme).includes(theme) &&
    (!own.held || themeWithAbove(problem.themes, theme).includes(own.held.theme))
  const themes = [...new Set(own.offers.map(({ theme }) => theme))].filter(isOther)
  const lookUntil = performance.now() + lookShare * shareOfTime(settings, { searches: 1, index: 0 })
  const looked = themes.flatMap((theme, index) => {
    // Where work is counted the clock must not decide.
    if (settings.workLimit === null && index > 0 && performance.now() > lookUntil) return []
    const other = withTheme(problem, practice, theme)
    const quick = quickAhead(other, { seed: settings.seed, steps: quickSteps })
    return quick ? [{ theme, other, quick, value: planValue(problem, quick).all }] : []
  })
  const best = looked
    .sort((one, two) => one.value - two.value || one.theme - two.theme)
    .slice(0, mostAlternatives)
  const found: OtherPlan[] = []
  for (const [index, { theme, other, quick }] of best.entries()) {
    const timeLimitMs = shareOfTime(settings, { searches: best.length, index })
    const workLimit = settings.workLimit === null ? null : Math.floor(settings.workLimit / best.length)
    const began = performance.now()
    try {
      const answer = await solveAhead(other, { ...settings, began, timeLimitMs, workLimit, start: quick })
      if (answer.kind === 'solved')
        found.push({ theme, solved: answer.solved, costs: answer.solved.proof.value - proof.value })
    } catch (error) {
      if (!(error instanceof NotDecided)) throw error
    }
  }
  return found.sort((one, two) => one.costs - two.costs || one.theme - two.theme)
}

/** Of the time, for seeing which themes are worth a search of their own. */
const lookShare = 0.3
/** As many as show that. */
const quickSteps = 1500

/** The same practices, one of them held for a theme. */
function withTheme(problem: AheadProblem, practice: number, theme: number): AheadProblem {
  return {
    ...problem,
    practices: problem.practices.map((own, at) => {
      if (at !== practice) return own
      return { ...own, held: { theme, design: own.held?.design ?? null } }
    }),
  }
}
