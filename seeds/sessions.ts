import type { Period, Spell } from '#match/match'
import type { PracticeEvent } from '#practice/event'
import type { Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'
import { registerOfPractice } from './attendance'
import { type CalendarEntry, demoCalendar } from './calendar'
import { calendarDay, demoSquads, joinedOn, leaderOn, membersOf, type SquadKey } from './club'
import { demoDesigns, designId } from './designs'
import { formats } from './formats'
import { demoId } from './ids'
import { playMatch } from './match-by-hand'
import { demoPlayers, playerId } from './names'
import { playPractice } from './practice-turns'
import { type Random, randomFor } from './random'
import {
  comingChance,
  correctedIn,
  guestsAt,
  inMindAsPlanned,
  inMindOf,
  keepersOf,
  mustCome,
  passesAt,
  stories,
} from './stories'
import { Tally } from './tally'

/** A session of the demo club and all that was written of it. */
export type DemoSession = {
  readonly id: string
  readonly key: string
  readonly squadId: string
  readonly kind: 'practice' | 'match'
  readonly day: string
  readonly title: string
  readonly startsAt: string
  readonly lengthSeconds: number | null
  readonly periods: readonly Period[]
  readonly designId: string | null
  readonly written: Written
  readonly writtenById: string | null
  /** An instant, ISO 8601. */
  readonly writtenAt: string | null
  readonly ledById: string
  readonly cancelledAt: string | null
  readonly register: readonly RegisterLine[]
  readonly events: readonly PracticeEvent[]
  readonly spells: readonly Spell[]
}

const practiceLength = { underTen: 3600, underTwelve: 4200 } as const
const startOf = {
  practice: { underTen: '17:00', underTwelve: '18:00' },
  match: { underTen: '10:00', underTwelve: '11:30' },
} as const

const able = new Set(demoPlayers.filter((player) => player.keeps).map((player) => player.id))

/** Every session of the season in order of days, each squad's coach remembering what was before. */
export function buildSessions(): readonly DemoSession[] {
  const memory = {
    underTen: { practice: new Tally(), match: new Tally(), calls: new Map<PlayerId, number>() },
    underTwelve: { practice: new Tally(), match: new Tally(), calls: new Map<PlayerId, number>() },
  }
  return demoCalendar.map((entry) => {
    const random = randomFor(entry.key)
    const session = sessionOf(entry)
    if (entry.isCancelled || entry.day >= calendarDay) return session
    return entry.kind === 'practice'
      ? practised(session, entry, { tally: memory[entry.squad].practice, random })
      : matched(session, entry, {
          tally: memory[entry.squad].match,
          calls: memory[entry.squad].calls,
          random,
        })
  })
}

function sessionOf(entry: CalendarEntry): DemoSession {
  const isWritten = entry.written !== 'notWritten'
  const ledById = leaderOn(entry.squad, entry.day)
  return {
    id: demoId(entry.key),
    key: entry.key,
    squadId: demoSquads[entry.squad].id,
    kind: entry.kind,
    day: entry.day,
    title: entry.title,
    startsAt: startOf[entry.kind][entry.squad],
    lengthSeconds: entry.kind === 'practice' ? practiceLength[entry.squad] : null,
    periods: entry.kind === 'match' ? formats[entry.squad].periods : [],
    designId: entry.design ? designId(entry.design) : null,
    written: entry.written,
    writtenById: isWritten ? ledById : null,
    writtenAt: isWritten ? `${dayWritten(entry)}T20:10:00.000Z` : null,
    ledById,
    cancelledAt: entry.isCancelled ? `${entry.day}T09:30:00.000Z` : null,
    register: [],
    events: [],
    spells: [],
  }
}

/** What was typed in later was typed in two days later. */
function dayWritten(entry: CalendarEntry): string {
  if (entry.written !== 'typedLater') return entry.day
  return new Date(Date.parse(`${entry.day}T00:00:00Z`) + 2 * 86_400_000).toISOString().slice(0, 10)
}

function practised(
  session: DemoSession,
  entry: CalendarEntry,
  at: { readonly tally: Tally; readonly random: Random },
): DemoSession {
  const design = demoDesigns.find((one) => one.id === session.designId)
  const register = registerOfPractice(entry, {
    lengthSeconds: practiceLength[entry.squad],
    random: at.random,
  })
  // Nobody knows who did what when nothing was written, the coach included.
  if (!design || entry.written === 'notWritten') return session
  const inMind = entry.written === 'asPlanned' ? inMindAsPlanned : inMindOf
  const turns = playPractice(
    {
      rounds: design.rounds,
      themeId: design.themeId,
      register,
      keepers: keepersOf(entry.squad).map(playerId),
      goals: entry.squad === 'underTen' ? 2 : 1,
      able,
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

/** What a coach carries from match to match; practices do not enter it. */
type MatchSeason = {
  readonly tally: Tally
  /** How often each player was asked to come. */
  readonly calls: Map<PlayerId, number>
}

function matched(
  session: DemoSession,
  entry: CalendarEntry,
  at: MatchSeason & { readonly random: Random },
): DemoSession {
  const format = formats[entry.squad]
  const register = registerOfMatch(entry, at)
  if (entry.written === 'notWritten') return session
  const keepers = keepersOf(entry.squad).map(playerId)
  return {
    ...session,
    register,
    spells: playMatch({ format, register, keepers, able }, at.tally, at.random),
  }
}

/** So many are asked to come, those first who were asked least; one in fifteen comes at the first change. */
function registerOfMatch(
  entry: CalendarEntry,
  at: MatchSeason & { readonly random: Random },
): readonly RegisterLine[] {
  const { called, periods, stintsInPeriod } = formats[entry.squad]
  const firstChange = periods[0].end / stintsInPeriod
  const end = periods.at(-1)?.end ?? 0
  const wish = (key: (typeof squad)[number]) => {
    const must = mustCome(key, entry.key)
    if (must !== null) return must ? -1e6 : 1e6
    const away = at.random() > comingChance(key) ? 1e3 : 0
    return (at.calls.get(playerId(key)) ?? 0) + at.random() * 0.5 + away
  }
  const squad: readonly (typeof membersOf)[SquadKey][number][] = membersOf[entry.squad].filter(
    (key) => joinedOn(key) <= entry.day,
  )
  const guests = guestsAt[entry.key] ?? []
  const asked = squad
    .map((key) => ({ key, wish: wish(key) }))
    .toSorted((one, other) => one.wish - other.wish)
    .slice(0, called - guests.length)
    .map(({ key }) => key)
  const came = [...squad.filter((key) => asked.includes(key)), ...guests]
  return came.map((key) => {
    at.calls.set(playerId(key), (at.calls.get(playerId(key)) ?? 0) + 1)
    const isLate = at.random() < 1 / 15 && mustCome(key, entry.key) === null
    return {
      playerId: playerId(key),
      state: 'here',
      from: isLate ? firstChange : 0,
      to: end,
    }
  })
}
