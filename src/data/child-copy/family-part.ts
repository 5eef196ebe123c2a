import 'server-only'
import { instant, instantOrNull } from '#data/child-copy/at-session'
import { dayOf, dayOrNull } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

type Part = Pick<ChildCopy, 'familyPages' | 'familyNotes' | 'requests' | 'consents' | 'record'>

/** What passed between the club and a child's family. `forId`: the guardian the copy is for. */
export async function loadFamilyPart(
  tx: ClubTx,
  { playerId, forId }: { readonly playerId: PlayerId; readonly forId: string | null },
): Promise<Part> {
  const { clubId, db } = tx
  const where = { clubId, playerId }
  const squadName = { squad: { select: { name: true } } }
  const pages = await db.familyPage.findMany({
    where,
    include: { ...squadName, season: { select: { name: true } } },
    orderBy: { confirmedAt: 'asc' },
  })
  const notes = await db.familyNote.findMany({ where, include: squadName, orderBy: { writtenAt: 'asc' } })
  const requests = await db.childRequest.findMany({
    where: { ...where, ...(forId !== null && { askedById: forId }) },
    include: { askedBy: { select: { name: true } } },
    orderBy: [{ receivedOn: 'asc' }, { id: 'asc' }],
  })
  const consents = await db.consent.findMany({
    where,
    include: { givenBy: { select: { id: true, name: true } } },
    orderBy: [{ givenOn: 'asc' }, { id: 'asc' }],
  })
  const record = await db.auditEntry.findMany({
    where: { clubId, OR: [{ objectId: playerId }, { detail: { path: ['playerId'], equals: playerId } }] },
    select: { at: true, action: true, person: { select: { role: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  })
  const giver = (person: { readonly id: string; readonly name: string } | null) => {
    if (!person) return 'nobody named'
    return forId === null || person.id === forId ? person.name : 'another guardian'
  }
  return {
    familyPages: pages.map(({ squad, season, confirmedAt, showsFrom, page }) => ({
      squad: squad.name,
      season: season.name,
      confirmedAt: instant(confirmedAt),
      showsFrom: instant(showsFrom),
      page,
    })),
    familyNotes: notes.map(({ squad, text, writtenAt }) => ({
      squad: squad.name,
      text,
      writtenAt: instant(writtenAt),
    })),
    requests: requests.map((row) => ({
      kind: row.kind,
      text: row.text,
      askedBy: row.askedBy?.name ?? 'by word of mouth or letter',
      receivedOn: dayOf(row.receivedOn),
      dueOn: dayOf(row.dueOn),
      extendedTo: dayOrNull(row.extendedTo),
      extendedWhy: row.extendedWhy,
      outcome: row.outcome,
      answer: row.answer,
      answeredAt: instantOrNull(row.answeredAt),
    })),
    consents: consents.map((row) => ({
      kind: row.kind,
      wording: row.wording,
      givenBy: giver(row.givenBy),
      givenOn: dayOf(row.givenOn),
      withdrawnOn: dayOrNull(row.withdrawnOn),
      recordedAt: instant(row.recordedAt),
    })),
    record: record.map(({ at, action, person }) => ({
      at: instant(at),
      byRole: person?.role ?? 'the program itself',
      what: action,
    })),
  }
}
