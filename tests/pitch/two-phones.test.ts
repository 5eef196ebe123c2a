import { describe, expect, it } from 'vitest'
import { bookOfPitch, type PitchBook } from '#pitch/book-of-pitch'
import type { PitchEvent } from '#pitch/pitch-event'
import { foldPitch } from '#pitch/pitch-state'
import { checkPractice } from '#practice/checks/check-practice'
import { aPhone, aPlan, aPlannedTurn, playedText, rosterOf } from '../support/pitch-builder'
import { type SeededRandom, seededRandom } from '../support/seeded-random'

const letters = 'abcdefg'
const turns = [
  ...['ab/cd/e', 'cd/fg/e', 'fa/bc/e', 'gb/da/e'].map((areas) => aPlannedTurn(0, areas)),
  ...['cf/ab/d', 'eg/cf/d', 'ab/eg/d'].map((areas) => aPlannedTurn(1, areas)),
  ...['ac/eg/b', 'df/ac/b', 'eg/df/b', 'ce/ad/b'].map((areas) => aPlannedTurn(2, areas)),
]
const plan = aPlan(turns)
const roster = rosterOf(letters)

/** What a server has, in the order it came; it takes an id once. */
function aServer() {
  const kept: PitchEvent[] = []
  return {
    kept,
    take: (events: readonly PitchEvent[]) => {
      for (const event of events) if (!kept.some(({ id }) => id === event.id)) kept.push(event)
    },
  }
}

type Phone = ReturnType<typeof aPhone>
type Device = { readonly phone: Phone; readonly known: Map<string, PitchEvent>; sent: number }

const stateOn = ({ phone, known }: Device) => foldPitch(plan, roster, [...known.values(), ...phone.events])

/**
 * One exchange with the server over a bad line: the phone sends all that is not known to have arrived, perhaps twice and
 * out of order; what it sent may arrive though the answer does not, and the answer may be lost.
 */
function exchange(device: Device, server: ReturnType<typeof aServer>, random: SeededRandom): void {
  const waiting = device.phone.events.slice(device.sent)
  if (random.chance(0.25)) return
  const batch = random.chance(0.5) ? waiting : [...waiting, ...waiting]
  const arrived = random.shuffle(batch).filter(() => random.chance(0.9))
  server.take(arrived)
  if (random.chance(0.3)) return
  if (waiting.every(({ id }) => server.kept.some((kept) => kept.id === id)))
    device.sent = device.phone.events.length
  for (const event of random.shuffle(server.kept)) device.known.set(event.id, event)
}

/** What somebody with this phone taps next, by what its screen shows. */
function tapNext(device: Device, second: number, random: SeededRandom): void {
  const { phone } = device
  const state = stateOn(device)
  if (state.status === 'notBegun') {
    if (phone.events.length === 0) phone.here(letters, second)
    phone.begin(second)
    return
  }
  const what = random.pick(['play', 'play', 'play', 'play', 'register', 'change', 'undo', 'guest'] as const)
  if (what === 'play' && state.live) phone.end(second, state.live.eventId)
  else if (what === 'play' && state.next) {
    const { index, stations } = state.next
    if (random.chance(0.3) && state.nextRound) {
      const { round } = state.nextRound
      phone.done(
        second,
        round,
        state.turns.filter((turn) => turn.round === round),
      )
    } else phone.tap(second, { kind: 'turnStart', turn: index, stations })
  } else if (what === 'register') {
    phone.state(random.pick([...letters]), random.pick(['here', 'gone', 'notPlaying', 'out', 'here']), second)
  } else if (what === 'change' && state.live) {
    const [first] = state.live.stations
    const [waiting] = state.waiting
    if (first && waiting) {
      const attack = [waiting.playerId, ...first.attack.slice(1)]
      phone.tap(second, { kind: 'change', start: state.live.eventId, stations: [{ ...first, attack }] })
    }
  } else if (what === 'undo') {
    const step = random.chance(0.5) ? state.undoable[0] : undefined
    if (step) for (const id of [step.event.id, ...step.also]) phone.undo(second, id, true)
  } else if (what === 'guest') {
    phone.tap(second, { kind: 'guest', playerId: `${phone.events.length}${second}`, name: 'New' })
  }
}

