import { chooseKeepers } from '#rotation/choose-keepers'
import { type LimitPart, limitClash, withoutLimit } from '#rotation/limit-clash'
import { mayTakeIn } from '#rotation/may-take'
import { allSeatsOfTurn, presentAt, type RotationProblem, seatsOfTurn } from '#rotation/problem'
import { seatTurn } from '#rotation/seat-turn'

/** One requirement that has part in an impossibility. Indexes from 0; `index` into the list that the rule is in. */
export type ClashPart =
  | {
      readonly rule: 'seats' | 'keepers'
      readonly turn: number
      readonly asked: number
      readonly there: number
    }
  | { readonly rule: 'apart' | 'fixed'; readonly turn: number; readonly index: number }
  | { readonly rule: 'sides' | 'keepersStay'; readonly turn: number; readonly round: number }
  | { readonly rule: 'neverRestsAlone'; readonly turn: number; readonly player: number }
  | LimitPart

type Removable = Exclude<ClashPart, { rule: 'seats' | 'keepers' } | LimitPart>

/**
 * Why no rotation can be: for each round that cannot be seated, the requirements that clash, none of which could be
 * left out of the list without it being possible again. Empty: a rotation exists (with the rest limit left aside,
 * which always has a least possible value).
 */
export function findClash(problem: RotationProblem): readonly ClashPart[] {
  const short = problem.turns.flatMap((_, turn) => shortage(problem, turn))
  if (short.length > 0) return short
  const clash = [...problem.rounds.keys()].flatMap((round) => {
    const turn = firstUnseatable(problem, round)
    return turn === null ? [] : irreducible(problem, round, turn)
  })
  return clash.length > 0 ? clash : limitClash(problem)
}

function shortage(problem: RotationProblem, turn: number): readonly ClashPart[] {
  const own = problem.turns[turn]
  if (!own) return []
  const present = presentAt(problem, turn)
  const asked = allSeatsOfTurn(own)
  if (asked > present.length) return [{ rule: 'seats', turn, asked, there: present.length }]
  const keepers = seatsOfTurn(own, 'keep')
  const able = present.filter((player) => problem.players[player]?.keeps).length
  return keepers > able ? [{ rule: 'keepers', turn, asked: keepers, there: able }] : []
}

/** The first turn of a round that cannot be seated; its first turn where only its turns together cannot. */
function firstUnseatable(problem: RotationProblem, round: number): number | null {
  const mayTake = mayTakeIn(problem)
  const turns = [...problem.turns.keys()].filter((turn) => problem.turns[turn]?.round === round)
  const alone = turns.find((turn) => seatTurn(problem, mayTake, { turn }) === null)
  if (alone !== undefined) return alone
  if (!problem.rounds[round]?.keepersStay) return null
  const asListed = { order: (players: readonly number[]) => players, onDuty: () => {} }
  return 'duties' in chooseKeepers(problem, mayTake, asListed, [round]) ? null : (turns[0] ?? null)
}

/** Leaves requirements out one by one; what cannot be left out without ending the clash is the clash. */
function irreducible(problem: RotationProblem, round: number, turn: number): readonly ClashPart[] {
  const parts: readonly Removable[] = [
    ...problem.apart.map((_, index) => ({ rule: 'apart' as const, turn, index })),
    ...problem.fixed.flatMap((fixed, index) =>
      problem.turns[fixed.turn]?.round === round ? [{ rule: 'fixed' as const, turn: fixed.turn, index }] : [],
    ),
    ...problem.players.flatMap(({ neverRestsAlone }, player) =>
      neverRestsAlone ? [{ rule: 'neverRestsAlone' as const, turn, player }] : [],
    ),
    { rule: 'keepersStay' as const, turn, round },
    { rule: 'sides' as const, turn, round },
  ]
  let left: readonly Removable[] = parts
  for (const part of parts) {
    const fewer = left.filter((other) => other !== part)
    const dropped = parts.filter((other) => !fewer.includes(other))
    if (firstUnseatable(without(problem, dropped), round) !== null) left = fewer
  }
  return left
}

/** The same request without some of its requirements. */
export function without(problem: RotationProblem, parts: readonly ClashPart[]): RotationProblem {
  const isDropped = (rule: 'apart' | 'fixed', index: number) =>
    parts.some((part) => part.rule === rule && part.index === index)
  const isLifted = (rule: 'sides' | 'keepersStay', round: number) =>
    parts.some((part) => part.rule === rule && part.round === round)
  const mayRestAlone = new Set(
    parts.flatMap((part) => (part.rule === 'neverRestsAlone' ? [part.player] : [])),
  )
  const limits = parts.filter(
    (part): part is LimitPart => part.rule === 'mostTurns' || part.rule === 'restsAfterTurn',
  )
  const lifted = limits.reduce(withoutLimit, problem)
  return {
    ...lifted,
    players:
      mayRestAlone.size === 0
        ? lifted.players
        : lifted.players.map((own, player) =>
            mayRestAlone.has(player) ? { ...own, neverRestsAlone: false } : own,
          ),
    apart: problem.apart.filter((_, index) => !isDropped('apart', index)),
    fixed: problem.fixed.filter((_, index) => !isDropped('fixed', index)),
    rounds: problem.rounds.map((round, index) => ({
      ...round,
      sides: isLifted('sides', index) ? null : round.sides,
      keepersStay: round.keepersStay && !isLifted('keepersStay', index),
    })),
  }
}
