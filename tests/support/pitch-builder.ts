import type { Deed, PitchEvent } from '#pitch/pitch-event'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import type { DesignRound } from '#practice/design'
import type { Station } from '#practice/turn'
import { seededRandom } from './seeded-random'

/** Any moment: nothing may hang on it. */
export const kickOff = Date.UTC(2026, 5, 9, 15, 30)

/** A station written as `attackers/defenders/keepers`, one letter a player. */
export function area(text: string): Station {
  const [attack = '', defend = '', keep = ''] = text.split('/')
  return { attack: [...attack], defend: [...defend], keep: [...keep] }
}

/** A turn of a minute and a quarter of a minute's gap; areas parted by spaces. */
export function aPlannedTurn(round: number, areas: string, change: Partial<PlannedTurn> = {}): PlannedTurn {
  return { round, seconds: 60, gapSeconds: 15, stations: areas.split(' ').map(area), ...change }
}

/** A plan of these turns, with everyone in it expected, and nothing of what only the coach's page needs. */
export function aPlan(
  turns: readonly PlannedTurn[],
  change: Partial<PracticePlan['design']> = {},
): PracticePlan {
  const rounds = [...new Set(turns.map(({ round }) => round))]
  const playerIds = [...new Set(turns.flatMap((turn) => turn.stations.flatMap(everyone)))].sort()
  const nothing = { attack: 0, defend: 0, keep: 0, rest: 0, outnumbering: 0, level: 0, outnumbered: 0 }
  return {
    design: {
      id: null,
      name: 'Two goals',
      themeId: 'press',
      sides: null,
      rounds: rounds.map(
        (round): DesignRound => ({
          title: `Round ${round + 1}`,
          turnCount: turns.filter((turn) => turn.round === round).length,
          turnSeconds: 60,
          gapSeconds: 15,
          stations: [],
        }),
      ),
      ...change,
    },
    players: playerIds.map((playerId) => ({
      playerId,
      keeps: true,
      side: null,
      present: [[1, turns.length]],
      notInGoal: false,
      waitsAfterEachTurn: false,
      mostTurns: null,
      gap: nothing,
    })),
    rules: { restLimit: null, isGentle: false, keepsSides: false },
    apart: [],
    together: [],
    locks: [],
    turns,
    proof: { sentence: '', value: 0, bound: 0, proven: true, restLimitUsed: null },
  } as PracticePlan
}

function everyone({ attack, defend, keep }: Station): readonly string[] {
  return [...attack, ...defend, ...keep]
}

/** One letter a player. */
export const rosterOf = (letters: string) => [...letters].map((id) => ({ id, name: id.toUpperCase() }))

/** A phone whose taps are written down with ids that sort as they were tapped; seconds count from `kickOff`. */
export function aPhone(deviceId = 'p1') {
  const events: PitchEvent[] = []
  const tap = (second: number, deed: Deed): string => {
    const id = `${deviceId}-${String(events.length).padStart(4, '0')}`
    events.push({ id, deviceId, at: kickOff + second * 1000, deed })
    return id
  }
  return {
    events,
    tap,
    here: (letters: string, second = -60) => {
      for (const playerId of letters) tap(second, { kind: 'register', playerId, state: 'here' })
    },
    state: (playerId: string, state: 'here' | 'notPlaying' | 'out' | 'gone', second: number) =>
      tap(second, { kind: 'register', playerId, state }),
    begin: (second = 0) => tap(second, { kind: 'begin' }),
    stop: (second: number) => tap(second, { kind: 'stop' }),
    start: (second: number, turn: number, areas: string) =>
      tap(second, { kind: 'turnStart', turn, stations: areas.split(' ').map(area) }),
    end: (second: number, start: string) => tap(second, { kind: 'turnEnd', start, endings: [] }),
    change: (second: number, start: string, areas: string) =>
      tap(second, { kind: 'change', start, stations: areas.split(' ').map(area) }),
    done: (second: number, round: number, turns: readonly PlannedTurn[]) =>
      tap(second, { kind: 'roundDone', round, turns }),
    undo: (second: number, undoes: string, secondAnswer?: boolean) =>
      tap(second, { kind: 'undo', undoes, ...(secondAnswer === undefined ? {} : { secondAnswer }) }),
  }
}

/** Turns played as `start-end`, parts of one turn joined by `|`, with the places of their first area. */
export function playedText({ played }: Pick<PitchState, 'played'>): readonly string[] {
  return played.map(({ parts }) =>
    parts
      .map(({ start, end, stations }) => `${start}-${end} ${stations.map(areaText).join(' ')}`)
      .join(' | '),
  )
}

export function areaText({ attack, defend, keep }: Station): string {
  return `${attack.join('')}/${defend.join('')}${keep.length > 0 ? `/${keep.join('')}` : ''}`
}

