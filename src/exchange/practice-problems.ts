import type { Problem } from '#common/problem'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'
import {
  type KnownPlayers,
  knownPlayerProblems,
  registerProblems,
  toPresence,
} from '#exchange/register-problems'
import type { PracticeJson } from '#exchange/season-log-shape'
import { dayProblems, secondsProblems } from '#exchange/value-problems'
import type { LoggedPractice } from '#fairness/season-log'
import { checkPractice } from '#practice/checks/check-practice'
import type { PracticeFault } from '#practice/checks/practice-fault'
import { seatsOfTurn } from '#practice/checks/seats-of-turn'

export function toPractice(json: PracticeJson): LoggedPractice {
  return {
    id: json.id,
    day: json.date,
    title: json.title ?? null,
    lengthSeconds: json.lengthSeconds ?? null,
    register: toPresence(json.register),
    turns: json.turns.map((turn) => ({
      start: turn.start,
      end: turn.end,
      themeId: turn.theme ?? null,
      stations: turn.stations.map(({ attack = [], defend = [], keep = [] }) => ({ attack, defend, keep })),
    })),
  }
}

/** Everything that is wrong with a practice that stands at `at` and has the right shape. */
export function practiceProblems(json: PracticeJson, at: JsonPath, known: KnownPlayers): readonly Problem[] {
  const practice = toPractice(json)
  const turnAt = (turn: number): JsonPath => [...at, 'turns', turn]
  const isKnown = (fault: PracticeFault) =>
    fault.rule !== 'seatedWhileAway' || known === null || known.has(fault.playerId)
  return [
    ...dayProblems(json.date, [...at, 'date']),
    ...secondsProblems(json.lengthSeconds, [...at, 'lengthSeconds']),
    ...registerProblems(json.register, at, known),
    ...practice.turns.flatMap((turn, index) => [
      ...secondsProblems(turn.start, [...turnAt(index), 'start']),
      ...secondsProblems(turn.end, [...turnAt(index), 'end']),
      ...seatsOfTurn(turn).flatMap(({ playerId, station, role, place }) =>
        knownPlayerProblems(playerId, [...turnAt(index), 'stations', station, role, place], known),
      ),
    ]),
    ...checkPractice(practice)
      .filter(isKnown)
      .map((fault) => problemOfFault(fault, practice, turnAt(fault.turn))),
  ]
}

function problemOfFault(fault: PracticeFault, practice: LoggedPractice, at: JsonPath): Problem {
  const turn = practice.turns[fault.turn]
  switch (fault.rule) {
    case 'turnWithoutLength':
      return problemAt(
        at,
        `goes from ${turn?.start} to ${turn?.end}; an "end" after its "start" would be right`,
      )
    case 'turnOutOfOrder':
      return problemAt(
        at,
        `starts at ${turn?.start}, before an earlier turn ends at ${fault.lastEnd}; ` +
          'turns in order of time that do not overlap would be right',
      )
    case 'turnAfterEnd':
      return problemAt(
        at,
        `ends at ${turn?.end}, after the practice does; an end of ${fault.lengthSeconds} at most would be right`,
      )
    case 'seatedTwice':
      return problemAt(
        seatPath(at, fault.seat),
        `${quote(fault.playerId)} has a second seat in this turn; one seat a player in a turn would be right`,
      )
    case 'seatedWhileAway':
      return problemAt(
        seatPath(at, fault.seat),
        `${quote(fault.playerId)} has a seat but is not there from ${turn?.start} to ${turn?.end}; ` +
          'a register line over all of the turn, or no seat, would be right',
      )
  }
}

function seatPath(at: JsonPath, seat: { station: number; role: string; place: number }): JsonPath {
  return [...at, 'stations', seat.station, seat.role, seat.place]
}
