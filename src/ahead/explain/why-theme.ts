import { standingBefore } from '#ahead/explain/standing-before'
import { blockThemes } from '#ahead/kept-weeks'
import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { themeWithAbove } from '#ahead/theme-with-above'
import { choiceMeets, didMeet } from '#ahead/themes-met'
import type { Seconds } from '#common/time'

/** Why a practice is of its theme: the first of these that holds. `theme`: the place of the one it holds for. */
export type WhyTheme =
  | { readonly kind: 'held' }
  | { readonly kind: 'block'; readonly theme: number }
  | { readonly kind: 'comesBack'; readonly theme: number; readonly weeks: number }
  | { readonly kind: 'lastWeek'; readonly theme: number; readonly week: number }
  /** So much a player, on average, it is behind its part of the term when the practice begins. */
  | { readonly kind: 'behind'; readonly theme: number; readonly seconds: Seconds }
  | { readonly kind: 'first'; readonly theme: number }
  | { readonly kind: 'other' }

const leastBehind = 60

/** Null: nothing is chosen for the practice. */
export function whyTheme(problem: AheadProblem, plan: AheadPlan, practice: number): WhyTheme | null {
  const own = problem.practices[practice]
  const offer = chosenOffer(problem, plan.choices, practice)
  if (!own || !offer) return null
  if (own.held) return { kind: 'held' }
  const line = themeWithAbove(problem.themes, offer.theme)
  const block = blockThemes(problem, own.week).find((theme) => line.includes(theme))
  if (block !== undefined) return { kind: 'block', theme: block }
  return (
    comesBack(problem, plan, { practice, line }) ??
    closesSoon(problem, { practice, line }) ??
    behind(problem, plan, { practice, line }) ??
    (lastWeekOf(problem, plan, { practice, theme: offer.theme }) === null
      ? { kind: 'first', theme: offer.theme }
      : { kind: 'other' })
  )
}

type At = { readonly practice: number; readonly line: readonly number[] }

/**
 * It is to come back within so many weeks, and the practice after this one would be too late. After the last practice
 * there is none, and the rule asks nothing beyond the weeks that are planned.
 */
function comesBack(problem: AheadProblem, plan: AheadPlan, { practice, line }: At): WhyTheme | null {
  const lastPlanned = problem.practices.at(-1)?.week ?? 0
  const next = problem.practices[practice + 1]?.week ?? Number.POSITIVE_INFINITY
  for (const theme of line) {
    const most = problem.themes[theme]?.mostWeeksBetween ?? null
    const last = most === null ? null : lastWeekOf(problem, plan, { practice, theme })
    const isAsked = most !== null && last !== null && last + most <= lastPlanned
    if (isAsked && next > last + most) return { kind: 'comesBack', theme, weeks: most }
  }
  return null
}

/** The programme has room for it in no week after this one. */
function closesSoon(problem: AheadProblem, { practice, line }: At): WhyTheme | null {
  const next = problem.practices[practice + 1]?.week ?? Number.POSITIVE_INFINITY
  for (const theme of line) {
    const last = problem.themes[theme]?.lastWeek ?? null
    if (last !== null && next > last) return { kind: 'lastWeek', theme, week: last }
  }
  return null
}

function behind(problem: AheadProblem, plan: AheadPlan, { practice, line }: At): WhyTheme | null {
  const standing = standingBefore(problem, plan, practice)
  const all = line
    .filter((theme) => (problem.themes[theme]?.wishedShare ?? 0) > 0)
    .map((theme) => {
      const short = standing.map(({ themeDue, themeSeconds }) =>
        Math.max(0, (themeDue[theme] ?? 0) - (themeSeconds[theme] ?? 0)),
      )
      return { theme, seconds: short.reduce((sum, one) => sum + one, 0) / Math.max(1, short.length) }
    })
  const most = all.toSorted((one, other) => other.seconds - one.seconds)[0]
  return most && most.seconds >= leastBehind ? { kind: 'behind', ...most } : null
}

/** The week in which a theme was met last before a practice of the plan. */
function lastWeekOf(
  problem: AheadProblem,
  plan: AheadPlan,
  { practice, theme }: { readonly practice: number; readonly theme: number },
): number | null {
  const weeks = [
    ...problem.met.filter((met) => didMeet(problem, met, theme)).map(({ week }) => week),
    ...problem.practices
      .slice(0, practice)
      .flatMap(({ week }, at) => (choiceMeets(problem, plan.choices, { practice: at, theme }) ? [week] : [])),
  ]
  return weeks.length > 0 ? Math.max(...weeks) : null
}
