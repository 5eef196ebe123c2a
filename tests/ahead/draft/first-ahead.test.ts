import { describe, expect, it } from 'vitest'
import { checkAhead } from '#ahead/check-ahead'
import { aheadDraft, withBetter } from '#ahead/draft/ahead-draft'
import { changeTheme, exchangeWith, freePractice, holdPractice, offeredThemes } from '#ahead/draft/by-hand'
import { choicesOfPlan } from '#ahead/draft/choices-of-plan'
import { firstAhead } from '#ahead/draft/first-ahead'
import { plannedPractices } from '#ahead/draft/planned-practices'
import { findAheadClash } from '#ahead/find-ahead-clash'
import { problemOfAhead } from '#ahead/problem-of-request'
import type { AheadRequest } from '#ahead/request'
import { firmPractices } from '#ahead/term-plan'
import { aheadRequest, programmeRule, requestedDesign } from '../../support/ahead-request-builder'
import { choicesInTurn } from '../../support/plan-in-turn'

const days = ['2026-01-06', '2026-01-13', '2026-01-20', '2026-01-27', '2026-02-03', '2026-02-10']
const request = aheadRequest(days, {
  programme: [programmeRule('a'), programmeRule('b')],
  designs: [
    requestedDesign('x', { themeIds: ['a'] }),
    requestedDesign('y', { themeIds: ['b'] }),
    requestedDesign('z', { themeIds: ['a', 'b'] }),
  ],
})
const noFirm = { firm: new Map() }

/** The plan at once, as it would be saved with `turn` practices about the other theme. */
function savedPlan(of: AheadRequest, turn: readonly string[] = []) {
  const draft = aheadDraft(of, noFirm)
  const practices = plannedPractices(draft.asked, draft.best?.plan.choices ?? []).map((own) =>
    turn.includes(own.sessionId)
      ? own.themeId === 'a'
        ? { ...own, themeId: 'b', designId: 'y' }
        : { ...own, themeId: 'a', designId: 'x' }
      : own,
  )
  return { practices, asOf: '2026-01-02' }
}

const idsOf = (of: AheadRequest, choices: readonly number[]) =>
  plannedPractices(problemOfAhead(of), choices).map(({ sessionId, themeId, designId }) => [
    sessionId,
    themeId,
    designId,
  ])

describe('what the page of the weeks ahead begins with', () => {
  it('is the saved plan while the book says nothing new', () => {
    const stored = savedPlan(request, ['2026-01-13', '2026-02-10'])
    const first = firstAhead(request, { stored, asOf: '2026-01-02' })
    expect(first.isAsSaved).toBe(true)
    expect(idsOf(request, first.choices ?? [])).toEqual(
      stored.practices.map(({ sessionId, themeId, designId }) => [sessionId, themeId, designId]),
    )
  })

  it('is planned anew once a practice was written, and what was firm stays', () => {
    const stored = savedPlan(request, days)
    const rest = { ...request, practices: request.practices.slice(1) }
    const first = firstAhead(rest, { stored, asOf: '2026-01-06' })
    expect(first.isAsSaved).toBe(false)
    const kept = stored.practices.slice(1, firmPractices)
    expect([...first.firm.keys()]).toEqual(kept.map(({ sessionId }) => sessionId))
    expect(idsOf(rest, first.choices ?? []).slice(0, kept.length)).toEqual(
      kept.map(({ sessionId, themeId, designId }) => [sessionId, themeId, designId]),
    )
    expect(checkAhead(problemOfAhead(rest), first.choices ?? [])).toEqual([])
  })

  it('lets what was firm go where it stands against the programme as it is now', () => {
    const stored = savedPlan(request)
    const late = {
      ...request,
      programme: [programmeRule('a', { firstWeek: 9 }), programmeRule('b')],
    }
    const first = firstAhead(late, { stored, asOf: '2026-01-06' })
    expect(checkAhead(problemOfAhead(late), first.choices ?? [])).toEqual([])
    expect(idsOf(late, first.choices ?? []).every(([, themeId]) => themeId === 'b')).toBe(true)
  })
})

