import type { Proof } from '#common/proof'
import { checkLineUp } from '#lineup/check-line-up'
import { compareLineUps } from '#lineup/compare-line-ups'
import { withKnownProofs } from '#lineup/draft/known-proofs'
import { type LineUpSwap, swapLineUp } from '#lineup/draft/swap-line-up'
import { findLineUpClash, type LineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp, LineUpGoal } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import { lineUpValues } from '#lineup/line-up-values'
import type { MatchLock, MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import { matchPlanOf } from '#lineup/match-plan-of'
import { planOfSpells } from '#lineup/plan-of-spells'
import type { LineUpProblem } from '#lineup/problem'
import { problemOfMatch } from '#lineup/problem-of-match'
import { quickLineUp } from '#lineup/quick-line-up'
import type { PlayerId } from '#squad/player'

/** A line-up while it is being made: what is asked, and the best that is known, or what stands in the way. */
export type LineUpDraft = {
  readonly request: MatchPlanRequest
  readonly problem: LineUpProblem
  /** Null: none is known. */
  readonly made: LineUp | null
  /** Why there can be none; empty: nothing is known to stand in the way. */
  readonly clash: readonly LineUpClash[]
  /** Whether a search has been to its end, or the coach's hand has been at it since: then none begins by itself. */
  readonly isSettled: boolean
}

/** The same seed for everybody: whoever opens the page sees the same line-up. */
const seed = 1

/** The line-up that is there at once. */
export function draftOf(request: MatchPlanRequest): LineUpDraft {
  const problem = problemOfMatch(request)
  const clash = findLineUpClash(problem)
  if (clash.length > 0) return { request, problem, made: null, clash, isSettled: true }
  const plan = quickLineUp(problem, { seed })
  return { request, problem, made: plan && lineUpOf(problem, plan), clash, isSettled: false }
}

/** A plan that was saved, opened again as it stands. Null where its spells are no line-up of it, or break a rule. */
export function draftOfSaved({ spells, proof, ...request }: MatchPlan): LineUpDraft | null {
  const plan = planOfSpells(request, spells)
  const problem = problemOfMatch(request)
  if (!plan || checkLineUp(problem, plan).length > 0) return null
  const made = withKnownProofs(problem, plan, proof.goals)
  // What was proven holds as long as the plan is worth what it was: where the book has moved on, nothing is known again.
  const isWorthTheSame = compareLineUps(lineUpValues(problem, plan), valuesOf(proof.goals)) === 0
  return {
    request,
    problem,
    made: isWorthTheSame ? made : lineUpOf(problem, plan),
    clash: [],
    isSettled: isWorthTheSame,
  }
}

/** The draft as it is saved; null without a line-up. */
export function planOfDraft(
  { request, made }: LineUpDraft,
  nameOf: (player: PlayerId) => string,
): MatchPlan | null {
  return made && matchPlanOf(request, made, nameOf)
}

/** Two players' places changed by hand; as it was where that may not be. */
export function withSwap(draft: LineUpDraft, swap: LineUpSwap): LineUpDraft {
  const { problem, made } = draft
  const swapped = made && swapLineUp(problem, made.plan, swap)
  if (!made || !swapped || swapped.faults.length > 0) return draft
  return { ...draft, made: withKnownProofs(problem, swapped.plan, made.proofs), isSettled: true }
}

/** A place held as it stands. What was proven holds on: with more to keep, no line-up gets better. */
export function withLock(
  draft: LineUpDraft,
  at: { readonly player: number; readonly window: number },
): LineUpDraft {
  const { request, problem, made } = draft
  const playerId = request.players[at.player]?.playerId
  const window = problem.windows[at.window]
  if (!made || !window || playerId === undefined) return draft
  const place: MatchLock['place'] = made.plan[at.player]?.[at.window] ?? 'off'
  const { start, end } = window
  const locks = [...withoutLocksAt(draft, at), { playerId, start, end, place }]
  return withLocks(draft, { locks, proofs: made.proofs })
}

/** A place let go. What was proven with it says nothing any more. */
export function withoutLock(
  draft: LineUpDraft,
  at: { readonly player: number; readonly window: number },
): LineUpDraft {
  return withLocks(draft, { locks: withoutLocksAt(draft, at), proofs: null })
}

/** Whether the coach holds a place. */
export function isHeld(
  draft: Pick<LineUpDraft, 'request' | 'problem'>,
  at: { readonly player: number; readonly window: number },
): boolean {
  return withoutLocksAt(draft, at).length < draft.request.locks.length
}

/**
 * What a search found, taken into the draft: a better line-up, or more that is proven. What was found for another problem
 * than the draft's, which has been changed meanwhile, is left out.
 */
export function withSolved(
  draft: LineUpDraft,
  found: { readonly problem: LineUpProblem; readonly best: LineUp | null; readonly isEnd: boolean },
): LineUpDraft {
  if (draft.problem !== found.problem) return draft
  const { made, problem } = draft
  const { best } = found
  const isSettled = draft.isSettled || found.isEnd
  if (!best) return { ...draft, isSettled }
  const isBetter = made === null || compareLineUps(valuesOf(best.proofs), valuesOf(made.proofs)) < 0
  const kept = isBetter ? best : withKnownProofs(problem, made.plan, best.proofs)
  return { ...draft, made: kept, isSettled }
}

/** A search found that there can be none. */
export function withClash(
  draft: LineUpDraft,
  found: { readonly problem: LineUpProblem; readonly clash: readonly LineUpClash[] },
): LineUpDraft {
  if (draft.problem !== found.problem || draft.made) return draft
  return { ...draft, clash: found.clash, isSettled: true }
}

function withLocks(
  draft: LineUpDraft,
  {
    locks,
    proofs,
  }: {
    readonly locks: readonly MatchLock[]
    readonly proofs: Readonly<Record<LineUpGoal, Proof>> | null
  },
): LineUpDraft {
  const request = { ...draft.request, locks }
  const { made } = draft
  if (!made) return draftOf(request)
  const problem = problemOfMatch(request)
  const kept = proofs ? withKnownProofs(problem, made.plan, proofs) : lineUpOf(problem, made.plan)
  return { ...draft, request, problem, made: kept, isSettled: true }
}

function withoutLocksAt(
  { request, problem }: Pick<LineUpDraft, 'request' | 'problem'>,
  at: { readonly player: number; readonly window: number },
): readonly MatchLock[] {
  const playerId = request.players[at.player]?.playerId
  const window = problem.windows[at.window]
  if (!window) return request.locks
  return request.locks.filter(
    (lock) => lock.playerId !== playerId || lock.end <= window.start || window.end <= lock.start,
  )
}

function valuesOf(proofs: Readonly<Record<LineUpGoal, Proof>>) {
  return {
    promise: proofs.promise.value,
    minutes: proofs.minutes.value,
    goal: proofs.goal.value,
    starts: proofs.starts.value,
    lines: proofs.lines.value,
    changes: proofs.changes.value,
  }
}
