import type { MatchPlanPlayer } from '#lineup/match-plan'
import { nothingMet } from '#lineup/met-seconds'
import type { TailPlayer } from '#lineup/tail-problem'
import { noWishes } from '#match/format/line-wish'
import { isAble } from '#touchline/is-able'
import type { MatchPack } from '#touchline/match-pack'
import { matchPromises } from '#touchline/match-promises'
import type { MatchPlayer, MatchState } from '#touchline/match-state'
import { pastFairness } from '#touchline/past-fairness'

/** Whoever can be on in the rest of a match, with what it is owed, promised and allowed of it. */
export function tailPlayers(
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
    const met = own?.metSeconds ?? nothingMet
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
        running: runningSpellOf(state, player),
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

/** What a player is in the middle of, or was as the last period ended. */
export function runningSpellOf(
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