describe('the weeks ahead by hand', () => {
  const draft = aheadDraft(request, noFirm)
  const themeAt = (of: ReturnType<typeof aheadDraft>, practice: number) =>
    idsOf(of.request, of.best?.plan.choices ?? [])[practice]?.[1]

  it('holds another theme where the coach puts it', () => {
    expect(offeredThemes(draft.asked, 2)).toEqual([0, 1])
    for (const theme of [0, 1]) {
      const next = aheadDraft(changeTheme(draft.request, { draft, practice: 2, theme }), noFirm)
      expect(themeAt(next, 2)).toBe(theme === 0 ? 'a' : 'b')
      expect(next.asked.practices[2]?.held).toEqual({ theme, design: null })
    }
  })

  it('exchanges two practices and holds both; freed, nothing is held', () => {
    const two = aheadDraft(changeTheme(draft.request, { draft, practice: 0, theme: 0 }), noFirm)
    const both = aheadDraft(changeTheme(two.request, { draft: two, practice: 5, theme: 1 }), noFirm)
    const next = aheadDraft(exchangeWith(both.request, { draft: both, practice: 0, other: 5 }), noFirm)
    expect([themeAt(next, 0), themeAt(next, 5)]).toEqual(['b', 'a'])
    const freed = freePractice(freePractice(next.request, { draft: next, practice: 0 }), {
      draft: next,
      practice: 5,
    })
    expect(freed.practices.every(({ held }) => held === null)).toBe(true)
  })

  it('keeps what is held when all else is planned anew', () => {
    const held = holdPractice(draft.request, { draft, practice: 1 })
    const later = { ...held, blocks: [{ themeId: 'b', firstWeek: 5, lastWeek: 7 }] }
    const next = aheadDraft(later, noFirm)
    expect(idsOf(later, next.best?.plan.choices ?? [])[1]).toEqual(
      idsOf(request, draft.best?.plan.choices ?? [])[1],
    )
  })

  it('has no plan where what is held stands against a rule, and says so by having none', () => {
    const blocked = { ...request, blocks: [{ themeId: 'b', firstWeek: 1, lastWeek: 10 }] }
    const own = aheadDraft(blocked, noFirm)
    const next = aheadDraft(changeTheme(blocked, { draft: own, practice: 0, theme: 0 }), noFirm)
    expect(next.best).toBeNull()
  })

  it('never names the rest of a design, which gives way, where there is no plan', () => {
    const one = aheadRequest(['2026-01-06', '2026-01-20'], {
      programme: [programmeRule('a', { lastWeek: 2 })],
      met: [{ day: '2026-01-05', themeIds: ['a'], designId: 'x' }],
      designRest: 2,
    })
    const full = findAheadClash(problemOfAhead(one)).flatMap(({ rules }) => rules)
    expect(full).toContain('designRest')
    const { best, clash } = aheadDraft(one, noFirm)
    expect(best).toBeNull()
    expect(clash).toEqual([{ rules: ['lastWeek'], practice: 1, theme: null }])
  })

  it('takes a better plan of what is asked, and nothing of what was asked before', () => {
    const better = draft.best && { ...draft.best, proof: { value: 0, bound: 0, proven: true } }
    const taken = withBetter(draft, { problem: draft.problem, best: better, isEnd: true })
    expect(taken.best?.proof.proven).toBe(true)
    expect(taken.isSettled).toBe(true)
    const other = aheadDraft(request, noFirm)
    expect(withBetter(draft, { problem: other.problem, best: better, isEnd: true })).toBe(draft)
  })
})

describe('what is planned for a practice', () => {
  it('is read back as it was kept, and is nothing where it is offered no more', () => {
    const problem = problemOfAhead(request)
    const choices = choicesInTurn(problem)
    const kept = plannedPractices(problem, choices)
    expect(choicesOfPlan(problem, kept)).toEqual(choices)
    expect(choicesOfPlan(problem, kept.slice(1))[0]).toBe(-1)
    const gone = kept.map((own) => ({ ...own, designId: 'put away' }))
    expect(choicesOfPlan(problem, gone).every((choice) => choice === -1)).toBe(true)
  })
})
