import { readRotationRequest } from '#exchange/rotation-request'
import type { RotationRequestJson } from '#exchange/rotation-request-shape'
import type { RotationProblem } from '#rotation/problem'

/** A small request: four players, one round of two turns with one station of one attacker, one defender, one keeper. */
export function smallRequest(changes: Partial<RotationRequestJson> = {}): RotationRequestJson {
  return {
    format: 'turnbook/rotation-request@1',
    players: ['p1', 'p2', 'p3', 'p4'].map((id) => ({ id })),
    rounds: [aRound({ turns: 2 })],
    ...changes,
  }
}

type RoundJson = RotationRequestJson['rounds'][number]

export function aRound({
  turns = 2,
  stations = [{ attack: 1, defend: 1, keep: 1 }],
  ...changes
}: Partial<Omit<RoundJson, 'turns'>> & {
  readonly turns?: number
  readonly stations?: RoundJson['turns'][number]['stations']
}): RoundJson {
  return { id: 'r1', turnSeconds: 40, ...changes, turns: Array.from({ length: turns }, () => ({ stations })) }
}

/** The problem that a request asks for; throws when the request is refused. */
export function problemOf(request: RotationRequestJson): RotationProblem {
  const read = readRotationRequest(request)
  if (!read.ok) throw new Error(JSON.stringify(read.reasons))
  return read.value.problem
}
