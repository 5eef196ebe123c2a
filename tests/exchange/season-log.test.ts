import { describe, expect, it } from 'vitest'
import { ledgerJson } from '#exchange/ledger-json'
import { readSeasonLog } from '#exchange/season-log'
import { seasonLedger } from '#fairness/season-ledger'
import { smallSeason } from '../support/small-season'

const read = (json: unknown) => {
  const log = readSeasonLog(json)
  if (!log.ok) throw new Error(JSON.stringify(log.reasons))
  return log.value
}

describe('reading a season log', () => {
  it('fills in what may be left out', () => {
    expect(read({ format: 'turnbook/season-log@1', players: [{ id: 'p1' }] })).toEqual({
      policy: { toleranceSeconds: 600, toleranceShare: 0.15, middleAttackShare: 0.5 },
      players: [{ id: 'p1', keeps: true, name: null }],
      themes: [],
      practices: [],
      matches: [],
    })
    const season = { ...smallSeason(), policy: { toleranceShare: 0 } }
    const log = read(season)
    expect(log.policy).toEqual({ toleranceSeconds: 600, toleranceShare: 0, middleAttackShare: 0.5 })
    expect(log.practices[0]?.turns[1]?.stations).toEqual([
      { attack: ['p3'], defend: [], keep: ['p1'] },
      { attack: [], defend: [], keep: [] },
    ])
    expect(log.practices[0]?.turns[2]).toEqual({ start: 405, end: 465, themeId: null, stations: [] })
    expect(log.practices[1]).toMatchObject({ title: null, lengthSeconds: null })
  })

  it('keeps names, titles and parents', () => {
    const log = read(smallSeason())
    expect(log.players[0]).toEqual({ id: 'p1', keeps: true, name: 'Ada' })
    expect(log.themes[1]).toEqual({ id: 't2', name: null, parentId: 't1' })
    expect(log.practices[0]?.title).toBe('Tuesday')
  })

  it('takes any text as an id, also those that objects have keys for', () => {
    const ids = ['__proto__', 'constructor', 'toString', '', ' ', '0', 'ö', 'a"b']
    const register = ids.map((player) => ({ player, from: 0, to: 60 }))
    const turns = [
      {
        start: 0,
        end: 60,
        theme: '__proto__',
        stations: [{ attack: ids.slice(0, 4), defend: ids.slice(4) }],
      },
    ]
    const log = read({
      format: 'turnbook/season-log@1',
      players: ids.map((id) => ({ id })),
      practices: [{ id: '__proto__', date: '2028-02-29', register, turns }],
    })
    const ledger = JSON.parse(JSON.stringify(ledgerJson(seasonLedger(log))))
    expect(ledger.players.map((player: { id: string }) => player.id)).toEqual(ids)
    for (const player of ledger.players) {
      expect(player.liveSeconds).toBe(60)
      expect(Object.keys(player.themes)).toEqual(['__proto__'])
    }
  })

  it('shows every theme that a turn carries for every player, and no other', () => {
    const ledger = ledgerJson(seasonLedger(read(smallSeason())))
    expect(ledger.players.map((player) => Object.keys(player.themes))).toEqual(
      Array.from({ length: 4 }, () => ['t1', 'unlisted']),
    )
  })

  it('gives zeros and within to a player who was never there', () => {
    const season = smallSeason()
    season.players.push({ id: 'never' })
    const player = ledgerJson(seasonLedger(read(season))).players.at(-1)
    const nothing = { seconds: 0, fairSeconds: 0, gapSeconds: 0, turns: 0, status: 'within' }
    expect(player).toMatchObject({ id: 'never', liveSeconds: 0, longestRestTurns: 0 })
    expect(Object.values(player?.roles ?? {})).toEqual([nothing, nothing, nothing, nothing])
  })

  it('counts on beyond any season without a fault', () => {
    const long = Number.MAX_SAFE_INTEGER
    const log = read({
      format: 'turnbook/season-log@1',
      players: [{ id: 'p1' }, { id: 'p2' }, { id: 'p3' }],
      practices: [
        {
          id: 's1',
          date: '2026-09-01',
          lengthSeconds: long,
          register: ['p1', 'p2', 'p3'].map((player) => ({ player, from: 0, to: long })),
          turns: [{ start: 0, end: long, stations: [{ attack: ['p1'] }] }],
        },
      ],
    })
    const ledger = ledgerJson(seasonLedger(log))
    expect(ledger.squad.ballRollingShare).toBe(1)
    expect(ledger.players[0]?.roles.attack).toMatchObject({ seconds: long, status: 'over' })
  })

  it.each([
    [[60, 60], [3600, null], 120 / 3600],
    [[60, 60], [null, null], null],
    [[], [0], null],
  ])('shares ball in play over practices that state a length', (turns, lengths, share) => {
    const season = {
      format: 'turnbook/season-log@1',
      players: [],
      practices: lengths.map((lengthSeconds, index) => ({
        id: `s${index}`,
        date: '2026-09-01',
        ...(lengthSeconds === null ? {} : { lengthSeconds }),
        register: [],
        turns: turns.map((length, place) => ({
          start: place * 100,
          end: place * 100 + length,
          stations: [],
        })),
      })),
    }
    expect(ledgerJson(seasonLedger(read(season))).squad.ballRollingShare).toBe(share)
  })
})
