import 'server-only'
import { atSession, instant, sessionColumns } from '#data/child-copy/at-session'
import { toldOfLineUp } from '#data/child-copy/told-of-line-up'
import { toldOfMatch } from '#data/child-copy/told-of-match'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { matchDeedShape } from '#exchange/match-deed-json'
import { matchPlanShape } from '#exchange/match-plan-json'
import { deedShape } from '#exchange/pitch-json'
import { practicePlanShape } from '#exchange/practice-plan-json'
import type { Deed } from '#pitch/pitch-event'
import { type Station, seatRoles } from '#practice/turn'
import type { ChildCopy, Place } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

type Part = Pick<ChildCopy, 'plans' | 'matchPlans' | 'pitch'>

/** What was planned for a child and tapped of it: out of each plan and each tap its own part alone. */
export async function loadPlansPart(tx: ClubTx, playerId: PlayerId): Promise<Part> {
  const ids = await idsThatName(tx, playerId)
  const plans = await tx.db.sessionPlan.findMany({
    where: { clubId: tx.clubId, sessionId: { in: [...ids.planned] } },
    select: { plan: true, session: sessionColumns },
    orderBy: { session: { day: 'asc' } },
  })
  const events = await tx.db.pitchEvent.findMany({
    where: { clubId: tx.clubId, id: { in: [...ids.tapped] } },
    select: { at: true, deed: true, session: sessionColumns },
    orderBy: [{ at: 'asc' }, { seq: 'asc' }],
  })
  const ofKind = (kind: 'practice' | 'match') => plans.filter(({ session }) => session.kind === kind)
  return {
    plans: ofKind('practice').map(({ plan: json, session }) => {
      const plan = practicePlanShape.parse(json)
      const { agreed, ...expected } = plan.players.find((one) => one.playerId === playerId) ?? {}
      const { firstPartner: _other, ...own } = agreed ?? {}
      return {
        ...atSession(session),
        expected: 'playerId' in expected ? { ...expected, ...(agreed && { agreed: own }) } : null,
        heldInPlace: plan.locks.filter((lock) => lock.playerId === playerId),
        places: placesIn(plan.turns, playerId),
      }
    }),
    matchPlans: ofKind('match').map(({ plan, session }) => ({
      ...atSession(session),
      ...toldOfLineUp(matchPlanShape.parse(plan), playerId),
    })),
    pitch: events.map(({ at, deed, session }) => ({
      ...atSession(session),
      at: instant(at),
      ...(session.kind === 'match'
        ? { ...toldOfMatch(matchDeedShape.parse(deed), playerId), places: [] }
        : toldOf(deedShape.parse(deed), playerId)),
    })),
  }
}

/** Both are JSON texts in which the child stands by its id alone. */
async function idsThatName(tx: ClubTx, playerId: PlayerId) {
  type Rows = { readonly id: string }[]
  const planned = await tx.db.$queryRaw<Rows>(
    Prisma.sql`select "sessionId" as id from "SessionPlan"
      where "clubId" = ${tx.clubId}::uuid and position(${playerId} in plan::text) > 0`,
  )
  const tapped = await tx.db.$queryRaw<Rows>(
    Prisma.sql`select id from "PitchEvent"
      where "clubId" = ${tx.clubId}::uuid and position(${playerId} in deed::text) > 0`,
  )
  return { planned: planned.map(({ id }) => id), tapped: tapped.map(({ id }) => id) }
}

function placesIn(
  turns: readonly { readonly stations: readonly Station[] }[],
  playerId: PlayerId,
): readonly Place[] {
  return turns.flatMap(({ stations }, turn) =>
    stations.flatMap((station, area) =>
      seatRoles
        .filter((role) => station[role].includes(playerId))
        .map((role) => ({ turn: turn + 1, area: area + 1, role })),
    ),
  )
}

/** A deed as far as it is this child's. */
function toldOf(deed: Deed, playerId: PlayerId): Pick<Part['pitch'][number], 'what' | 'said' | 'places'> {
  const what = deed.kind
  switch (deed.kind) {
    case 'register':
      return { what, said: { state: deed.state }, places: [] }
    case 'guest':
      return { what, said: {}, places: [] }
    case 'passed':
      return { what, said: { turn: deed.turn + 1, role: deed.role }, places: [] }
    case 'turnStart':
    case 'change': {
      const turn = 'turn' in deed ? deed.turn : 0
      const places = placesIn([{ stations: deed.stations }], playerId).map((place) => ({
        ...place,
        turn: turn + 1,
      }))
      return { what, said: {}, places }
    }
    case 'replan':
    case 'roundDone':
      return { what, said: {}, places: placesIn(deed.turns, playerId) }
    case 'asPlanned': {
      const left = deed.left?.find((one) => one.playerId === playerId)
      return {
        what,
        said: left ? { leftAfterTurn: left.afterTurn } : {},
        places: placesIn(deed.turns, playerId),
      }
    }
    default:
      return { what, said: {}, places: [] }
  }
}
