import type { Seconds } from '#common/time'
import { placesOfFormat } from '#lineup/draft/places-of-format'
import { placesInAll } from '#match/format/places-in-all'
import { inOrder } from '#pitch/event-order'
import { type BookMarks, marksInBook, marksOfOthers } from '#pitch/marked-in-book'
import type { EpochMs } from '#pitch/pitch-event'
import { type DoneEvent, eventsOf, eventsThatStand } from '#pitch/standing-events'
import { redoSteps } from '#pitch/undo-steps'
import type { PlayerId } from '#squad/player'
import { callsOf } from '#touchline/calls'
import { isAbleAt } from '#touchline/is-able'
import { playingSecondAt, secondOfPeriod } from '#touchline/match-clock'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent, MatchPack } from '#touchline/match-pack'
import { matchPlayers } from '#touchline/match-players'
import type { MatchSetAside } from '#touchline/match-set-aside'
import type { MatchState, MatchStatus } from '#touchline/match-state'
import { type MatchTimes, matchTimes } from '#touchline/match-times'
import { matchUndoSteps } from '#touchline/match-undo-steps'
import { nextKickOff } from '#touchline/next-kick-off'
import { periodFrame } from '#touchline/period-frame'
import { plansInForce } from '#touchline/plans-in-force'
import { walkMatch } from '#touchline/walk-match'
import { walkedRegister } from '#touchline/walked-register'

/** What a fold needs of a pack. */
export type MatchToFold = Pick<MatchPack, 'plan' | 'format'> & {
  readonly players: readonly { readonly id: PlayerId; readonly name: string; readonly keeps?: boolean }[]
  /** Who was out for today or not playing by the book's register. */
  readonly register?: MatchPack['register']
}

/**
 * The same set of events gives the same state at the same moment, whatever order they arrived in and however often.
 * `now`: the plan's changes count as made up to it where no tap says otherwise; nothing: up to the last tap.
 */
export function foldMatch(
  pack: MatchToFold,
  events: readonly MatchEvent[],
  now: EpochMs = Number.NEGATIVE_INFINITY,
): MatchState {
  const { plan, players } = pack
  const format = plan?.format ?? pack.format
  const ordered = inOrder(events)
  const stood = eventsThatStand(ordered)
  const { standing } = stood
  const at = Math.max(now, standing.at(-1)?.at ?? now)
  const times = matchTimes(standing, format)
  const register = walkedRegister({
    roster: players,
    plan,
    standing,
    beganAt: times.periods[0]?.startedAt ?? Number.POSITIVE_INFINITY,
    marks: marksOf(pack, events),
  })
  const keeps = keepsOf(pack)
  const plans = plansInForce(standing, { spells: plan?.spells ?? [], format, times })
  const places = plan?.places ?? placesOfFormat(format)
  const walked = walkMatch({ standing, format, times, plans, register, places, keeps, now: at })
  const period =
    times.endedAt === null ? (times.periods.find(({ endedAt }) => endedAt === null) ?? null) : null
  const sets = plans.after(standing.length)
  const people = register.players()
  const isAble = (id: PlayerId, due: Seconds) => people.some((one) => one.id === id && isAbleAt(one, due))
  const calls = period
    ? callsOf({
        ...walked,
        ...{ sets, isAble, keeps, period: period.period },
        second: secondOfPeriod(period, at),
      })
    : []
  const second = playingSecondAt(times, at)
  const setAside: readonly MatchSetAside[] = [...stood.setAside, ...times.setAside, ...walked.setAside].sort(
    (one, other) => (one.id < other.id ? -1 : one.id > other.id ? 1 : one.why < other.why ? -1 : 1),
  )
  return {
    at,
    plan,
    format,
    status: statusOf(times),
    beganAt: times.periods[0]?.startedAt ?? null,
    endedAt: times.endedAt,
    periods: times.periods,
    period,
    isClockStopped: period?.stops.at(-1)?.to === null,
    second,
    planSecond: planSecondOf(times, format, at),
    players: matchPlayers(people, { periods: times.periods, spells: walked.spells, second, keeps }),
    on: walked.on,
    places: walked.places,
    emptyPlaces: period ? Math.max(0, placesInAll(walked.places) - walked.on.length) : 0,
    spells: walked.spells,
    call: calls[0] ?? null,
    upcoming: calls.slice(1),
    nextKickOff: nextKickOff({ times, walked, register, isAble, keeps, sets, format }),
    made: walked.made,
    sets,
    sentence: plans.sentence,
    goals: goalsOf(standing),
    undoable: matchUndoSteps(stood, setAside),
    redoable: redoSteps(stood),
    setAside,
  }
}

/** What the book's register has of those of whom the taps say nothing: a match that was written has its own taps there. */
function marksOf({ register = [] }: MatchToFold, events: readonly MatchEvent[]): BookMarks {
  const sentOff = new Set(events.flatMap(({ deed }) => (deed.kind === 'sentOff' ? [deed.playerId] : [])))
  return marksOfOthers(marksInBook(register, sentOff), eventsOf<'register', MatchDeed>(events, 'register'))
}

/** By the plan where it names the player, who may have been set aside from goal for this match; else as the squad has it. */
function keepsOf({ plan, players }: MatchToFold): (id: PlayerId) => boolean {
  const keepers = new Map<PlayerId, boolean>(players.map(({ id, keeps = false }) => [id, keeps]))
  for (const { playerId, keeps } of plan?.players ?? []) keepers.set(playerId, keeps)
  return (id) => keepers.get(id) ?? false
}

function statusOf({ periods, endedAt }: MatchTimes): MatchStatus {
  if (endedAt !== null) return 'ended'
  const last = periods.at(-1)
  if (!last) return 'notBegun'
  return last.endedAt === null ? 'running' : 'atBreak'
}

function planSecondOf({ periods }: MatchTimes, format: MatchState['format'], at: EpochMs): number {
  const last = periods.at(-1)
  if (!last) return 0
  const { start, seconds } = periodFrame(format, last.period)
  return last.endedAt === null ? start + Math.min(seconds, secondOfPeriod(last, at)) : start + seconds
}

function goalsOf(standing: readonly DoneEvent<MatchDeed>[]): MatchState['goals'] {
  const count = (side: 'ours' | 'theirs') =>
    standing.filter(({ deed }) => deed.kind === 'goal' && deed.side === side).length
  return { ours: count('ours'), theirs: count('theirs') }
}
