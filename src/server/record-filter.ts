import 'server-only'
import type { DeedName } from '#access/deed-words'
import { daysLater } from '#common/days-later'
import { instantOf } from '#common/instant-of'
import { type Day, isDay } from '#common/time'
import type { AuditWish } from '#data/audit-pages'
import { isId } from '#data/ids'
import type { PlayerId } from '#squad/player'

export type RecordQuery = Readonly<
  Partial<Record<'child' | 'person' | 'from' | 'to' | 'kind' | 'page', string | string[]>>
>

/** What of the record is looked at; null leaves nothing out. */
export type RecordFilter = {
  readonly playerId: PlayerId | null
  readonly personId: string | null
  /** Both included, by the club's days. */
  readonly from: Day | null
  readonly to: Day | null
  readonly kind: 'changes' | 'looks' | null
  /** From 1. */
  readonly page: number
}

const lastPage = 10_000

/** Anything the address asks for that cannot be is what stands there without asking. */
export function readRecordFilter(query: RecordQuery): RecordFilter {
  const idIn = (text: RecordQuery['child']) => (typeof text === 'string' && isId(text) ? text : null)
  const dayIn = (text: RecordQuery['from']) => (typeof text === 'string' && isDay(text) ? text : null)
  const page = Number(query.page)
  return {
    playerId: idIn(query.child),
    personId: idIn(query.person),
    from: dayIn(query.from),
    to: dayIn(query.to),
    kind: query.kind === 'changes' || query.kind === 'looks' ? query.kind : null,
    page: Number.isInteger(page) && page >= 1 && page <= lastPage ? page : 1,
  }
}

/** Deeds that change nothing: what was seen, or taken away. */
const looks: readonly DeedName[] = ['look', 'copyChild', 'exportFile', 'exportRecord']

export function auditWishOf({ kind, from, to, ...filter }: RecordFilter, timeZone: string): AuditWish {
  return {
    playerId: filter.playerId,
    personId: filter.personId,
    from: from === null ? null : instantOf({ day: from, timeZone }),
    to: to === null ? null : instantOf({ day: daysLater(to, 1), timeZone }),
    actions: kind === null ? null : kind === 'looks' ? { only: looks } : { without: looks },
  }
}
