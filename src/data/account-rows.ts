import 'server-only'
import { noThemeId } from '#data/no-theme'
import { type Column, type Role, roles } from '#exposure/column'
import type { AccountLine, Figure, PresenceAccount, SessionAccount } from '#fairness/account'

type ColumnKey = {
  readonly role: Role
  readonly situation: NonNullable<Column['situation']> | 'none'
  readonly line: NonNullable<Column['line']> | 'none'
  readonly themeId: string
}

type ExposureRow = ColumnKey &
  Figure & {
    readonly sessionId: string
    readonly playerId: string
    readonly isMember: boolean
    readonly membersFairSeconds: number
  }

const nothing: Figure = {
  seconds: 0,
  turns: 0,
  fairSeconds: 0,
  fairTurns: 0,
  fullFairSeconds: 0,
  openGoalFairSeconds: 0,
}

/**
 * An account as rows. Beside the account's own figures each member's row carries the members' mean of what they would
 * have been due, so that sums over any sessions need no other session's rows; a member without a figure in a column
 * where that mean is not zero gets a row of nothing else.
 */
export function accountRows(account: SessionAccount): {
  readonly exposures: readonly ExposureRow[]
  readonly presences: readonly (PresenceAccount & { readonly sessionId: string })[]
} {
  const { sessionId, presences } = account
  const members = presences.filter(({ isMember }) => isMember).map(({ playerId }) => playerId)
  const isMember = new Set(members)
  const columns = new Map<
    string,
    { key: ColumnKey; membersFairSeconds: number; byPlayer: Map<string, AccountLine> }
  >()
  for (const line of account.lines) {
    const key = keyOfColumn(line)
    const name = Object.values(key).join(' ')
    const column = columns.get(name) ?? { key, membersFairSeconds: 0, byPlayer: new Map() }
    if (isMember.has(line.playerId)) column.membersFairSeconds += line.fullFairSeconds / members.length
    column.byPlayer.set(line.playerId, line)
    columns.set(name, column)
  }
  const exposures = [...columns.values()].flatMap(({ key, membersFairSeconds, byPlayer }) => {
    const playerIds = new Set([...byPlayer.keys(), ...(membersFairSeconds > 0 ? members : [])])
    return [...playerIds].map((playerId) => ({
      sessionId,
      playerId,
      ...key,
      ...figureOf(byPlayer.get(playerId) ?? nothing),
      isMember: isMember.has(playerId),
      membersFairSeconds: isMember.has(playerId) ? membersFairSeconds : 0,
    }))
  })
  // Rows of one player beside each other: a page about one child reads few blocks.
  exposures.sort((a, b) => compare(a.playerId, b.playerId) || roles.indexOf(a.role) - roles.indexOf(b.role))
  return { exposures, presences: presences.map((presence) => ({ sessionId, ...presence })) }
}

function keyOfColumn({ role, situation, line, themeId }: Column): ColumnKey {
  return { role, situation: situation ?? 'none', line: line ?? 'none', themeId: themeId ?? noThemeId }
}

function figureOf(figure: Figure): Figure {
  const { seconds, turns, fairSeconds, fairTurns, fullFairSeconds, openGoalFairSeconds } = figure
  return { seconds, turns, fairSeconds, fairTurns, fullFairSeconds, openGoalFairSeconds }
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
