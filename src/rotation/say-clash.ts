import type { ClashPart } from '#rotation/clash'
import type { LimitPart } from '#rotation/limit-clash'
import { resting, roleOf, stationOf } from '#rotation/place'
import type { RotationProblem } from '#rotation/problem'

/** A requirement that has part in a clash, in words, with where it stands in the request. */
export type SaidClash = {
  readonly rule: ClashPart['rule']
  readonly path: readonly (string | number)[]
  /** From 1 through all rounds. */
  readonly turn: number
  readonly why: string
}

export function sayClash(problem: RotationProblem, part: ClashPart): SaidClash {
  return { rule: part.rule, turn: part.turn + 1, ...placeAndWords(problem, part) }
}

function placeAndWords(problem: RotationProblem, part: ClashPart): Pick<SaidClash, 'path' | 'why'> {
  switch (part.rule) {
    case 'seats':
      return {
        path: turnPath(problem, part.turn),
        why: `Turn ${part.turn + 1} has places for ${part.asked}, and ${part.there} are there.`,
      }
    case 'keepers':
      return {
        path: turnPath(problem, part.turn),
        why: `Turn ${part.turn + 1} needs ${part.asked} in goal, and ${part.there} of those there may keep.`,
      }
    case 'apart':
      return { path: ['apart', part.index], why: sayApart(problem, part) }
    case 'fixed':
      return { path: ['fixed', part.index], why: sayFixed(problem, part.index) }
    case 'sides':
      return {
        path: ['rounds', part.round, 'sides'],
        why: `With these sides, turn ${part.turn + 1} cannot be filled from those who are there.`,
      }
    case 'mostTurns':
    case 'restsAfterTurn':
      return { path: ['players', part.player, part.rule], why: sayLimit(problem, part) }
    case 'neverRestsAlone':
      return {
        path: ['players', part.player],
        why: `${problem.players[part.player]?.id} would be the only one who rests in turn ${part.turn + 1}.`,
      }
    case 'keepersStay':
      return {
        path: ['rounds', part.round, 'keepersStay'],
        why: `No choice of keepers who stay through round ${problem.rounds[part.round]?.id ?? ''} fits the other requirements.`,
      }
  }
}

function sayApart(problem: RotationProblem, part: { readonly turn: number; readonly index: number }): string {
  const [one, other] = (problem.apart[part.index] ?? []).map((player) => problem.players[player]?.id)
  return `${one} and ${other} cannot be kept apart in turn ${part.turn + 1}.`
}

function sayFixed(problem: RotationProblem, index: number): string {
  const fixed = problem.fixed[index]
  if (!fixed) return ''
  const player = problem.players[fixed.player]
  const role = roleOf(fixed.place)
  const where = fixed.place === resting ? 'resting' : `${role} at station ${stationOf(fixed.place) + 1}`
  const said = `${player?.id} is fixed as ${where} in turn ${fixed.turn + 1}`
  if (!player?.present[fixed.turn]) return `${said}, and is not there.`
  if (role === 'keep' && !player.keeps) return `${said}, and may not keep goal.`
  if (role !== 'rest' && !problem.turns[fixed.turn]?.stations[stationOf(fixed.place)]?.[role])
    return `${said}, and there is no such place.`
  return `${said}, which the other requirements leave no room for.`
}

function sayLimit(problem: RotationProblem, { rule, turn, player }: LimitPart): string {
  const own = problem.players[player]
  const agreed =
    rule === 'mostTurns'
      ? `with at most ${own?.mostTurns} turns for ${own?.id}`
      : `with a wait for ${own?.id} after each turn`
  return `No plan was found ${agreed}: turn ${turn + 1} could not be filled.`
}

function turnPath(problem: RotationProblem, turn: number): readonly (string | number)[] {
  const round = problem.turns[turn]?.round ?? 0
  const first = problem.turns.findIndex((other) => other.round === round)
  return ['rounds', round, 'turns', turn - first]
}
