import { describe, expect, it } from 'vitest'
import { entrySentence } from '#practice/entry-sentence'
import { decidePractice, type PracticeEntry } from '#practice/practice-entry'
import { comeAt, hereThroughout, setFrom } from '#squad/register-segments'
import { aGrid } from '../support/grid-builder'

const grid = aGrid('ann A D\nbo D A', [{ turnCount: 5 }, { turnCount: 5 }])
const entry = (change: Partial<PracticeEntry> = {}): PracticeEntry => ({
  grid,
  register: ['ann', 'bo'].map((playerId) => ({ playerId, segments: hereThroughout })),
  lengthSeconds: 900,
  ...change,
})

function sentencesOf(typed: PracticeEntry): readonly string[] {
  const decided = decidePractice(typed)
  const parts = {
    columnTitle: (column: number) => typed.grid.columns[column]?.title ?? '',
    nameOf: (id: string) => id,
  }
  return decided.ok ? [] : decided.reasons.map((refusal) => entrySentence(refusal, parts))
}

describe('a typed-in practice', () => {
  it('comes to its register, turns and passes', () => {
    const decided = decidePractice(entry())
    expect(decided.ok && decided.value.turns).toHaveLength(10)
    expect(decided.ok && decided.value.register).toEqual([
      { playerId: 'ann', state: 'here', from: 0, to: 900 },
      { playerId: 'bo', state: 'here', from: 0, to: 900 },
    ])
  })

  it('without a length its register ends with its last turn', () => {
    const decided = decidePractice(entry({ lengthSeconds: null }))
    expect(decided.ok && decided.value.register[0]?.to).toBe(600)
  })

  it('a register without any turns is accepted: who was there is worth writing', () => {
    const decided = decidePractice(entry({ grid: aGrid('ann . .\nbo . .'), lengthSeconds: 3600 }))
    expect(decided.ok && decided.value.turns).toEqual([])
  })

  it('turns that go on after the practice are refused', () => {
    expect(sentencesOf(entry({ lengthSeconds: 570 }))).toEqual([
      'Round 2: it goes on after minute 9.5, where the practice ends. Make the practice longer, or the turns fewer or shorter.',
    ])
  })

  it('a place for somebody who had gone is refused with the minute', () => {
    const register = [
      { playerId: 'ann', segments: setFrom(hereThroughout, 300, 'out') },
      { playerId: 'bo', segments: comeAt(hereThroughout, 60) },
    ]
    expect(sentencesOf(entry({ register }))).toEqual([
      'Round 2: ann has a place but was not there then (it begins at minute 5). Empty that cell, or correct when ann was there.',
    ])
  })

  it('coming after the end is refused', () => {
    const register = [
      { playerId: 'ann', segments: hereThroughout },
      { playerId: 'bo', segments: comeAt(hereThroughout, 1200) },
    ]
    expect(sentencesOf(entry({ register, grid: aGrid('ann A\nbo .') }))).toEqual([
      'bo is written to come or go at minute 20, and the practice ends at minute 15. Write an earlier minute, or make the practice longer.',
    ])
  })
})
