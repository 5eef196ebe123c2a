import type { AheadClash } from '#ahead/clash'
import type { AheadProblem, AheadTheme } from '#ahead/problem'
import type { AheadRuleName } from '#ahead/rule'
import { themeWithAbove } from '#ahead/theme-with-above'
import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import type { Day } from '#common/time'

/** A clash in two sentences: what stands against what, where, and what would work. `sayDay`: a day as the page says it. */
export function sayAheadClash(
  problem: AheadProblem,
  clash: AheadClash,
  sayDay: (day: Day) => string = (day) => day,
): string {
  const practice = clash.practice === null ? undefined : problem.practices[clash.practice]
  const when = practice ? `On ${sayDay(practice.day)}` : null
  if (clash.rules.includes('offered'))
    return `${when ?? 'In one practice'} there is nothing to choose: no design that serves a theme of the programme fits the ground, the time and those expected. Choose another ground, add a design, or leave the practice out.`
  const [rule] = clash.rules
  if (clash.rules.length === 1 && rule === 'held' && practice?.held)
    return sayHeldAlone(problem, practice, `${when}`)
  const reasons = clash.rules.map((own) => reasonOf(problem, { ...clash, rule: own })).join('; ')
  const subject = clash.theme === null ? null : problem.themes[clash.theme]
  const what = when
    ? `${when} nothing is left to choose`
    : subject
      ? `There is no practice left for ${subject.name}`
      : 'No plan keeps all of this'
  return `${what}: ${reasons}. ${wayOut(clash.rules)}`
}

function sayHeldAlone(
  { themes, designs }: AheadProblem,
  { held }: AheadProblem['practices'][number],
  when: string,
): string {
  const theme = themes[held?.theme ?? -1]?.name ?? 'a theme'
  const design = held?.design == null ? undefined : designs[held.design]?.name
  return design
    ? `${when} ${theme} with ${design} is held, and that design does not fit the ground, the time or those expected. Hold another design, or let it go.`
    : `${when} ${theme} is held, and no design that fits the ground, the time and those expected serves it. Hold another theme, add a design to it, or let it go.`
}

type Reason = AheadClash & { readonly rule: AheadRuleName }

function reasonOf(problem: AheadProblem, clash: Reason): string {
  const { rule, practice } = clash
  const week = practice === null ? null : (problem.practices[practice]?.week ?? null)
  switch (rule) {
    case 'offered':
      return 'no design fits'
    case 'held': {
      const held = practice === null ? null : problem.practices[practice]?.held
      return held ? `${problem.themes[held.theme]?.name} is held there` : 'other practices are held'
    }
    case 'block': {
      const blocks = problem.blocks.filter(
        (own) => week === null || (own.firstWeek <= week && week <= own.lastWeek),
      )
      return blocks.length > 0
        ? andList(blocks.map((own) => `${weeksSaid(own)} kept for ${problem.themes[own.theme]?.name}`))
        : 'weeks are kept for other themes'
    }
    case 'designRest':
      return `a design rests for ${counted(problem.designRest, 'practice')} after it was used`
    case 'firstWeek':
    case 'lastWeek':
    case 'leastWeeksBetween':
    case 'mostWeeksBetween':
    case 'after': {
      const theme = themeWithRule(problem, clash)
      return theme ? ofTheme(problem, theme, rule) : ofAnyTheme[rule]
    }
  }
}

function weeksSaid({
  firstWeek,
  lastWeek,
}: {
  readonly firstWeek: number
  readonly lastWeek: number
}): string {
  return firstWeek === lastWeek ? `week ${firstWeek} is` : `weeks ${firstWeek} to ${lastWeek} are`
}

type ThemeRule = 'firstWeek' | 'lastWeek' | 'after' | 'leastWeeksBetween' | 'mostWeeksBetween'

/** The rule may be that of a theme above. */
function themeWithRule({ themes }: AheadProblem, { rule, theme }: Reason): AheadTheme | undefined {
  if (theme === null) return undefined
  const at = themeWithAbove(themes, theme).find((own) => themes[own]?.[rule as ThemeRule] != null)
  return at === undefined ? undefined : themes[at]
}

function ofTheme({ themes }: AheadProblem, theme: AheadTheme, rule: ThemeRule): string {
  switch (rule) {
    case 'firstWeek':
      return `${theme.name} comes in week ${theme.firstWeek} at the earliest`
    case 'lastWeek':
      return `${theme.name} comes in week ${theme.lastWeek} at the latest`
    case 'after':
      return `${theme.name} comes after ${themes[theme.after ?? -1]?.name}, which cannot be met before it`
    case 'leastWeeksBetween':
      return `${theme.name} comes back after ${counted(theme.leastWeeksBetween, 'week')} at the earliest`
    case 'mostWeeksBetween':
      return `${theme.name} comes back after ${counted(theme.mostWeeksBetween, 'week')} at the latest`
  }
}

const ofAnyTheme: Readonly<Record<ThemeRule, string>> = {
  firstWeek: 'some themes have their first week later',
  lastWeek: 'some themes had their last week before',
  after: 'some themes come after others that cannot be met before',
  leastWeeksBetween: 'some themes come back only weeks later',
  mostWeeksBetween: 'some themes have to come back by then',
}

function counted(count: number | null, what: string): string {
  return `${countWord(count ?? 0)} ${what}${count === 1 ? '' : 's'}`
}

function wayOut(rules: readonly AheadRuleName[]): string {
  if (rules.length > 1) return 'Let one of these go, or change it.'
  switch (rules[0]) {
    case 'block':
      return 'Change the weeks, or add a design that serves the theme.'
    case 'designRest':
      return 'Let designs come back sooner, or add designs.'
    case 'after':
      return 'Let one of the themes come without another before it.'
    case 'mostWeeksBetween':
      return 'Allow more weeks.'
    case 'leastWeeksBetween':
      return 'Allow fewer weeks, or add themes or designs.'
    default:
      return 'Change the weeks, or add themes or designs.'
  }
}
