import { describe, expect, test } from 'vitest'
import { bookOfMatch } from '#touchline/book-of-match'
import { foldMatch } from '#touchline/fold-match'
import { replanMatch } from '#touchline/replan-match'
import { faultsOfBook, secondsOfPlayer, secondsOfSpells } from '../support/match-spells'
import { planAtOnce } from '../support/plan-at-once'
import {
  cameBefore,
  halfPromised,
  inGoal,
  kickOff,
  kickOffMs,
  matchId,
  outOfGoal,
  packOf,
  packOfTen,
  requestOf,
  sevens,
  stateAt,
  type Tap,
  taps,
} from '../support/tapped-match'

/** The match goes on: a tap at a second, and the plan made anew on the phone that heard it. */
function replanned(pack: ReturnType<typeof packOf>, given: readonly Tap[], second: number): readonly Tap[] {
  const made = replanMatch(stateAt(pack, taps(...given), second), halfPromised)
  if (!made.ok) throw new Error(made.reasons.join())
  return [...given, [second, made.value]]
}

describe('a day for ten, seven a side', () => {
  // One of ten is late; the register was taken before the match.
  const pack = packOfTen
  const late = matchId(9)
  const register = cameBefore(9)
  const planned = replanned(pack, register, -60)
  const begun: Tap[] = [...planned, [0, kickOff(stateAt(pack, taps(...planned), 0))]]

  test('nine are there: the late one is in no plan so far', () => {
    const state = stateAt(pack, taps(...begun), 1)
    expect(state.on).toHaveLength(7)
    expect(state.players.find(({ id }) => id === late)?.state).toBe('missing')
    expect(state.upcoming.every(({ missing }) => missing.length === 0)).toBe(true)
  })

  test('one goes off hurt at 7:12, one comes at half-time, and the book balances', () => {
    const hurt = outOfGoal(stateAt(pack, taps(...begun), 432))
    const off: Tap[] = [...begun, [432, { kind: 'register', playerId: hurt, state: 'notPlaying' }]]
    expect(stateAt(pack, taps(...off), 432).emptyPlaces).toBe(1)
    const filled = replanned(pack, off, 433)
    const after = stateAt(pack, taps(...filled), 434)
    expect(after.emptyPlaces).toBe(0)
    const whistle: Tap[] = [...filled, [1512, { kind: 'periodEnd', period: 0 }]]
    const came = replanned(
      pack,
      [...whistle, [1700, { kind: 'register', playerId: late, state: 'here' }]],
      1701,
    )
    const second: Tap[] = [...came, [2130, kickOff(stateAt(pack, taps(...came), 2130))]]
    const done: Tap[] = [...second, [3640, { kind: 'periodEnd', period: 1 }], [3641, { kind: 'fullTime' }]]
    const events = taps(...done)
    const book = bookOfMatch(pack, events)
    expect(faultsOfBook(book)).toEqual([])
    expect(book.periods).toEqual([
      { start: 0, end: 1512 },
      { start: 2130, end: 3640 },
    ])
    // Seven places for 1512 + 1510 s, less the second in which one was empty.
    expect(secondsOfSpells(book.spells)).toBe(7 * 3022 - 1)
    const end = foldMatch(pack, events)
    for (const { id, seconds, secondsThere } of end.players) {
      expect(secondsOfPlayer(book.spells, id)).toBe(seconds)
      expect(2 * seconds).toBeGreaterThanOrEqual(secondsThere)
    }
    // Whatever order the taps arrive in.
    expect(bookOfMatch(pack, events.toReversed())).toEqual(book)
  })

  test('the change that was called stays', () => {
    const at = stateAt(pack, taps(...begun), 10)
    const due = at.call?.due ?? 0
    const soon = due - 20
    const bystander =
      at.on.find(({ playerId, line }) => line !== 'keeper' && !at.call?.off.includes(playerId))?.playerId ??
      ''
    const off: Tap[] = [...begun, [soon, { kind: 'register', playerId: bystander, state: 'notPlaying' }]]
    const filled = stateAt(pack, taps(...replanned(pack, off, soon)), due + 1)
    const on = filled.on.map(({ playerId }) => playerId)
    expect(on).toHaveLength(7)
    for (const { playerId } of at.call?.on ?? []) expect(on).toContain(playerId)
  })

  test('nothing was planned: from the register alone', () => {
    const bare = { ...pack, plan: null }
    const made = replanMatch(stateAt(bare, taps(...register), -60), halfPromised)
    expect(made.ok).toBe(true)
    const state = foldMatch(bare, taps(...replanned(bare, register, -60)), kickOffMs)
    expect(state.nextKickOff?.on).toHaveLength(7)
  })

  test('the keeper is sent off: somebody goes in goal, six play on', () => {
    const keeper = inGoal(stateAt(pack, taps(...begun), 300))
    const off: Tap[] = [...begun, [300, { kind: 'sentOff', playerId: keeper, seconds: null }]]
    const state = stateAt(pack, taps(...replanned(pack, off, 301)), 302)
    expect(state.on).toHaveLength(6)
    expect(state.on.filter(({ line }) => line === 'keeper')).toHaveLength(1)
  })

  test('after the match nothing is left to plan', () => {
    const over: Tap[] = [...begun, [1500, { kind: 'periodEnd', period: 0 }], [1501, { kind: 'fullTime' }]]
    expect(replanMatch(stateAt(pack, taps(...over), 1600), halfPromised)).toEqual({
      ok: false,
      reasons: ['nothingLeft'],
    })
  })
})

