import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { MatchPack } from '#touchline/match-pack'
import { type MatchPromise, matchPromises, wholeSeconds } from '#touchline/match-promises'
import type { MatchPlayer, MatchState } from '#touchline/match-state'
import { clockAt, type ProjectedSpell, projectedSpells } from '#touchline/projected-spells'
import { type ReplanDeed, replanMatch } from '#touchline/replan-match'

/** Why a player was there for less than the match. */
export type WhyLess = 'cameLate' | 'left' | 'notPlaying' | 'out' | 'sentOff'

export type WatchedPromise = {
  readonly playerId: PlayerId
  /** Promised by its real presence. */
  readonly least: Seconds
  readonly had: Seconds
  /** At the end, if all goes as planned from now on. */
  readonly willHave: Seconds
  /** For which it was or will be there, of the whole match; and why that is less. */
  readonly there: Seconds
  readonly whole: Seconds
  readonly whyLess: WhyLess | null
  /**
   * kept: it has it. planned: the plan gives it. inDanger: the plan does not, and it can still be kept. lost: even from
   * now to the end would not be enough.
   */
  readonly how: 'kept' | 'planned' | 'inDanger' | 'lost'
  /** Playing time by which it must come on, and stay on; null: nothing to be done. */
  readonly latest: Seconds | null
  /** The same by the clock of its period. */
  readonly latestClock: { readonly period: number; readonly second: Seconds } | null
}

/** Of everybody who was there: whether what it was promised is kept, and until when it can be. In the squad's order. */
export function promiseWatch(state: MatchState, pack: Pick<MatchPack, 'policy'>): readonly WatchedPromise[] {
  const whole = wholeSeconds(state)
  const coming = projectedSpells(state)
  const promises = new Map(matchPromises(state, pack).map((promise) => [promise.playerId, promise]))
  return state.players.flatMap((player): WatchedPromise[] => {
    const promise = promises.get(player.id)
    return promise ? [watched(state, { player, promise, whole, coming })] : []
  })
}

function watched(
  state: MatchState,
  given: {
    readonly player: MatchPlayer
    readonly promise: MatchPromise
    readonly whole: Seconds
    readonly coming: readonly ProjectedSpell[]
  },
): WatchedPromise {
  const { player, promise, whole, coming } = given
  const own = coming.filter(({ playerId }) => playerId === player.id)
  const had = player.seconds
  const willHave = had + own.reduce((sum, { start, end }) => sum + end - start, 0)
  const { least, there, left } = promise
  const isMissed = willHave < least
  const how = had >= least ? 'kept' : !isMissed ? 'planned' : had + left < least ? 'lost' : 'inDanger'
  // Who is on has more by the time it goes off; then it must be back.
  const stays = player.line === null ? null : own.find(({ start }) => start <= state.second)
  const byThen = had + (stays ? stays.end - Math.max(stays.start, state.second) : 0)
  const latest = how === 'inDanger' ? whole - (least - byThen) : null
  return {
    ...{ playerId: player.id, least, had, willHave, there, whole, how, latest },
    whyLess: there < whole ? whyLess(player, promise) : null,
    latestClock: latest === null ? null : clockAt(state, latest),
  }
}

function whyLess({ state, isOut, sentOff }: MatchPlayer, { from }: MatchPromise): WhyLess {
  if (isOut) return 'out'
  if (sentOff) return 'sentOff'
  if (state === 'notPlaying') return 'notPlaying'
  if (state === 'gone') return 'left'
  return from > 0 ? 'cameLate' : 'notPlaying'
}

/** The plan that keeps a promise in danger, and the change in it that does. */
export type PromiseFix = {
  readonly deed: ReplanDeed
  /** When the player comes on: playing time, and by the clock of its period. */
  readonly at: Seconds
  readonly clock: { readonly period: number; readonly second: Seconds }
  readonly line: ProjectedSpell['line']
  /** Goes off for it; null: several change, or a place is free. */
  readonly off: PlayerId | null
}

/**
 * The rest planned anew so that a player has what it was promised: with the marks as they are, else with a change as soon
 * as can be. Null where no such plan was found. It takes a moment: to be asked once for each change of what was tapped,
 * not with each tick of a clock. `heard`: the state after a deed.
 */
export function promiseFix(
  state: MatchState,
  pack: Pick<MatchPack, 'policy'>,
  asked: FixAsked,
): PromiseFix | null {
  return (
    fixWith(state, pack, { ...asked, hasSoon: false }) ?? fixWith(state, pack, { ...asked, hasSoon: true })
  )
}

type FixAsked = {
  readonly playerId: PlayerId
  readonly heard: (deed: ReplanDeed) => MatchState
}

function fixWith(
  state: MatchState,
  pack: Pick<MatchPack, 'policy'>,
  { playerId, heard, hasSoon }: FixAsked & { readonly hasSoon: boolean },
): PromiseFix | null {
  const made = replanMatch(state, pack, { hasSoon })
  if (!made.ok) return null
  const after = heard(made.value)
  const kept = promiseWatch(after, pack).find((one) => one.playerId === playerId)
  if (!kept || kept.willHave < kept.least) return null
  const coming = projectedSpells(after)
  const spell = coming.find((one) => one.playerId === playerId && one.start >= state.second)
  if (!spell) return null
  const leaving = coming.filter(
    ({ playerId: id, end }) =>
      end === spell.start && !coming.some((one) => one.playerId === id && one.start === spell.start),
  )
  const inLine = leaving.filter(({ line }) => line === spell.line)
  const off = leaving.length === 1 ? leaving[0] : inLine.length === 1 ? inLine[0] : undefined
  return {
    deed: made.value,
    at: spell.start,
    clock: clockAt(after, spell.start),
    line: spell.line,
    off: off?.playerId ?? null,
  }
}
