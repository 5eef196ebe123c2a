import { offerPlanned } from '#ahead/draft/choices-of-plan'
import { type WhyTheme, whyTheme } from '#ahead/explain/why-theme'
import { type AheadPlan, chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { PlannedPractice, TermPlan } from '#ahead/term-plan'
import type { Day } from '#common/time'
import type { ThemeId } from '#themes/theme'

/** A practice that is in the book now and was still to come when the plan was saved. */
export type WrittenSince = {
  readonly sessionId: string
  readonly day: Day
  /** With those above them. */
  readonly themeIds: readonly ThemeId[]
}

export type AheadChange =
  | {
      readonly kind: 'written'
      readonly day: Day
      readonly sessionId: string
      /** Null: it was not in the plan. */
      readonly planned: ThemeId | null
      readonly isAsPlanned: boolean
    }
  /** Planned before and not to come any more: cancelled, moved out of the term, or over and not written. */
  | { readonly kind: 'gone'; readonly planned: PlannedPractice }
  | { readonly kind: 'new'; readonly practice: number }
  | {
      readonly kind: 'other'
      readonly practice: number
      readonly before: PlannedPractice
      /** What stood there is not offered any more; or why another theme is wanted now. */
      readonly why: 'notOffered' | 'otherDesign' | WhyTheme
    }

/** What is otherwise than in the saved plan, and why: first what was written since, then practice by practice. */
export function whatChanged(
  stored: TermPlan,
  now: { readonly problem: AheadProblem; readonly plan: AheadPlan },
  record: readonly WrittenSince[],
): readonly AheadChange[] {
  const of = new Map(stored.practices.map((own) => [own.sessionId, own]))
  const written = record
    .filter(({ day, sessionId }) => of.has(sessionId) || (stored.asOf !== null && day > stored.asOf))
    .map(({ sessionId, day, themeIds }): AheadChange => {
      const planned = of.get(sessionId)?.themeId ?? null
      const isAsPlanned = planned !== null && themeIds.includes(planned)
      return { kind: 'written', day, sessionId, planned, isAsPlanned }
    })
  const known = new Set([
    ...now.problem.practices.map(({ id }) => id),
    ...record.map(({ sessionId }) => sessionId),
  ])
  const gone = stored.practices
    .filter(({ sessionId }) => !known.has(sessionId))
    .map((planned): AheadChange => ({ kind: 'gone', planned }))
  return [...written, ...gone, ...now.problem.practices.flatMap((_, practice) => changeAt(of, now, practice))]
}

function changeAt(
  of: ReadonlyMap<string, PlannedPractice>,
  { problem, plan }: { readonly problem: AheadProblem; readonly plan: AheadPlan },
  practice: number,
): readonly AheadChange[] {
  const own = problem.practices[practice]
  const offer = chosenOffer(problem, plan.choices, practice)
  if (!own || !offer) return []
  const before = of.get(own.id)
  if (!before) return [{ kind: 'new', practice }]
  const at = offerPlanned(problem, own, before)
  if (at === plan.choices[practice]) return []
  const isSameTheme = problem.themes[offer.theme]?.id === before.themeId
  const why = at < 0 ? 'notOffered' : isSameTheme ? 'otherDesign' : whyTheme(problem, plan, practice)
  return why ? [{ kind: 'other', practice, before, why }] : []
}