/** A whole practice on some phones by chance: everything that can be tapped, sensible or not. */
export function randomPractice(seed: number): {
  readonly plan: PracticePlan | null
  readonly roster: readonly { readonly id: string; readonly name: string }[]
  readonly events: readonly PitchEvent[]
} {
  const random = seededRandom(seed)
  const letters = 'abcdefghij'
  const places = () => {
    const [a = '', b = '', c = '', d = '', e = ''] = random.shuffle([...letters, 'g1', 'g2'])
    return { attack: [a, b], defend: [c], keep: random.chance(0.5) ? [d] : [e, a] } as Station
  }
  const aTurn = (round: number): PlannedTurn => ({
    round,
    seconds: random.whole(1, 90),
    gapSeconds: random.whole(0, 30),
    stations: random.chance(0.3) ? [places(), area('//')] : [places()],
  })
  const rounds = random.whole(1, 4)
  const planned = Array.from({ length: rounds }, (_, round) =>
    Array.from({ length: random.whole(1, 5) }, () => aTurn(round)),
  ).flat()
  const events: PitchEvent[] = []
  const starts: string[] = []
  const phones = random.chance(0.5) ? ['p1'] : ['p1', 'p2']
  const aDeed = (): Deed => {
    const turn = random.whole(0, planned.length)
    const round = random.whole(0, rounds)
    const ofRound = planned.filter((own) => own.round === round)
    const playerId = random.pick([...letters, 'g1', 'g2', 'nobody'])
    const known = events.length > 0 ? random.pick(events).id : 'unknown'
    const start = starts.length > 0 && random.chance(0.9) ? random.pick(starts) : 'unknown'
    return random.pick<() => Deed>([
      () => ({ kind: 'begin' }),
      () => ({
        kind: 'register',
        playerId,
        state: random.pick(['here', 'here', 'here', 'notPlaying', 'out', 'gone']),
      }),
      () => ({ kind: 'register', playerId, state: 'here' }),
      () => ({ kind: 'register', playerId, state: 'here' }),
      () => ({ kind: 'guest', playerId: random.pick(['g1', 'g2', 'a']), name: 'Guest' }),
      () => ({
        kind: 'replan',
        fromTurn: turn,
        turns: planned.slice(turn).map(({ round: own }) => aTurn(own)),
        sentence: 'Anew',
      }),
      () => ({ kind: 'roundDone', round, turns: ofRound.slice(0, random.whole(0, ofRound.length)) }),
      () => ({ kind: 'turnStart', turn, stations: [places()] }),
      () => ({ kind: 'turnStart', turn, stations: [places()] }),
      () => ({ kind: 'change', start, stations: [places()] }),
      () => ({
        kind: 'turnEnd',
        start,
        endings: [{ station: 0, endingId: 'goal', points: 1, side: 'attack' }],
      }),
      () => ({ kind: 'turnEnd', start, endings: [] }),
      () => ({ kind: 'points', round, side: 0, points: random.whole(0, 5) }),
      () => ({ kind: 'choice', turn, by: 'attack', size: 0, side: null }),
      () => ({ kind: 'passed', turn, playerId, role: 'attack' }),
      () => ({ kind: 'asPlanned', turns: planned.slice(0, turn), left: [{ playerId, afterTurn: 1 }] }),
      () => ({ kind: 'stop' }),
      () => ({
        kind: 'undo',
        undoes: random.chance(0.9) ? known : 'unknown',
        secondAnswer: random.chance(0.5),
      }),
    ])()
  }
  const count = random.whole(0, 60)
  let second = 0
  // Most coaches take the register before anything else.
  if (random.chance(0.7)) {
    for (const playerId of letters) {
      const deed = { kind: 'register', playerId, state: 'here' } as const
      events.push({ id: `r-${playerId}`, deviceId: 'p1', at: kickOff - 60_000, deed })
    }
  }
  for (let index = 0; index < count; index += 1) {
    second += random.pick([0, 0, 1, 5, 30, 60, 120])
    const deed = index === 0 && random.chance(0.7) ? ({ kind: 'begin' } as const) : aDeed()
    const id = `e${String(random.whole(0, 9999)).padStart(4, '0')}-${index}`
    // A phone's clock may be some seconds off.
    const at = kickOff + second * 1000 + random.whole(-3000, 3000)
    events.push({ id, deviceId: random.pick(phones), at, deed })
    if (deed.kind === 'turnStart') starts.push(id)
  }
  return { plan: random.chance(0.1) ? null : aPlan(planned), roster: rosterOf(letters), events }
}

/** The state of some phones' taps together. */
export function stateOf(
  plan: PracticePlan | null,
  letters: string,
  ...phones: readonly { readonly events: readonly PitchEvent[] }[]
): PitchState {
  return foldPitch(
    plan,
    rosterOf(letters),
    phones.flatMap(({ events }) => events),
  )
}
