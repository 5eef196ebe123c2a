import type { PlanFault } from '#planning/plan-faults'
import type { PlayerId } from '#squad/player'

/** Why a plan cannot be saved, in a sentence that says what would be right. */
export function sayPlanFault(fault: PlanFault, nameOf: (id: PlayerId) => string): string {
  switch (fault.what) {
    case 'noTurns':
      return 'The plan has no turns. Choose a design with at least one round.'
    case 'playerTwice':
      return `${nameOf(fault.playerId)} stands in the list twice. Take one of the two out.`
    case 'presence':
      return `${nameOf(fault.playerId)} is expected for turns that do not follow each other, or that the practice does not have. Write the first and the last turn again.`
    case 'pairOfOne':
      return `${nameOf(fault.playerId)} is paired with nobody else. Choose another second player, or take the pair out.`
    case 'otherTurns':
      return `Turn ${fault.turn + 1} is not as its round says. Work the plan out anew.`
    case 'seat':
      return saySeat(fault, nameOf)
    case 'halves':
      return `The two halves of the free game do not match in turn ${fault.turn + 1}: whoever attacks in one defends in the other. Work the plan out anew.`
    case 'rule':
      return sayRule(fault, nameOf)
  }
}

function saySeat(
  { why, playerId, turn }: Extract<PlanFault, { what: 'seat' }>,
  nameOf: (id: PlayerId) => string,
): string {
  const at = `in turn ${turn + 1}`
  if (why === 'unknownPlayer')
    return `Somebody has a place ${at} who is not expected. Work the plan out anew.`
  if (why === 'twoPlaces') return `${nameOf(playerId)} has two places ${at}. Take one of them away.`
  return `${nameOf(playerId)} has a place ${at} and is not expected for it. Give the place to somebody who is there.`
}

function sayRule(
  { rule, turn, playerIds }: Extract<PlanFault, { what: 'rule' }>,
  nameOf: (id: PlayerId) => string,
): string {
  const at = `in turn ${turn + 1}`
  const [one = 'Somebody', other = 'somebody else'] = playerIds.map(nameOf)
  switch (rule) {
    case 'seats':
      return `Not every place ${at} is filled as its round says. Work the plan out anew.`
    case 'keepers':
      return `${one} is in goal ${at} and is not to be. Put somebody else there.`
    case 'sides':
      return `${one} plays for the other side ${at}. Swap with somebody of that side, or let players change sides.`
    case 'keepersStay':
      return `The goalkeeper changes ${at}, inside a round that keeps one. Let goalkeepers change, or put the first one back.`
    case 'apart':
      return `${one} and ${other} meet ${at}, and are kept apart. Swap one of them with somebody else.`
    case 'fixed':
      return `${one} is not where you hold them fast ${at}. Let go of the place, or put them back.`
    case 'restLimit':
      return `${one} waits longer than the plan says, at turn ${turn + 1}. Work the plan out anew.`
    case 'neverRestsAlone':
      return `${one} waits alone ${at}, and is not to. Swap ${one} with somebody who plays then.`
    default:
      return `A limit set for ${one} is broken ${at}. Lift it, or swap ${one} with somebody else.`
  }
}
