import { describe, expect, it } from 'vitest'
import type { UndoStep } from '#pitch/undo-steps'
import type { MatchDeed } from '#touchline/match-deed'
import { matchStepWords } from '#ui/touchline/match-deed-words'
import { matchStepsTogether, matchUndoDeeds } from '#ui/touchline/match-undo-deeds'

const step = (
  id: string,
  at: number,
  deed: MatchDeed,
  more: Partial<UndoStep<MatchDeed>> & { readonly deviceId?: string } = {},
): UndoStep<MatchDeed> => {
  const { deviceId = 'own', ...rest } = more
  return { event: { id, deviceId, at, deed }, also: [], needsSecondAnswer: false, ...rest }
}
const hurt: MatchDeed = { kind: 'register', playerId: 'bo', state: 'notPlaying' }
const plan: MatchDeed = { kind: 'replan', from: 432, spells: [], sentence: '' }
const whistle: MatchDeed = { kind: 'periodEnd', period: 0 }
const nameOf = () => 'Bo'

describe('undo beside a match', () => {
  it('takes back what one tap brought about: who went off, its plan, and the better one found later', () => {
    const steps = [
      step('4', 9_000, plan),
      step('3', 1_001, plan),
      step('2', 1_000, hurt),
      step('1', 10, whistle),
    ]
    const together = matchStepsTogether(steps)
    expect(together.map(({ event }) => event.id)).toEqual(['4', '3', '2'])
    expect(
      matchStepWords(
        together.map(({ event }) => event.deed),
        nameOf,
      ),
    ).toBe('Bo here, not playing')
  })

  it('leaves alone what another phone tapped at the same moment', () => {
    const steps = [step('2', 1_001, plan), step('1', 1_000, hurt, { deviceId: 'other' })]
    expect(matchStepsTogether(steps).map(({ event }) => event.id)).toEqual(['2'])
  })

  it('names every event once, with the second answer where it is asked for', () => {
    const out = { kind: 'register', playerId: 'bo', state: 'out' } as const
    const steps = [step('2', 1_001, plan), step('1', 1_000, out, { also: ['0'], needsSecondAnswer: true })]
    expect(matchUndoDeeds(steps)).toEqual([
      { kind: 'undo', undoes: '2' },
      { kind: 'undo', undoes: '1', secondAnswer: true },
      { kind: 'undo', undoes: '0', secondAnswer: true },
    ])
  })

  it('says that a register was taken by its number, and a kick-off before all that came with it', () => {
    const here = (playerId: string): MatchDeed => ({ kind: 'register', playerId, state: 'here' })
    expect(matchStepWords([here('a'), here('b')], nameOf)).toBe('2 here')
    expect(matchStepWords([{ kind: 'kickOff', period: 0, on: [] }, plan, here('a'), here('b')], nameOf)).toBe(
      'kick-off',
    )
  })
})
