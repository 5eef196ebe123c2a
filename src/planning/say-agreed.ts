import { firstTurnWithPartner, isShownDesign } from '#planning/agreed-places'
import type { PlannedPlayer, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { isThereFor } from '#planning/problem-of-request'
import { isInSides } from '#planning/side-lists'
import { turnFrames } from '#planning/turn-frames'
import type { PlayerId } from '#squad/player'

/** What a plan makes of something agreed, in a coach's words; where it cannot be kept, why. */
export type SaidAgreed = { readonly isKept: boolean; readonly sentence: string }

/** One side all practice: which, and what that means without bibs. */
export function sayOneSide(request: PlanRequest, { side }: PlannedPlayer): string {
  const { sides, rounds } = request.design
  const bib = sides?.names[side ?? 0]
  if (sides && isInSides(request)) return `In ${bib}, like everyone who keeps to their bibs.`
  if (sides) return `In ${bib} all practice, also while others change.`
  const game = rounds.some(({ isFreeGame }) => isFreeGame)
    ? ' In the free game that side changes over once.'
    : ''
  return `There are no bibs in this practice: ${side === 1 ? 'defends' : 'attacks'} whenever not in goal.${game}`
}

/** The first turn beside a partner; null: nobody is named. */
export function sayFirstPartner(
  request: PlanRequest,
  player: PlannedPlayer,
  nameOf: (id: PlayerId) => string,
): SaidAgreed | null {
  const partnerId = player.agreed?.firstPartner
  if (!partnerId) return null
  const partner = nameOf(partnerId)
  const turn = firstTurnWithPartner(request, player)
  if (turn === null)
    return {
      isKept: false,
      sentence: `${partner} is not expected for ${nameOf(player.playerId)}’s first turn.`,
    }
  const pair = [player.playerId, partnerId]
  const held = request.locks.filter((lock) => lock.turn === turn && pair.includes(lock.playerId))
  const [one, other] = held
  const place = one?.place ?? 'rest'
  const isTogether = place !== 'rest' && JSON.stringify(place) === JSON.stringify(other?.place)
  if (isTogether && place.role !== 'keep')
    return { isKept: true, sentence: `Beside ${partner} in turn ${turn}.` }
  const hasRoom = (turnFrames(request.design.rounds)[turn - 1]?.stations ?? []).some(
    ({ attack, defend }) => attack >= 2 || defend >= 2,
  )
  return {
    isKept: false,
    sentence: hasRoom
      ? `Not beside ${partner} in turn ${turn}: another rule, or a place held fast, leaves no room for it.`
      : `Not beside ${partner} in turn ${turn}: no side of it has two players.`,
  }
}

/** Places that are kept as they were shown; `shown`: the plan that was saved, null: none was yet. */
export function sayShown(
  request: PlanRequest,
  player: PlannedPlayer,
  shown: PracticePlan | null,
): SaidAgreed {
  const { playerId } = player
  if (!shown?.players.some((own) => own.playerId === playerId))
    return { isKept: true, sentence: 'From when this plan is saved its places stay as they are.' }
  if (!isShownDesign(request, shown))
    return {
      isKept: false,
      sentence: `The plan that was saved is of another practice, ${shown.design.name}: its places say nothing here.`,
    }
  const turns = shown.turns.map((_, index) => index + 1).filter((turn) => isThereFor(player, turn))
  const kept = turns.filter((turn) =>
    request.locks.some((lock) => lock.turn === turn && lock.playerId === playerId && lock.agreed),
  ).length
  if (kept === turns.length)
    return { isKept: true, sentence: 'All places stay as they were in the plan that was saved.' }
  return {
    isKept: false,
    sentence: `${kept} of ${turns.length} places stay as they were in the plan that was saved; the rest of what is asked leaves no room for the others.`,
  }
}
