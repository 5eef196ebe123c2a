import { getClub } from '#data/clubs'
import { saveFamilyNote } from '#data/family-notes'
import type { ClubTx } from '#data/in-club'
import { listPolicies } from '#data/policies'
import { loadPagesOfSquad } from '#server/pages-of-squad'
import { savePages } from '#server/save-family-pages'
import { policyInForce } from '#squad/policy'
import { personId, type SquadKey } from './club'
import type { DemoClub } from './demo-club'
import { type PlayerKey, playerId } from './names'

/** The evening on which the coaches last confirmed what families read: before the last weekend's matches. */
const confirmed = { day: '2026-06-04', at: '2026-06-04T19:20:00.000Z' }

const confirming = [
  { squad: 'underTen', by: 'idris' },
  { squad: 'underTwelve', by: 'samir' },
] as const satisfies readonly { readonly squad: SquadKey; readonly by: string }[]

/** Coaches' notes to families; the later ones were written after that evening, and one of them names another child: they wait. */
const notes: readonly { squad: SquadKey; player: PlayerKey; text: string; at: string }[] = [
  {
    squad: 'underTen',
    player: 'adaeze',
    text: 'Adaeze has helped a lot at the back this spring. In June she plays further up the pitch.',
    at: '2026-06-04T19:00:00.000Z',
  },
  {
    squad: 'underTen',
    player: 'hana',
    text: 'Hana and Kiri have learned to pass to each other without looking.',
    at: '2026-06-07T17:30:00.000Z',
  },
  {
    squad: 'underTwelve',
    player: 'chiara',
    text: 'Chiara has settled in well since January.',
    at: '2026-06-07T18:00:00.000Z',
  },
]

/** Children whose pages nobody has confirmed yet. */
const neverConfirmed: readonly PlayerKey[] = ['dev', 'freya']

/** What the demo's families read, as its coaches confirmed it. */
export async function confirmDemoPages(tx: ClubTx, demo: DemoClub): Promise<void> {
  const club = await getClub(tx)
  const policies = await listPolicies(tx)
  await writeNotes(tx, demo, (at) => at <= confirmed.at)
  for (const { squad: key, by } of confirming) {
    const squad = demo.squads[key === 'underTen' ? 0 : 1]
    const coach = demo.people.find(({ id }) => id === personId(by))
    if (!squad || !coach) throw new Error(`No squad ${key} or no ${by} in the demo.`)
    const of = {
      club,
      squad,
      season: demo.season,
      today: confirmed.day,
      policy: policyInForce(policies, { ageLimit: squad.ageLimit, day: confirmed.day }),
    }
    const unconfirmed = neverConfirmed.map(playerId)
    const pages = (await loadPagesOfSquad(tx, of)).filter(
      ({ child, waits }) => waits.length === 0 && !unconfirmed.includes(child.id),
    )
    await savePages(tx, {
      of,
      pages,
      confirmedBy: coach.name,
      by: { personId: coach.id, at: new Date(confirmed.at) },
    })
  }
  await writeNotes(tx, demo, (at) => at > confirmed.at)
}

async function writeNotes(tx: ClubTx, demo: DemoClub, isTime: (at: string) => boolean): Promise<void> {
  for (const { squad: key, player, text, at } of notes.filter((note) => isTime(note.at))) {
    const squadId = demo.squads[key === 'underTen' ? 0 : 1]?.id ?? ''
    const by = { personId: personId(key === 'underTen' ? 'idris' : 'samir'), at: new Date(at) }
    await saveFamilyNote(tx, { squadId, playerId: playerId(player), text, by })
  }
}
