import 'server-only'
import { daysLater } from '#common/days-later'
import { accept, type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { dateOf, dateOrNull, dayOf, dayOrNull } from '#data/days'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadId } from '#squad/squad'

/** Both days belong to it; `lastDay` null: still. A cover coach's sessions are marked. */
export type SquadCoach = {
  readonly squadId: SquadId
  readonly personId: string
  readonly personName: string
  readonly kind: 'coach' | 'cover'
  readonly firstDay: Day
  readonly lastDay: Day | null
}

/** Whoever helps taps at the squad's practices and sees nothing else of it. */
export type SquadLineKind = SquadCoach['kind'] | 'helps'

const coachKinds: SquadLineKind[] = ['coach', 'cover']

const columns = {
  select: {
    squadId: true,
    personId: true,
    kind: true,
    firstDay: true,
    lastDay: true,
    person: { select: { name: true } },
  },
  orderBy: [{ firstDay: 'asc' as const }, { id: 'asc' as const }],
}

type Row = Omit<SquadCoach, 'personName' | 'kind' | 'firstDay' | 'lastDay'> & {
  readonly kind: SquadLineKind
  readonly firstDay: Date
  readonly lastDay: Date | null
  readonly person: { readonly name: string }
}

function toSquadCoach({ person, kind, firstDay, lastDay, ...row }: Row): SquadCoach {
  return {
    ...row,
    kind: kind === 'cover' ? 'cover' : 'coach',
    personName: person.name,
    firstDay: dayOf(firstDay),
    lastDay: dayOrNull(lastDay),
  }
}

/** Past ones too, in order of their first day. */
export async function listSquadCoaches(tx: ClubTx, squadId: SquadId): Promise<readonly SquadCoach[]> {
  if (!isId(squadId)) return []
  const rows = await tx.db.squadCoach.findMany({
    where: { clubId: tx.clubId, squadId, kind: { in: coachKinds } },
    ...columns,
  })
  return rows.map(toSquadCoach)
}

/** Who coaches or covers any squad of the club on a day, in order of their first day. */
export async function listCoachesOn(tx: ClubTx, day: Day): Promise<readonly SquadCoach[]> {
  const rows = await tx.db.squadCoach.findMany({
    where: { clubId: tx.clubId, kind: { in: coachKinds }, ...standsOn(dateOf(day)) },
    ...columns,
  })
  return rows.map(toSquadCoach)
}

const standsOn = (date: Date) => ({
  firstDay: { lte: date },
  OR: [{ lastDay: null }, { lastDay: { gte: date } }],
})

/** The squads a person coaches or covers on a day, or with `helps` those it helps with too, in order of age. */
export async function listSquadIdsOfCoach(
  tx: ClubTx,
  at: { readonly personId: string; readonly day: Day; readonly helps?: boolean },
): Promise<readonly SquadId[]> {
  if (!isId(at.personId)) return []
  const kinds = at.helps ? {} : { kind: { in: coachKinds } }
  const rows = await tx.db.squadCoach.findMany({
    where: { clubId: tx.clubId, personId: at.personId, ...kinds, ...standsOn(dateOf(at.day)) },
    select: { squadId: true },
    orderBy: [{ squad: { ageLimit: 'asc' } }, { squadId: 'asc' }],
  })
  return [...new Set(rows.map(({ squadId }) => squadId))]
}

/** The database refuses two lines of one person in one squad that overlap. */
export async function recordSquadCoach(
  tx: ClubTx,
  coach: Omit<SquadCoach, 'personName' | 'kind'> & { readonly kind: SquadLineKind },
): Promise<void> {
  const { squadId, personId, kind } = coach
  await tx.db.squadCoach.createMany({
    data: [
      {
        clubId: tx.clubId,
        id: newId(),
        squadId,
        personId,
        kind,
        firstDay: dateOf(coach.firstDay),
        lastDay: dateOrNull(coach.lastDay),
      },
    ],
  })
}

/**
 * Hands a squad over from a day on: whoever coaches it then ends on the day before; other covers stay, and a cover who
 * takes it over is its coach from then on. Refused as `isCoach` when the person coaches it on that day already, and as
 * `tooEarly` when one of those lines begins on that day or later.
 */
export async function handOverSquad(
  tx: ClubTx,
  to: { readonly squadId: SquadId; readonly personId: string; readonly day: Day },
): Promise<Result<null, 'isCoach' | 'tooEarly'>> {
  const { clubId } = tx
  const { squadId, personId } = to
  const date = dateOf(to.day)
  const ending = await tx.db.squadCoach.findMany({
    where: {
      clubId,
      squadId,
      AND: [
        { OR: [{ kind: 'coach' }, { personId }] },
        { OR: [{ lastDay: null }, { lastDay: { gte: date } }] },
      ],
    },
    select: { id: true, personId: true, kind: true, firstDay: true },
  })
  const isCoach = ending.some(
    (one) => one.personId === personId && one.kind === 'coach' && one.firstDay <= date,
  )
  if (isCoach) return refuse('isCoach')
  if (ending.some(({ firstDay }) => firstDay >= date)) return refuse('tooEarly')
  await tx.db.squadCoach.updateMany({
    where: { clubId, id: { in: ending.map(({ id }) => id) } },
    data: { lastDay: dateOf(daysLater(to.day, -1)) },
  })
  await recordSquadCoach(tx, { squadId, personId, kind: 'coach', firstDay: to.day, lastDay: null })
  return accept(null)
}
