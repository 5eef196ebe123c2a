import type { Seconds } from '#common/time'
import { type LengthAsked, lengthAsked, lengthOfPractice } from '#pitch/length-of-practice'
import { linesOfPlayers, presenceOfPlayers } from '#pitch/pitch-presence'
import type { PitchState } from '#pitch/pitch-state'
import { type PlayedTurn, playedTurns } from '#pitch/played-turns'
import type { TurnSource } from '#pitch/timed-turn'
import { turnsOfPitch } from '#pitch/turns-of-pitch'
import type { Passed } from '#practice/replay'
import type { Turn } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'

/** What a practice comes to in the book, in whole seconds from its beginning; it passes `checkPractice`. */
export type PitchBook = {
  readonly register: readonly RegisterLine[]
  /** Who came along for the first time, each with a line of the register. */
  readonly guests: readonly { readonly playerId: PlayerId; readonly name: string }[]
  readonly turns: readonly Turn[]
  readonly passes: readonly Passed[]
  /** `notWritten`: there is no turn, but perhaps a register. */
  readonly written: Extract<Written, TurnSource | 'notWritten'>
  /** See `lengthOfPractice`; null: not known. */
  readonly lengthSeconds: Seconds | null
  /** What only the coach can say of its length; null: nothing. */
  readonly lengthAsked: LengthAsked | null
  /** Where the register ends. */
  readonly lastSecond: Seconds
}

/**
 * The book of what was tapped. A turn that nobody ended in a practice that nobody stopped lasted as long as planned.
 * `lengthSeconds`: of the practice as far as was known before it; null: not known. `answered`: as the coach says it was.
 */
export function bookOfPitch(
  state: PitchState,
  known: { readonly lengthSeconds: Seconds | null; readonly answered?: Seconds | null } = {
    lengthSeconds: null,
  },
): PitchBook {
  const played = withLiveTurn(state)
  const turns = turnsOfPitch(played, state)
  const lastEnd = played.at(-1)?.end ?? 0
  const times = { stopped: stoppedAt(state), lastEnd, stated: known.lengthSeconds }
  const lengthSeconds = lengthOfPractice({ ...times, answered: known.answered ?? null })
  const lastSecond = lengthSeconds ?? lastEnd
  const register = linesOfPlayers(state.players, lastSecond)
  const seen = new Set(register.map(({ playerId }) => playerId))
  return {
    register,
    guests: state.players
      .filter(({ playerId, isGuest }) => isGuest && seen.has(playerId))
      .map(({ playerId, name }) => ({ playerId, name })),
    turns,
    passes: passesOf(state, played).filter(({ playerId }) => seen.has(playerId)),
    written: writtenWay(played),
    lengthSeconds,
    lengthAsked: lengthAsked(times, { hasRegister: state.isRegisterTaken }),
    lastSecond,
  }
}

function withLiveTurn(state: PitchState): readonly PlayedTurn[] {
  const { live, played, players, turns } = state
  if (!live) return played
  const end = live.start + (turns[live.index]?.seconds ?? 1)
  const presence = presenceOfPlayers(players, Number.POSITIVE_INFINITY)
  return [...played, ...playedTurns([{ ...live.timed, end }], presence).turns]
}

function stoppedAt({ beganAt, endedAt }: PitchState): Seconds | null {
  return beganAt === null || endedAt === null ? null : Math.floor((endedAt - beganAt) / 1000)
}

/** As most of its turns were; of as many, the way that says less. */
function writtenWay(played: readonly PlayedTurn[]): PitchBook['written'] {
  if (played.length === 0) return 'notWritten'
  const count = (way: TurnSource) => played.filter(({ source }) => source === way).length
  return (['asPlanned', 'roundByRound', 'tapped'] as const).reduce((most, way) =>
    count(way) > count(most) ? way : most,
  )
}

/** A pass that two phones wrote down is one; it is as long as the turn was that it would have been. */
function passesOf(state: PitchState, played: readonly PlayedTurn[]): readonly Passed[] {
  const once = new Map(state.passes.map((pass) => [`${pass.turn} ${pass.playerId} ${pass.role}`, pass]))
  return [...once.values()].flatMap(({ turn, playerId, role }) => {
    const own = played.find(({ index }) => index === turn)
    const lengthSeconds = own ? own.end - own.start : (state.turns[turn]?.seconds ?? 0)
    return lengthSeconds > 0 ? [{ playerId, role, lengthSeconds }] : []
  })
}
