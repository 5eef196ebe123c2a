import type { Seconds } from '#common/time'
import { type ClockWait, clockWaits, longestWait } from '#pitch/clock-waits'
import { inOrder } from '#pitch/event-order'
import { type LiveTurn, liveTurn } from '#pitch/live-turn'
import { type BookMarks, marksOfOthers, noMarks } from '#pitch/marked-in-book'
import type { Deed, EpochMs, PitchEvent } from '#pitch/pitch-event'
import { presenceOfPlayers } from '#pitch/pitch-presence'
import {
  type PitchRegister,
  pitchRegister,
  type RegisteredPlayer,
  type RosterPlayer,
} from '#pitch/pitch-register'
import { pitchTimes, secondAt } from '#pitch/pitch-times'
import { planAsItStands, planHistory } from '#pitch/plan-as-it-stands'
import { type DecidedTaps, playTaps } from '#pitch/play-taps'
import { type PlayedTurn, playedTurns, seatedIn } from '#pitch/played-turns'
import type { SetAside } from '#pitch/set-aside'
import { type SidePoints, sidePoints } from '#pitch/side-points'
import { type EventOf, eventsOf, eventsThatStand } from '#pitch/standing-events'
import type { TimedTurn, TimedTurns } from '#pitch/timed-turn'
import { timedTurns } from '#pitch/timed-turns'
import { type RedoStep, redoSteps, type UndoStep, undoSteps } from '#pitch/undo-steps'
import { type UpcomingRound, type UpcomingTurn, upcomingRound } from '#pitch/upcoming'
import { upcomingOf, type WaitingPlayer, waitingOf } from '#pitch/what-comes-next'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import { joinPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'

export type PitchStatus = 'notBegun' | 'running' | 'ended'

export type PitchPlayer = RegisteredPlayer & {
  /** Since which second it has been how it is; null: not seen. */
  readonly since: Seconds | null
  /** It came after the first turn had begun. */
  readonly isLate: boolean
}

export type Choice = Omit<Extract<Deed, { kind: 'choice' }>, 'kind'> & { readonly eventId: string }
export type Pass = Omit<Extract<Deed, { kind: 'passed' }>, 'kind'> & { readonly eventId: string }

/** What everything that was tapped adds up to. Seconds count from the beginning of the practice. */
export type PitchState = {
  readonly plan: PracticePlan | null
  readonly status: PitchStatus
  readonly beganAt: EpochMs | null
  readonly endedAt: EpochMs | null
  /** The squad in its order, then guests. */
  readonly players: readonly PitchPlayer[]
  /** Somebody was tapped as here: whoever was not is missing. */
  readonly isRegisterTaken: boolean
  /** The plan's turns after every new plan. */
  readonly turns: readonly PlannedTurn[]
  /** What the last new plan made at the pitch said of itself. */
  readonly sentence: string | null
  /** What was played, in order of time. */
  readonly played: readonly PlayedTurn[]
  readonly live: LiveTurn | null
  readonly roundsDone: readonly number[]
  /** What comes after the live turn, or after what was played last; null: nothing. */
  readonly next: UpcomingTurn | null
  readonly nextRound: UpcomingRound | null
  /** Who is there without a place in the turn on the screen (the live one, else the next), whoever waits longest first. */
  readonly waiting: readonly WaitingPlayer[]
  /** By the clock, up to the end of the last turn that ended; until now: `longestWaitUpTo`. */
  readonly longestWait: ClockWait | null
  readonly points: readonly SidePoints[]
  /** One a turn, in the order of the turns. */
  readonly choices: readonly Choice[]
  readonly passes: readonly Pass[]
  readonly undoable: readonly UndoStep[]
  readonly redoable: readonly RedoStep[]
  /** What was tapped and changes nothing, and why. */
  readonly setAside: readonly SetAside[]
}

/**
 * The same set of events gives the same state, whatever order they arrived in and however often. `marks`: who was out
 * for today or not playing by the book's register.
 */
export function foldPitch(
  plan: PracticePlan | null,
  roster: readonly RosterPlayer[],
  events: readonly PitchEvent[],
  marks: BookMarks = noMarks,
): PitchState {
  const stood = eventsThatStand(inOrder(events))
  const { standing } = stood
  const planned = planAsItStands(plan, standing)
  const taps = playTaps(standing)
  const times = pitchTimes(standing, taps)
  const timed = timedTurns({
    standing,
    taps,
    times,
    planned: planned.turns,
    history: planHistory(plan, standing),
  })
  const register = pitchRegister(standing, {
    roster,
    times,
    placed: firstPlaces(timed),
    left: leftOf(taps, timed),
    marks: marksOfOthers(marks, events),
  })
  const presence = presenceOfPlayers(register.players, Number.POSITIVE_INFINITY)
  const ended = timed.turns.filter((turn): turn is TimedTurn & { end: Seconds } => turn.end !== null)
  const played = playedTurns(ended, presence)
  const live = liveTurn(timed, presence)
  const at = { taps, times, register, turns: planned.turns, played: played.turns, live }
  const upcoming = upcomingOf(at)
  const setAside = [stood, taps, times, timed, register, played].flatMap((one) => one.setAside)
  return {
    plan,
    status: times.beganAt === null ? 'notBegun' : times.endedAt === null ? 'running' : 'ended',
    beganAt: times.beganAt,
    endedAt: times.endedAt,
    players: playersOf(register, timed),
    isRegisterTaken: register.isTaken,
    turns: planned.turns,
    sentence: planned.sentence,
    played: played.turns,
    live,
    roundsDone: taps.roundsDone.map(({ deed }) => deed.round).sort((a, b) => a - b),
    next: upcoming[0] ?? null,
    nextRound: upcomingRound(upcoming, plan),
    waiting: waitingOf(at, upcoming[0]),
    longestWait: longestWait(clockWaits(played.turns, joinPresence(presence), played.turns.at(-1)?.end ?? 0)),
    points: sidePoints(played.turns, eventsOf(standing, 'points')),
    choices: choicesOf(eventsOf(standing, 'choice')),
    passes: eventsOf(standing, 'passed').map(({ id, deed: { turn, playerId, role } }) => ({
      turn,
      playerId,
      role,
      eventId: id,
    })),
    undoable: undoSteps(stood, setAside),
    redoable: redoSteps(stood),
    setAside: once(setAside),
  }
}

/** From which second on everyone had a place in what was played at first, whether or not it was there. */
function firstPlaces(timed: TimedTurns): ReadonlyMap<PlayerId, Seconds> {
  const first = new Map<PlayerId, Seconds>()
  const note = (second: Seconds, playerIds: readonly PlayerId[]) => {
    for (const playerId of playerIds) first.set(playerId, Math.min(second, first.get(playerId) ?? second))
  }
  for (const { start, stations, changes } of timed.turns) {
    note(start, seatedIn(stations))
    for (const change of changes) note(change.second, seatedIn(change.stations))
  }
  return first
}

/** Who left after which turn, as the answer to one question says; in seconds. */
function leftOf(taps: DecidedTaps, timed: TimedTurns): ReadonlyMap<PlayerId, Seconds> {
  return new Map(
    (taps.asPlanned?.deed.left ?? []).map(({ playerId, afterTurn }) => [
      playerId,
      Math.max(0, ...timed.turns.filter(({ index }) => index < afterTurn).map(({ end }) => end ?? 0)),
    ]),
  )
}

function playersOf(register: PitchRegister, timed: TimedTurns): readonly PitchPlayer[] {
  const firstStart = timed.turns[0]?.start ?? Number.POSITIVE_INFINITY
  return register.players.map((player) => ({
    ...player,
    since: player.segments.at(-1)?.to ?? player.segments.at(-1)?.from ?? null,
    isLate: (player.segments[0]?.from ?? 0) > firstStart,
  }))
}

function choicesOf(events: readonly EventOf<'choice'>[]): readonly Choice[] {
  const last = new Map(
    events.map(({ id, deed: { turn, by, size, side } }) => [turn, { turn, by, size, side, eventId: id }]),
  )
  return [...last.values()].sort((a, b) => a.turn - b.turn)
}

function once(setAside: readonly SetAside[]): readonly SetAside[] {
  const seen = new Map(setAside.map((one) => [`${one.id} ${one.why}`, one]))
  return [...seen.values()].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : a.why < b.why ? -1 : 1))
}

/** The second of the practice at a moment; 0 before it begins. */
export function secondNow(state: Pick<PitchState, 'beganAt'>, at: EpochMs): Seconds {
  return state.beganAt === null ? 0 : secondAt(state.beganAt, at)
}
