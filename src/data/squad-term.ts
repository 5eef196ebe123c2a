import 'server-only'
import { isId } from '#data/ids'
import type { SquadId, TermId } from '#squad/squad'

/** What a programme, and a plan of weeks, is of. */
export type SquadTerm = { readonly squadId: SquadId; readonly termId: TermId }

/** Whether both could be there at all: the database does not take what is no id. */
export function couldBeThere({ squadId, termId }: SquadTerm): boolean {
  return isId(squadId) && isId(termId)
}
