import type { Problem } from '#common/problem'
import type { Day } from '#common/time'
import type { LogPlayer } from '#exchange/log-entries'
import type { KnownPlayer } from '#exchange/players/match-player'
import { longestCode, longestName } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import type { LoggedPlayer, SeasonLog } from '#fairness/season-log'

type Planned = { readonly planned: readonly LogPlayer[]; readonly problems: readonly Problem[] }

/**
 * Who the players of a log are: by code, else by exactly the same name among those of the squad whose code is not in the
 * log. Two of one name in the log are never one player of the book.
 * Somebody new is a member from the first day it is in a register: a log says nothing of membership, and days before
 * a child came must not count as missed.
 */
export function planLogPlayers(log: SeasonLog, known: readonly KnownPlayer[]): Planned {
  const firstDays = firstDaysOf(log)
  const planned: LogPlayer[] = []
  const problems: Problem[] = []
  const takenBy = new Map<string, number>()
  const ids = new Set(log.players.map(({ id }) => id))
  const isCoded = (player: KnownPlayer) =>
    ids.has(player.id) || (player.code !== null && ids.has(player.code))
  const uncoded = known.filter((player) => !isCoded(player))
  for (const [index, logged] of log.players.entries()) {
    const path = `players[${index}]`
    const found = findLogged(logged, { known, uncoded })
    if (found.length > 1) {
      const message = `${found.length} players of the squad are called ${JSON.stringify(logged.name)}; the code or id of one of them as "id" would be right`
      problems.push({ path, message })
      continue
    }
    const [player] = found
    if (!player) {
      const name = tidyName(logged.name ?? logged.id)
      problems.push(...newPlayerProblems(logged, name, path))
      planned.push({
        kind: 'new',
        code: logged.id,
        name,
        keeps: logged.keeps,
        firstDay: firstDays.get(logged.id) ?? firstDays.start,
      })
      continue
    }
    const other = takenBy.get(player.id)
    if (other !== undefined) {
      problems.push({
        path,
        message: `is ${player.name} of the squad, as players[${other}] is; one entry for each player would be right`,
      })
    }
    takenBy.set(player.id, index)
    if (player.keeps !== logged.keeps) problems.push({ path: `${path}.keeps`, message: keepsMessage(player) })
    planned.push({ kind: 'known', code: logged.id, playerId: player.id })
  }
  return { planned, problems }
}

function findLogged(
  logged: LoggedPlayer,
  { known, uncoded }: { readonly known: readonly KnownPlayer[]; readonly uncoded: readonly KnownPlayer[] },
): readonly KnownPlayer[] {
  const coded = known.filter((player) => player.code === logged.id || player.id === logged.id)
  if (coded.length > 0 || logged.name === null) return coded
  const name = tidyName(logged.name)
  return uncoded.filter((player) => player.name === name)
}

function newPlayerProblems(logged: LoggedPlayer, name: string, path: string): readonly Problem[] {
  const problems: Problem[] = []
  const nameLength = [...name].length
  if (nameLength === 0 || nameLength > longestName) {
    problems.push({
      path: `${path}.name`,
      message: `has ${nameLength} characters; 1 to ${longestName} would be right`,
    })
  }
  const codeLength = [...logged.id].length
  if (codeLength === 0 || codeLength > longestCode) {
    problems.push({
      path: `${path}.id`,
      message: `has ${codeLength} characters; 1 to ${longestCode} would be right`,
    })
  }
  return problems
}

function keepsMessage(player: KnownPlayer): string {
  return `is ${!player.keeps}, and the book says ${player.keeps} of ${player.name}; ${player.keeps} would be right, or another word in the book first`
}

/** The first day each player is in a register, and the first day of the log. */
function firstDaysOf(log: SeasonLog): ReadonlyMap<string, Day> & { readonly start: Day } {
  const days = new Map<string, Day>()
  const sessions = [...log.practices, ...log.matches]
  for (const { day, register } of sessions) {
    for (const { playerId } of register) {
      const earlier = days.get(playerId)
      if (earlier === undefined || day < earlier) days.set(playerId, day)
    }
  }
  const start = sessions.map(({ day }) => day).sort()[0] ?? '2000-01-01'
  return Object.assign(days, { start })
}
