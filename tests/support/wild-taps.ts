import { matchEventShape } from '#exchange/match-deed-json'
import { lines } from '#match/match'
import type { MatchEvent } from '#touchline/match-pack'
import { type SeededRandom, seededRandom } from './seeded-random'
import { kickOffMs, matchId } from './tapped-match'

const eventId = (number: number) => `01990000-0000-7000-8000-${String(number).padStart(12, '0')}`

/** What a phone may send by its form alone, sense or none: any deed, of anybody, at any time around a match. */
export function wildTaps(seed: number): readonly MatchEvent[] {
  const random = seededRandom(seed * 31 + 7)
  const most = random.whole(3, 60)
  return Array.from({ length: most }, (_, index) =>
    matchEventShape.parse({
      id: eventId((index * 7) % 61),
      deviceId: `00000000-0000-4000-9000-00000000000${random.whole(0, 1)}`,
      at: kickOffMs + random.whole(-600, 7000) * 1000 + random.whole(0, 999),
      deed: deedOf(random),
    }),
  )
}

function deedOf(random: SeededRandom) {
  const playerId = () => matchId(random.whole(0, 13))
  const line = () => random.pick(lines)
  const second = () => random.pick([0, 300, 600, 1500, 1800, random.whole(0, 86_400)])
  const on = () =>
    Array.from({ length: random.pick([0, 7, 7, 30]) }, (_, index) => ({
      playerId: random.whole(0, 3) > 0 ? matchId(index) : playerId(),
      line: line(),
    }))
  const spell = () => {
    const start = random.whole(0, 3000)
    return { playerId: playerId(), line: line(), start, end: random.pick([start + 300, second()]) }
  }
  return random.pick([
    { kind: 'kickOff', period: random.pick([0, 0, 0, 1, 1, 2, 39]), on: on() },
    { kind: 'kickOff', period: 0, on: [] },
    { kind: 'periodEnd', period: random.pick([0, 1, 2, 39]) },
    { kind: 'clockStops' },
    { kind: 'clockGoesOn' },
    { kind: 'changeMade', due: second(), on: on() },
    { kind: 'changeDropped', due: second() },
    { kind: 'places', on: on() },
    { kind: 'replan', from: second(), sentence: '', spells: [spell(), spell(), spell(), spell()] },
    { kind: 'register', playerId: playerId(), state: random.pick(['here', 'notPlaying', 'out', 'gone']) },
    { kind: 'register', playerId: playerId(), state: 'here', secondAnswer: true },
    { kind: 'guest', playerId: playerId(), name: 'Somebody' },
    { kind: 'sentOff', playerId: playerId(), seconds: random.pick([null, 0, 120, 86_400]) },
    { kind: 'goal', side: 'ours' },
    { kind: 'fullTime' },
    { kind: 'undo', undoes: eventId(random.whole(0, 60)) },
    { kind: 'undo', undoes: eventId(random.whole(0, 60)), secondAnswer: true },
  ])
}
