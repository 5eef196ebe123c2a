import type { Seconds } from '#common/time'
import { defaultMarks } from '#lineup/default-marks'
import { plannedPlayer } from '#lineup/draft/new-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import { placesOfFormat, shapeName } from '#lineup/draft/places-of-format'
import { rulesOfFormat } from '#lineup/draft/rules-of-format'
import type { MatchPlanPlayer, MatchPlanRequest } from '#lineup/match-plan'
import type { LinePlaces, MatchFormat } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'
import type { PlayerId } from '#squad/player'

type Marks = MatchPlanRequest['marks']

/** Another format for the match: its places, rules and promise; who comes stays. */
export function withFormat(
  request: MatchPlanRequest,
  { format, policyShare }: { readonly format: MatchFormat; readonly policyShare: number },
): MatchPlanRequest {
  return {
    ...withLength(request, format),
    places: placesOfFormat(format),
    rules: rulesOfFormat(format),
    leastShare: format.leastTime.share ?? policyShare,
    marks: defaultMarks(format, request.players.length),
    locks: [],
  }
}

/** The format as it is played on the day: other periods, changes at breaks. Times for changes begin anew with the periods. */
export function withDayFormat(request: MatchPlanRequest, change: Partial<MatchFormat>): MatchPlanRequest {
  const format = { ...request.format, ...change }
  const isSameTime = String(format.periodSeconds) === String(request.format.periodSeconds)
  const next = isSameTime ? { ...request, format } : { ...withLength(request, format), locks: [] }
  const marks =
    isSameTime && !hasUsualMarks(request) ? request.marks : defaultMarks(format, request.players.length)
  return { ...next, marks, locks: sameMarks(marks, request.marks) ? next.locks : [] }
}

/** Other places on the day; with their number the players a side change too. */
export function withPlaces(request: MatchPlanRequest, places: LinePlaces): MatchPlanRequest {
  const aSide = placesInAll(places)
  const isSameSide = aSide === request.format.aSide
  const format = isSameSide
    ? request.format
    : {
        ...request.format,
        aSide,
        hasKeeper: places.keeper > 0,
        shapes: [{ name: shapeName(places), places }],
      }
  const rules = places.keeper > 0 ? request.rules : { ...request.rules, keeperForPeriod: false }
  return withUsualMarks(request, { ...request, format, places, rules, locks: [] })
}

/** A player more, in the order of the page, or one fewer. */
export function withPlayer(
  request: MatchPlanRequest,
  { player, order }: { readonly player: PickablePlayer; readonly order: readonly PlayerId[] },
): MatchPlanRequest {
  const players = [...request.players, plannedPlayer(player, request.isAfresh)].sort(
    (one, other) => order.indexOf(one.playerId) - order.indexOf(other.playerId),
  )
  return withUsualMarks(request, { ...request, players })
}

export function withoutPlayer(request: MatchPlanRequest, playerId: PlayerId): MatchPlanRequest {
  return withUsualMarks(request, {
    ...request,
    players: request.players.filter((own) => own.playerId !== playerId),
    locks: request.locks.filter((lock) => lock.playerId !== playerId),
  })
}

/** What holds for one player on the day. */
export function withPlayerChanged(
  request: MatchPlanRequest,
  playerId: PlayerId,
  change: Partial<Pick<MatchPlanPlayer, 'from' | 'to' | 'keeps'>>,
): MatchPlanRequest {
  return {
    ...request,
    players: request.players.map((own) => (own.playerId === playerId ? { ...own, ...change } : own)),
  }
}

/** What earlier matches leave due, counted or left out. */
export function withSeason(
  request: MatchPlanRequest,
  { players, isAfresh }: { readonly players: readonly PickablePlayer[]; readonly isAfresh: boolean },
): MatchPlanRequest {
  const known = new Map(players.map((player) => [player.id, player]))
  return {
    ...request,
    isAfresh,
    players: request.players.map((own) => {
      const player = known.get(own.playerId)
      return player ? { ...own, owed: plannedPlayer(player, isAfresh).owed } : own
    }),
  }
}

/** The same times for changes in every period; those that a period is too short for are left out. */
export function withMarks(request: MatchPlanRequest, inside: readonly Seconds[]): MatchPlanRequest {
  const marks = request.format.periodSeconds.map((seconds) =>
    [...new Set(inside)].filter((mark) => 0 < mark && mark < seconds).sort((one, other) => one - other),
  )
  return { ...request, marks, locks: [] }
}

/** The times that suggest themselves move with the number of players; those chosen by hand stay. */
function withUsualMarks(before: MatchPlanRequest, after: MatchPlanRequest): MatchPlanRequest {
  if (!hasUsualMarks(before)) return after
  const marks = defaultMarks(after.format, after.players.length)
  return sameMarks(marks, before.marks) ? after : { ...after, marks, locks: [] }
}

function hasUsualMarks({ format, players, marks }: MatchPlanRequest): boolean {
  return sameMarks(marks, defaultMarks(format, players.length))
}

function sameMarks(one: Marks, other: Marks): boolean {
  return JSON.stringify(one) === JSON.stringify(other)
}

/** The format, with nobody there beyond its end. */
function withLength(request: MatchPlanRequest, format: MatchFormat): MatchPlanRequest {
  const whole = format.periodSeconds.reduce((sum, seconds) => sum + seconds, 0)
  return {
    ...request,
    format,
    players: request.players.map((own) => ({
      ...own,
      from: own.from < whole ? own.from : 0,
      to: own.to !== null && own.to < whole ? own.to : null,
    })),
  }
}
