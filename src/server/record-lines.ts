import 'server-only'
import { sayDeed } from '#access/say-deed'
import type { AuditEntry } from '#data/audit'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { type NamedThing, nameThings } from '#data/named-things'
import { dayInWords } from '#rights/day-in-words'

/** One line of the record as it is read. */
export type RecordLine = { readonly id: string; readonly at: Date; readonly sentence: string }

/** The lines in words, in the order given. Names are those of today: what was erased has none any more. */
export async function sayEntries(
  tx: ClubTx,
  { entries, locale }: { readonly entries: readonly AuditEntry[]; readonly locale: string },
): Promise<readonly RecordLine[]> {
  const things = await nameThings(tx, idsOf(entries))
  const nameOf = (id: unknown) => {
    const thing = typeof id === 'string' ? things.get(id) : undefined
    return thing ? wordsOf(thing, locale) : null
  }
  return entries.map(({ id, at, action, objectId, detail, personName }) => ({
    id,
    at,
    sentence: sayDeed({
      action,
      page: typeof detail.page === 'string' ? detail.page : null,
      by: personName,
      isByCode: typeof detail.helperPassId === 'string',
      thing: nameOf(objectId),
      child: nameOf(detail.playerId),
      squad: nameOf(detail.squadId),
    }),
  }))
}

function idsOf(entries: readonly AuditEntry[]): readonly string[] {
  const ids = entries.flatMap(({ objectId, detail }) => [objectId, detail.playerId, detail.squadId])
  return [...new Set(ids.filter((id): id is string => typeof id === 'string' && isId(id)))]
}

function wordsOf(thing: NamedThing, locale: string): string {
  return 'name' in thing
    ? thing.name
    : `the ${thing.kind} of ${dayInWords(thing.day, locale)}, ${thing.squadName}`
}