describe('a plan anew where it is tight', () => {
  const pack = packOf(planAtOnce(requestOf(9)))
  const first = kickOff(foldMatch(pack, []))
  const hurt = (playerId: string, second: number): Tap => [
    second,
    { kind: 'register', playerId, state: 'notPlaying' },
  ]

  test('the keeper goes off, and the other who keeps is on: it goes in goal, and its place is filled', () => {
    const before = stateAt(pack, taps([0, first]), 20)
    const keeper = inGoal(before)
    const other = [matchId(0), matchId(1)].find((id) => id !== keeper) ?? ''
    const others = before.on.filter(({ playerId }) => playerId !== keeper && playerId !== other)
    const on = [
      ...others.slice(0, 5),
      { playerId: other, line: 'middle' as const },
      { playerId: keeper, line: 'keeper' as const },
    ]
    const given: Tap[] = [[0, first], [10, { kind: 'places', on }], hurt(keeper, 89)]
    const state = stateAt(pack, taps(...replanned(pack, given, 90)), 91)
    expect(state.on.filter(({ line }) => line === 'keeper')).toEqual([{ playerId: other, line: 'keeper' }])
    expect(state.on).toHaveLength(7)
  })

  test('one who never keeps was put in goal: it may stay there', () => {
    const before = stateAt(pack, taps([0, first]), 20)
    const stranger = before.on.find(
      ({ playerId }) => playerId !== matchId(0) && playerId !== matchId(1),
    )?.playerId
    const keeper = inGoal(before)
    const on = before.on.map((one) =>
      one.playerId === stranger
        ? { ...one, line: 'keeper' as const }
        : one.playerId === keeper
          ? { ...one, line: before.on.find(({ playerId }) => playerId === stranger)?.line ?? 'back' }
          : one,
    )
    const given: Tap[] = [
      [0, first],
      [30, { kind: 'places', on }],
    ]
    const state = stateAt(pack, taps(...replanned(pack, given, 40)), 41)
    expect(state.on.find(({ line }) => line === 'keeper')?.playerId).toBe(stranger)
  })

  test('nobody may come on any more: one fewer plays on', () => {
    const format = { ...sevens, mostSubstitutions: 0 }
    const request = requestOf(9, { format })
    const none = packOf(planAtOnce({ ...request, rules: { ...request.rules, mostSubstitutions: 0 } }))
    const on = kickOff(foldMatch(none, []))
    const player = outOfGoal(stateAt(none, taps([0, on]), 20))
    const state = stateAt(none, taps(...replanned(none, [[0, on], hurt(player, 100)], 101)), 110)
    expect(state.on).toHaveLength(6)
  })
})
