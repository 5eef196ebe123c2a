import { describe, expect, it } from 'vitest'
import type { SessionAccount } from '#fairness/account'
import { emptyStanding, standingsNow } from '#fairness/standing'
import { type ChildInBook, pageOfChild } from '#family/page-of-child'
import { defaultPolicy } from '#squad/policy'
import { aMembership, anAccount, aPlayer } from '../support/account-builder'

const today = '2026-10-01'
const theme = { id: 'gates', name: 'Gates', parentId: null, order: 1, asks: '' }

/** A practice of half an hour: Ana attacks for ten minutes and waits for twenty, Bo defends. */
function practice(index: number, change: Partial<SessionAccount> = {}): SessionAccount {
  return {
    ...anAccount({
      id: `s${index}`,
      day: `2026-09-0${index}`,
      players: {
        ana: {
          rows: [
            { role: 'attack', themeId: 'gates', seconds: 600, turns: 5, fair: 600 },
            { role: 'rest', seconds: 1200, turns: 10, fair: 1200 },
          ],
        },
        bo: { rows: [{ role: 'defend', seconds: 1800, turns: 15, fair: 1800 }] },
      },
    }),
    ...change,
  }
}

function pageOf(
  accounts: readonly SessionAccount[],
  memberships = [aMembership('ana')],
  matchFigures: ChildInBook['matchFigures'] = [],
) {
  return pageOfChild({
    player: aPlayer({ id: 'ana', name: 'Ana Reed' }),
    memberships,
    accounts,
    standing: standingsNow({ accounts }).get('ana') ?? emptyStanding,
    matchFigures,
    policy: defaultPolicy,
    flags: [],
    themes: [theme],
    note: '',
    today,
  })
}

const practicesOf = (page: ReturnType<typeof pageOf>) => page.kinds.find(({ kind }) => kind === 'practice')

describe('what the book says of one child', () => {
  it('is attendance and themes only before four practices are written down', () => {
    const few = pageOf([1, 2, 3].map((index) => practice(index)))
    expect(practicesOf(few)).toMatchObject({ held: 3, written: 3, said: null })
    expect(practicesOf(few)?.attendance.map(({ attendance }) => attendance)).toEqual(['here', 'here', 'here'])
    expect(few.themes).toEqual([{ name: 'Gates', depth: 0, missed: null, practices: 3, practicesPlayed: 3 }])
    expect(practicesOf(pageOf([1, 2, 3, 4].map((index) => practice(index))))?.said).not.toBeNull()
  })

  it('tells minutes to the nearest five, with turns, and leaves out what was never done', () => {
    const page = pageOf([1, 2, 3, 4].map((index) => practice(index)))
    expect(practicesOf(page)?.said).toMatchObject({
      did: [
        { doing: 'attack', minutes: 40, turns: 20 },
        { doing: 'waiting', minutes: 80, turns: 40 },
      ],
      minutesThere: 120,
    })
  })

  it('never takes what is not written down for nothing', () => {
    const notWritten = { written: 'notWritten' as const, lines: [], presences: [] }
    const page = pageOf([...[1, 2, 3, 4].map((index) => practice(index)), practice(5, notWritten)])
    expect(practicesOf(page)).toMatchObject({ held: 5, written: 4 })
    expect(practicesOf(page)?.attendance.at(-1)).toEqual({ day: '2026-09-05', attendance: null })
    expect(practicesOf(page)?.said?.minutesThere).toBe(120)
  })

  it('does not count tonight’s practice before it is written', () => {
    const tonight = { day: today, written: 'notWritten' as const, lines: [], presences: [] }
    expect(practicesOf(pageOf([practice(1), practice(2, tonight)]))?.held).toBe(1)
    expect(practicesOf(pageOf([practice(1), practice(2, { day: today })]))?.held).toBe(2)
  })

  it('counts only the days the child was a member, and has no other child in it', () => {
    const accounts = [1, 2, 3, 4, 5].map((index) => practice(index, { presences: [], lines: [] }))
    expect(practicesOf(pageOf(accounts, [aMembership('ana', '2026-09-03')]))?.held).toBe(3)
    const text = JSON.stringify(pageOf([1, 2, 3, 4].map((index) => practice(index))))
    expect(text).not.toMatch(/\bbo\b|\bana\b|s1/)
  })
})
