import { describe, expect, it } from 'vitest'
import { type Role, roles } from '#exposure/column'
import { accountPractice } from '#fairness/account-practice'
import { afterTheWhistle } from '#pitch/after-the-whistle'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import { type RunningTotal, runningTotals } from '#pitch/running-totals'
import { checkPractice } from '#practice/checks/check-practice'
import { seatRoles } from '#practice/turn'
import { checkLineLength } from '#squad/checks/line-length'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import { randomPractice } from '../support/pitch-builder'
import { seededRandom } from '../support/seeded-random'

const seeds = Array.from({ length: 600 }, (_, index) => index + 1)
const practices = seeds.map((seed) => {
  const { plan, roster, events } = randomPractice(seed)
  return { seed, plan, roster, events, state: foldPitch(plan, roster, events) }
})

/** Turns of a role by player, counted from what was played: once a turn and role; a wait is of who had no place in it. */
function countTurns(state: PitchState): ReadonlyMap<string, number> {
  const counts = new Map<string, number>()
  for (const { parts } of state.played) {
    const had = new Set<string>()
    const placed = new Set<string>()
    for (const { stations } of parts) {
      for (const role of seatRoles) {
        for (const id of stations.flatMap((station) => station[role])) {
          had.add(`${id} ${role}`)
          placed.add(id)
        }
      }
    }
    for (const { playerId, segments } of state.players) {
      const isThere = parts.some(({ start, end }) =>
        segments.some(
          ({ state: how, from, to }) => how === 'here' && from <= start && (to === null || end <= to),
        ),
      )
      if (isThere && !placed.has(playerId)) had.add(`${playerId} rest`)
    }
    for (const key of had) counts.set(key, (counts.get(key) ?? 0) + 1)
  }
  return counts
}

