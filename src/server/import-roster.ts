import 'server-only'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { recordKeepsChange } from '#data/keeps-changes'
import { endMembership, recordMemberships } from '#data/memberships'
import { changePlayer, type RosterPlayer, recordPlayers } from '#data/players'
import type { PlayerChange, RosterPlan } from '#exchange/roster/roster-plan'
import { afterImport } from '#server/after-import'
import type { ImportBook } from '#server/import-book'
import type { PlayerId } from '#squad/player'
import type { Membership } from '#squad/squad'

export type RosterImported = { readonly newPlayers: number; readonly changedPlayers: number }

/** Writes a roster that is ready, all of it or, when the database refuses anything, nothing. */
export async function saveRoster(
  tx: ClubTx,
  { plan, book, by }: { readonly plan: RosterPlan; readonly book: ImportBook; readonly by: Author },
): Promise<RosterImported> {
  const { squad } = book
  const { players, memberships } = newOnes(plan)
  const changed = changesOf(plan)
  await recordPlayers(tx, players)
  for (const { playerId, change } of changed) await changeOne(tx, { book, by, playerId, change })
  const joins = changed.flatMap(({ playerId, change }) =>
    change.kind === 'joins' ? [{ playerId, ...change.days }] : [],
  )
  await recordMemberships(tx, { squadId: squad.id, memberships: [...memberships, ...joins] })
  const imported = {
    newPlayers: players.length,
    changedPlayers: new Set(changed.map((one) => one.playerId)).size,
  }
  await recordAudit(tx, {
    action: 'importRoster',
    objectKind: 'squad',
    objectId: squad.id,
    detail: imported,
    by,
  })
  const days = [...memberships, ...joins].map(({ firstDay }) => firstDay)
  const ends = changed.flatMap(({ change }) => (change.kind === 'ends' ? [change.lastDay] : []))
  await afterImport(tx, {
    squadId: squad.id,
    from: [...days, ...ends].sort()[0] ?? book.today,
    keepingChanged: changed.flatMap(({ playerId, change }) => (change.kind === 'keeps' ? [playerId] : [])),
    today: book.today,
    now: by.at,
  })
  return imported
}

/** The new players, and the memberships of all rows that are not known players': a row may add days to an earlier one's player. */
function newOnes(plan: RosterPlan): {
  readonly players: readonly RosterPlayer[]
  readonly memberships: readonly Membership[]
} {
  const players: RosterPlayer[] = []
  const memberships: Membership[] = []
  const playerOf = new Map<number, PlayerId>()
  for (const { line, outcome } of plan) {
    if (outcome.kind === 'known') playerOf.set(line, outcome.playerId)
    if (outcome.kind === 'new') {
      const { name, code, keeps, wantsToKeep } = outcome.entry
      const id = newId()
      players.push({ id, name, code, keeps: keeps ?? true, wantsToKeep: wantsToKeep ?? false })
      memberships.push({ playerId: id, ...outcome.days })
      playerOf.set(line, id)
    }
    const earlier =
      outcome.kind === 'again' || outcome.kind === 'doubled' ? playerOf.get(outcome.line) : undefined
    if (earlier !== undefined) playerOf.set(line, earlier)
    if (outcome.kind === 'again' && earlier !== undefined)
      memberships.push({ playerId: earlier, ...outcome.days })
  }
  return { players, memberships }
}

type Changed = { readonly playerId: PlayerId; readonly change: PlayerChange }

function changesOf(plan: RosterPlan): readonly Changed[] {
  return plan.flatMap(({ outcome }) =>
    outcome.kind === 'known' ? outcome.changes.map((change) => ({ playerId: outcome.playerId, change })) : [],
  )
}

/** A roster says how things stand: who may keep goal changes from the day of the import on. */
async function changeOne(
  tx: ClubTx,
  { book, by, playerId, change }: Changed & { readonly book: ImportBook; readonly by: Author },
): Promise<void> {
  const { squad, today } = book
  if (change.kind === 'keeps')
    await recordKeepsChange(tx, { playerId, day: today, keeps: change.to, today, by })
  if (change.kind === 'wantsToKeep') await changePlayer(tx, playerId, { wantsToKeep: change.to })
  if (change.kind === 'ends')
    await endMembership(tx, { squadId: squad.id, playerId, lastDay: change.lastDay })
}