/** A practice on two phones over a bad line, until both have told and heard everything. */
function playOut(seed: number) {
  const random = seededRandom(seed)
  const server = aServer()
  const devices: Device[] = ['p1', 'p2'].map((id) => ({ phone: aPhone(id), known: new Map(), sent: 0 }))
  let second = 0
  for (let step = 0; step < 45; step += 1) {
    second += random.whole(1, 60)
    // The clocks of two phones are never quite the same.
    const device = random.pick(devices)
    tapNext(device, second + (device === devices[1] ? random.whole(-2, 2) : 0), random)
    if (random.chance(0.4)) exchange(random.pick(devices), server, random)
  }
  const tapped = devices.flatMap(({ phone }) => phone.events)
  for (let tries = 0; devices.some((device) => !knowsAll(device, tapped)) && tries < 500; tries += 1) {
    for (const device of devices) exchange(device, server, random)
  }
  return { devices, server, tapped, random }
}

function knowsAll({ known, sent, phone }: Device, tapped: readonly PitchEvent[]): boolean {
  return sent === phone.events.length && tapped.every(({ id }) => known.has(id))
}

const isWritable = (book: PitchBook) =>
  checkPractice({ ...book, register: book.register.filter(({ state }) => state === 'here') }).length === 0

describe('two phones on one practice, over a line that loses, repeats and reorders', () => {
  it('come to the same state and book, on the phones and on the server, with no tap lost or doubled', {
    timeout: 30_000,
  }, () => {
    let conflicts = 0
    let played = 0
    for (let seed = 1; seed <= 220; seed += 1) {
      const { devices, server, tapped, random } = playOut(seed)
      const ids = (events: readonly PitchEvent[]) => events.map(({ id }) => id).sort()
      expect(ids(server.kept), `seed ${seed}`).toEqual(ids(tapped))
      const state = foldPitch(plan, roster, server.kept)
      const others = [...devices.map(stateOn), foldPitch(plan, roster, random.shuffle(tapped))]
      // As text, which is quick to compare; where two differ, the difference is shown.
      for (const other of others) {
        if (JSON.stringify(other) !== JSON.stringify(state)) expect(other, `seed ${seed}`).toEqual(state)
      }
      const turnsPlayed = state.played.map(({ index }) => index)
      expect(new Set(turnsPlayed).size, `seed ${seed}: a turn is played once`).toBe(turnsPlayed.length)
      const book = bookOfPitch(state, { lengthSeconds: 3600 })
      expect(isWritable(book), `seed ${seed}`).toBe(true)
      expect(book.turns.filter((turn) => !turn.continuesTurn)).toHaveLength(
        state.played.length + (state.live ? 1 : 0),
      )
      conflicts += state.setAside.filter(({ why }) => why === 'sameTurn' || why === 'sameRound').length
      played += state.played.length
    }
    // They met often enough for this to say something.
    expect(conflicts).toBeGreaterThan(50)
    expect(played).toBeGreaterThan(1000)
  })

  it('neither phone shows a ball twice while they have not heard of each other', () => {
    const [one, other] = [aPhone('p1'), aPhone('p2')]
    for (const phone of [one, other]) {
      phone.here(letters)
      phone.begin(phone === one ? 0 : 1)
    }
    // One coach taps ball by ball, the other the round: the balls that were timed keep their time.
    one.end(62, one.start(2, 0, 'ab/cd/e'))
    one.end(140, one.start(80, 1, 'cd/fg/e'))
    other.done(300, 0, turns.slice(0, 4))
    one.stop(400)
    const state = foldPitch(plan, roster, [...other.events, ...one.events])
    expect(playedText(state)).toEqual([
      '2-62 ab/cd/e',
      '80-140 cd/fg/e',
      '165-225 fa/bc/e',
      '240-300 gb/da/e',
    ])
  })
})
