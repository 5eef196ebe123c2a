import { type Placed, placedIn } from '#pitch/changeover'
import type { Deed } from '#pitch/pitch-event'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import type { Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import { freePlayers, mayStandAt, swapPartners } from '#ui/pitch/partners'
import {
  exchanged,
  swapInRound,
  swapSentence,
  turnsOfRound,
  withoutPlayer,
  withPlayerAt,
} from '#ui/pitch/round-deeds'

/** What one player can do about its place now: in the ball that is being played, or in those of the round to come. */
export type Moves = {
  /** Its place; null: it waits, or has just left the place. */
  readonly own: Placed | null
  readonly stations: readonly Station[]
  /** Place of the turn in the plan's list; null: nothing is left to be played. */
  readonly turn: number | null
  readonly partners: readonly PlayerId[]
  /** Who could go in for it, whoever has waited longest first. */
  readonly substitutes: readonly PlayerId[]
  readonly swap: (other: PlayerId) => readonly Deed[]
  /** `instead` null: its place stays empty. */
  readonly fill: (instead: PlayerId | null) => readonly Deed[]
}

/** A helper's phone changes no plan: without a ball that is being played it moves nobody. */
export function movesOf(
  playerId: PlayerId,
  { pack, state }: { readonly pack: Pick<PitchPack, 'players' | 'viewer'>; readonly state: PitchState },
): Moves {
  const { live, next, plan } = state
  const stations = live?.stations ?? next?.stations ?? []
  const turn = live?.index ?? next?.index ?? null
  const own = placedIn(stations).find((placed) => placed.playerId === playerId) ?? null
  // Whoever left while the ball is played has no place any more, and the place waits for somebody.
  const left = live?.vacant.find((placed) => placed.playerId === playerId) ?? null
  const canMove = live !== null || pack.viewer.mayReplan
  const inPlan = (other: PlayerId): Deed | null =>
    turn === null
      ? null
      : { kind: 'replan', ...swapInRound(state.turns, turn, [playerId, other]), sentence: swapSentence }
  const now = (places: readonly Station[]): readonly Deed[] =>
    live ? [{ kind: 'change', start: live.eventId, stations: places }] : []
  const filled = (instead: PlayerId) =>
    left ? withPlayerAt(stations, left, instead) : withoutPlayer(stations, playerId, instead)
  const ofRound = (deed: Deed | null) =>
    deed?.kind === 'replan' && turn !== null
      ? turnsOfRound(deed.turns, state.turns[turn]?.round ?? -1).map((one) => one.stations)
      : []
  const may = mayStandAt(pack, plan)
  const mayGoIn = (other: PlayerId) =>
    live ? may([other], [filled(other)]) : may([playerId, other], ofRound(inPlan(other)))
  const maySwap = (other: PlayerId) =>
    may([playerId, other], live ? [exchanged(stations, playerId, other)] : ofRound(inPlan(other)))
  const planned = (other: PlayerId) => [inPlan(other)].flatMap((deed) => deed ?? [])
  return {
    own,
    stations,
    turn,
    partners: canMove ? swapPartners({ playerId, state, stations, mayStand: maySwap }) : [],
    substitutes:
      canMove && (own || left)
        ? freePlayers(state, stations).filter((id) => id !== playerId && mayGoIn(id))
        : [],
    swap: (other) => (live ? now(exchanged(stations, playerId, other)) : planned(other)),
    fill: (instead) => {
      if (instead === null) return left ? [] : now(withoutPlayer(stations, playerId, null))
      return live ? now(filled(instead)) : planned(instead)
    },
  }
}
