import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { accountPractice } from '#fairness/account-practice'
import type { PracticeEvent } from '#practice/event'
import { replayPractice } from '#practice/replay'
import { randomSeasonLog } from '../support/season-log-builder'
import { seededRandom } from '../support/seeded-random'

describe('a voided event', () => {
  it('is as if never entered, in the turns, the passes and the account', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 31 }), fc.integer(), (seed, chance) => {
        const random = seededRandom(chance)
        const log = randomSeasonLog(seed)
        const rules = {
          able: new Set(log.players.map((player) => player.id)),
          members: new Set<string>(),
          middleAttackShare: 0.5,
          written: 'tapped' as const,
        }
        for (const practice of log.practices) {
          const events: PracticeEvent[] = []
          const kept: PracticeEvent[] = []
          for (const [index, turn] of practice.turns.entries()) {
            // Written wrongly at first, now and then, and corrected at once or after the next turn.
            if (random.chance(0.5)) {
              const wrong = { ...turn, end: turn.end - random.whole(0, 1), stations: [] }
              events.push(
                { kind: 'turn', id: `wrong ${index}`, turn: wrong },
                { kind: 'void', id: `void ${index}`, voids: `wrong ${index}` },
              )
            }
            const right: PracticeEvent = { kind: 'turn', id: `turn ${index}`, turn }
            const pass: PracticeEvent = {
              kind: 'passed',
              id: `pass ${index}`,
              playerId: 'p00',
              role: 'attack',
              lengthSeconds: 40,
            }
            events.push(right, pass)
            kept.push(right)
            if (random.chance(0.5)) events.push({ kind: 'void', id: `unpass ${index}`, voids: pass.id })
            else kept.push(pass)
          }
          const replayed = replayPractice(events)
          expect(replayed).toEqual(replayPractice(kept))
          expect(accountPractice({ ...practice, turns: replayed.turns }, rules)).toEqual(
            accountPractice(practice, rules),
          )
        }
      }),
      { numRuns: 150 },
    )
  })
})
