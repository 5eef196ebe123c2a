import type { Problem } from '#common/problem'
import { type JsonPath, problemAt, quote } from '#exchange/json-path'
import type { RegisterJson } from '#exchange/season-log-shape'
import { secondsProblems, unknownIdProblems } from '#exchange/value-problems'
import { checkLineLength } from '#squad/checks/line-length'
import { checkLineOverlap } from '#squad/checks/line-overlap'
import type { RegisterFault } from '#squad/checks/register-fault'
import type { PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'

/** The ids of the log's players; null when they could not be read. */
export type KnownPlayers = ReadonlySet<PlayerId> | null

export function knownPlayerProblems(
  playerId: PlayerId,
  at: JsonPath,
  known: KnownPlayers,
): readonly Problem[] {
  return unknownIdProblems(playerId, at, { ids: known, list: 'players' })
}

/** Everything that is wrong with the register of a session that stands at `at`. */
export function registerProblems(
  register: RegisterJson,
  at: JsonPath,
  known: KnownPlayers,
): readonly Problem[] {
  const own = [...at, 'register']
  const lines = toPresence(register)
  return [
    ...register.flatMap((line, index) => [
      ...knownPlayerProblems(line.player, [...own, index, 'player'], known),
      ...secondsProblems(line.from, [...own, index, 'from']),
      ...secondsProblems(line.to, [...own, index, 'to']),
    ]),
    ...[...checkLineLength(lines), ...checkLineOverlap(lines)].map((fault) =>
      problemOfFault(fault, lines, own),
    ),
  ]
}

export function toPresence(register: RegisterJson): readonly PresenceLine[] {
  return register.map(({ player, from, to }) => ({ playerId: player, from, to }))
}

function problemOfFault(fault: RegisterFault, lines: readonly PresenceLine[], at: JsonPath): Problem {
  const line = lines[fault.line]
  const playerId = quote(line?.playerId ?? '')
  const stands = `${line?.from} to ${line?.to}`
  if (fault.rule === 'lineWithoutLength') {
    return problemAt([...at, fault.line], `goes from ${stands}; a "to" after its "from" would be right`)
  }
  const other = lines[fault.other]
  return problemAt(
    [...at, fault.line],
    `${playerId} is there from ${stands} and, in register[${fault.other}], from ${other?.from} to ${other?.to}; ` +
      'lines of one player that do not overlap would be right',
  )
}
