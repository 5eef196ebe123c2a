import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { CalendarEntry } from './calendar'
import { joinedOn, membersOf } from './club'
import type { DemoSession } from './demo-session'
import { formats } from './formats'
import { playMatch } from './match-by-hand'
import { ableIds, type PlayerKey, playerId } from './names'
import type { Random } from './random'
import { comingChance, guestsAt, keepersOf, mustCome } from './stories'
import type { Tally } from './tally'

/** What a coach carries from match to match; practices do not enter it. */
export type MatchSeason = {
  readonly tally: Tally
  /** How often each player was asked to come. */
  readonly calls: Map<PlayerId, number>
}

/** The match with its register and spells, when it was written. */
export function matched(
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
    spells: playMatch({ format, register, keepers, able: ableIds }, at.tally, at.random),
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
  const wish = (key: PlayerKey) => {
    const must = mustCome(key, entry.key)
    if (must !== null) return must ? -1e6 : 1e6
    const away = at.random() > comingChance(key) ? 1e3 : 0
    return (at.calls.get(playerId(key)) ?? 0) + at.random() * 0.5 + away
  }
  const squad = membersOf[entry.squad].filter((key) => joinedOn(key) <= entry.day)
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
