import { describe, expect, it } from 'vitest'
import { accountPractice } from '#fairness/account-practice'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { foldPitch } from '#pitch/pitch-state'
import { planAnew } from '#pitch/plan-anew'
import { replanDeed } from '#pitch/replan-deed'
import { proofOfPlan } from '#planning/plan-proof'
import { plannedTurns } from '#planning/planned-turns'
import type { PracticePlan } from '#planning/practice-plan'
import { quickPlan } from '#planning/quick-plan'
import { checkPractice } from '#practice/checks/check-practice'
import { seatsOfTurn } from '#practice/checks/seats-of-turn'
import { aPhone } from '../support/pitch-builder'
import { aFreeGame, aPlanRequest, aPlanRound } from '../support/plan-builder'

function aPlanFor(players: number): PracticePlan {
  const rounds = [aPlanRound(), aPlanRound({ turnCount: 6 }), aPlanRound({ turnCount: 4 }), aFreeGame]
  const request = aPlanRequest({ players, rounds })
  const quick = quickPlan(request)
  if (!quick.ok) throw new Error('There is a plan.')
  const { problem, plan, restLimitUsed } = quick.value
  return {
    ...request,
    turns: plannedTurns(request, plan),
    proof: proofOfPlan(problem, { plan, bound: 0, restLimitUsed }),
  }
}

describe('a practice planned for fourteen, to which eleven come, of whom one leaves at the ninth turn', () => {
  const plan = aPlanFor(14)
  const roster = plan.players.map(({ playerId }) => ({ id: playerId, name: playerId }))
  const known = roster.map(({ id, name }) => ({ id, name, keeps: true, isMember: true }))
  const phone = aPhone()
  const state = () => {
    const now = foldPitch(plan, roster, phone.events)
    return { ...now, plan }
  }
  const replan = (second: number, called: number) => {
    const { request, fromTurn, outcome } = planAnew({ state: state(), known, called, tries: 2000 })
    const made = outcome.kind === 'planned' ? outcome : outcome.smaller
    if (!made) throw new Error('There is a new plan.')
    phone.tap(second, replanDeed(request, made, { fromTurn, sentence: 'As fair as they allow.' }))
  }
  const roundDone = (second: number, round: number) =>
    phone.done(
      second,
      round,
      state().turns.filter((turn) => turn.round === round),
    )

  const came = roster.slice(0, 11).map(({ id }) => id)
  for (const id of came) phone.state(id, 'here', -60)
  replan(-5, 0)
  phone.begin(0)
  roundDone(300, 0)
  // The fifth turn of the second round is the ninth of the practice. Tapped at 680, the round is reckoned to have begun at
  // 340, and that turn to have been played from 580 to 620.
  const leaver = state().turns[8]?.stations[0]?.attack[0] as string
  const leftAt = 600
  phone.state(leaver, 'gone', leftAt)
  replan(leftAt, 6)
  roundDone(680, 1)
  roundDone(1000, 2)
  roundDone(1700, 3)
  phone.stop(1705)
  const book = bookOfPitch(state())
  const register = book.register.filter((line) => line.state === 'here')

  it('takes the register and one tap a round, and every turn that was planned is in the book', () => {
    const kinds = phone.events.map(({ deed }) => deed.kind)
    expect(kinds.filter((kind) => kind === 'roundDone')).toHaveLength(4)
    expect(kinds.filter((kind) => kind === 'turnStart' || kind === 'turnEnd')).toEqual([])
    expect(book.turns.filter(({ continuesTurn }) => !continuesTurn)).toHaveLength(16)
    expect(state().setAside).toEqual([])
    expect(book.lengthSeconds).toBe(1705)
  })

  it('is a book that can be written and balances to the second', () => {
    expect(checkPractice({ lengthSeconds: book.lengthSeconds, register, turns: book.turns })).toEqual([])
    const members = new Set(roster.map(({ id }) => id))
    const account = accountPractice(
      { id: 'p', day: '2026-06-09', lengthSeconds: book.lengthSeconds, register, turns: book.turns },
      { able: members, members, middleAttackShare: 0.5, written: book.written },
    )
    for (const { playerId, liveSeconds } of account.presences) {
      const had = account.lines.filter((line) => line.playerId === playerId)
      expect(had.reduce((sum, line) => sum + line.seconds, 0)).toBe(liveSeconds)
      const until = playerId === leaver ? leftAt : Number.POSITIVE_INFINITY
      const there = book.turns
        .filter(({ end }) => end <= until)
        .reduce((sum, { start, end }) => sum + end - start, 0)
      expect(liveSeconds).toBe(came.includes(playerId) ? there : 0)
    }
  })

  it('has the one who left in its place to the second it left, and nowhere after it', () => {
    const own = book.turns.filter((turn) => seatsOfTurn(turn).some(({ playerId }) => playerId === leaver))
    expect(own.at(-1)).toMatchObject({ end: leftAt })
    const [after] = book.turns.filter(({ start }) => start === leftAt)
    expect(after?.continuesTurn).toBe(true)
    // Whoever else had a place in that turn kept it; one more may have come on.
    const before = seatsOfTurn(own.at(-1) as (typeof book.turns)[number]).map(({ playerId }) => playerId)
    const places = seatsOfTurn(after as (typeof book.turns)[number]).map(({ playerId }) => playerId)
    expect(places).toEqual(expect.arrayContaining(before.filter((id) => id !== leaver)))
  })

  it('gives nobody a place who never came', () => {
    const placed = new Set(book.turns.flatMap((turn) => seatsOfTurn(turn).map(({ playerId }) => playerId)))
    for (const { id } of roster.slice(11)) expect(placed.has(id)).toBe(false)
  })
})
