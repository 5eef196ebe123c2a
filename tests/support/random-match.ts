import type { MatchToFold } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchState } from '#touchline/match-state'
import { replanMatch } from '#touchline/replan-match'
import { type SeededRandom, seededRandom } from './seeded-random'
import { halfPromised, kickOff, stateAt, type Tap, taps } from './tapped-match'

/** What may happen beside a match while a period runs; null: not now. */
const happenings: Readonly<Record<string, (state: MatchState, random: SeededRandom) => MatchDeed | null>> = {
  hurt: (state, random) => register(random.pick(state.on)?.playerId, 'notPlaying'),
  out: (state, random) => register(random.pick(state.players).id, 'out'),
  gone: (state, random) => register(random.pick(state.players).id, 'gone'),
  here: (state, random) => register(random.pick(state.players).id, 'here'),
  late: ({ call }) => call && { kind: 'changeMade', due: call.due, on: call.after },
  notNow: ({ call }) => call && { kind: 'changeDropped', due: call.due },
  unknown: (_, random) => ({ kind: 'changeDropped', due: random.whole(0, 3000) }),
  swap: ({ on, players }, random) => {
    const comes = players.find(({ line, state }) => line === null && state === 'here')
    const goes = random.pick(on)
    if (!comes || !goes) return null
    return {
      kind: 'places',
      on: on.map((one) => (one === goes ? { playerId: comes.id, line: goes.line } : one)),
    }
  },
  sentOff: ({ on }, random) => {
    const one = random.pick(on)
    return one ? { kind: 'sentOff', playerId: one.playerId, seconds: random.pick([null, 120, 300]) } : null
  },
  stops: ({ isClockStopped }) => ({ kind: isClockStopped ? 'clockGoesOn' : 'clockStops' }),
  goal: (_, random) => ({ kind: 'goal', side: random.pick(['ours', 'theirs'] as const) }),
  guest: (_, random) => ({
    kind: 'guest',
    playerId: `00000000-0000-4000-8000-0000000${random.whole(10_000, 99_999)}`,
    name: 'Somebody New',
  }),
  replan: (state) => {
    const made = replanMatch(state, halfPromised)
    return made.ok ? made.value : null
  },
}

function register(
  playerId: string | undefined,
  state: 'here' | 'notPlaying' | 'out' | 'gone',
): MatchDeed | null {
  return playerId === undefined ? null : { kind: 'register', playerId, state }
}

/** A match in which something happens every minute or three; whistles early, late or forgotten. Same for the same seed. */
export function randomMatch(
  pack: MatchToFold,
  seed: number,
  { only }: { readonly only?: readonly string[] } = {},
): readonly Tap[] {
  const random = seededRandom(seed * 7919 + 3)
  const given: Tap[] = []
  const kinds = Object.keys(happenings).filter((kind) => only?.includes(kind) ?? true)
  const now = (second: number) => stateAt(pack, taps(...given), second)
  let second = 0
  for (const [period, length] of pack.format.periodSeconds.entries()) {
    const next = now(second)
    if (!next.nextKickOff || next.nextKickOff.on.length === 0) break
    given.push([second, kickOff(next)])
    const end = second + length + random.whole(-90, 200)
    while (second < end) {
      second += random.whole(20, 200)
      if (second >= end) break
      const deed = happenings[random.pick(kinds)]?.(now(second), random) ?? null
      if (deed) given.push([second, deed])
    }
    second = Math.max(end, second)
    if (now(second).isClockStopped) given.push([second, { kind: 'clockGoesOn' }])
    if (random.whole(0, 5) > 0) given.push([second, { kind: 'periodEnd', period }])
    second += random.whole(60, 900)
  }
  if (random.whole(0, 2) > 0) given.push([second, { kind: 'fullTime' }])
  return given
}
