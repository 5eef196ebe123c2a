import 'server-only'
import { earlierDay } from '#common/earlier-day'
import { laterDay } from '#common/later-day'
import type { Day } from '#common/time'
import { dateOf, dayOf } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { Season, Term } from '#squad/squad'

type Days = { readonly firstDay: Day; readonly lastDay: Day }

/**
 * Gives a season other days and names. Terms that stand keep their ids, new ones are added, none goes. The database
 * looks after every statement, so terms first shrink to what they have before and after, and then grow.
 */
export async function changeSeason(tx: ClubTx, held: Season, wanted: Season): Promise<void> {
  const { clubId, db } = tx
  const setSeason = ({ firstDay, lastDay }: Days) =>
    db.season.update({
      where: { clubId_id: { clubId, id: held.id } },
      data: { name: wanted.name, firstDay: dateOf(firstDay), lastDay: dateOf(lastDay) },
      select: { id: true },
    })
  const setTerm = ({ id, name }: Pick<Term, 'id' | 'name'>, { firstDay, lastDay }: Days) =>
    db.term.update({
      where: { clubId_id: { clubId, id } },
      data: { name, firstDay: dateOf(firstDay), lastDay: dateOf(lastDay) },
      select: { id: true },
    })
  await setSeason(daysOfBoth(held, wanted))
  const before = new Map(held.terms.map((term) => [term.id, term]))
  const standing = wanted.terms.flatMap((term) => {
    const was = before.get(term.id)
    return was ? [{ term, shared: sharedDays(was, term) }] : []
  })
  for (const { term, shared } of standing) if (shared) await setTerm(term, shared)
  for (const { term, shared } of standing)
    if (!shared) await setTerm(term, { firstDay: term.firstDay, lastDay: term.firstDay })
  for (const { term } of standing) await setTerm(term, term)
  const added = wanted.terms.filter(({ id }) => !before.has(id))
  await db.term.createMany({
    data: added.map(({ id, name, firstDay, lastDay }) => ({
      clubId,
      id,
      seasonId: held.id,
      name,
      firstDay: dateOf(firstDay),
      lastDay: dateOf(lastDay),
    })),
  })
  await setSeason(wanted)
}

function daysOfBoth(a: Days, b: Days): Days {
  return {
    firstDay: earlierDay(a.firstDay, b.firstDay),
    lastDay: laterDay(a.lastDay, b.lastDay),
  }
}

function sharedDays(a: Days, b: Days): Days | null {
  const firstDay = laterDay(a.firstDay, b.firstDay)
  const lastDay = earlierDay(a.lastDay, b.lastDay)
  return firstDay <= lastDay ? { firstDay, lastDay } : null
}

/** Practices and matches of the season that would lie outside the new days, those called off left out. */
export async function findLeftOut(
  tx: ClubTx,
  { held, wanted }: { readonly held: Days; readonly wanted: Days },
): Promise<{ readonly count: number; readonly firstDay: Day; readonly lastDay: Day } | null> {
  const { _count, _min, _max } = await tx.db.session.aggregate({
    where: {
      clubId: tx.clubId,
      cancelledAt: null,
      day: { gte: dateOf(held.firstDay), lte: dateOf(held.lastDay) },
      OR: [{ day: { lt: dateOf(wanted.firstDay) } }, { day: { gt: dateOf(wanted.lastDay) } }],
    },
    _count: true,
    _min: { day: true },
    _max: { day: true },
  })
  return _min.day && _max.day ? { count: _count, firstDay: dayOf(_min.day), lastDay: dayOf(_max.day) } : null
}
