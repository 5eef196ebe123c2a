import type { Interval } from '#common/time'
import { matchSpans } from '#exposure/match-spans'
import type { Match } from '#match/match'
import type { Practice } from '#practice/practice'
import type { PlayerId } from '#squad/player'

/** A player in goal who is not among those who may keep, in a turn (its place from 0) of a practice. */
export type KeptUnaskedInTurn = { readonly turn: number; readonly playerId: PlayerId }

/** The same in a span of a match, inside a period (its place from 0). */
export type KeptUnaskedInSpan = {
  readonly period: number
  readonly span: Interval
  readonly playerId: PlayerId
}

/** Every turn in which someone kept goal who was asked not to. In order of time, station by station. */
export function keptUnaskedInPractice(
  practice: Pick<Practice, 'turns'>,
  players: { readonly able: ReadonlySet<PlayerId> },
): readonly KeptUnaskedInTurn[] {
  return practice.turns.flatMap((own, turn) =>
    own.stations
      .flatMap((station) => station.keep)
      .filter((playerId) => !players.able.has(playerId))
      .map((playerId) => ({ turn, playerId })),
  )
}

/** Every span of a match in which someone kept goal who was asked not to. In order of time. */
export function keptUnaskedInMatch(
  match: Pick<Match, 'periods' | 'register' | 'spells'>,
  players: { readonly able: ReadonlySet<PlayerId> },
): readonly KeptUnaskedInSpan[] {
  return matchSpans(match).flatMap((span) =>
    span.seats
      .filter((seats) => seats.column.role === 'keep')
      .flatMap((seats) => seats.playerIds)
      .filter((playerId) => !players.able.has(playerId))
      .map((playerId) => ({ period: span.periodIndex, span: { from: span.start, to: span.end }, playerId })),
  )
}
