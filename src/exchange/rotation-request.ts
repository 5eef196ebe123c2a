import type { Problem } from '#common/problem'
import { accept, type Result } from '#common/result'
import type { SearchSettings } from '#common/search-settings'
import { readRequest } from '#exchange/read-request'
import { rotationRequestProblems } from '#exchange/rotation-request-problems'
import {
  type RotationRequestJson,
  rotationRequestFormat,
  rotationRequestShape,
} from '#exchange/rotation-request-shape'
import { noSeconds } from '#rotation/fair-seconds'
import { resting, roleOf, seatPlace, stationOf } from '#rotation/place'
import { type RotationProblem, rotationColumns } from '#rotation/problem'

export type RotationRequest = { readonly problem: RotationProblem; readonly settings: SearchSettings }

/** Reads a request for a rotation (`turnbook/rotation-request@1`) from parsed JSON; refused with every problem found. */
export function readRotationRequest(json: unknown): Result<RotationRequest, Problem> {
  const read = readRequest(json, { shape: rotationRequestShape, problemsOf: rotationRequestProblems })
  if (!read.ok) return read
  const { seed = 1, timeLimitMs = 2000, workLimit = null } = read.value
  return accept({ problem: toProblem(read.value), settings: { seed, timeLimitMs, workLimit } })
}

function toProblem(json: RotationRequestJson): RotationProblem {
  const indexOf = new Map(json.players.map(({ id }, index) => [id, index]))
  const player = (id: string) => indexOf.get(id) ?? -1
  const turns = json.rounds.flatMap((round, index) =>
    round.turns.map(({ stations }) => ({
      round: index,
      seconds: round.turnSeconds,
      stations: stations.map(({ attack = 0, defend = 0, keep = 0 }) => ({ attack, defend, keep })),
    })),
  )
  return {
    players: json.players.map((own) => ({
      id: own.id,
      keeps: own.keeps ?? true,
      present: presence(own, turns.length),
      gap: { ...noSeconds, ...own.gap },
    })),
    rounds: json.rounds.map((round) => ({
      id: round.id,
      turnSeconds: round.turnSeconds,
      keepersStay: round.keepersStay ?? false,
      sides: round.sides
        ? { attack: round.sides.attack.map(player), defend: round.sides.defend.map(player) }
        : null,
    })),
    turns,
    restLimit: json.restLimit === undefined ? 2 : json.restLimit,
    apart: (json.apart ?? []).map(([one, other]) => [player(one), player(other)] as const),
    fixed: (json.fixed ?? []).map((fixed) => ({
      turn: fixed.turn - 1,
      player: player(fixed.player),
      place: fixed.role === 'rest' ? resting : seatPlace((fixed.station ?? 1) - 1, fixed.role),
    })),
  }
}

function presence(own: RotationRequestJson['players'][number], turns: number): readonly boolean[] {
  const spans = own.present ?? [[own.fromTurn ?? 1, own.toTurn ?? turns] as const]
  return Array.from({ length: turns }, (_, turn) =>
    spans.some(([from, to]) => from <= turn + 1 && turn + 1 <= to),
  )
}

/** A request as JSON again, everything said: `readRotationRequest` reads the same back. */
export function rotationRequestJson({ problem, settings }: RotationRequest): RotationRequestJson {
  const id = (player: number) => problem.players[player]?.id ?? ''
  return {
    format: rotationRequestFormat,
    players: problem.players.map((player) => ({
      id: player.id,
      keeps: player.keeps,
      present: presentSpans(player.present),
      gap: Object.fromEntries(rotationColumns.map((column) => [column, player.gap[column]])),
    })),
    rounds: problem.rounds.map((round, index) => ({
      id: round.id,
      turnSeconds: round.turnSeconds,
      keepersStay: round.keepersStay,
      ...(round.sides
        ? { sides: { attack: round.sides.attack.map(id), defend: round.sides.defend.map(id) } }
        : {}),
      turns: problem.turns
        .filter((turn) => turn.round === index)
        .map(({ stations }) => ({ stations: stations.map((seats) => ({ ...seats })) })),
    })),
    restLimit: problem.restLimit,
    apart: problem.apart.map(([one, other]) => [id(one), id(other)]),
    fixed: problem.fixed.map(({ turn, player, place }) => ({
      turn: turn + 1,
      ...(place === resting ? {} : { station: stationOf(place) + 1 }),
      role: roleOf(place),
      player: id(player),
    })),
    ...settings,
  }
}

function presentSpans(present: readonly boolean[]): [number, number][] {
  const spans: [number, number][] = []
  present.forEach((isThere, turn) => {
    const last = spans.at(-1)
    if (!isThere) return
    if (last && last[1] === turn) last[1] = turn + 1
    else spans.push([turn + 1, turn + 1])
  })
  return spans
}
