import { describe, expect, it } from 'vitest'
import { attendanceSoFar } from '#ahead/attendance/attendance-so-far'
import { playedSoFar } from '#ahead/played-so-far'
import { anAccount } from '../support/account-builder'

const theme = (id: string, parentId: string | null) => ({ id, name: id, parentId, order: 0 })
const themes = [theme('with', null), theme('finishing', 'with'), theme('without', null)]
const accounts = [
  anAccount({
    id: 's1',
    day: '2026-09-01',
    players: {
      ada: {
        rows: [
          { role: 'attack', themeId: 'finishing', seconds: 120 },
          { role: 'defend', themeId: 'without', seconds: 60 },
          { role: 'rest', themeId: 'finishing', seconds: 300 },
        ],
      },
      bo: {},
      guest: { isGuest: true, rows: [{ role: 'attack', seconds: 90 }] },
    },
  }),
  anAccount({
    id: 's2',
    day: '2026-09-08',
    players: { ada: { rows: [{ role: 'keep', themeId: 'with', seconds: 30 }] }, bo: { live: 200 } },
  }),
]

describe('what the term has given so far', () => {
  it('counts who came of those held, for members alone', () => {
    expect([...attendanceSoFar(accounts)]).toEqual([
      ['ada', { came: 2, held: 2 }],
      ['bo', { came: 1, held: 2 }],
    ])
  })

  it('adds up what was played without waiting, a theme’s for those it stands under too', () => {
    const played = playedSoFar(accounts, themes)
    expect(played.get('ada')).toEqual({
      playedSeconds: 210,
      themeSeconds: new Map([
        ['finishing', 120],
        ['with', 150],
        ['without', 60],
      ]),
    })
    expect(played.get('guest')).toEqual({ playedSeconds: 90, themeSeconds: new Map() })
    expect(played.has('bo')).toBe(false)
  })
})
