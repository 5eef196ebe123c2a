import 'server-only'
import type { StoredFlag } from '#fairness/flags/answer'
import { type FlagCause, flagCauses } from '#fairness/flags/flag-causes'

export type FlagQuery = Readonly<Partial<Record<'status' | 'cause' | 'order', string | string[]>>>

/** What of a squad's flags is looked at. There is no order by size. */
export type FlagFilter = {
  readonly status: StoredFlag['status']
  readonly cause: FlagCause | null
  readonly order: 'name' | 'cure'
}

/** Anything the address asks for that is not there is what stands there without asking. */
export function readFlagFilter(query: FlagQuery): FlagFilter {
  return {
    status: query.status === 'acknowledged' || query.status === 'cleared' ? query.status : 'open',
    cause: flagCauses.find((cause) => cause === query.cause) ?? null,
    order: query.order === 'cure' ? 'cure' : 'name',
  }
}
