import { describe, expect, it } from 'vitest'
import { readAnswers } from '#exchange/players/answer'
import type { KnownPlayer } from '#exchange/players/match-player'
import { planRoster } from '#exchange/roster/plan-roster'
import { isReady } from '#exchange/roster/roster-plan'
import { aKnownPlayer } from '../support/known'
import { rosterOf } from '../support/read-text'

const plan = (text: string, known: readonly KnownPlayer[] = [], answers: Record<string, string> = {}) =>
  planRoster(rosterOf(text).rows, { known, answers: readAnswers(answers), defaultFirstDay: '2026-08-15' })
const kinds = (...of: Parameters<typeof plan>) => plan(...of).map(({ outcome }) => outcome.kind)

const ann = aKnownPlayer({ id: 'p1', name: 'Ann Ash' })
const otherAnn = aKnownPlayer({ id: 'p2', name: 'Ann Ash' })

describe('rows of one name', () => {
  it.each([
    ['are one player when nothing tells them apart', 'Name,No\nAnn Ash,7\nAnn Ash,7', ['new', 'doubled']],
    ['are one player when the second says less', 'Name,No\nAnn Ash,7\nANN  ASH,', ['new', 'doubled']],
    ['are two players with two shirts', 'Name,No\nAnn Ash,7\nAnn Ash,9', ['new', 'new']],
    ['are two players with two codes', 'Name,Code\nAnn Ash,a\nAnn Ash,b', ['new', 'new']],
    [
      'are a question when only the days differ',
      'Name,From\nAnn Ash,2026-09-01\nAnn Ash,2027-01-10',
      ['new', 'question'],
    ],
    [
      'are one player again, by the code, for later days',
      'Name,Code,From,To\nAnn,a,2026-09-01,2026-12-20\nAnn,a,2027-03-01,',
      ['new', 'again'],
    ],
    ['are a problem as two names with one code', 'Name,Code\nAnn Ash,a\nBo Birch,a', ['new', 'problem']],
  ])('%s', (_sentence, text, expected) => {
    expect(kinds(text)).toEqual(expected)
  })

  it('are one player however often the row stands there', () => {
    const planned = plan(`Name\n${'Ann Ash\n'.repeat(19_999)}`)
    expect(planned[0]?.outcome.kind).toBe('new')
    expect(planned.slice(1).every(({ outcome }) => outcome.kind === 'doubled' && outcome.line === 2)).toBe(
      true,
    )
  })

  it('become two, or one, as a person says', () => {
    const text = 'Name,From\nAnn Ash,2026-09-01\nAnn Ash,2027-01-10'
    expect(kinds(text, [], { 3: 'new' })).toEqual(['new', 'new'])
    expect(kinds(text, [], { 3: 'leaveOut' })).toEqual(['new', 'leftOut'])
  })
})

describe('a row and the book', () => {
  it.each<[string, string, readonly KnownPlayer[], string]>([
    [
      'is a known player by name, whatever its case and apostrophe',
      'Name\nO’BRIEN ann',
      [aKnownPlayer({ id: 'p1', name: "O'Brien Ann" })],
      'known',
    ],
    ['is a known player by code', 'Name,Code\nAnn Ash,c1', [otherAnn, { ...ann, code: 'c1' }], 'known'],
    ['is a known player by the id that an export wrote', 'Name,Code\nAnn Ash,p1', [otherAnn, ann], 'known'],
    ['is a question when two have the name', 'Name\nAnn Ash', [ann, otherAnn], 'question'],
    [
      'is a question when the name has another code',
      'Name,Code\nAnn Ash,c2',
      [{ ...ann, code: 'c1' }],
      'question',
    ],
    [
      'is a question when the code has another name',
      'Name,Code\nBo Birch,c1',
      [{ ...ann, code: 'c1' }],
      'question',
    ],
    [
      'is a question when a player of another squad has the name',
      'Name\nAnn Ash',
      [{ ...ann, isOfSquad: false, memberships: [] }],
      'question',
    ],
    [
      'is a question when the name differs in accents only',
      'Name\nLukasz Zak',
      [aKnownPlayer({ id: 'p1', name: 'Łukasz Żak' })],
      'question',
    ],
    ['is new when nobody has the name', 'Name\nBo Birch', [ann], 'new'],
  ])('%s', (_sentence, text, known, kind) => {
    expect(kinds(text, known)).toEqual([kind])
  })

  it('asks for both rows when two players of the file can only be one of the book', () => {
    expect(kinds('Name,No\nAnn Ash,7\nAnn Ash,9', [ann])).toEqual(['question', 'question'])
    expect(kinds('Name,No\nAnn Ash,7\nAnn Ash,9', [ann], { 2: 'p1', 3: 'new' })).toEqual(['known', 'new'])
    expect(kinds('Name,No\nAnn Ash,7\nAnn Ash,9', [ann], { 2: 'p1', 3: 'p1' })).toEqual([
      'question',
      'question',
    ])
  })

  it('takes no code twice: a new player cannot have the code of another', () => {
    expect(kinds('Name,Code\nBo Birch,c1', [{ ...ann, code: 'c1' }], { 2: 'new' })).toEqual(['problem'])
  })

  it('refuses an answer about a player the book does not have', () => {
    expect(kinds('Name\nAnn Ash', [ann, otherAnn], { 2: 'p9' })).toEqual(['problem'])
  })
})

