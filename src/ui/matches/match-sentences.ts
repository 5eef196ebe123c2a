import { apportionByLargestRemainder } from '#common/apportion'
import type { Day } from '#common/time'
import type { BelowReason } from '#fairness/matches/below-promise'
import type { LeastTimeKept } from '#fairness/matches/least-time-kept'
import { addLineSeconds, type LineSeconds, noLineSeconds } from '#fairness/matches/line-seconds'
import type { LeastTime } from '#match/format/match-format'
import { lines } from '#match/match'
import { differenceText } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { formatDay } from '#ui/format-day'
import { counted, listed } from '#ui/plural'
import { words } from '#ui/words'

const percent = (share: number) => Math.round(share * 100)

/** "Over 9 matches everyone had between 41 and 58 % of the time they were there for." */
export function rangeSentence(of: {
  readonly matches: number
  readonly least: number
  readonly most: number
}): string {
  const [least, most] = [percent(of.least), percent(of.most)]
  const had = least === most ? `${least} %` : `between ${least} and ${most} %`
  return `Over ${counted(of.matches, 'match', 'matches')} everyone had ${had} of the time they were there for.`
}

/** "Widest difference from an even share: Ada, 22 min less." Null where everybody had the even share, to the minute. */
export function widestSentence(
  rows: readonly { readonly name: string; readonly gapSeconds: number }[],
): string | null {
  const gaps = rows.map(({ name, gapSeconds }) => ({ name, minutes: wholeMinutes(gapSeconds) }))
  const widest = Math.max(0, ...gaps.map(({ minutes }) => Math.abs(minutes)))
  if (widest === 0) return null
  const said = gaps
    .filter(({ minutes }) => Math.abs(minutes) === widest)
    .map(({ name, minutes }) => `${name}, ${differenceText(minutes)}`)
  return `Widest difference from an even share: ${said.join('; ')}.`
}

/** What everyone is promised of a match, as the squad's format and the club's policy say it together. */
export function promiseSentence(leastTime: LeastTime | null, policyShare: number): string {
  const share = leastTime?.share ?? policyShare
  const ofTime = `${percent(share)} % of the time they are there for`
  const periods = leastTime?.periods
    ? `${counted(leastTime.periods, 'whole period')} for who is there throughout`
    : null
  const late = (leastTime?.late ?? []).map(
    (rule) => `${counted(rule.periods, 'period')} for who comes during period ${rule.arrivesIn}`,
  )
  const parts = [share > 0 ? ofTime : null, periods, ...late].filter((part) => part !== null)
  if (parts.length === 0) return 'No least time is promised.'
  const where = leastTime?.wherePossible ? ', where the numbers allow it' : ''
  return `Everyone is promised, in each match: ${listed(parts)}${where}.`
}

const reasons: Readonly<Record<Exclude<BelowReason, null>, string>> = {
  late: 'came late',
  left: 'left early',
  out: 'out for today',
  notPlaying: 'could not play for some of it',
  agreed: 'fewer turns agreed',
}

/** "12 min of the 25 promised, came late". */
export function belowText(of: {
  readonly playedSeconds: number
  readonly leastSeconds: number
  readonly reason: BelowReason
}): string {
  const played = wholeMinutes(of.playedSeconds)
  const least = wholeMinutes(of.leastSeconds)
  // Less than a minute apart: both in seconds, or it would read as kept.
  const said =
    played < least
      ? `${played} min of the ${least} promised`
      : `${Math.round(of.leastSeconds - of.playedSeconds)} s less than the ${least} min promised`
  return of.reason === null ? said : `${said}, ${reasons[of.reason]}`
}

/** "Started 5 of 9 matches; an even sharing of the first places would give 5.6." */
export function startsSentence(
  figures: readonly { readonly isStart: boolean; readonly dueStarts: number }[],
): string {
  const starts = figures.filter(({ isStart }) => isStart).length
  const due = figures.reduce((sum, { dueStarts }) => sum + dueStarts, 0)
  return `Started ${starts} of ${counted(figures.length, 'match', 'matches')}; an even sharing of the first places would give ${Math.round(due * 10) / 10}.`
}

/** "Of the time on the pitch: keeper 10 %, back 60 %, forward 30 %." Empty for who was never on. */
export function linesSentence(figures: readonly { readonly lines: LineSeconds }[]): string {
  const seconds = figures.map((figure) => figure.lines).reduce(addLineSeconds, noLineSeconds)
  const all = lines.reduce((sum, line) => sum + seconds[line], 0)
  if (all === 0) return ''
  const shares = apportionByLargestRemainder({ weights: lines.map((line) => seconds[line]), seats: 100 })
  const parts = lines
    .map((line, index) => ({ line, share: shares[index] ?? 0 }))
    .filter(({ line }) => seconds[line] > 0)
    .map(({ line, share }) => `${words.line[line]} ${share} %`)
  return `Of the time on the pitch: ${parts.join(', ')}.`
}

/** "In 2 of 9 matches somebody had less than 50 % of the time there: 3 times in all, 1 of them there throughout." */
export function leastTimeSentence(kept: LeastTimeKept): string {
  const ofTime = `${percent(kept.share)} % of the time there`
  const { matches, matchesBelow, timesBelow, timesThroughout } = kept
  if (matchesBelow === 0)
    return matches === 1
      ? `Everyone had at least ${ofTime} in the one match.`
      : `Everyone had at least ${ofTime} in all ${matches} matches.`
  const throughout = timesThroughout === 0 ? 'none' : String(timesThroughout)
  return `In ${matchesBelow} of ${counted(matches, 'match', 'matches')} somebody had less than ${ofTime}: ${counted(timesBelow, 'time')} in all, ${throughout} of them there throughout.`
}

/** "Bo played 65 min on Sat, 4 Oct 2025 in 3 matches; the format allows 60 min a day." */
export function longDayText(of: {
  readonly name: string
  readonly day: Day
  readonly matches: number
  readonly playedSeconds: number
  readonly mostSecondsADay: number
}): string {
  // Up and down, so that a limit passed by seconds is not shown as kept.
  const played = Math.ceil(of.playedSeconds / 60)
  const allowed = Math.floor(of.mostSecondsADay / 60)
  return `${of.name} played ${played} min on ${formatDay(of.day)} in ${counted(of.matches, 'match', 'matches')}; the format allows ${allowed} min a day.`
}
