import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { withMarks, withoutPlayer, withPlayerChanged } from '#lineup/draft/change-match-request'
import { checkedMatchPlan } from '#lineup/draft/checked-match-plan'
import {
  draftOf,
  draftOfSaved,
  isHeld,
  planOfDraft,
  withLock,
  withoutLock,
  withSolved,
  withSwap,
} from '#lineup/draft/line-up-draft'
import { swapLineUp } from '#lineup/draft/swap-line-up'
import { lineUpValues } from '#lineup/line-up-values'
import { aMatchRequest, nameOf } from '../../support/match-request-builder'

/** Read by every test, changed by none. */
const nine = draftOf(aMatchRequest({ players: 9 }))
function made(draft = nine) {
  if (!draft.made) throw new Error('no line-up')
  return draft.made
}
function saved(draft = nine) {
  const plan = planOfDraft(draft, nameOf)
  if (!plan) throw new Error('no plan')
  return plan
}

describe('a line-up being made', () => {
  it('is there at once and keeps every rule', () => {
    const draft = nine
    expect(checkLineUp(draft.problem, made(draft).plan)).toEqual([])
    expect(draft.clash).toEqual([])
    expect(draft.isSettled).toBe(false)
  })

  it('says at once what stands in the way', () => {
    const draft = draftOf(aMatchRequest({ players: 6 }))
    expect(draft.made).toBeNull()
    expect(draft.clash).toEqual([{ kind: 'places', asked: 7, there: 6, first: 0, last: 1 }])
  })

  it('opens again as it was saved, and not where a rule is broken meanwhile', () => {
    const plan = saved()
    const opened = draftOfSaved(plan)
    expect(opened?.made).toEqual(made())
    expect(opened?.isSettled).toBe(true)
    const late = withPlayerChanged(plan, plan.players[0]?.playerId ?? '', { from: 1500 })
    const wasOn = plan.spells.some(({ playerId, start }) => playerId === 'p1' && start < 1500)
    expect(wasOn).toBe(true)
    expect(draftOfSaved({ ...plan, ...late })).toBeNull()
  })

  it('swaps two places, and leaves everything where that breaks a rule', () => {
    const draft = nine
    const { plan } = made(draft)
    const { windows, players } = draft.problem
    const swaps = windows.flatMap((_, window) =>
      players.flatMap((__, one) =>
        players.flatMap((___, other) => (one < other ? [{ one, other, window }] : [])),
      ),
    )
    const judged = swaps.map((swap) => ({ swap, swapped: swapLineUp(draft.problem, plan, swap) }))
    const fine = judged.find(({ swapped }) => swapped && swapped.faults.length === 0)
    const broken = judged.find(({ swapped }) => swapped && swapped.faults.length > 0)
    if (!fine?.swapped || !broken) throw new Error('nothing to swap')
    const after = withSwap(draft, fine.swap)
    expect(after.made?.plan).toEqual(fine.swapped.plan)
    expect(after.isSettled).toBe(true)
    expect(after.made?.proofs.minutes.value).toBeCloseTo(
      lineUpValues(draft.problem, fine.swapped.plan).minutes,
    )
    expect(withSwap(draft, broken.swap)).toBe(draft)
  })

  it('holds a place and lets it go', () => {
    const at = { player: 0, window: 1 }
    const held = withLock(nine, at)
    expect(isHeld(held, at)).toBe(true)
    expect(isHeld(held, { player: 0, window: 2 })).toBe(false)
    expect(held.problem.fixed).toEqual([{ player: 0, window: 1, place: made().plan[0]?.[1] ?? 'off' }])
    expect(held.made?.plan).toEqual(made().plan)
    const free = withoutLock(held, at)
    expect(free.request.locks).toEqual([])
  })

  it('takes over what a search found, of its own problem only', () => {
    const draft = nine
    const other = draftOf(nine.request)
    const best = made(other)
    expect(withSolved(draft, { problem: other.problem, best, isEnd: true })).toBe(draft)
    const worse = withSwap(draft, firstFineSwap(draft))
    const better = withSolved(worse, { problem: draft.problem, best: made(draft), isEnd: true })
    expect(better.made?.plan).toEqual(made(draft).plan)
    const kept = withSolved(draft, { problem: draft.problem, best: made(worse), isEnd: true })
    expect(kept.made?.plan).toEqual(made(draft).plan)
  })
})

/** A swap that keeps every rule and makes minutes less even. */
function firstFineSwap(draft: typeof nine) {
  const { problem } = draft
  for (let window = 0; window < problem.windows.length; window += 1)
    for (let one = 0; one < problem.players.length; one += 1)
      for (let other = one + 1; other < problem.players.length; other += 1) {
        const swapped = swapLineUp(problem, made(draft).plan, { one, other, window })
        if (swapped && swapped.faults.length === 0 && swapped.after.minutes > swapped.before.minutes + 1)
          return { one, other, window }
      }
  throw new Error('no such swap')
}

describe('a plan that came from outside', () => {
  it('is kept with its own figures', () => {
    const plan = saved()
    const checked = checkedMatchPlan(plan, nameOf)
    expect(checked).toEqual({ ok: true, value: plan })
  })

  it('loses a bound that a line-up made at once beats, and all after it', () => {
    const draft = nine
    const worse = saved(withSwap(draft, firstFineSwap(draft)))
    const { value } = worse.proof.goals.minutes
    const goals = { ...worse.proof.goals, minutes: { value, bound: value, proven: true } }
    const checked = checkedMatchPlan({ ...worse, proof: { sentence: 'x', goals } }, nameOf)
    expect(checked.ok && checked.value.proof.goals.minutes.proven).toBe(false)
    expect(checked.ok && checked.value.proof.goals.minutes.bound).toBeLessThan(value)
  })

  it('is refused where a player is missing from a line, in words', () => {
    const plan = saved()
    const checked = checkedMatchPlan({ ...plan, spells: plan.spells.slice(1) }, nameOf)
    expect(checked.ok ? [] : checked.reasons.join(' ')).toContain('not every line has as many players')
  })
})

describe('what is asked, changed', () => {
  it('gives other times for changes with other players, but for times chosen by hand', () => {
    const request = aMatchRequest({ players: 14 })
    const fewer = withoutPlayer(withoutPlayer(request, 'p1'), 'p2')
    expect(fewer.players).toHaveLength(12)
    const byHand = withMarks(request, [600, 300, 600, 99_999])
    expect(byHand.marks).toEqual([
      [300, 600],
      [300, 600],
    ])
    expect(withoutPlayer(byHand, 'p1').marks).toEqual(byHand.marks)
  })
})
