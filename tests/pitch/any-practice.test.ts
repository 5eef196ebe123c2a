import { describe, expect, it } from 'vitest'
import { accountPractice } from '#fairness/account-practice'
import { afterTheWhistle } from '#pitch/after-the-whistle'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { foldPitch } from '#pitch/pitch-state'
import { runningTotals } from '#pitch/running-totals'
import { checkPractice } from '#practice/checks/check-practice'
import { seatRoles } from '#practice/turn'
import { checkLineLength } from '#squad/checks/line-length'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import { randomPractice } from '../support/pitch-builder'
import { seededRandom } from '../support/seeded-random'

const seeds = Array.from({ length: 600 }, (_, index) => index + 1)

describe('whatever is tapped', () => {
  it('comes to a book that can be written and balances', () => {
    let turns = 0
    let parts = 0
    for (const seed of seeds) {
      const { plan, roster, events } = randomPractice(seed)
      const book = bookOfPitch(foldPitch(plan, roster, events), {
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
    for (const seed of seeds) {
      const { plan, roster, events } = randomPractice(seed)
      const state = foldPitch(plan, roster, events)
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
      for (const { playerId, seconds, turns } of totals) {
        for (const role of seatRoles)
          expect(seconds[role], `seed ${seed}`).toBe(counted.get(`${playerId} ${role}`) ?? 0)
        for (const role of [...seatRoles, 'rest'] as const) {
          const lines = account.lines.filter((line) => line.playerId === playerId && line.role === role)
          expect(seconds[role], `seed ${seed}`).toBe(lines.reduce((sum, line) => sum + line.seconds, 0))
          expect(turns[role], `seed ${seed}`).toBe(lines.reduce((sum, line) => sum + line.turns, 0))
        }
      }
    }
  })

  it('is the same state in any order of arrival, however often each tap arrives', () => {
    for (const seed of seeds) {
      const random = seededRandom(seed)
      const { plan, roster, events } = randomPractice(seed)
      const state = foldPitch(plan, roster, events)
      const repeated = [...events, ...events.filter(() => random.chance(0.4))]
      expect(foldPitch(plan, roster, random.shuffle(repeated)), `seed ${seed}`).toEqual(state)
    }
  })

  it('puts nobody who is out for today into a place after that', () => {
    for (const seed of seeds) {
      const { plan, roster, events } = randomPractice(seed)
      const state = foldPitch(plan, roster, events)
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
    for (const seed of seeds.slice(0, 300)) {
      const random = seededRandom(seed)
      const { plan, roster, events } = randomPractice(seed)
      const state = foldPitch(plan, roster, events)
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
    for (const seed of seeds.slice(0, 200)) {
      const { plan, roster, events } = randomPractice(seed)
      const { ballInPlay, players, longestWait } = afterTheWhistle(foldPitch(plan, roster, events))
      if (ballInPlay.share !== null) expect(ballInPlay.share).toBeLessThanOrEqual(1)
      for (const own of players) {
        expect(own.longestWait?.to ?? 0).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER)
        const longest = longestWait ? longestWait.to - longestWait.from : 0
        expect(own.longestWait ? own.longestWait.to - own.longestWait.from : 0).toBeLessThanOrEqual(longest)
      }
    }
  })
})
