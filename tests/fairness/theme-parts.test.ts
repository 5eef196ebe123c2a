import { describe, expect, it } from 'vitest'
import { themedPractices, themeParts } from '#fairness/theme-parts'
import { anAccount } from '../support/account-builder'

const accounts = [
  anAccount({
    id: 's1',
    day: '2026-09-01',
    players: {
      ana: {
        rows: [
          { role: 'attack', themeId: 'pressing', seconds: 90, turns: 2 },
          { role: 'rest', themeId: 'pressing', seconds: 45, turns: 1 },
        ],
      },
      bo: {
        rows: [
          { role: 'rest', themeId: 'pressing', seconds: 135, turns: 3 },
          { role: 'rest', themeId: 'passing', seconds: 45, turns: 1 },
        ],
      },
      cy: { live: 0 },
      guest: { isGuest: true, rows: [{ role: 'defend', themeId: 'pressing', seconds: 45, turns: 1 }] },
    },
  }),
  anAccount({ id: 'm', day: '2026-09-02', kind: 'match', players: { ana: { live: 10 } } }),
  anAccount({ id: 's2', day: '2026-09-03', written: 'notWritten', players: { ana: {} } }),
]

describe('themes of written practices', () => {
  it('are those in which somebody played', () => {
    expect(themedPractices(accounts)).toEqual([
      { sessionId: 's1', day: '2026-09-01', themes: [{ themeId: 'pressing', seconds: 135 }] },
    ])
  })

  it('have a part for every member, away or there, and none for guests', () => {
    expect(
      themeParts(accounts).map((p) => [
        p.playerId,
        p.themeId,
        p.turnsPresent,
        p.turnsPlayed,
        p.secondsPlayed,
      ]),
    ).toEqual([
      ['ana', 'pressing', 3, 2, 90],
      ['ana', 'passing', 0, 0, 0],
      ['bo', 'pressing', 3, 0, 0],
      ['bo', 'passing', 1, 0, 0],
      ['cy', 'pressing', 0, 0, 0],
      ['cy', 'passing', 0, 0, 0],
    ])
  })
})
