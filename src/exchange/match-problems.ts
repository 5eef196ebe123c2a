import type { Problem } from '#common/problem'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'
import {
  type KnownPlayers,
  knownPlayerProblems,
  registerProblems,
  toPresence,
} from '#exchange/register-problems'
import type { MatchJson } from '#exchange/season-log-shape'
import { dayProblems, secondsProblems } from '#exchange/value-problems'
import { checkMatch } from '#match/checks/check-match'
import type { MatchFault } from '#match/checks/match-fault'
import type { Match } from '#match/match'

export function toMatch(json: MatchJson): Match {
  return {
    id: json.id,
    day: json.date,
    periods: json.periods,
    register: toPresence(json.register),
    spells: json.spells.map(({ player, line, start, end }) => ({ playerId: player, line, start, end })),
  }
}

/** Everything that is wrong with a match that stands at `at` and has the right shape. */
export function matchProblems(json: MatchJson, at: JsonPath, known: KnownPlayers): readonly Problem[] {
  const match = toMatch(json)
  const isKnown = (fault: MatchFault) =>
    fault.rule !== 'spellWhileAway' || known === null || known.has(fault.playerId)
  return [
    ...dayProblems(json.date, [...at, 'date']),
    ...json.periods.flatMap((period, index) => [
      ...secondsProblems(period.start, [...at, 'periods', index, 'start']),
      ...secondsProblems(period.end, [...at, 'periods', index, 'end']),
    ]),
    ...registerProblems(json.register, at, known),
    ...json.spells.flatMap((spell, index) => [
      ...knownPlayerProblems(spell.player, [...at, 'spells', index, 'player'], known),
      ...secondsProblems(spell.start, [...at, 'spells', index, 'start']),
      ...secondsProblems(spell.end, [...at, 'spells', index, 'end']),
    ]),
    ...checkMatch(match)
      .filter(isKnown)
      .map((fault) => problemOfFault(fault, match, at)),
  ]
}

function problemOfFault(fault: MatchFault, match: Match, at: JsonPath): Problem {
  if (fault.rule === 'periodWithoutLength' || fault.rule === 'periodOutOfOrder') {
    return problemOfPeriod(fault, match, [...at, 'periods', fault.period])
  }
  const spell = match.spells[fault.spell]
  const path = [...at, 'spells', fault.spell]
  const stands = `goes from ${spell?.start} to ${spell?.end}`
  switch (fault.rule) {
    case 'spellWithoutLength':
      return problemAt(path, `${stands}; an "end" after its "start" would be right`)
    case 'spellOutsidePeriod':
      return problemAt(path, `${stands}, which no period holds; a spell inside one period would be right`)
    case 'spellsOverlap':
      return problemAt(
        path,
        `${quote(spell?.playerId ?? '')} is already in spells[${fault.other}] then; ` +
          'spells of one player that do not overlap would be right',
      )
    case 'spellWhileAway':
      return problemAt(
        path,
        `${stands}, but ${quote(fault.playerId)} is not there for all of it; ` +
          'a register line over all of the spell would be right',
      )
  }
}

function problemOfPeriod(
  fault: Extract<MatchFault, { period: number }>,
  match: Match,
  path: JsonPath,
): Problem {
  const period = match.periods[fault.period]
  if (fault.rule === 'periodWithoutLength') {
    return problemAt(
      path,
      `goes from ${period?.start} to ${period?.end}; an "end" after its "start" would be right`,
    )
  }
  return problemAt(
    path,
    `starts at ${period?.start}, before an earlier period ends at ${fault.lastEnd}; ` +
      'periods in order of time that do not overlap would be right',
  )
}
