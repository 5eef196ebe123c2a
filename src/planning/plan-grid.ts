import type { PlanLock } from '#planning/practice-plan'
import { otherHalf } from '#planning/problem-of-request'
import { type TurnFrame, turnFrames } from '#planning/turn-frames'
import type { DesignRound } from '#practice/design'
import type { SeatRole } from '#practice/turn'
import { away, resting, roleOf, stationOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import type { PlayerId } from '#squad/player'

/** Where somebody is in a turn; areas from 1, null where the turn has only one. */
export type GridPlace =
  | { readonly role: SeatRole; readonly area: number | null }
  | { readonly role: 'rest' }
  | { readonly role: 'away' }

export type GridCell = GridPlace & {
  /** Comes on: waited, or was not there, in the turn before. Never in the first turn. */
  readonly isOn: boolean
  /** Goes off: had a place in the turn before. */
  readonly isOff: boolean
  readonly isLocked: boolean
}

export type GridRow = { readonly playerId: PlayerId; readonly cells: readonly GridCell[] }
/** Turns of one round, from 0, `to` not included. */
export type GridRound = { readonly round: number; readonly from: number; readonly to: number }

/** A timetable as children × turns. */
export function gridOfPlan(
  plan: RotationPlan,
  of: {
    readonly rounds: readonly DesignRound[]
    readonly playerIds: readonly PlayerId[]
    readonly locks: readonly PlanLock[]
  },
): { readonly rows: readonly GridRow[]; readonly rounds: readonly GridRound[] } {
  const frames = turnFrames(of.rounds)
  // A place that is held fast in one half of a free game is in the other.
  const locked = new Set(
    of.locks.flatMap(({ turn, playerId }) =>
      [turn - 1, otherHalf(frames, turn - 1) ?? turn - 1].map((at) => `${at} ${playerId}`),
    ),
  )
  return {
    rounds: roundsOf(frames),
    rows: of.playerIds.map((playerId, player) => ({
      playerId,
      cells: frames.map((frame, turn) => {
        const place = plan[turn]?.[player] ?? away
        const before = turn === 0 ? null : (plan[turn - 1]?.[player] ?? away)
        return {
          ...placeOf(place, frame),
          isOn: before !== null && place > resting && before <= resting,
          isOff: before !== null && place <= resting && before > resting,
          isLocked: locked.has(`${turn} ${playerId}`),
        }
      }),
    })),
  }
}

function placeOf(place: number, frame: TurnFrame): GridPlace {
  if (place === away) return { role: 'away' }
  const role = roleOf(place)
  if (role === 'rest') return { role }
  return { role, area: frame.stations.length > 1 ? stationOf(place) + 1 : null }
}

function roundsOf(frames: readonly TurnFrame[]): readonly GridRound[] {
  const rounds: { round: number; from: number; to: number }[] = []
  frames.forEach(({ round }, turn) => {
    const last = rounds.at(-1)
    if (last?.round === round) last.to = turn + 1
    else rounds.push({ round, from: turn, to: turn + 1 })
  })
  return rounds
}
