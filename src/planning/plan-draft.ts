import { withAgreedPlaces, withShownPlaces } from '#planning/agreed-places'
import { withAgreedSides } from '#planning/agreed-sides'
import { proofOfPlan } from '#planning/plan-proof'
import type { SolvedSoFar } from '#planning/plan-solver'
import { plannedTurns, timetableOf } from '#planning/planned-turns'
import type { PlanLock, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { otherHalf, problemOfRequest, withFreeGames } from '#planning/problem-of-request'
import { quickPlan } from '#planning/quick-plan'
import { requestSizeFaults } from '#planning/request-size'
import { restLimitKept } from '#planning/rest-limit-kept'
import { type Swap, swapPlaces } from '#planning/swap'
import { turnFrames } from '#planning/turn-frames'
import type { ClashPart } from '#rotation/clash'
import { keepAreas } from '#rotation/keep-areas'
import { away, roleOf, stationOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { togetherTurns } from '#rotation/together-turns'

/** A plan while it is being made: what is asked, and the best that is known, or what stands in the way. */
export type PlanDraft = {
  readonly request: PlanRequest
  readonly made: MadePlan | null
  /** What clashes; empty where there is a plan. */
  readonly clash: readonly ClashPart[]
}

export type MadePlan = {
  /** With its free games settled as they stand in the plan. */
  readonly problem: RotationProblem
  readonly plan: RotationPlan
  readonly restLimitUsed: number | null
  /** No plan of the problem is worth less; 0: nothing is known yet. */
  readonly bound: number
  /** Whether a search has been to its end, or the coach's hand has been at it since: then none begins by itself. */
  readonly isSettled: boolean
}

/** A request with the sides and places that agreements give. `shown`: the plan that was saved; null: none was. */
export function asAgreed(request: PlanRequest, shown: PracticePlan | null): PlanRequest {
  return withAgreedPlaces(withAgreedSides(request), shown)
}

/** The plan that is there at once. */
export function draftOf(request: PlanRequest): PlanDraft {
  // What is larger than any practice is not worked out: `requestSizeFaults` says what is wrong with it.
  if (requestSizeFaults(request).length > 0) return { request, made: null, clash: [] }
  const quick = quickPlan(request)
  if (!quick.ok) return { request, made: null, clash: quick.reasons }
  return { request, made: { ...quick.value, bound: 0, isSettled: false }, clash: [] }
}

/** A plan that was saved, opened again as it stands. Null when its turns are no timetable of it. */
export function draftOfSaved(saved: PracticePlan): PlanDraft | null {
  const { turns: _turns, proof, ...request } = saved
  const timetable = timetableOf(saved)
  if (!timetable.ok || timetable.value.length !== turnFrames(request.design.rounds).length) return null
  const plan = timetable.value
  const problem = withFreeGames(problemOfRequest(request), { request, plan })
  // What was proven of it holds as long as it is worth what it was: when the book has moved on, nothing is known again.
  const { unfairness } = planValues(problem, plan)
  const isWorthTheSame = Math.abs(unfairness - proof.value) <= 1e-6 * Math.max(1, unfairness)
  const made: MadePlan = {
    problem,
    plan,
    restLimitUsed: proof.restLimitUsed,
    bound: isWorthTheSame ? proof.bound : 0,
    isSettled: isWorthTheSame,
  }
  return { request, made, clash: [] }
}

/** The draft as it is saved; null without a plan. */
export function planOfDraft({ request, made }: PlanDraft): PracticePlan | null {
  if (!made) return null
  const turns = plannedTurns(request, made.plan)
  return withShownPlaces({ ...request, turns, proof: proofOfPlan(made.problem, made) })
}

/** Two players' places changed by hand; as it was where that may not be. */
export function withSwap(draft: PlanDraft, swap: Swap): PlanDraft {
  const { request, made } = draft
  const swapped = made && swapPlaces(made.problem, { plan: made.plan, request, swap })
  if (!made || !swapped || swapped.broken.length > 0) return draft
  const problem = withFreeGames(problemOfRequest(request), { request, plan: swapped.plan })
  // Another free game is another problem: what was proven of the one says nothing of the other.
  const isSame = JSON.stringify(problem.fixed) === JSON.stringify(made.problem.fixed)
  const limit = restLimitKept(problem, swapped.plan)
  const isLonger = (limit ?? 0) > (made.restLimitUsed ?? 0)
  return {
    ...draft,
    made: {
      problem: isSame ? made.problem : problem,
      plan: swapped.plan,
      // With a longer wait than before, more plans would be allowed, and one of them might be better.
      bound: isSame && !isLonger ? made.bound : 0,
      restLimitUsed: limit,
      isSettled: true,
    },
  }
}

/** A place held fast as it stands. The bound holds on: with more to keep, no plan gets better. */
export function withLock(
  draft: PlanDraft,
  at: { readonly turn: number; readonly player: number },
): PlanDraft {
  const { request, made } = draft
  const place = made?.plan[at.turn]?.[at.player] ?? away
  const playerId = request.players[at.player]?.playerId
  if (!made || place === away || playerId === undefined) return draft
  const role = roleOf(place)
  const lock: PlanLock = {
    turn: at.turn + 1,
    playerId,
    place: role === 'rest' ? 'rest' : { station: stationOf(place) + 1, role },
  }
  const others = withoutLocksAt(request, { turn: at.turn, playerId })
  return withLocks(draft, { locks: [...others, lock], bound: made.bound })
}

/** A place let go, in both halves of a free game. What was proven with it says nothing any more. */
export function withoutLock(
  draft: PlanDraft,
  at: { readonly turn: number; readonly player: number },
): PlanDraft {
  const playerId = draft.request.players[at.player]?.playerId
  if (playerId === undefined) return draft
  return withLocks(draft, { locks: withoutLocksAt(draft.request, { turn: at.turn, playerId }), bound: 0 })
}

/** Whether a place is held fast, in a free game also by its other half. Turns from 0. */
export function isHeldFast(
  request: PlanRequest,
  at: { readonly turn: number; readonly player: number },
): boolean {
  const playerId = request.players[at.player]?.playerId ?? ''
  return withoutLocksAt(request, { turn: at.turn, playerId }).length < request.locks.length
}

/** The draft once it is saved: what was shown to somebody early is held from now on. */
export function withShown(draft: PlanDraft): PlanDraft {
  const { locks = draft.request.locks } = planOfDraft(draft) ?? {}
  if (locks.length === draft.request.locks.length || !draft.made) return draft
  return withLocks(draft, { locks, bound: draft.made.bound })
}

/** Whether an agreement holds a place, and not the coach's hand. Turns from 0. */
export function isHeldByAgreement(
  request: PlanRequest,
  at: { readonly turn: number; readonly player: number },
): boolean {
  const playerId = request.players[at.player]?.playerId ?? ''
  const others = withoutLocksAt(request, { turn: at.turn, playerId })
  return request.locks.some((lock) => lock.agreed !== undefined && !others.includes(lock))
}

function withLocks(
  draft: PlanDraft,
  { locks, bound }: { readonly locks: readonly PlanLock[]; readonly bound: number },
): PlanDraft {
  const request = { ...draft.request, locks }
  if (!draft.made) return draftOf(request)
  const { plan } = draft.made
  const problem = withFreeGames(problemOfRequest(request), { request, plan })
  return { ...draft, request, made: { ...draft.made, problem, bound, isSettled: true } }
}

function withoutLocksAt(
  request: PlanRequest,
  at: { readonly turn: number; readonly playerId: string },
): readonly PlanLock[] {
  const frames = turnFrames(request.design.rounds)
  const turns = [at.turn, otherHalf(frames, at.turn) ?? at.turn].map((turn) => turn + 1)
  return request.locks.filter((lock) => lock.playerId !== at.playerId || !turns.includes(lock.turn))
}

/**
 * What a search found, taken into the draft: a better plan, a better bound. What was found for another problem than the
 * draft's, which has been changed meanwhile, is left out.
 */
export function withSolved(
  draft: PlanDraft,
  found: { readonly problem: RotationProblem; readonly best: SolvedSoFar | null; readonly isEnd: boolean },
): PlanDraft {
  const { made } = draft
  if (!made || made.problem !== found.problem) return draft
  const { best } = found
  const isBetter = best !== null && isBetterPlan(made, best)
  return {
    ...draft,
    made: {
      ...made,
      plan: isBetter ? keepAreas(made.problem, best.plan) : made.plan,
      restLimitUsed: isBetter ? best.restLimitUsed : made.restLimitUsed,
      bound: best && holdsFor(best, isBetter ? best : made) ? Math.max(made.bound, best.bound) : made.bound,
      isSettled: made.isSettled || found.isEnd,
    },
  }
}

/** A shorter wait goes before evenness, as in the engine's own order; then the earlier goals before the later. */
function isBetterPlan(made: MadePlan, best: SolvedSoFar): boolean {
  const [mine, theirs] = [made.restLimitUsed ?? 0, best.restLimitUsed ?? 0]
  if (mine !== theirs) return theirs < mine
  const [own, other] = [planValues(made.problem, made.plan), planValues(made.problem, best.plan)]
  const goals = ['unfairness', 'situationUnfairness', 'roleChanges'] as const
  const first = goals.find((goal) => Math.abs(own[goal] - other[goal]) > 1e-6 * Math.max(1, own[goal]))
  if (first !== undefined) return other[first] < own[first]
  // Pairs wished together come before mixing, which they would spoil.
  const together = (plan: RotationPlan) =>
    togetherTurns(made.problem, plan).reduce((sum, { turns }) => sum + turns, 0)
  const more = together(best.plan) - together(made.plan)
  return more === 0 ? other.mixing < own.mixing : more > 0
}

/** A bound with a longer limit on waits holds for a shorter one, too, and not the other way round. */
function holdsFor(found: SolvedSoFar, plan: Pick<MadePlan, 'restLimitUsed'>): boolean {
  return found.restLimitUsed === null || found.restLimitUsed >= (plan.restLimitUsed ?? 0)
}
