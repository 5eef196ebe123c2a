import type { Seconds } from '#common/time'
import type { MatchPlanPlayer } from '#lineup/match-plan'
import { placesFor } from '#lineup/places-for'
import { type LineUpProblem, type LineUpRules, noRules } from '#lineup/problem'
import { type Tail, type TailPlayer, type TailWindow, tailProblem } from '#lineup/tail-problem'
import { noWishes } from '#match/format/line-wish'
import { isAble } from '#touchline/is-able'
import type { MatchPack } from '#touchline/match-pack'
import { matchPromises } from '#touchline/match-promises'
import type { MatchPlayer, MatchState } from '#touchline/match-state'
import { pastFairness } from '#touchline/past-fairness'
import { type TailWish, tailWindows } from '#touchline/tail-windows'

/** What of a new plan had to be let go, for there to be one. */
export type LetGo = 'ownRules' | 'keeperForPeriod' | 'keepers'

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
  const players = playersOfTail(state, pack, letGo.includes('keepers'))
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

function rulesLeft(state: MatchState, letGo: readonly LetGo[]): LineUpRules {
  const { plan, format, made } = state
  const planned: LineUpRules = plan?.rules ?? {
    ...noRules,
    mayReturn: format.mayReturn,
    mostSubstitutions: format.mostSubstitutions,
    mostKeeperPeriods: format.mostKeeperPeriods,
  }
  const inside = state.spells.filter(({ from }) => from > 0).length
  const used = inside + atBreaks(state)
  const left = (most: number | null, spent: number) => (most === null ? null : Math.max(0, most - spent))
  const rules: LineUpRules = {
    ...planned,
    mostSubstitutions: left(planned.mostSubstitutions, used),
    mostChanges: format.changesAtBreaksOnly
      ? null
      : left(
          planned.mostChanges,
          made.reduce((sum, { on }) => sum + on.length, 0),
        ),
  }
  if (!letGo.includes('ownRules')) return rules
  const own = { leastSpellSeconds: 0, longestSpellSeconds: null, longestOffSeconds: null, mostChanges: null }
  const isFree = letGo.includes('keeperForPeriod')
  return { ...rules, ...own, ...(isFree ? { keeperForPeriod: false, mostKeeperPeriods: null } : {}) }
}

/** Who came on at breaks: on at a kick-off, and not on at the whistle before it. */
function atBreaks({ periods, spells }: MatchState): number {
  return periods.slice(1).reduce((sum, { period }, index) => {
    const before = periods[index]
    const atWhistle = new Set(
      spells
        .filter((one) => one.period === before?.period && one.to === before.length)
        .map(({ playerId }) => playerId),
    )
    const atKickOff = spells.filter((one) => one.period === period && one.from === 0)
    return sum + atKickOff.filter(({ playerId }) => !atWhistle.has(playerId)).length
  }, 0)
}

function playersOfTail(
  state: MatchState,
  pack: Pick<MatchPack, 'policy'>,
  everyoneKeeps: boolean,
): readonly TailPlayer[] {
  const { planSecond, second, format, plan } = state
  const planned = new Map((plan?.players ?? []).map((player) => [player.playerId, player]))
  const promises = new Map(matchPromises(state, pack).map((promise) => [promise.playerId, promise.least]))
  const due = pastFairness(state)
  return state.players.flatMap((player): TailPlayer[] => {
    const { id, sentOff, expectedFrom, expectedUntil, secondsIn } = player
    const back = sentOff?.until ? planSecond + sentOff.until - second : null
    const from = isAble(player) ? 0 : (back ?? expectedFrom)
    if (from === null) return []
    const own: MatchPlanPlayer | undefined = planned.get(id)
    const past = due.get(id) ?? { play: 0, keep: 0 }
    const most = format.mostSecondsADay
    const met = own?.metSeconds ?? { back: 0, middle: 0, forward: 0 }
    return [
      {
        id,
        // Put there by hand, it may stay there.
        keeps: everyoneKeeps || player.keeps || player.line === 'keeper',
        from,
        to: expectedUntil,
        owed: {
          playSeconds: (own?.owed.playSeconds ?? 0) + past.play - player.seconds,
          keepSeconds: (own?.owed.keepSeconds ?? 0) + past.keep - secondsIn.keeper,
          starts: own?.owed.starts ?? 0,
        },
        leastSeconds: Math.max(0, (promises.get(id) ?? 0) - player.seconds),
        mostSeconds: most === null ? null : Math.max(0, most - (own?.playedToday ?? 0) - player.seconds),
        wishes: wishesOf(own, player),
        metSeconds: {
          back: met.back + secondsIn.back,
          middle: met.middle + secondsIn.middle,
          forward: met.forward + secondsIn.forward,
        },
        running: runningOf(state, player),
      },
    ]
  })
}

/** A line in which a coach has put it by hand is one that it plays. */
function wishesOf(own: MatchPlanPlayer | undefined, { line }: MatchPlayer): TailPlayer['wishes'] {
  const wishes = own?.wishes ?? noWishes
  return line === null || line === 'keeper' || wishes[line] !== 'notYet'
    ? wishes
    : { ...wishes, [line]: 'learning' }
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
  const running = state.players.filter(isAble).map((player) => runningOf(state, player))
  const isOn = running.filter(({ line }) => line !== null).length
  const mayCome = running.filter(({ line, hasComeOff }) => line === null && (mayReturn || !hasComeOff)).length
  return isOn + Math.min(mayCome, mostSubstitutions ?? mayCome)
}

function runningOf(
  { period, periods, spells, second }: MatchState,
  player: MatchPlayer,
): TailPlayer['running'] {
  const last = periods.at(-1)
  const own = spells.filter(({ playerId }) => playerId === player.id)
  const atWhistle = own.find((one) => one.period === last?.period && one.to === last.length)
  const kept = new Set(own.filter(({ line }) => line === 'keeper').map((one) => one.period))
  if (period && player.line === 'keeper') kept.delete(period.period)
  return {
    line: period ? player.line : (atWhistle?.line ?? null),
    seconds: period ? Math.max(0, Math.min(second - player.placedSince, second - period.start)) : 0,
    hasComeOff: period ? player.hasComeOff : own.length > 0 && !atWhistle,
    periodsKept: kept.size,
  }
}
