import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import { equalTimeChangesOf } from '#lineup/equal-time-changes'
import type { LineUp } from '#lineup/line-up'
import { type LineUpFigures, lineUpFigures, type NameOf } from '#lineup/line-up-figures'
import type { LineUpProblem } from '#lineup/problem'
import { sayClock, sayTime } from '#lineup/say-clock'
import { sayMissedPromise } from '#lineup/say-missed-promise'
import { sayOwed } from '#lineup/say-owed'
import { placesInAll } from '#match/format/places-in-all'

/** What a line-up is worth, in a coach's words. */
export function explainLineUp(problem: LineUpProblem, lineUp: LineUp, nameOf: NameOf): string {
  const figures = lineUpFigures(problem, lineUp.plan)
  if (figures.there.length === 0) return 'Nobody is there to play.'
  return [
    sayMinutes(problem, lineUp, figures),
    sayFewer(problem),
    sayPartly(problem, figures, nameOf),
    sayMissedPromise(problem, { figures, promise: lineUp.proofs.promise, nameOf }),
    sayOwed(problem, figures, nameOf),
    sayEqualTime(problem, figures),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

function sayMinutes(problem: LineUpProblem, { proofs }: LineUp, figures: LineUpFigures): string {
  const { there, throughout, changes } = figures
  const players = `${countWord(there.length)} player${there.length === 1 ? '' : 's'}`
  const binding = [players, ...bindingOf(problem)]
  const allow = there.length === 1 && binding.length === 1 ? 'allows' : 'allow'
  const isAll = throughout.length === there.length || throughout.length === 0
  const who = isAll ? 'everyone' : 'who is there throughout'
  const range = `${who} plays ${minutesOf(figures, isAll ? there : throughout)} minutes`
  const after =
    changes === 0 ? 'with no change during play' : `with ${counted(changes, 'change')} during play`
  return proofs.promise.proven && proofs.minutes.proven
    ? `As even as ${andList(binding)} ${allow}: ${range}, ${after}. Nothing fairer is possible.`
    : `A fair plan for ${players}: ${range}, ${after}. Whether a fairer one is possible is not known yet.`
}

/** What the coach asked for that may cost evenness; without it the numbers alone would be blamed. */
function bindingOf({ apart, together, fixed, rules }: LineUpProblem): readonly string[] {
  return [
    apart.length + together.length > 0 ? 'your pairs' : '',
    fixed.length > 0 ? 'the places held' : '',
    rules.mostChanges === null ? '' : `your limit of ${counted(rules.mostChanges, 'change')}`,
  ].filter((what) => what !== '')
}

/** "39", "38 or 39", "between 35 and 40". */
function minutesOf({ played }: LineUpFigures, players: readonly number[]): string {
  const minutes = players.map((player) => Math.round((played[player] ?? 0) / 60))
  const [least, most] = [Math.min(...minutes), Math.max(...minutes)]
  if (least === most) return String(least)
  return most - least === 1 ? `${least} or ${most}` : `between ${least} and ${most}`
}

/** From when to when fewer play than there are places at most. */
function sayFewer({ windows }: LineUpProblem): string {
  const full = Math.max(0, ...windows.map(({ places }) => placesInAll(places)))
  const fewer = windows.filter(({ places }) => placesInAll(places) < full)
  const [first, last] = [fewer[0], fewer.at(-1)]
  if (!first || !last) return ''
  const least = Math.min(...fewer.map(({ places }) => placesInAll(places)))
  if (least === 0)
    return `Nobody is on at times between ${sayClock(first.start)} and ${sayClock(last.end)}, as nobody is there.`
  return `Only ${countWord(least)} are on at times between ${sayClock(first.start)} and ${sayClock(last.end)}, as no more are there.`
}

const mostNames = 3

/** What those play who come late or leave early. */
function sayPartly(problem: LineUpProblem, figures: LineUpFigures, nameOf: NameOf): string {
  const { there, throughout, played, secondsThere } = figures
  const partly = there.filter((player) => !throughout.includes(player))
  if (partly.length === 0 || partly.length > mostNames || throughout.length === 0) return ''
  const said = partly.map((player) => {
    const [on, there] = [played[player] ?? 0, secondsThere[player] ?? 0]
    const part = on === there ? `all ${sayTime(there)}` : `${Math.round(on / 60)} of ${sayTime(there)}`
    return `${nameOf(problem.players[player]?.id ?? '')} plays ${part}`
  })
  return `${andList(said)} there.`
}

/** What exactly equal time would take, where everyone is due the same and it takes a change at all. */
function sayEqualTime(problem: LineUpProblem, figures: LineUpFigures): string {
  const { played, fair, changes, there } = figures
  const needed = equalTimeChangesOf(problem)
  if (needed === null || needed === 0) return ''
  const away = there.map((player) => Math.abs((played[player] ?? 0) - (fair[player] ?? 0)))
  const furthest = Math.max(...away)
  const players = countWord(there.length)
  if (furthest < 1)
    return changes === needed ? `Exactly equal time for ${players} takes at least so many changes.` : ''
  const most = counted(Math.ceil(furthest / 60 - 1e-9), 'minute')
  return `Exactly equal time for ${players} would take at least ${counted(needed, 'change')}; with ${changes} nobody is more than ${most} from it.`
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`
}
