import { formatPath } from '#exchange/json-path'
import { proofJson } from '#exchange/proof-json'
import { quiet } from '#exchange/quiet'
import { type RotationRequest, rotationRequestJson } from '#exchange/rotation-request'
import { findClash } from '#rotation/clash'
import { explainRotation } from '#rotation/explain-rotation'
import { nearestProblem } from '#rotation/nearest-problem'
import { seatedTurn } from '#rotation/plan'
import { playerFigures } from '#rotation/plan-values'
import { type ColumnSeconds, type RotationProblem, rotationColumns } from '#rotation/problem'
import type { Rotation } from '#rotation/rotation'
import { sayClash } from '#rotation/say-clash'

export const rotationFormat = 'turnbook/rotation@1'
export const impossibleFormat = 'turnbook/impossible@1'

/** A rotation as `turnbook/rotation@1`, ready for JSON. */
export function rotationJson(problem: RotationProblem, rotation: Rotation, elapsedMs: number) {
  const id = (player: number) => problem.players[player]?.id ?? ''
  return {
    format: rotationFormat,
    turns: problem.turns.map(({ round }, turn) => {
      const seated = seatedTurn(problem, rotation.plan, turn)
      return {
        turn: turn + 1,
        round: problem.rounds[round]?.id ?? '',
        stations: seated.stations.map(({ attack, defend, keep }) => ({
          attack: attack.map(id),
          defend: defend.map(id),
          keep: keep.map(id),
        })),
        rest: seated.rest.map(id),
      }
    }),
    restLimit: rotation.restLimit,
    unfairness: proofJson(rotation.unfairness),
    situationUnfairness: proofJson(rotation.situationUnfairness),
    roleChanges: rotation.values.roleChanges,
    mixing: proofJson(rotation.mixing),
    players: playerFigures(problem, rotation.plan).map((figures, index) => ({
      id: id(index),
      seconds: columnsJson(figures.seconds),
      fairSeconds: columnsJson(figures.fairSeconds),
      gapAfter: columnsJson(figures.gapAfter),
    })),
    sentence: explainRotation(problem, rotation),
    elapsedMs,
  }
}

/** Why there is no rotation for a request, and the nearest one for which there is; null: there is a rotation. */
export function impossibleJson(request: RotationRequest) {
  const { problem } = request
  const clash = findClash(problem)
  if (clash.length === 0) return null
  const nearest = nearestProblem(problem)
  return {
    format: impossibleFormat,
    requirements: clash.map((part) => {
      const said = sayClash(problem, part)
      return { rule: said.rule, path: formatPath(said.path), turn: said.turn, why: said.why }
    }),
    nearest: nearest && rotationRequestJson({ ...request, problem: nearest }),
  }
}

function columnsJson(columns: ColumnSeconds): Readonly<Record<string, number>> {
  return Object.fromEntries(rotationColumns.map((column) => [column, quiet(columns[column])]))
}
