import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import type { ClashPart } from '#rotation/clash'
import { resting, roleOf, stationOf } from '#rotation/place'
import type { RotationProblem } from '#rotation/problem'
import type { PlayerId } from '#squad/player'

const places = { attack: 'attacking', defend: 'defending', keep: 'in goal', rest: 'waiting' } as const

/** A requirement that leaves no plan, in a coach's words. */
export function sayPlanClash(
  problem: RotationProblem,
  { part, nameOf }: { readonly part: ClashPart; readonly nameOf: (id: PlayerId) => string },
): string {
  const name = (player: number | undefined) => nameOf(problem.players[player ?? -1]?.id ?? '')
  const at = `Turn ${part.turn + 1}`
  switch (part.rule) {
    case 'seats':
      return `${at} has ${countWord(part.asked)} places, and ${countWord(part.there)} are expected for it.`
    case 'keepers':
      return `${at} needs ${countWord(part.asked)} in goal, and of those expected ${countWord(part.there)} may be.`
    case 'apart': {
      const [one, other] = problem.apart[part.index] ?? []
      return `${name(one)} and ${name(other)} cannot be kept apart in turn ${part.turn + 1}.`
    }
    case 'fixed':
      return sayLock(problem, { index: part.index, name })
    case 'sides': {
      const bound = boundIn(problem, part.round)
      return bound.length < problem.players.length
        ? `${at} cannot be filled while ${andList(bound.map(name))} ${bound.length === 1 ? 'keeps' : 'keep'} one side all practice.`
        : `${at} cannot be filled while everyone keeps to their side.`
    }
    case 'neverRestsAlone':
      return `${name(part.player)} would have to wait alone in turn ${part.turn + 1}, and is not to.`
    case 'keepersStay':
      return `No choice of goalkeepers for the whole round fits the rest, from turn ${part.turn + 1} on.`
    case 'mostTurns':
      return `${name(part.player)} is to have at most ${problem.players[part.player]?.mostTurns} turns; no plan was found that fills every place with that.`
    case 'restsAfterTurn':
      return `${name(part.player)} is to wait after each turn; no plan was found that fills every place with that.`
  }
}

/** Who may not both attack and defend in a round. */
function boundIn({ players, rounds }: RotationProblem, round: number): readonly number[] {
  const { attack = [], defend = [] } = rounds[round]?.sides ?? {}
  return [...players.keys()].filter((player) => !attack.includes(player) || !defend.includes(player))
}

function sayLock(
  problem: RotationProblem,
  { index, name }: { readonly index: number; readonly name: (player: number) => string },
): string {
  const fixed = problem.fixed[index]
  if (!fixed) return 'A place that is held fast leaves no plan.'
  const { player, place, turn } = fixed
  const area = place === resting ? '' : ` in area ${stationOf(place) + 1}`
  const said = `${name(player)} is held fast as ${places[roleOf(place)]}${area} in turn ${turn + 1}`
  if (!problem.players[player]?.present[turn]) return `${said}, and is not expected for it.`
  if (roleOf(place) === 'keep' && !problem.players[player]?.keeps) return `${said}, and is not to be in goal.`
  return `${said}; the rest leaves no room for that.`
}