describe('what changes on a known player', () => {
  const changes = (text: string, player: KnownPlayer) => {
    const outcome = plan(text, [player])[0]?.outcome
    return outcome?.kind === 'known' ? { changes: outcome.changes, notes: outcome.notes } : outcome
  }
  const left = { ...ann, memberships: [{ playerId: 'p1', firstDay: '2026-08-01', lastDay: '2026-12-20' }] }
  const guest = { ...ann, memberships: [] }

  it.each<[string, string, KnownPlayer, object]>([
    ['nothing when the file says the same', 'Name,From\nAnn Ash,2026-08-01', ann, { changes: [], notes: [] }],
    [
      'the last day',
      'Name,To\nAnn Ash,2026-12-20',
      ann,
      { changes: [{ kind: 'ends', lastDay: '2026-12-20' }], notes: [] },
    ],
    [
      'a guest joins on the day for all',
      'Name\nAnn Ash',
      guest,
      { changes: [{ kind: 'joins', days: { firstDay: '2026-08-15', lastDay: null } }], notes: [] },
    ],
    [
      'whoever left joins again on a later day',
      'Name,From\nAnn Ash,2027-02-01',
      left,
      { changes: [{ kind: 'joins', days: { firstDay: '2027-02-01', lastDay: null } }], notes: [] },
    ],
    ['nothing, and a note, when it had left', 'Name\nAnn Ash', left, { changes: [], notes: ['leftBefore'] }],
    [
      'nothing, and a note, for another first day',
      'Name,From\nAnn Ash,2026-09-01',
      ann,
      { changes: [], notes: ['otherFirstDay'] },
    ],
    [
      'keeping goal',
      'Name,Keeps,Wants to keep\nAnn Ash,no,yes',
      ann,
      {
        changes: [
          { kind: 'keeps', to: false },
          { kind: 'wantsToKeep', to: true },
        ],
        notes: [],
      },
    ],
  ])('%s', (_sentence, text, player, expected) => {
    expect(changes(text, player)).toEqual(expected)
  })
})

it('a plan is ready only without questions and problems, and with something to write', () => {
  expect(isReady(plan('Name\nBo'))).toBe(true)
  expect(isReady(plan('Name\nAnn Ash', [ann]))).toBe(false)
  expect(isReady(plan('Name\nAnn Ash\nBo', [ann, otherAnn]))).toBe(false)
  expect(isReady(plan('Name,From\nBo,x\nCy,2026-09-01'))).toBe(false)
})

it('five thousand rows are planned row by row', () => {
  const text = `Name,Code\n${Array.from({ length: 5000 }, (_, n) => `Player ${n % 4000},c${n % 4500}`).join('\n')}`
  const reading = rosterOf(text)
  const planned = planRoster(reading.rows, {
    known: [ann],
    answers: new Map(),
    defaultFirstDay: '2026-09-01',
  })
  expect(planned).toHaveLength(5000)
  expect(planned.slice(0, 4000).every(({ outcome }) => outcome.kind === 'new')).toBe(true)
})
