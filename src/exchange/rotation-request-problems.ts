import type { Problem } from '#common/problem'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'
import type { RotationRequestJson } from '#exchange/rotation-request-shape'
import { searchProblems } from '#exchange/search-problems'
import {
  doubledIdProblems,
  type KnownIds,
  knownIdsOf,
  unknownIdProblems,
  wholeProblems,
} from '#exchange/value-problems'

/** Everything that is wrong with a request of the right shape, whatever the numbers there are. */
export function rotationRequestProblems(json: RotationRequestJson): readonly Problem[] {
  const known = knownIdsOf('players', json.players)
  const lastTurn = json.rounds.reduce((sum, { turns }) => sum + turns.length, 0)
  return [
    ...doubledIdProblems(
      json.players.map(({ id }, index) => ({ id, at: ['players', index, 'id'] })),
      'player',
    ),
    ...json.players.flatMap((player, index) => presenceProblems(player, lastTurn, ['players', index])),
    ...doubledIdProblems(
      json.rounds.map(({ id }, index) => ({ id, at: ['rounds', index, 'id'] })),
      'round',
    ),
    ...(lastTurn === 0 ? [problemAt(['rounds'], 'have no turn; one turn or more would be right')] : []),
    ...json.rounds.flatMap((round, index) => roundProblems(round, known, ['rounds', index])),
    ...(json.apart ?? []).flatMap((pair, index) => apartProblems(pair, known, ['apart', index])),
    ...fixedProblems(json, known, lastTurn),
    ...settingProblems(json),
  ]
}

type PlayerJson = RotationRequestJson['players'][number]
type RoundJson = RotationRequestJson['rounds'][number]

function presenceProblems(player: PlayerJson, lastTurn: number, at: JsonPath): readonly Problem[] {
  const { fromTurn, toTurn, present } = player
  if (present !== undefined && (fromTurn !== undefined || toTurn !== undefined)) {
    const message = 'stands beside fromTurn or toTurn; the one or the other would be right'
    return [problemAt([...at, 'present'], message)]
  }
  const spans = (present ?? []).flatMap(([from, to], index) => [
    ...turnProblems(from, lastTurn, [...at, 'present', index, 0]),
    ...turnProblems(to, lastTurn, [...at, 'present', index, 1]),
    ...(from > to ? [backwards([...at, 'present', index], from, to)] : []),
  ])
  return [
    ...spans,
    ...turnProblems(fromTurn, lastTurn, [...at, 'fromTurn']),
    ...turnProblems(toTurn, lastTurn, [...at, 'toTurn']),
    ...((fromTurn ?? 1) > (toTurn ?? lastTurn) && spans.length === 0 && lastTurn > 0
      ? [backwards(at, fromTurn ?? 1, toTurn ?? lastTurn)]
      : []),
  ]
}

function backwards(at: JsonPath, from: number, to: number): Problem {
  return problemAt(
    at,
    `is there from turn ${from} to turn ${to}; a last turn not before the first would be right`,
  )
}

function turnProblems(turn: number | undefined, lastTurn: number, at: JsonPath): readonly Problem[] {
  if (turn === undefined || (Number.isInteger(turn) && turn >= 1 && turn <= lastTurn)) return []
  return [problemAt(at, `is ${turn}; a turn from 1 to ${lastTurn} would be right`)]
}

function roundProblems(round: RoundJson, known: KnownIds, at: JsonPath): readonly Problem[] {
  const { sides } = round
  return [
    ...wholeProblems(round.turnSeconds, 1, [...at, 'turnSeconds'], 'a whole number of seconds'),
    ...(['attack', 'defend'] as const).flatMap((role) =>
      (sides?.[role] ?? []).flatMap((id, index) =>
        unknownIdProblems(id, [...at, 'sides', role, index], known),
      ),
    ),
    ...round.turns.flatMap(({ stations }, turn) => [
      ...stations.flatMap((station, index) =>
        stationProblems(station, round.keepersStay ?? false, [...at, 'turns', turn, 'stations', index]),
      ),
      ...(stations.every(({ attack = 0, defend = 0, keep = 0 }) => attack + defend + keep === 0)
        ? [problemAt([...at, 'turns', turn], 'has no seat; a station with a seat would be right')]
        : []),
    ]),
  ]
}

function stationProblems(
  station: RoundJson['turns'][number]['stations'][number],
  keepersStay: boolean,
  at: JsonPath,
): readonly Problem[] {
  const counts = (['attack', 'defend', 'keep'] as const).flatMap((role) =>
    wholeProblems(station[role], 0, [...at, role], 'a whole number of seats'),
  )
  if (!keepersStay || (station.keep ?? 0) <= 1) return counts
  const message = `is ${station.keep}; 0 or 1 would be right in a round whose keepers stay`
  return [...counts, problemAt([...at, 'keep'], message)]
}

function apartProblems(
  [one, other]: readonly [string, string],
  known: KnownIds,
  at: JsonPath,
): readonly Problem[] {
  return [
    ...unknownIdProblems(one, [...at, 0], known),
    ...unknownIdProblems(other, [...at, 1], known),
    ...(one === other
      ? [problemAt(at, `keeps ${quote(one)} apart from itself; two different players would be right`)]
      : []),
  ]
}

function fixedProblems(json: RotationRequestJson, known: KnownIds, lastTurn: number): readonly Problem[] {
  const turns = json.rounds.flatMap((round) => round.turns)
  const seen = new Set<string>()
  return (json.fixed ?? []).flatMap((fixed, index) => {
    const at: JsonPath = ['fixed', index]
    const key = JSON.stringify([fixed.turn, fixed.player])
    const isSecond = seen.has(key)
    seen.add(key)
    const stations = turns[fixed.turn - 1]?.stations.length
    return [
      ...turnProblems(fixed.turn, lastTurn, [...at, 'turn']),
      ...unknownIdProblems(fixed.player, [...at, 'player'], known),
      ...(stations === undefined ? [] : fixedStationProblems(fixed, stations, [...at, 'station'])),
      ...(isSecond
        ? [
            problemAt(
              at,
              `is a second place for ${quote(fixed.player)} in turn ${fixed.turn}; one would be right`,
            ),
          ]
        : []),
    ]
  })
}

function fixedStationProblems(
  fixed: { readonly role: string; readonly station?: number | undefined },
  stations: number,
  at: JsonPath,
): readonly Problem[] {
  const { role, station } = fixed
  if (role === 'rest')
    return station === undefined ? [] : [problemAt(at, 'is not a key for a fixed rest; leave it out')]
  if (station !== undefined && Number.isInteger(station) && station >= 1 && station <= stations) return []
  const what = station === undefined ? 'is missing' : `is ${station}`
  return [problemAt(at, `${what}; a station of that turn, from 1 to ${stations}, would be right`)]
}

function settingProblems(json: RotationRequestJson): readonly Problem[] {
  return [
    ...wholeProblems(json.restLimit ?? undefined, 1, ['restLimit'], 'a whole number of turns'),
    ...searchProblems(json),
  ]
}
