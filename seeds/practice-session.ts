import type { PracticeEvent } from '#practice/event'
import type { Turn } from '#practice/turn'
import { registerOfPractice } from './attendance'
import type { CalendarEntry } from './calendar'
import { type DemoSession, practiceLength } from './demo-session'
import { demoDesigns } from './designs'
import { demoId } from './ids'
import { ableIds, playerId } from './names'
import { playPractice } from './practice-turns'
import type { Random } from './random'
import { correctedIn, inMindAsPlanned, inMindOf, keepersOf, passesAt, stories } from './stories'
import type { Tally } from './tally'

/** The session with its register and everything that happened in it, when it was written. */
export function practised(
  session: DemoSession,
  entry: CalendarEntry,
  at: { readonly tally: Tally; readonly random: Random },
): DemoSession {
  const design = demoDesigns.find((one) => one.id === session.designId)
  // Nobody knows who was there when nothing was written, the coach included.
  if (!design || entry.written === 'notWritten') return session
  const register = registerOfPractice(entry, {
    lengthSeconds: practiceLength[entry.squad],
    random: at.random,
  })
  const inMind = entry.written === 'asPlanned' ? inMindAsPlanned : inMindOf
  const turns = playPractice(
    {
      rounds: design.rounds,
      themeId: design.themeId,
      register,
      keepers: keepersOf(entry.squad).map(playerId),
      goals: entry.squad === 'underTen' ? 2 : 1,
      able: ableIds,
      isTapped: entry.written === 'tapped',
      neverOutnumbering: playerId(stories.neverOutnumbering),
      inMind: (id) => inMind(id, entry.day),
    },
    at.tally,
    at.random,
  )
  return { ...session, register, events: eventsOf(session, turns) }
}

function eventsOf(session: DemoSession, turns: readonly Turn[]): readonly PracticeEvent[] {
  const eventId = (words: string) => demoId(`${session.key}/event/${words}`)
  const written = turns.map((turn, index) => ({
    kind: 'turn' as const,
    id: eventId(`turn-${index + 1}`),
    turn,
  }))
  const passes = passesAt
    .filter((pass) => pass.session === session.key)
    .map((pass) => ({
      kind: 'passed' as const,
      id: eventId(`passed-${pass.player}`),
      playerId: playerId(pass.player),
      role: 'attack' as const,
      lengthSeconds: pass.lengthSeconds,
    }))
  const [first, second, ...others] = written
  if (!correctedIn.includes(session.key) || !first || !second) return [...written, ...passes]
  const mistake = {
    ...second,
    id: eventId('mistake'),
    turn: { ...second.turn, stations: second.turn.stations.map(sidesSwapped) },
  }
  const correction = { kind: 'void' as const, id: eventId('correction'), voids: mistake.id }
  return [first, mistake, correction, second, ...others, ...passes]
}

function sidesSwapped(station: Turn['stations'][number]): Turn['stations'][number] {
  return { attack: station.defend, defend: station.attack, keep: station.keep }
}
