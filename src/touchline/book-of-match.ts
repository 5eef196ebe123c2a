import type { Seconds } from '#common/time'
import type { Goals } from '#match/goals'
import type { Period, Spell } from '#match/match'
import { linesOfPlayers } from '#pitch/pitch-presence'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import type { Written } from '#squad/written'
import { assumedEvent } from '#touchline/assumed-event'
import { foldMatch, type MatchToFold } from '#touchline/fold-match'
import { bookStartOf, momentOfSecond } from '#touchline/match-clock'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'

/** What a match comes to in the book, in whole seconds from the first kick-off, breaks included; it passes `checkMatch`. */
export type MatchBook = {
  /** As long as was played: the time for which the clock stood is left out. */
  readonly periods: readonly Period[]
  readonly register: readonly RegisterLine[]
  /** Who came along for the first time, each with a line of the register. */
  readonly guests: readonly { readonly playerId: PlayerId; readonly name: string }[]
  /** In the order of the register, each in order of time. */
  readonly spells: readonly Spell[]
  /** `asPlanned`: nothing was tapped but kick-offs, whistles, goals and who was there before the match. */
  readonly written: Extract<Written, 'tapped' | 'asPlanned' | 'notWritten'>
  /** Null: none was tapped. */
  readonly goals: Goals | null
  /** Periods (from 0) whose whistle nobody tapped: they are as long as planned, or until the next kick-off. */
  readonly endsAssumed: readonly number[]
  /** Where the last period ends. */
  readonly lastSecond: Seconds
}

/** The book of what was tapped. A period that nobody ended was as long as planned, or as long as anything was tapped in it. */
export function bookOfMatch(pack: MatchToFold, events: readonly MatchEvent[]): MatchBook {
  const state = foldMatch(pack, events)
  const whistle = whistleForgotten(state)
  return bookOfState(whistle ? foldMatch(pack, [...events, whistle]) : state, whistle !== null)
}

function bookOfState(state: MatchState, isLastAssumed: boolean): MatchBook {
  const played = state.periods.filter(({ length }) => (length ?? 0) > 0)
  const startOf = new Map(played.map((own) => [own.period, bookStartOf(state, own)]))
  const periods = played.map((own): Period => {
    const start = startOf.get(own.period) ?? 0
    return { start, end: start + (own.length ?? 0) }
  })
  const lastSecond = periods.at(-1)?.end ?? 0
  const people = state.players.map(({ id, segments }) => ({ playerId: id, segments }))
  const register = periods.length > 0 ? linesOfPlayers(people, lastSecond) : []
  const seen = new Set(register.map(({ playerId }) => playerId))
  const spells = state.players.flatMap(({ id }) =>
    state.spells
      .filter(({ playerId }) => playerId === id)
      .flatMap(({ line, period, from, to }): Spell[] => {
        const start = startOf.get(period)
        return start === undefined || to === null
          ? []
          : [{ playerId: id, line, start: start + from, end: start + to }]
      })
      .sort((one, other) => one.start - other.start),
  )
  const assumed = played.filter(({ isEndAssumed }) => isEndAssumed).map(({ period }) => period)
  const last = played.at(-1)?.period
  return {
    periods,
    register,
    guests: state.players
      .filter(({ id, isGuest }) => isGuest && seen.has(id))
      .map(({ id, name }) => ({ playerId: id, name })),
    spells,
    written: spells.length === 0 ? 'notWritten' : isAsPlanned(state) ? 'asPlanned' : 'tapped',
    goals: state.goals.ours + state.goals.theirs > 0 ? state.goals : null,
    endsAssumed: isLastAssumed && last !== undefined ? [...new Set([...assumed, last])] : assumed,
    lastSecond,
  }
}

/** The whistle that nobody tapped of the last period; null: it was tapped. */
function whistleForgotten({ period, at }: MatchState): MatchEvent | null {
  if (!period) return null
  const end = Math.max(at + 1, momentOfSecond(period, period.planned))
  return assumedEvent({ at: end, deed: { kind: 'periodEnd', period: period.period } }, 0)
}

const changesNothing: ReadonlySet<MatchDeed['kind']> = new Set([
  'kickOff',
  'periodEnd',
  'clockStops',
  'clockGoesOn',
  'goal',
  'fullTime',
])

function isAsPlanned({ plan, beganAt, undoable }: MatchState): boolean {
  return (
    plan !== null &&
    undoable.every(
      ({ event: { at, deed } }) =>
        changesNothing.has(deed.kind) || (deed.kind === 'register' && beganAt !== null && at <= beganAt),
    )
  )
}
