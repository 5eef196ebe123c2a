import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { findClub } from '#data/clubs'
import type { Database } from '#data/database'
import { acknowledgeFlag, listFlagStates } from '#data/flag-states'
import { type ClubTx, inClub } from '#data/in-club'
import { rebuildSquad } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import { confirmDemoPages } from './confirm-pages'
import { buildDemoClub, type DemoClub } from './demo-club'
import { recordFamilyRights } from './family-rights'
import { planDemoMatch } from './planned-matches'
import { planDemoSessions } from './planned-sessions'
import { recordFrame } from './record-frame'
import { recordDemoSessions } from './record-sessions'

const timeoutMs = 120_000

/**
 * Loads the demo club by the owner's connection, since the app may enter no club: in one transaction, so that a load
 * cut short leaves nothing behind. False when the club is there already; it is then left as it is. `workLimit`: how much
 * the exact solver works on each practice that is planned already; left out, the plans are those that are there at once.
 */
export async function loadDemoClub(
  owner: Database,
  say: (line: string) => void,
  { workLimit = null }: { readonly workLimit?: number | null } = {},
): Promise<boolean> {
  const demo = buildDemoClub()
  return inClub(
    demo.club.id,
    async (tx) => {
      if (await findClub(tx)) return false
      await recordFrame(tx, demo)
      say(`${demo.club.name}: ${demo.squads.length} squads, ${demo.players.length} players`)
      await recordDemoSessions(tx, demo.sessions)
      say(`${demo.sessions.length} sessions`)
      for (const { id: squadId, name } of demo.squads) {
        await foldSquad(tx, demo, squadId)
        say(`${name}: accounts and flags`)
      }
      await confirmDemoPages(tx, demo)
      say('pages for families confirmed')
      await planDemoSessions(tx, demo, { now: endOf(demo), workLimit })
      say('two practices planned')
      await planDemoMatch(tx, demo, { now: endOf(demo) })
      say('a match planned')
      await recordFamilyRights(tx)
      const by = { personId: null, at: endOf(demo) }
      await recordAudit(tx, { action: 'loadDemo', objectKind: 'club', objectId: demo.club.id, by })
      return true
    },
    { database: owner, timeoutMs },
  )
}

/**
 * The same club as it stood on an earlier day: written up to it, nothing confirmed for families and nothing planned. Into a
 * database without it.
 */
export async function loadDemoAt(owner: Database, today: Day): Promise<void> {
  const demo = buildDemoClub({ today })
  await inClub(
    demo.club.id,
    async (tx) => {
      await recordFrame(tx, demo)
      await recordDemoSessions(tx, demo.sessions)
      for (const { id } of demo.squads) await foldSquad(tx, demo, id)
    },
    { database: owner, timeoutMs },
  )
}

/** Sessions to come have no account yet, that of the day itself included. */
async function foldSquad(tx: ClubTx, demo: DemoClub, squadId: string): Promise<void> {
  const { calendarDay: today } = demo.club
  await rebuildSquad(tx, { squadId, to: daysLater(today, -1) })
  await refreshFlags(tx, { squadId, seasonId: demo.season.id, today, now: endOf(demo) })
  const flags = await listFlagStates(tx, { squadIds: [squadId], seasonId: demo.season.id })
  for (const answer of demo.acknowledgements.filter((one) => one.squadId === squadId)) {
    const { playerId, rule, scope, reason, byId, at } = answer
    const flag = flags.find((one) => one.playerId === playerId && one.rule === rule && one.scope === scope)
    const by = { personId: byId, at: new Date(at) }
    const done = flag && (await acknowledgeFlag(tx, { flagId: flag.id, reason, by }))
    if (!done?.ok) throw new Error(`No flag ${rule} of ${playerId} to acknowledge.`)
  }
}

/** The morning of the day on which the demo's calendar stands still. */
function endOf(demo: DemoClub): Date {
  return new Date(`${demo.club.calendarDay}T08:00:00.000Z`)
}
