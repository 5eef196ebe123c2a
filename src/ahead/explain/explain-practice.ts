import { type Favour, favoursOf } from '#ahead/explain/favours-of'
import { type WhyTheme, whyTheme } from '#ahead/explain/why-theme'
import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import { groupBy } from '#common/group-by'
import { secondsInMinute } from '#common/time'

/** What a player gets more of, as a coach would say it. */
const favourWords: Readonly<Record<Favour['column'], string>> = {
  attack: 'attacking',
  defend: 'defending',
  keep: 'time in goal',
  outnumbering: 'play with more of us',
  level: 'play with even numbers',
  outnumbered: 'play with fewer of us',
}

/** Named in one breath; the others are counted. */
const mostNamed = 3
const mostClauses = 2

/**
 * Why a practice of the plan is what it is, in one sentence that names the gaps it closes. `nameOf` by the player's place
 * in the list; null: the sentence names nobody, and counts instead. Empty where nothing is chosen.
 */
export function explainPractice(
  problem: AheadProblem,
  plan: AheadPlan,
  { practice, nameOf }: { readonly practice: number; readonly nameOf: ((player: number) => string) | null },
): string {
  const why = whyTheme(problem, plan, practice)
  const offer = chosenOffer(problem, plan.choices, practice)
  if (!why || !offer) return ''
  const theme = problem.themes[offer.theme]?.name ?? ''
  const said = sayWhy(why, { theme, nameOfTheme: (at) => problem.themes[at]?.name ?? theme })
  return `${said}; ${sayFavours(favoursOf(problem, plan, practice), nameOf)}.`
}

function sayWhy(
  why: WhyTheme,
  { theme, nameOfTheme }: { readonly theme: string; readonly nameOfTheme: (at: number) => string },
): string {
  switch (why.kind) {
    case 'held':
      return `“${theme}” is held here`
    case 'block':
      return `The week is kept for “${nameOfTheme(why.theme)}”`
    case 'comesBack':
      return `“${nameOfTheme(why.theme)}” is to come back within ${weeks(why.weeks)}, and a later practice would be too late`
    case 'lastWeek':
      return `“${nameOfTheme(why.theme)}” is to be met by week ${why.week}, and no later practice lies before that`
    case 'behind':
      return `“${nameOfTheme(why.theme)}” is about ${minutes(why.seconds)} a player behind its part of the term`
    case 'first':
      return `“${theme}” has not been met this term`
    case 'other':
      return `“${theme}” has its part of the term so far, and its design has the places that are missing`
  }
}

/** "it gives Ann and Bo more attacking, and Cy more time in goal". */
function sayFavours(favours: readonly Favour[], nameOf: ((player: number) => string) | null): string {
  const clauses = columnsOf(favours).map(([column, own]) => {
    const who = nameOf ? named(own.map(({ player }) => nameOf(player))) : counted(own.length)
    return `${who} more ${favourWords[column]}`
  })
  return clauses.length === 0 ? 'everyone shares its places alike' : `it gives ${clauses.join(', and ')}`
}

/** Each player where it gains most; the columns that make up for most, first. */
function columnsOf(
  favours: readonly Favour[],
): readonly (readonly [column: Favour['column'], favours: readonly Favour[]])[] {
  const main = favours.filter(
    ({ player }, index) => favours.findIndex((own) => own.player === player) === index,
  )
  const sum = (own: readonly Favour[]) => own.reduce((all, { seconds }) => all + seconds, 0)
  return [...groupBy(main, ({ column }) => column)]
    .sort(([, one], [, other]) => sum(other) - sum(one))
    .slice(0, mostClauses)
}

function named(names: readonly string[]): string {
  if (names.length <= mostNamed + 1) return andList(names)
  return andList([...names.slice(0, mostNamed), `${countWord(names.length - mostNamed)} others`])
}

function counted(players: number): string {
  return players === 1 ? 'one player' : `${countWord(players)} players`
}

function weeks(count: number): string {
  return count === 1 ? 'a week' : `${countWord(count)} weeks`
}

function minutes(seconds: number): string {
  return `${Math.max(1, Math.round(seconds / secondsInMinute))} min`
}
