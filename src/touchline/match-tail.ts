import type { Seconds } from '#common/time'
import { placesFor } from '#lineup/places-for'
import type { LineUpProblem } from '#lineup/problem'
import { type Tail, type TailPlayer, type TailWindow, tailProblem } from '#lineup/tail-problem'
import { isAble } from '#touchline/is-able'
import type { MatchPack } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { type LetGo, rulesLeft } from '#touchline/rules-left'
import { runningSpellOf, tailPlayers } from '#touchline/tail-players'
import { type TailWish, tailWindows } from '#touchline/tail-windows'

/** The rest of a match as a problem, for the quick search and for the exact one. */
export type MatchTail = {
  readonly from: Seconds
  readonly problem: LineUpProblem
  /** Playing time so far, in the order of the problem's players. */
  readonly played: readonly Seconds[]
  readonly letGo: readonly LetGo[]
}

/** The rest of the match as it is to be planned now; null: nothing is left. */
export function problemOfRest(state: MatchState, pack: Pick<MatchPack, 'policy'>): MatchTail | null {
  return tailsToTry(state, pack).next().value ?? null
}

/** The rest of the match, with more and more of the rules let go, each made when it is asked for; none: nothing is left. */
export function* tailsToTry(
  state: MatchState,
  pack: Pick<MatchPack, 'policy'>,
  wish: TailWish = {},
): Generator<MatchTail, undefined> {
  const windows = tailWindows({ ...state, places: placesFor(state.places, mostOn(state)) }, wish)
  if (state.status === 'ended' || windows.length === 0) return
  for (const letGo of attempts(state)) yield matchTail(state, pack, { windows, letGo })
}

/** All rules first; then without the coach's own; then with a keeper who may change; goal must be kept by somebody. */
function attempts(state: MatchState): readonly (readonly LetGo[])[] {
  const needsKeeper =
    state.places.keeper > 0 && !state.players.some((player) => isAble(player) && player.keeps)
  const always: readonly LetGo[] = needsKeeper ? ['keepers'] : []
  return [always, [...always, 'ownRules'], [...always, 'ownRules', 'keeperForPeriod']]
}

function matchTail(
  state: MatchState,
  pack: Pick<MatchPack, 'policy'>,
  given: { readonly windows: readonly TailWindow[]; readonly letGo: readonly LetGo[] },
): MatchTail {
  const { windows, letGo } = given
  const { plan } = state
  const players = tailPlayers(state, pack, letGo.includes('keepers'))
  const isOn = new Set(state.on.map(({ playerId }) => playerId))
  const tail: Tail = {
    windows: withinLimits(windows, players),
    players,
    rules: rulesLeft(state, letGo),
    // Two who are on together now, because somebody put them there, stay as they are.
    apart: (plan?.apart ?? []).filter(([one, other]) => !(isOn.has(one) && isOn.has(other))),
    together: plan?.together ?? [],
    locks: plan?.locks ?? [],
    hasStart: state.status === 'notBegun',
  }
  const soFar = new Map(state.players.map(({ id, seconds }) => [id, seconds]))
  return {
    from: windows[0]?.start ?? 0,
    problem: tailProblem(tail),
    played: players.map(({ id }) => soFar.get(id) ?? 0),
    letGo,
  }
}

/** Whoever has no time left today cannot be held on. */
function withinLimits(windows: readonly TailWindow[], players: readonly TailPlayer[]): readonly TailWindow[] {
  const left = new Map(players.map(({ id, mostSeconds }) => [id, mostSeconds]))
  const start = windows[0]?.start ?? 0
  return windows.map((window) => ({
    ...window,
    held: window.held.filter(
      ({ id, place }) => place === 'off' || (left.get(id) ?? Number.POSITIVE_INFINITY) >= window.end - start,
    ),
  }))
}

/** Players who can be on: where no more may come on, or come back, a place stays empty. */
function mostOn(state: MatchState): number {
  if (state.status === 'notBegun') return Number.POSITIVE_INFINITY
  const { mostSubstitutions, mayReturn } = rulesLeft(state, [])
  const running = state.players.filter(isAble).map((player) => runningSpellOf(state, player))
  const isOn = running.filter(({ line }) => line !== null).length
  const mayCome = running.filter(({ line, hasComeOff }) => line === null && (mayReturn || !hasComeOff)).length
  return isOn + Math.min(mayCome, mostSubstitutions ?? mayCome)
}
