import { andList } from '#common/and-list'
import { countWord } from '#common/count-word'
import type { Problem } from '#common/problem'
import type { Seconds } from '#common/time'
import type { LineUpClash } from '#lineup/line-up-clash'
import type { NameOf } from '#lineup/line-up-figures'
import type { LineUpProblem } from '#lineup/problem'
import { ruleWords } from '#lineup/rule-words'
import { sayClock, sayTime } from '#lineup/say-clock'
import { sayHeldClash } from '#lineup/say-held-clash'

/**
 * A clash in one sentence: what, where, and what would work. The path leads to the field of a plan's request: `places`,
 * `players.3`, `rules.longestOffSeconds`, `apart.0`, `format.mostSecondsADay`; a held place is `held.3.5`, player and window.
 */
export function sayLineUpClash(problem: LineUpProblem, clash: LineUpClash, nameOf: NameOf): Problem {
  const name = (player: number | undefined) => nameOf(problem.players[player ?? -1]?.id ?? '')
  const pair = (index: number) => andList((problem.apart[index] ?? []).map(name))
  switch (clash.kind) {
    case 'places':
      return sayPlaces(problem, clash)
    case 'keepers':
      return sayKeepers(problem, clash)
    case 'lines':
      return {
        path: 'places',
        message: `${whenSaid(problem, clash)}the places cannot be filled with the lines that each of them plays: let somebody play one more line, or choose another shape.`,
      }
    case 'longestSpell':
      return {
        path: 'rules.longestSpellSeconds',
        message: `Nobody can change ${betweenSaid(problem, clash)}, and nobody may be on for more than ${sayTime(clash.longest)} at a stretch: add a time for changes in between, or allow ${sayTime(lengthOf(problem, clash))}.`,
      }
    case 'longestOff':
      return {
        path: 'rules.longestOffSeconds',
        message: `Nobody can change ${betweenSaid(problem, clash)}, and nobody may be off for more than ${sayTime(clash.longest)} at a stretch: add a time for changes in between, or allow ${sayTime(lengthOf(problem, clash))}.`,
      }
    case 'spells':
      return {
        path: 'rules.leastSpellSeconds',
        message: `Everyone is to stay on for ${sayTime(clash.least)} at least and for ${sayTime(clash.longest)} at most: make the first the smaller one.`,
      }
    case 'keeperPeriods':
      return {
        path: 'rules.mostKeeperPeriods',
        message: `Goal is to be kept ${countWord(clash.asked)} times, a period each; ${countWord(clash.able)} may keep it, in ${countWord(clash.most)} each at most: put one more down for goal, or let them keep it more often.`,
      }
    case 'mostSeconds':
      return {
        path: 'format.mostSecondsADay',
        message: `All together may play ${sayTime(clash.allowed)} more, and the places take ${sayTime(clash.asked)}: play with fewer, play for less time, or raise the day's limit.`,
      }
    case 'leastAboveMost':
      return {
        path: `players.${clash.player}`,
        message: `${name(clash.player)} is promised ${sayTime(clash.least)} and may play ${sayTime(clash.most)} at most: lower the promise, or raise the limit.`,
      }
    case 'leastAboveThere':
      return {
        path: `players.${clash.player}`,
        message: `${name(clash.player)} is promised ${sayTime(clash.least)} and is there for ${sayTime(clash.there)}: lower the promise, or change from when to when the player is there.`,
      }
    case 'apartHeld':
      return {
        path: `apart.${clash.pair}`,
        message: `${pair(clash.pair)} are kept apart, and both are held on at ${clockAt(problem, clash.window)}: let one of the two places go.`,
      }
    case 'apartFills':
      return {
        path: `apart.${clash.pair}`,
        message: `${pair(clash.pair)} are kept apart, and at ${clockAt(problem, clash.window)} the places cannot be filled without both: let them be on together in this match, or play with fewer.`,
      }
    case 'apartTogether':
      return {
        path: `together.${clash.together}`,
        message: `${pair(clash.apart)} are kept apart and kept together: keep one of the two.`,
      }
    case 'rules':
      return {
        path: 'rules',
        message: `No line-up keeps all of this at once: ${andList([...new Set(clash.rules.map((rule) => ruleWords[rule]))])}. Let one of it go.`,
      }
    case 'held':
    case 'heldTooMany':
    case 'tooSoon':
      return sayHeldClash(problem, clash, nameOf)
  }
}

function sayPlaces(problem: LineUpProblem, clash: Extract<LineUpClash, { kind: 'places' }>): Problem {
  const { asked, there } = clash
  const came = isWholeMatch(problem, clash)
    ? `${capital(countWord(there))} came`
    : `${whenSaid(problem, clash)}${countWord(there)} ${there === 1 ? 'is' : 'are'} there`
  const instead = there > 0 ? `play with ${countWord(there)}` : 'leave this time out'
  return {
    path: 'places',
    message: `${came} and ${countWord(asked)} places are to be filled: ${instead}, or take somebody's absence back.`,
  }
}

function sayKeepers(problem: LineUpProblem, clash: Extract<LineUpClash, { kind: 'keepers' }>): Problem {
  const { asked, able } = clash
  const when = isWholeMatch(problem, clash) ? '' : whenSaid(problem, clash)
  const said =
    able === 0
      ? `${when}nobody who is there may keep goal`
      : `${when}${countWord(able)} may keep goal and ${countWord(asked)} are needed`
  return {
    path: 'players',
    message: `${capital(said)}: put somebody down for goal, or choose a shape without a keeper.`,
  }
}

function isWholeMatch(problem: LineUpProblem, { first, last }: { first: number; last: number }): boolean {
  return first === 0 && last === problem.windows.length - 1
}

function whenSaid(problem: LineUpProblem, at: { first: number; last: number }): string {
  return isWholeMatch(problem, at)
    ? 'In this match '
    : `From ${clockAt(problem, at.first)} to ${sayClock(problem.windows[at.last]?.end ?? 0)} `
}

function betweenSaid(problem: LineUpProblem, { first, last }: { first: number; last: number }): string {
  return `between ${clockAt(problem, first)} and ${sayClock(problem.windows[last]?.end ?? 0)}`
}

function lengthOf(problem: LineUpProblem, { first, last }: { first: number; last: number }): Seconds {
  return (problem.windows[last]?.end ?? 0) - (problem.windows[first]?.start ?? 0)
}

function clockAt(problem: LineUpProblem, window: number): string {
  return sayClock(problem.windows[window]?.start ?? 0)
}

function capital(said: string): string {
  return said.charAt(0).toUpperCase() + said.slice(1)
}
