import type { PracticeInSeason, SeasonJson } from '../support/season-json'
import { seededRandom } from '../support/seeded-random'

/** A whole season of practices: so many players, practices, turns of a practice. Two areas of two against one with a keeper, late comers and early leavers. */
export function fullSeason(size: { players: number; practices: number; turns: number }): SeasonJson {
  const random = seededRandom(1)
  const ids = Array.from({ length: size.players }, (_, index) => `p${index}`)
  const themes = ['t0', 't1', 't2', 't3', 't4']
  const practices = Array.from({ length: size.practices }, (_, index): PracticeInSeason => {
    const register = ids
      .filter(() => random.chance(0.85))
      .map((player) => ({
        player,
        from: random.chance(0.1) ? 600 : 0,
        to: random.chance(0.1) ? 2400 : 3600,
      }))
    const turns = Array.from({ length: size.turns }, (_, turn) => {
      const start = 60 + turn * 120
      const there = random.shuffle(
        register.filter((r) => r.from <= start && start + 90 <= r.to).map((r) => r.player),
      )
      const area = (at: number) => ({
        attack: there.slice(at, at + 2),
        defend: there.slice(at + 2, at + 3),
        keep: there.slice(at + 3, at + 4),
      })
      return { start, end: start + 90, theme: random.pick(themes), stations: [area(0), area(4)] }
    })
    return { id: `s${index}`, date: dayOf(index), lengthSeconds: 3600, register, turns }
  })
  return { format: 'turnbook/season-log@1', players: ids.map((id) => ({ id })), practices }
}

function dayOf(index: number): string {
  return new Date(Date.UTC(2026, 0, 1 + 2 * index)).toISOString().slice(0, 10)
}
