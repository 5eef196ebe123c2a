import { aheadRules } from '#ahead/ahead-rules'
import type { AheadClash } from '#ahead/clash'
import { blockThemes } from '#ahead/kept-weeks'
import type { AheadProblem } from '#ahead/problem'
import type { AheadRuleName, Pick } from '#ahead/rule'
import { themeWithAbove } from '#ahead/theme-with-above'

/**
 * Why no plan can be, as far as arithmetic tells: what the rules leave of each practice's offers, one after another,
 * until nothing more follows. None: there may be a plan; whether there is, a search says. Every clash is a real one.
 */
export function findAheadClash(problem: AheadProblem): readonly AheadClash[] {
  const left = new OffersLeft(problem)
  const atOnce = problem.practices.flatMap((_, practice) => clashAt(problem, left, practice))
  if (atOnce.length > 0) return atOnce
  for (let isNew = true; isNew; ) {
    isNew = false
    for (const { name, lists, needs, always } of left.rules) {
      for (const list of lists) isNew = left.keepAtMostOne(name, list) || isNew
      for (const need of needs) isNew = left.keepNeed(name, need) || isNew
      for (const group of always) {
        const gone = left.whyGone(group)
        if (gone) return [{ rules: inOrder([name, ...gone]), practice: null, theme: themeOf(problem, group) }]
        isNew = left.keepAlways(name, group) || isNew
      }
      const found = problem.practices.flatMap((_, practice) => clashAt(problem, left, practice))
      if (found.length > 0) return found.slice(0, 1)
    }
  }
  return []
}

function clashAt(problem: AheadProblem, left: OffersLeft, practice: number): readonly AheadClash[] {
  const offers = problem.practices[practice]?.offers ?? []
  if (offers.length === 0) return [{ rules: ['offered'], practice, theme: null }]
  const rules = left.whyGone(offers.map((_, offer) => ({ practice, offer })))
  return rules ? [{ rules, practice, theme: themeAt(problem, practice, rules) }] : []
}

/** The theme that the rules look at: the one held, or the block's. */
function themeAt(problem: AheadProblem, practice: number, rules: readonly AheadRuleName[]): number | null {
  const own = problem.practices[practice]
  if (!own) return null
  if (rules.includes('held') && own.held) return own.held.theme
  return rules.includes('block') ? (blockThemes(problem, own.week)[0] ?? null) : null
}

/** The nearest theme that all of some offers are of. */
function themeOf({ practices, themes }: AheadProblem, picks: readonly Pick[]): number | null {
  const lines = picks.map(({ practice, offer }) =>
    themeWithAbove(themes, practices[practice]?.offers[offer]?.theme ?? -1),
  )
  return lines[0]?.find((theme) => lines.every((line) => line.includes(theme))) ?? null
}

type Need = { readonly pick: Pick; readonly oneOf: readonly Pick[] }
type Reasons = ReadonlySet<AheadRuleName>

/** Offers that may still be chosen, and of the others the rules that took them away, in each way that they did. */
class OffersLeft {
  readonly rules
  private readonly gone: (readonly Reasons[])[][]

  constructor(problem: AheadProblem) {
    this.gone = problem.practices.map(({ offers }) => offers.map(() => []))
    this.rules = aheadRules.map(({ name, limits }) => {
      const { never, atMostOne, needs, atLeastOne } = limits(problem)
      for (const pick of never) this.take(pick, new Set([name]))
      return { name, lists: atMostOne, needs, always: atLeastOne.filter((group) => group.length > 0) }
    })
  }

  /** Where a practice has only offers of a list left, no other may have one of it. */
  keepAtMostOne(rule: AheadRuleName, list: readonly Pick[]): boolean {
    const practices = [...new Set(list.map(({ practice }) => practice))]
    let isNew = false
    for (const practice of practices) {
      const outside = this.offersOf(practice).filter((pick) => !has(list, pick))
      const own = list.filter((pick) => pick.practice === practice)
      const why = own.some((pick) => this.isLeft(pick)) ? this.whyGone(outside) : null
      if (!why) continue
      for (const pick of list)
        if (pick.practice !== practice && this.isLeft(pick)) {
          this.take(pick, new Set([rule, ...why]))
          isNew = true
        }
    }
    return isNew
  }

  keepNeed(rule: AheadRuleName, { pick, oneOf }: Need): boolean {
    const why = this.isLeft(pick) ? this.whyGone(oneOf) : null
    if (why) this.take(pick, new Set([rule, ...why]))
    return why !== null
  }

  /** Where one practice alone can bring what is asked for, it has to. */
  keepAlways(rule: AheadRuleName, group: readonly Pick[]): boolean {
    const practices = new Set(group.filter((pick) => this.isLeft(pick)).map(({ practice }) => practice))
    const [only] = practices
    if (only === undefined || practices.size > 1) return false
    const why = this.whyGone(group.filter(({ practice }) => practice !== only)) ?? []
    const others = this.offersOf(only).filter((pick) => this.isLeft(pick) && !has(group, pick))
    for (const pick of others) this.take(pick, new Set([rule, ...why]))
    return others.length > 0
  }

  /** The fewest rules that leave none of some offers; null: one is left. */
  whyGone(picks: readonly Pick[]): readonly AheadRuleName[] | null {
    const ways = picks.map(({ practice, offer }) => this.gone[practice]?.[offer] ?? [])
    if (ways.some((own) => own.length === 0)) return null
    const names = inOrder(ways.flatMap((own) => own.flatMap((reasons) => [...reasons])))
    let fewest: readonly AheadRuleName[] = names
    for (let subset = 0; subset < 2 ** names.length; subset++) {
      const some = names.filter((_, bit) => subset & (1 << bit))
      if (some.length < fewest.length && ways.every((own) => own.some((reasons) => isIn(reasons, some))))
        fewest = some
    }
    return fewest
  }

  isLeft({ practice, offer }: Pick): boolean {
    return this.gone[practice]?.[offer]?.length === 0
  }

  private offersOf(practice: number): readonly Pick[] {
    return (this.gone[practice] ?? []).map((_, offer) => ({ practice, offer }))
  }

  private take({ practice, offer }: Pick, reasons: Reasons): void {
    const own = this.gone[practice]?.[offer]
    if (own && this.gone[practice]) this.gone[practice][offer] = [...own, reasons]
  }
}

function has(list: readonly Pick[], { practice, offer }: Pick): boolean {
  return list.some((own) => own.practice === practice && own.offer === offer)
}

function isIn(reasons: Reasons, rules: readonly AheadRuleName[]): boolean {
  return [...reasons].every((reason) => rules.includes(reason))
}

/** Each once, in the order of the rules. */
function inOrder(names: readonly AheadRuleName[]): readonly AheadRuleName[] {
  return aheadRules.map(({ name }) => name).filter((name) => names.includes(name))
}
