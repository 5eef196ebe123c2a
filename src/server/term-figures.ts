import 'server-only'
import { earlierDay } from '#common/earlier-day'
import type { Day } from '#common/time'
import type { FlagState } from '#data/flag-states'
import type { ClubTx } from '#data/in-club'
import { listPlayers } from '#data/players'
import { countSessions, sumPresences } from '#data/presence-sums'
import { sumRoles } from '#data/role-sums'
import { summedWritten } from '#fairness/book/written-count'
import { type Evenness, evennessOfMembers } from '#fairness/evenness'
import type { SessionKind } from '#fairness/standing'
import { type PolicyVersion, policyInForce } from '#squad/policy'
import type { Squad, SquadId, Term } from '#squad/squad'
import { waysWritten } from '#squad/written'

/** How even a squad was in a term, practices and matches apart. */
export type TermFigures = Readonly<Record<SessionKind, Evenness>>

type Asked = {
  readonly squads: readonly Squad[]
  readonly term: Pick<Term, 'firstDay' | 'lastDay'>
  readonly today: Day
  readonly policies: readonly PolicyVersion[]
  readonly flags: readonly FlagState[]
}

/** Of every squad asked about, up to today. Four questions to the database, whatever the number of squads. */
export async function loadTermFigures(
  tx: ClubTx,
  { squads, term, today, policies, flags }: Asked,
): Promise<ReadonlyMap<SquadId, TermFigures>> {
  const to = earlierDay(term.lastDay, today)
  const held = { squadIds: squads.map(({ id }) => id), from: term.firstDay, to }
  const counts = await countSessions(tx, held)
  const sums = (await sumRoles(tx, { ...held, writtens: waysWritten })).filter(({ isMember }) => isMember)
  const presences = (await sumPresences(tx, { ...held, writtens: waysWritten })).filter(
    ({ isMember }) => isMember,
  )
  const live = new Map(presences.map((one) => [keyOf(one), one.liveSeconds]))
  const players = new Map(
    (await listPlayers(tx, [...new Set(sums.map(({ playerId }) => playerId))])).map((one) => [one.id, one]),
  )
  const figuresOf = (squad: Squad, kind: SessionKind) => {
    const policy = policyInForce(policies, { ageLimit: squad.ageLimit, day: to })
    const isOf = (one: { readonly squadId: SquadId; readonly kind: SessionKind }) =>
      one.squadId === squad.id && one.kind === kind
    return evennessOfMembers({
      kind,
      written: summedWritten(counts.filter(isOf), policy),
      members: sums.filter(isOf).flatMap((one) => {
        const player = players.get(one.playerId)
        return player ? [{ player, roles: one.roles, liveSeconds: live.get(keyOf(one)) ?? 0 }] : []
      }),
      policy,
      flags: flags.filter(({ squadId }) => squadId === squad.id),
    })
  }
  return new Map(
    squads.map((squad) => [
      squad.id,
      { practice: figuresOf(squad, 'practice'), match: figuresOf(squad, 'match') },
    ]),
  )
}

function keyOf(one: {
  readonly squadId: SquadId
  readonly playerId: string
  readonly kind: SessionKind
}): string {
  return `${one.squadId} ${one.playerId} ${one.kind}`
}
