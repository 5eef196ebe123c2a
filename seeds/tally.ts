import type { Situation } from '#exposure/column'
import { situationsAt } from '#exposure/situation'
import { fairKeepShare, fairSeatShare, type Places } from '#fairness/fair-share'
import type { Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Seconds still owed to a player, by role and with more or fewer players than the other side; below zero: had too much. */
export type Owed = Record<'attack' | 'defend' | 'keep' | 'rest' | 'outnumbering' | 'outnumbered', number>

/**
 * How much of its fair share a coach has in mind for a player; 1 is all of it. What is left out of attack becomes
 * defence, what is left out of playing becomes waiting.
 */
export type InMind = { readonly attack: number; readonly playing: number }

export type TallyTurn = {
  readonly stations: readonly Station[]
  readonly present: readonly PlayerId[]
  readonly able: ReadonlySet<PlayerId>
  readonly seconds: number
  readonly inMind: (playerId: PlayerId) => InMind
}

/** A coach's memory of who has had what, carried from session to session. */
export class Tally {
  readonly #owed = new Map<PlayerId, Owed>()

  of(playerId: PlayerId): Owed {
    const known = this.#owed.get(playerId)
    if (known) return known
    const nothing = { attack: 0, defend: 0, keep: 0, rest: 0, outnumbering: 0, outnumbered: 0 }
    this.#owed.set(playerId, nothing)
    return nothing
  }

  /** Adds what each present player was due in a turn and takes off what it got. */
  record(turn: TallyTurn): void {
    const kept = new Set(turn.stations.flatMap((station) => station.keep))
    const isAble = (playerId: PlayerId) => turn.able.has(playerId) || kept.has(playerId)
    const places = {
      present: turn.present.length,
      keeperSeats: kept.size,
      able: turn.present.filter(isAble).length,
    }
    const seats = seatsOf(turn.stations)
    for (const playerId of turn.present)
      this.#addDue(turn, { playerId, places, seats, isAble: isAble(playerId) })
    this.#takeOff(turn)
  }

  #addDue(
    turn: TallyTurn,
    at: {
      readonly playerId: PlayerId
      readonly places: Places
      readonly seats: ReturnType<typeof seatsOf>
      readonly isAble: boolean
    },
  ): void {
    const owed = this.of(at.playerId)
    const inMind = turn.inMind(at.playerId)
    const due = (seats: number) =>
      fairSeatShare(at.places, { seats, isAble: at.isAble }) * turn.seconds * inMind.playing
    const keep = fairKeepShare(at.places, at.isAble) * turn.seconds
    const playing = due(at.seats.attack) + due(at.seats.defend)
    const attack = due(at.seats.attack) * inMind.attack
    owed.attack += attack
    owed.defend += playing - attack
    owed.keep += keep
    owed.rest += turn.seconds - playing - keep
    owed.outnumbering += due(at.seats.outnumbering)
    owed.outnumbered += due(at.seats.outnumbered)
  }

  #takeOff(turn: TallyTurn): void {
    const resting = new Set(turn.present)
    for (const station of turn.stations) {
      for (const role of ['attack', 'defend', 'keep'] as const) {
        const situation = sideSituation(station, role)
        for (const playerId of station[role]) {
          const owed = this.of(playerId)
          owed[role] -= turn.seconds
          if (situation === 'outnumbering' || situation === 'outnumbered') owed[situation] -= turn.seconds
          resting.delete(playerId)
        }
      }
    }
    for (const playerId of resting) this.of(playerId).rest -= turn.seconds
  }
}

function sideSituation(station: Station, role: 'attack' | 'defend' | 'keep'): Situation | null {
  if (role === 'keep') return null
  return situationsAt({ attackers: station.attack.length, defenders: station.defend.length })[role]
}

function seatsOf(
  stations: readonly Station[],
): Readonly<Record<'attack' | 'defend' | 'outnumbering' | 'outnumbered', number>> {
  const seats = { attack: 0, defend: 0, outnumbering: 0, outnumbered: 0 }
  for (const station of stations) {
    for (const role of ['attack', 'defend'] as const) {
      seats[role] += station[role].length
      const situation = sideSituation(station, role)
      if (situation === 'outnumbering' || situation === 'outnumbered')
        seats[situation] += station[role].length
    }
  }
  return seats
}
