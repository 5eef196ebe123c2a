import 'server-only'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { recordSpells } from '#data/match-spells'
import { recordMemberships } from '#data/memberships'
import { recordPlayers } from '#data/players'
import { recordRegisters } from '#data/register-lines'
import { markWritten, recordSessions } from '#data/sessions'
import { listThemes, recordThemes } from '#data/themes'
import { recordEvents } from '#data/turn-events'
import type { LogPlan } from '#exchange/log-entries'
import type { SeasonLog } from '#fairness/season-log'
import { afterImport } from '#server/after-import'
import type { ImportBook } from '#server/import-book'
import type { PresenceLine } from '#squad/presence'

export type LogImported = {
  readonly newPlayers: number
  readonly newThemes: number
  readonly practices: number
  readonly matches: number
}

type SavedLog = {
  readonly log: SeasonLog
  readonly plan: LogPlan
  readonly book: ImportBook
  readonly by: Author
  /** Hears of each part as it begins. */
  readonly onProgress?: (part: string) => void
}

/** Writes a planned season log: players, themes, sessions, all that was written of them, and their accounts. */
export async function saveSeasonLog(
  tx: ClubTx,
  { log, plan, book, by, onProgress }: SavedLog,
): Promise<LogImported> {
  const squadId = book.squad.id
  onProgress?.('players and themes')
  const playerIds = await enterPlayers(tx, { squadId, players: plan.players })
  const themeIds = await enterThemes(tx, plan.themes)
  const sessionIds = new Map([...log.practices, ...log.matches].map(({ id }) => [id, newId()]))
  onProgress?.(`${sessionIds.size} practices and matches`)
  await recordSessions(tx, newSessions(log, { squadId, sessionIds }))
  await recordWritten(tx, { log, by, ids: { playerIds, themeIds, sessionIds }, onProgress })
  await markWritten(tx, { sessionIds: [...sessionIds.values()], written: 'typedLater', by })
  const imported = countImported(log, plan)
  await recordAudit(tx, {
    action: 'importSeasonLog',
    objectKind: 'squad',
    objectId: squadId,
    detail: imported,
    by,
  })
  onProgress?.('what everybody got and was due')
  const days = [...log.practices, ...log.matches].map(({ day }) => day)
  const joined = plan.players.flatMap((player) => (player.kind === 'new' ? [player.firstDay] : []))
  const [from = book.today] = [...days, ...joined].sort()
  const { today } = book
  await afterImport(tx, { squadId, from, keepingChanged: [], today, now: by.at })
  return imported
}

type Ids = Readonly<Record<'playerIds' | 'themeIds' | 'sessionIds', ReadonlyMap<string, string>>>

/** Registers, turns and spells, with the book's ids in the place of the log's. */
async function recordWritten(
  tx: ClubTx,
  { log, by, ids, onProgress }: Pick<SavedLog, 'log' | 'by' | 'onProgress'> & { readonly ids: Ids },
): Promise<void> {
  const { playerIds, themeIds, sessionIds } = ids
  const idOf = (code: string) => playerIds.get(code) as string
  const withIds = (register: readonly PresenceLine[]) =>
    register.map((line) => ({ ...line, playerId: idOf(line.playerId), state: 'here' as const }))
  await recordRegisters(tx, {
    registers: [...log.practices, ...log.matches].map(({ id, register }) => ({
      sessionId: sessionIds.get(id) as string,
      lines: withIds(register),
    })),
    by,
  })
  onProgress?.('turns and spells')
  await recordEvents(tx, {
    practices: log.practices.map(({ id, turns }) => ({
      sessionId: sessionIds.get(id) as string,
      events: turns.map((turn) => ({
        kind: 'turn' as const,
        id: newId(),
        turn: {
          ...turn,
          themeId: turn.themeId === null ? null : (themeIds.get(turn.themeId) as string),
          stations: turn.stations.map(({ attack, defend, keep }) => ({
            attack: attack.map(idOf),
            defend: defend.map(idOf),
            keep: keep.map(idOf),
          })),
        },
      })),
    })),
    by,
  })
  await recordSpells(tx, {
    matches: log.matches.map(({ id, spells }) => ({
      sessionId: sessionIds.get(id) as string,
      spells: spells.map((spell) => ({ ...spell, playerId: idOf(spell.playerId) })),
    })),
    by,
  })
}

function countImported(log: SeasonLog, plan: LogPlan): LogImported {
  return {
    newPlayers: plan.players.filter(({ kind }) => kind === 'new').length,
    newThemes: plan.themes.filter(({ kind }) => kind === 'new').length,
    practices: log.practices.length,
    matches: log.matches.length,
  }
}

async function enterPlayers(
  tx: ClubTx,
  { squadId, players }: { readonly squadId: string; readonly players: LogPlan['players'] },
): Promise<ReadonlyMap<string, string>> {
  const ids = new Map(players.map((one) => [one.code, one.kind === 'known' ? one.playerId : newId()]))
  const entered = players.flatMap((one) =>
    one.kind === 'new' ? [{ ...one, id: ids.get(one.code) as string }] : [],
  )
  await recordPlayers(
    tx,
    entered.map(({ id, name, keeps, code }) => ({ id, name, keeps, code, wantsToKeep: false })),
  )
  const memberships = entered.map(({ id, firstDay }) => ({ playerId: id, firstDay, lastDay: null }))
  await recordMemberships(tx, { squadId, memberships })
  return ids
}

/** New themes stand after those of the club. */
async function enterThemes(tx: ClubTx, themes: LogPlan['themes']): Promise<ReadonlyMap<string, string>> {
  const ids = new Map(themes.map((one) => [one.code, one.kind === 'known' ? one.themeId : newId()]))
  const last = Math.max(0, ...(await listThemes(tx)).map(({ order }) => order))
  const entered = themes.flatMap((one) => (one.kind === 'new' ? [one] : []))
  await recordThemes(
    tx,
    entered.map(({ code, name, parentCode }, index) => ({
      id: ids.get(code) as string,
      name,
      code,
      parentId: parentCode === null ? null : (ids.get(parentCode) ?? null),
      order: last + 1 + index,
      asks: '',
    })),
  )
  return ids
}

function newSessions(
  log: SeasonLog,
  at: { readonly squadId: string; readonly sessionIds: ReadonlyMap<string, string> },
) {
  const { squadId } = at
  const common = (one: { readonly id: string; readonly day: string }) => ({
    id: at.sessionIds.get(one.id) as string,
    squadId,
    // A log does not say who led.
    ledById: null,
    code: one.id,
    day: one.day,
    startsAt: null,
    designId: null,
  })
  return [
    ...log.practices.map((one) => ({
      ...common(one),
      kind: 'practice' as const,
      title: one.title ?? '',
      lengthSeconds: one.lengthSeconds,
      periods: null,
    })),
    ...log.matches.map((one) => ({
      ...common(one),
      kind: 'match' as const,
      title: '',
      lengthSeconds: null,
      periods: one.periods,
    })),
  ]
}
