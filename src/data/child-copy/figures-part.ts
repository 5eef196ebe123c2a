import 'server-only'
import { atSession, instantOrNull, sessionColumns } from '#data/child-copy/at-session'
import { dayOf } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

type Part = Pick<ChildCopy, 'sums' | 'attendance' | 'flags'>

/** What was reckoned of a child from what was written. */
export async function loadFiguresPart(tx: ClubTx, playerId: PlayerId): Promise<Part> {
  const { clubId, db } = tx
  const where = { clubId, playerId }
  const byDay = [{ session: { day: 'asc' } }, { sessionId: 'asc' }] as const
  const themes = new Map(
    (await db.theme.findMany({ where: { clubId }, select: { id: true, name: true } })).map((one) => [
      one.id,
      one.name,
    ]),
  )
  const sums = await db.exposure.findMany({
    where,
    include: { session: sessionColumns },
    orderBy: [...byDay],
  })
  const presences = await db.sessionPresence.findMany({
    where,
    include: { session: sessionColumns },
    orderBy: [...byDay],
  })
  const flags = await db.flagState.findMany({
    where,
    include: { squad: { select: { name: true } }, season: { select: { name: true } } },
    orderBy: [{ since: 'asc' }, { id: 'asc' }],
  })
  return {
    sums: sums.map((row) => ({
      ...atSession(row.session),
      role: row.role,
      situation: row.situation === 'none' ? null : row.situation,
      line: row.line === 'none' ? null : row.line,
      theme: themes.get(row.themeId) ?? null,
      seconds: row.seconds,
      turns: row.turns,
      evenShareSeconds: row.fairSeconds,
      evenShareTurns: row.fairTurns,
      evenShareHadItBeenThereSeconds: row.fullFairSeconds,
      evenShareHadAllKeptGoalSeconds: row.openGoalFairSeconds,
      asMember: row.isMember,
    })),
    attendance: presences.map((row) => ({
      ...atSession(row.session),
      attendance: row.attendance,
      secondsOfPlay: row.liveSeconds,
      turnsThereFor: row.turnsPresent,
      mostTurnsWaitedInARow: row.longestRestTurns,
      asMember: row.isMember,
    })),
    flags: flags.map((row) => ({
      squad: row.squad.name,
      season: row.season.name,
      rule: row.rule,
      of: row.scope,
      subject: themes.get(row.subject) ?? row.subject,
      status: row.status,
      since: dayOf(row.since),
      differenceSeconds: row.gapSeconds,
      toleranceSeconds: row.toleranceSeconds,
      size: row.size,
      detail: row.detail,
      answeredAt: instantOrNull(row.acknowledgedAt),
      answer: row.acknowledgedReason,
      endedAt: instantOrNull(row.clearedAt),
    })),
  }
}
