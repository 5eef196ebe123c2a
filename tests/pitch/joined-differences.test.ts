import { expect, it } from 'vitest'
import { joinedDifferences } from '#pitch/joined-differences'
import type { PlanDifference } from '#pitch/plan-differences'

it('a new face who turns out to be somebody expected did come; one who was not expected came under its own name', () => {
  const differences: readonly PlanDifference[] = [
    { kind: 'missing', playerId: 'luca' },
    { kind: 'missing', playerId: 'noor' },
    { kind: 'extra', playerId: 'wim', from: 0 },
    { kind: 'extra', playerId: 'quill', from: 60 },
    { kind: 'left', playerId: 'wim', at: 300, isOut: false },
    { kind: 'plannedAnew', sentence: '' },
  ]
  const joined = new Map([
    ['wim', 'luca'],
    ['quill', 'pia'],
  ])
  expect(joinedDifferences(differences, joined)).toEqual([
    { kind: 'missing', playerId: 'noor' },
    { kind: 'extra', playerId: 'pia', from: 60 },
    { kind: 'left', playerId: 'luca', at: 300, isOut: false },
    { kind: 'plannedAnew', sentence: '' },
  ])
  expect(joinedDifferences(differences, new Map())).toEqual(differences)
})
