import type { Seconds } from '#common/time'
import { allowedPlaces, offPlace } from '#lineup/line-up-board'
import { isPeriodRunning } from '#lineup/period-running'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { goalOpens } from '#solver/goal-opens'

/** Where a player is, lines of the field not told apart. */
export const offField = 0
export const onField = 1
export const inGoal = 2
const newPeriod = -1

/** As much of a player's past as its own rules look at; what they do not look at stands at nothing. */
export type RowState = {
  readonly place: number
  readonly on: Seconds
  readonly field: Seconds
  readonly off: Seconds
  /** Periods it has kept goal in, and whether this one is among them. */
  readonly kept: number
  readonly keptNow: boolean
  readonly wasOn: boolean
  readonly gone: boolean
  readonly seconds: Seconds
  readonly goal: Seconds
}

export type RowStep = { readonly state: RowState; readonly changes: number; readonly comings: number }

export type RowSteps = {
  readonly first: RowState
  /** Null: a rule forbids it. */
  readonly step: (state: RowState, window: number, place: number) => RowStep | null
}

/** Every rule that looks at one player alone, but for its most time, as steps from window to window. */
export function rowSteps(problem: LineUpProblem, player: number): RowSteps {
  const { rules, windows, hasStart } = problem
  const own = problem.players[player]
  if (!own) throw new Error('No such player')
  const { running } = own
  const isRunning = isPeriodRunning(problem)
  const allowed = allowedPlaces(problem).subarray(player * windows.length, (player + 1) * windows.length)
  const longestSpell = rules.longestSpellSeconds ?? Number.POSITIVE_INFINITY
  const longestOff = rules.longestOffSeconds ?? Number.POSITIVE_INFINITY
  const remembers = !rules.mayReturn || rules.mostSubstitutions !== null
  const opens = goalOpens(problem)
  const counts = rules.mostKeeperPeriods !== null && own.keeps
  const now = running.line === null ? offField : running.line === 'keeper' ? inGoal : onField

  const may = (window: number, place: number) => {
    const bits = allowed[window] ?? 0
    const places = windows[window]?.places
    if (place === offField) return (bits & (1 << offPlace)) !== 0
    if (place === inGoal) return (bits & 1) !== 0 && (places?.keeper ?? 0) > 0
    return (
      ((bits & 2) !== 0 && (places?.back ?? 0) > 0) ||
      ((bits & 4) !== 0 && (places?.middle ?? 0) > 0) ||
      ((bits & 8) !== 0 && (places?.forward ?? 0) > 0)
    )
  }

  return {
    first: {
      place: isRunning ? now : newPeriod,
      on: isRunning && now !== offField ? running.seconds : 0,
      field: isRunning && now === onField ? running.seconds : 0,
      off: isRunning && now === offField ? running.seconds : 0,
      kept: counts ? running.periodsKept + (isRunning && now === inGoal ? 1 : 0) : 0,
      keptNow: counts && isRunning && now === inGoal,
      wasOn: remembers && now !== offField,
      gone: !rules.mayReturn && running.hasComeOff,
      seconds: 0,
      goal: 0,
    },
    step: (before, index, place) => {
      const window = windows[index]
      if (!window || !may(index, place)) return null
      const starts = index > 0 && windows[index - 1]?.period !== window.period
      const old = starts ? { ...before, place: newPeriod, on: 0, field: 0, off: 0, keptNow: false } : before
      const length = windowSeconds(window)
      const isThere = own.isThere[index] ?? false
      const mustKeep = rules.keeperForPeriod && isThere && window.places.keeper > 0
      if (old.place === inGoal && place !== inGoal && mustKeep) return null
      if (place === offField) {
        const wasPlaying = old.place === onField || old.place === inGoal
        if (wasPlaying && isThere && old.on < rules.leastSpellSeconds) return null
        const off = isThere ? old.off + length : 0
        if (off > longestOff) return null
        const state = {
          ...old,
          place,
          on: 0,
          field: 0,
          off: rules.longestOffSeconds === null ? 0 : off,
          wasOn: false,
          gone: !rules.mayReturn && (old.gone || old.wasOn),
        }
        return { state, changes: 0, comings: 0 }
      }
      if (old.gone) return null
      if (place === inGoal && old.place !== inGoal && !opens[index]) return null
      const field = place === inGoal ? 0 : old.field + length
      if (field > longestSpell) return null
      const kept = old.kept + (counts && place === inGoal && !old.keptNow ? 1 : 0)
      if (kept > old.kept && kept > (rules.mostKeeperPeriods ?? kept)) return null
      return {
        state: {
          place,
          on: Math.min(rules.leastSpellSeconds, old.on + length),
          field: rules.longestSpellSeconds === null ? 0 : field,
          off: 0,
          kept,
          keptNow: old.keptNow || kept > old.kept,
          wasOn: remembers,
          gone: false,
          seconds: old.seconds + length,
          goal: old.goal + (place === inGoal ? length : 0),
        },
        changes: old.place === offField ? 1 : 0,
        comings: rules.mostSubstitutions !== null && !old.wasOn && !(index === 0 && hasStart) ? 1 : 0,
      }
    },
  }
}

/** States from which the same may follow have the same key; at the end of a period only what outlasts it counts. */
export function keyOfState(
  state: RowState,
  kept: { readonly endsPeriod: boolean; readonly tellsTime: boolean },
): string {
  const inside = kept.endsPeriod
    ? ''
    : `${state.place},${state.on},${state.field},${state.off},${state.keptNow ? 1 : 0}`
  const time = kept.tellsTime ? `${state.seconds},${state.goal}` : ''
  return `${inside};${state.kept},${state.wasOn ? 1 : 0},${state.gone ? 1 : 0};${time}`
}
