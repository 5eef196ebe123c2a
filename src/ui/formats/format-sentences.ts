import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import { mostPlayersFor } from '#match/format/least-possible'
import type { LeastTime, MatchFormat, Shape } from '#match/format/match-format'
import { textOfShape } from '#match/format/shape-text'
import { capital } from '#ui/capital'
import { counted } from '#ui/plural'

export type FormatSentence = { readonly about: string; readonly text: string }

/** A format in plain words, part by part; what it says nothing of is left out. */
export function formatSentences(format: MatchFormat): readonly FormatSentence[] {
  return [
    { about: 'Players', text: playersText(format) },
    { about: 'Time', text: timeText(format) },
    { about: 'Changes', text: changesText(format) },
    { about: 'Least time', text: leastTimeText(format) },
    ...(format.mostKeeperPeriods === null
      ? []
      : [{ about: 'Goal', text: goalText(format.mostKeeperPeriods) }]),
    ...(format.mostSecondsADay === null
      ? []
      : [
          {
            about: 'In a day',
            text: `A player plays ${minutes(format.mostSecondsADay)} at most, all matches of the day together.`,
          },
        ]),
    ...(format.ages === null
      ? []
      : [{ about: 'Ages', text: `Squads under ${format.ages[0]} to under ${format.ages[1]}.` }]),
  ]
}

/** "7 a side, 2 × 25 minutes": enough to tell formats apart in a list. */
export function formatInShort({ aSide, hasKeeper, periodSeconds, isShortGames }: MatchFormat): string {
  const [first = 0] = periodSeconds
  const isEven = periodSeconds.every((seconds) => seconds === first)
  const time = isEven
    ? `${isShortGames ? `${periodSeconds.length} games` : periodSeconds.length} × ${minutes(first)}`
    : `${periodSeconds.map(amount).join(' + ')} minutes`
  return `${aSide} a side${hasKeeper ? '' : ' without keepers'}, ${time}`
}

function playersText(format: MatchFormat): string {
  const { aSide, hasKeeper, shapes, mostPlayers, fewestPlayers } = format
  const keeper = hasKeeper ? 'one of them in goal' : 'nobody in goal'
  const most = mostPlayers === null ? '' : ` ${mostPlayers} at most may be on the list of a match.`
  const fewest = fewestPlayers === null ? '' : ` With fewer than ${fewestPlayers} a match is not begun.`
  return `${capital(countWord(aSide))} at once, ${keeper}; as ${andList(shapes.map(unbroken))}.${most}${fewest}`
}

/** With hyphens at which no line breaks. */
function unbroken(shape: Shape): string {
  return textOfShape(shape).replaceAll('-', '\u2011')
}

function timeText({ periodSeconds, breakSeconds, isShortGames }: MatchFormat): string {
  const [first = 0] = periodSeconds
  const count = periodSeconds.length
  const isEven = periodSeconds.every((seconds) => seconds === first)
  const name = isShortGames ? 'short game' : 'period'
  const length = isEven ? `of ${minutes(first)}` : `of ${andList(periodSeconds.map(amount))} minutes`
  const whole = count === 1 ? `One ${name} ${length}` : `${capital(countWord(count))} ${name}s ${length}`
  const pause = count === 1 || breakSeconds === 0 ? '' : `, ${minutes(breakSeconds)} between them`
  return `${whole}${pause}.`
}

function changesText({ mostSubstitutions, changesAtBreaksOnly, mayReturn }: MatchFormat): string {
  const when = changesAtBreaksOnly ? 'between periods only' : 'at any time'
  const many =
    mostSubstitutions === null
      ? 'As many as one likes'
      : `${counted(mostSubstitutions, 'player')} may come on`
  const back = mayReturn ? 'Whoever came off may come on again.' : 'Whoever came off may not come on again.'
  return `${many}, ${when}. ${back}`
}

function leastTimeText({ leastTime, aSide, periodSeconds }: MatchFormat): string {
  const said = promiseText(leastTime)
  const most = mostPlayersFor(leastTime, { aSide, periodSeconds, policyShare: null })
  const possible =
    most === null
      ? ''
      : leastTime.wherePossible
        ? ` That is possible for up to ${most} players; with more, as much as everybody can have.`
        : ` That is possible for up to ${most} players.`
  return [`${said}${possible}`, ...leastTime.late.map(lateText)].join(' ')
}

function promiseText({ share, periods }: LeastTime): string {
  const part = share === null ? null : `${Math.round(share * 1000) / 10} % of the time there`
  const whole = periods === null ? null : counted(periods, 'whole period')
  if (part && whole) return `Every player has ${part}, and ${whole} where there throughout.`
  if (part) return `Every player has ${part}.`
  return whole ? `Every player who is there throughout has ${whole}.` : 'As the club’s fair-play policy says.'
}

function lateText({ arrivesIn, periods }: LeastTime['late'][number]): string {
  return `Who comes during period ${arrivesIn} has ${counted(periods, 'whole period')}.`
}

function goalText(most: number): string {
  return `One player keeps goal for ${counted(most, 'period')} of a match at most.`
}

function minutes(seconds: number): string {
  return counted(seconds / 60, 'minute')
}

function amount(seconds: number): string {
  return String(Math.round(seconds / 6) / 10)
}