describe('whatever is tapped', { timeout: 30_000 }, () => {
  it('comes to a book that can be written and balances', () => {
    let turns = 0
    let parts = 0
    for (const { seed, roster, state } of practices) {
      const book = bookOfPitch(state, {
        lengthSeconds: seed % 2 === 0 ? null : 3600,
      })
      const here = book.register.filter(({ state }) => state === 'here')
      const practice = {
        id: 'p',
        day: '2026-06-09',
        lengthSeconds: book.lengthSeconds,
        register: here,
        turns: book.turns,
      }
      expect(checkPractice(practice), `seed ${seed}`).toEqual([])
      expect([...checkLineLength(book.register), ...checkLineOverlap(book.register)], `seed ${seed}`).toEqual(
        [],
      )
      for (const line of book.register) expect(line.to).toBeLessThanOrEqual(book.lastSecond)
      for (const numbers of book.turns.flatMap(({ start, end }) => [start, end])) {
        expect(Number.isInteger(numbers) && numbers >= 0).toBe(true)
      }
      const members = new Set(roster.map(({ id }) => id))
      const account = accountPractice(
        practice,
        { able: members, members, middleAttackShare: 0.5, written: 'tapped' },
        book.register,
      )
      expect(account.liveSeconds).toBe(book.turns.reduce((sum, { start, end }) => sum + end - start, 0))
      for (const pass of book.passes) expect(pass.lengthSeconds).toBeGreaterThan(0)
      turns += book.turns.length
      parts += book.turns.filter(({ continuesTurn }) => continuesTurn).length
    }
    // The practices by chance are rich enough to say something.
    expect(turns).toBeGreaterThan(1500)
    expect(parts).toBeGreaterThan(200)
  })

  it('has running totals that are those of the book, second by second and in the season’s figures', () => {
    for (const { seed, roster, state } of practices) {
      const book = bookOfPitch(state)
      const totals = runningTotals(state, book.lastSecond)
      const counted = new Map<string, number>()
      const add = (key: string) => counted.set(key, (counted.get(key) ?? 0) + 1)
      for (const { start, end, stations } of book.turns) {
        for (let second = start; second < end; second += 1) {
          for (const role of seatRoles) {
            for (const playerId of stations.flatMap((station) => station[role])) add(`${playerId} ${role}`)
          }
        }
      }
      const members = new Set(roster.map(({ id }) => id))
      const account = accountPractice(
        {
          id: 'p',
          day: '2026-06-09',
          lengthSeconds: null,
          register: book.register.filter((line) => line.state === 'here'),
          turns: book.turns,
        },
        { able: members, members, middleAttackShare: 0.5, written: 'tapped' },
      )
      const turnsCounted = state.live ? null : countTurns(state)
      const figures = (figure: (total: RunningTotal, role: Role) => number) =>
        totals.flatMap((total) => roles.map((role) => figure(total, role)))
      const inAccount = (of: 'seconds' | 'turns') =>
        figures(({ playerId }, role) =>
          account.lines
            .filter((line) => line.playerId === playerId && line.role === role)
            .reduce((sum, line) => sum + line[of], 0),
        )
      const seconds = figures((total, role) => total.seconds[role])
      const turns = figures((total, role) => total.turns[role])
      expect(seconds, `seed ${seed}`).toEqual(inAccount('seconds'))
      expect(turns, `seed ${seed}`).toEqual(inAccount('turns'))
      // Counted a second time by other means; who waits in which second is not in the turns.
      const bySecond = figures(({ playerId }, role) => counted.get(`${playerId} ${role}`) ?? 0)
      expect(
        figures((total, role) => (role === 'rest' ? 0 : total.seconds[role])),
        `seed ${seed}`,
      ).toEqual(bySecond)
      if (turnsCounted) {
        const byTurn = figures(({ playerId }, role) => turnsCounted.get(`${playerId} ${role}`) ?? 0)
        expect(turns, `seed ${seed}`).toEqual(byTurn)
      }
    }
  })

  it('is the same state in any order of arrival, however often each tap arrives', () => {
    for (const { seed, plan, roster, events, state } of practices) {
      const random = seededRandom(seed)
      const repeated = [...events, ...events.filter(() => random.chance(0.4))]
      expect(foldPitch(plan, roster, random.shuffle(repeated)), `seed ${seed}`).toEqual(state)
    }
  })

  it('puts nobody who is out for today into a place after that', () => {
    for (const { seed, state } of practices) {
      for (const { playerId, segments } of state.players.filter(({ isOut }) => isOut)) {
        const from = segments.find((segment) => segment.state === 'out')?.from
        if (from === undefined) continue
        const later = state.played.flatMap(({ parts }) => parts.filter((part) => part.end > from))
        const seated = later.flatMap(({ stations }) =>
          stations.flatMap((s) => [...s.attack, ...s.defend, ...s.keep]),
        )
        expect(seated, `seed ${seed}`).not.toContain(playerId)
        const next = state.next?.stations.flatMap((s) => [...s.attack, ...s.defend, ...s.keep]) ?? []
        expect(next).not.toContain(playerId)
      }
    }
  })

  it('taken back and put in again is what it was', () => {
    for (const { seed, plan, roster, events, state } of practices.slice(0, 300)) {
      const random = seededRandom(seed)
      const [step] = state.undoable.length > 0 ? [random.pick(state.undoable)] : []
      if (!step) continue
      const at = Math.max(...events.map((event) => event.at)) + 1
      const undo = {
        id: 'z1',
        deviceId: 'p1',
        at,
        deed: { kind: 'undo' as const, undoes: step.event.id, secondAnswer: true },
      }
      const redo = { id: 'z2', deviceId: 'p1', at: at + 1, deed: { kind: 'undo' as const, undoes: 'z1' } }
      const without = foldPitch(plan, roster, [...events, undo])
      expect(without.undoable.map(({ event }) => event.id)).not.toContain(step.event.id)
      const again = foldPitch(plan, roster, [...events, undo, redo])
      expect({ ...again, setAside: [] }).toEqual({ ...state, setAside: [] })
    }
  })

  it('can be looked back on', () => {
    for (const { state } of practices.slice(0, 200)) {
      const { ballInPlay, players, longestWait } = afterTheWhistle(state)
      if (ballInPlay.share !== null) expect(ballInPlay.share).toBeLessThanOrEqual(1)
      for (const own of players) {
        expect(own.longestWait?.to ?? 0).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER)
        const longest = longestWait ? longestWait.to - longestWait.from : 0
        expect(own.longestWait ? own.longestWait.to - own.longestWait.from : 0).toBeLessThanOrEqual(longest)
      }
    }
  })
})
