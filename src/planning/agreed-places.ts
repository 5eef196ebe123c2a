import type { PlanLock, PlannedPlayer, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { isThereFor, otherHalf, problemOfRequest } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import type { SeatRole } from '#practice/turn'
import { findClash } from '#rotation/clash'
import { mayTakeIn } from '#rotation/may-take'
import { seatPlace } from '#rotation/place'
import { seatTurn } from '#rotation/seat-turn'
import type { PlayerId } from '#squad/player'

/**
 * The request with the places that agreements hold: a first turn beside a partner, and for those to whom a plan was shown
 * their places of it. `shown`: the plan that was saved; null: none was. Places that the coach holds come first, and where
 * a rule leaves no room for an agreed place it is left out.
 */
export function withAgreedPlaces(request: PlanRequest, shown: PracticePlan | null): PlanRequest {
  const own = request.locks.filter(({ agreed }) => !agreed)
  const base = { ...request, locks: own }
  const beside = request.players.reduce<PlanRequest>(
    (asked, player) => withPartner(asked, { player, before: request.locks }),
    base,
  )
  const held = shown ? [...beside.locks, ...shownLocks(beside, shown)] : beside.locks
  if (held.length === own.length && own.length === request.locks.length) return request
  return withoutClashing({ ...request, locks: held })
}

/** The turn, from 1, in which a player and its first partner should be on one side: the first that both are there for. */
export function firstTurnWithPartner(request: PlanRequest, player: PlannedPlayer): number | null {
  const { firstPartner } = player.agreed ?? {}
  const partner = request.players.find(({ playerId }) => playerId === firstPartner)
  const first = player.present[0]?.[0]
  return partner && first !== undefined && isThereFor(partner, first) ? first : null
}

/** Both in one place of the turn: where `before` has them, if they still can be there. */
function withPartner(
  request: PlanRequest,
  { player, before }: { readonly player: PlannedPlayer; readonly before: readonly PlanLock[] },
): PlanRequest {
  const turn = firstTurnWithPartner(request, player)
  const { firstPartner } = player.agreed ?? {}
  if (turn === null || !firstPartner) return request
  const pair = [player.playerId, firstPartner]
  if (request.locks.some((lock) => lock.turn === turn && pair.includes(lock.playerId))) return request
  const problem = problemOfRequest(request)
  const at = pair.map((id) => problem.players.findIndex((one) => one.id === id))
  const isOpen = ({ station, role }: SidePlace) => {
    const place = seatPlace(station - 1, role)
    const fixed = [...problem.fixed, ...at.map((index) => ({ turn: turn - 1, player: index, place }))]
    const asked = { ...problem, fixed }
    return seatTurn(asked, mayTakeIn(asked), { turn: turn - 1 }) !== null
  }
  const places = sidesOfTwo(request, turn, owedFirst(request, pair))
  const was = before.find((lock) => lock.agreed === 'partner' && lock.playerId === player.playerId)?.place
  const isAsBefore = ({ station, role }: SidePlace) =>
    was !== undefined && was !== 'rest' && was.station === station && was.role === role
  const place = places.find((own) => isAsBefore(own) && isOpen(own)) ?? places.find(isOpen)
  if (!place) return request
  const locks = pair.map((playerId): PlanLock => ({ turn, playerId, place, agreed: 'partner' }))
  return { ...request, locks: [...request.locks, ...locks] }
}

type SidePlace = { readonly station: number; readonly role: SeatRole }

/** Sides of two or more in a turn, from 1; those of the role that the pair is owed more of first. */
function sidesOfTwo(
  request: PlanRequest,
  turn: number,
  roles: readonly ('attack' | 'defend')[],
): readonly SidePlace[] {
  const stations = turnFrames(request.design.rounds)[turn - 1]?.stations ?? []
  return roles.flatMap((role) =>
    stations.flatMap((shape, index) => (shape[role] >= 2 ? [{ station: index + 1, role }] : [])),
  )
}

function owedFirst(request: PlanRequest, pair: readonly PlayerId[]): readonly ('attack' | 'defend')[] {
  const gap = (role: 'attack' | 'defend') =>
    request.players
      .filter(({ playerId }) => pair.includes(playerId))
      .reduce((sum, player) => sum + player.gap[role], 0)
  return gap('attack') <= gap('defend') ? ['attack', 'defend'] : ['defend', 'attack']
}

/** Whether a request is of the practice that a plan was shown of: places of another design say nothing. */
export function isShownDesign(request: Pick<PlanRequest, 'design'>, shown: PracticePlan): boolean {
  return request.design.id === shown.design.id && request.design.name === shown.design.name
}

function shownLocks(request: PlanRequest, shown: PracticePlan): readonly PlanLock[] {
  if (!isShownDesign(request, shown)) return []
  const frames = turnFrames(request.design.rounds)
  const taken = new Set(request.locks.map(({ turn, playerId }) => `${turn} ${playerId}`))
  return placesShown(shown, request.players).filter(({ turn, playerId, place }) => {
    const frame = frames[turn - 1]
    const player = request.players.find((one) => one.playerId === playerId)
    if (!frame || frame.round !== shown.turns[turn - 1]?.round || !player || !isThereFor(player, turn))
      return false
    const isThere = place === 'rest' || (frame.stations[place.station - 1]?.[place.role] ?? 0) > 0
    return isThere && !taken.has(`${turn} ${playerId}`)
  })
}

/** The places that a plan has for those whose plan is shown early and not changed. */
function placesShown(
  plan: Pick<PracticePlan, 'players' | 'turns'>,
  players: readonly PlannedPlayer[],
): readonly PlanLock[] {
  return players.flatMap(({ playerId, agreed }) => {
    const own = plan.players.find((player) => player.playerId === playerId)
    if (!agreed?.planShownEarly || !own) return []
    return plan.turns.flatMap(({ stations }, index): PlanLock[] => {
      const turn = index + 1
      if (!isThereFor(own, turn)) return []
      const seats = stations.flatMap((station, at) =>
        (['attack', 'defend', 'keep'] as const).flatMap((role) =>
          station[role].includes(playerId) ? [{ station: at + 1, role }] : [],
        ),
      )
      return [{ turn, playerId, place: seats[0] ?? 'rest', agreed: 'shown' }]
    })
  })
}

/** A plan as it is saved: from then on it is shown, and the places of those it is shown to are held in it. */
export function withShownPlaces(plan: PracticePlan): PracticePlan {
  const others = plan.locks.filter(({ agreed }) => agreed !== 'shown')
  const taken = new Set(others.map(({ turn, playerId }) => `${turn} ${playerId}`))
  const shown = placesShown(plan, plan.players).filter(
    ({ turn, playerId }) => !taken.has(`${turn} ${playerId}`),
  )
  return shown.length === 0 && others.length === plan.locks.length
    ? plan
    : { ...plan, locks: [...others, ...shown] }
}

/** Where it is not its own places that keep somebody from what it is limited to: without any, if that helps. */
function withoutAll(request: PlanRequest): PlanRequest {
  const free = { ...request, locks: request.locks.filter(({ agreed }) => !agreed) }
  return findClash(problemOfRequest(free)).length === 0 ? free : request
}

/** Lets go of agreed places that clash with a rule, or with what a single player is limited to, until none does. */
function withoutClashing(request: PlanRequest): PlanRequest {
  const frames = turnFrames(request.design.rounds)
  for (let own = request; ; ) {
    const problem = problemOfRequest(own)
    const clash = findClash(problem)
    const turnsHeld = new Set(
      clash.flatMap((part) => {
        const fixed = part.rule === 'fixed' ? problem.fixed[part.index] : undefined
        if (!fixed) return []
        const turns = [fixed.turn, otherHalf(frames, fixed.turn) ?? fixed.turn]
        return turns.map((turn) => `${turn + 1} ${problem.players[fixed.player]?.id}`)
      }),
    )
    const limited = new Set(
      clash.flatMap((part) =>
        part.rule === 'mostTurns' || part.rule === 'restsAfterTurn' ? [problem.players[part.player]?.id] : [],
      ),
    )
    const locks = own.locks.filter(
      ({ turn, playerId, agreed }) =>
        !agreed || !(turnsHeld.has(`${turn} ${playerId}`) || limited.has(playerId)),
    )
    if (locks.length === own.locks.length) return limited.size > 0 ? withoutAll(own) : own
    own = { ...own, locks }
  }
}
