import 'server-only'
import type { Day } from '#common/time'
import { dayOf } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { SessionKind } from '#fairness/standing'

/** What an id of the record stands for. A request, a consent or a flag is named by its child. */
export type NamedThing =
  | { readonly name: string }
  | { readonly kind: SessionKind; readonly day: Day; readonly squadName: string }

/** The names of things of the club by their ids; what is no longer there has none. */
export async function nameThings(
  { db, clubId }: ClubTx,
  ids: readonly string[],
): Promise<ReadonlyMap<string, NamedThing>> {
  const where = { clubId, id: { in: [...ids] } }
  const named = { where, select: { id: true, name: true } } as const
  const ofPlayer = { where, select: { id: true, player: { select: { name: true } } } } as const
  const plain = [
    await db.player.findMany(named),
    await db.person.findMany(named),
    await db.squad.findMany(named),
    await db.theme.findMany(named),
    await db.practiceDesign.findMany(named),
    await db.matchFormat.findMany(named),
    await db.term.findMany(named),
    await db.season.findMany(named),
  ].flat()
  const byChild = [
    await db.childRequest.findMany(ofPlayer),
    await db.consent.findMany(ofPlayer),
    await db.flagState.findMany(ofPlayer),
  ].flat()
  const sessions = await db.session.findMany({
    where,
    select: { id: true, kind: true, day: true, squad: { select: { name: true } } },
  })
  return new Map<string, NamedThing>([
    ...plain.map(({ id, name }) => [id, { name }] as const),
    ...byChild.flatMap(({ id, player }) => (player ? [[id, { name: player.name }] as const] : [])),
    ...sessions.map(
      ({ id, kind, day, squad }) => [id, { kind, day: dayOf(day), squadName: squad.name }] as const,
    ),
  ])
}
