import { checkAhead } from '#ahead/check-ahead'
import type { AheadProblem, AheadTheme } from '#ahead/problem'
import { themeWithAbove } from '#ahead/theme-with-above'
import type { SeededRandom } from './seeded-random'

/** Rules laid on at random; unless they may clash, only those stay that a hidden plan keeps. */
export function withRandomRules(
  random: SeededRandom,
  bare: AheadProblem,
  { tries, mayClash }: { readonly tries: number; readonly mayClash: boolean },
): AheadProblem {
  const hidden = bare.practices.map(({ offers }) => random.whole(0, offers.length - 1))
  let problem = bare
  for (let tried = 0; tried < tries; tried++) {
    const next = withRule(random, problem, hidden)
    if (mayClash || checkAhead(next, hidden).length === 0) problem = next
  }
  return problem
}

function withRule(random: SeededRandom, problem: AheadProblem, hidden: readonly number[]): AheadProblem {
  const theme = random.whole(0, problem.themes.length - 1)
  const week = random.pick(problem.practices).week
  const set = (rule: Partial<AheadTheme>): AheadProblem => ({
    ...problem,
    themes: problem.themes.map((own, at) => (at === theme ? { ...own, ...rule } : own)),
  })
  switch (random.whole(0, 8)) {
    case 0:
      return set({ firstWeek: week })
    case 1:
      return set({ lastWeek: week })
    case 2:
      return set({ after: random.whole(0, problem.themes.length - 1) })
    case 3:
    case 4:
      return set({ leastWeeksBetween: random.whole(2, 4) })
    case 5:
      return set({ mostWeeksBetween: random.whole(1, 6) })
    case 6:
      return withBlock(random, problem, hidden)
    case 7:
      return { ...problem, designRest: random.whole(1, 3) }
    default:
      return withHeld(random, problem, hidden)
  }
}

/** A week or two kept for what the hidden plan meets in the first of them, or for the theme above it. */
function withBlock(random: SeededRandom, problem: AheadProblem, hidden: readonly number[]): AheadProblem {
  const at = random.whole(0, problem.practices.length - 1)
  const practice = problem.practices[at]
  const offer = practice?.offers[hidden[at] ?? -1]
  if (!practice || !offer) return problem
  const theme = random.pick(themeWithAbove(problem.themes, offer.theme))
  const block = { theme, firstWeek: practice.week, lastWeek: practice.week + random.whole(0, 1) }
  return { ...problem, blocks: [...problem.blocks, block] }
}

function withHeld(random: SeededRandom, problem: AheadProblem, hidden: readonly number[]): AheadProblem {
  const at = random.whole(0, problem.practices.length - 1)
  const offers = problem.practices[at]?.offers ?? []
  const offer = random.chance(0.9) ? offers[hidden[at] ?? -1] : random.pick(offers)
  if (!offer) return problem
  const held = { theme: offer.theme, design: random.chance(0.5) ? offer.design : null }
  return {
    ...problem,
    practices: problem.practices.map((own, place) => (place === at ? { ...own, held } : own)),
  }
}
