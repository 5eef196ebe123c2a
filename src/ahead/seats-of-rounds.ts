import type { RequestedDesign } from '#ahead/request'
import { noSeats, type SeatColumn, type SeatSeconds } from '#ahead/seat-column'
import type { Seconds } from '#common/time'
import { situationsAt } from '#exposure/situation'
import { turnFrames } from '#planning/turn-frames'
import { stretchDesign } from '#practice/design-stretch'
import { freeGameFor } from '#practice/free-game-for'
import { placesOfAll } from '#practice/round-places'
import type { Turnout } from '#practice/stretch-areas'

type Rounds = RequestedDesign['rounds']
export type SeatsOffered = { readonly seats: SeatSeconds; readonly liveSeconds: Seconds }

/**
 * A design's rounds for so many: areas smaller or larger as the day's plan would make them, the free game for all. Null:
 * with so few some round would be of another kind, so that it is not this design any more.
 */
export function roundsFor(rounds: Rounds, turnout: Turnout): Rounds | null {
  const titled = rounds.map((round) => ({ ...round, title: '' }))
  const stretched = new Map(
    stretchDesign({ rounds: titled, isMirrored: false }, turnout).map((own) => [own.round, own]),
  )
  const made: Rounds[number][] = []
  for (const [index, round] of titled.entries()) {
    if (round.isFreeGame) {
      if (turnout.present < 2) return null
      made.push(freeGameFor(round, turnout))
      continue
    }
    const own = stretched.get(index)
    if (own?.keepsKind && own.stations.length > 0) made.push({ ...round, stations: own.stations })
    // Too many for it: as it is drawn, and more wait.
    else if (
      placesOfAll(round.stations).all <= turnout.present &&
      placesOfAll(round.stations).keep <= turnout.keepersAble
    )
      made.push(round)
    else return null
  }
  return made
}

/** Seat seconds of some rounds, as far as the practice's time goes: what would end after it is left out, turn by turn. */
export function seatsOfRounds(rounds: Rounds, lengthSeconds: Seconds | null): SeatsOffered {
  const seats: Record<SeatColumn, number> = { ...noSeats }
  let [liveSeconds, clock] = [0, 0]
  let round = -1
  for (const frame of turnFrames(rounds.map((own) => ({ ...own, title: '' })))) {
    if (frame.round === round) clock += frame.gapSeconds
    round = frame.round
    clock += frame.seconds
    if (lengthSeconds !== null && clock > lengthSeconds) break
    liveSeconds += frame.seconds
    for (const { attack, defend, keep } of frame.stations) {
      const own = situationsAt({ attackers: attack, defenders: defend })
      seats[attackColumn[own.attack ?? 'alone']] += attack * frame.seconds
      seats[defendColumn[own.defend ?? 'alone']] += defend * frame.seconds
      seats.keep += keep * frame.seconds
    }
  }
  return { seats, liveSeconds }
}

const attackColumn = {
  outnumbering: 'attackOutnumbering',
  level: 'attackLevel',
  outnumbered: 'attackOutnumbered',
  alone: 'attackAlone',
} as const
const defendColumn = {
  outnumbering: 'defendOutnumbering',
  level: 'defendLevel',
  outnumbered: 'defendOutnumbered',
  alone: 'defendAlone',
} as const
