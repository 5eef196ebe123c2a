import type { Viewer } from '#access/viewer'
import { recordAdult } from '#data/adults'
import { newId } from '#data/ids'
import { recordSquadCoach } from '#data/squad-coaches'
import { findViewer } from '#server/find-viewer'
import { codeOfText, type LinkCode } from '#server/link-code'
import { aClub, ownerDatabase, type TestClub } from './test-club'

export type LinkingClub = TestClub & {
  readonly administratorId: string
  readonly otherGuardianId: string
  readonly viewerOf: (personId: string) => Promise<Viewer>
  readonly childId: string
}

/** A club with an administrator, a coach of its squad, and two guardians who are recorded for nobody yet. */
export async function aLinkingClub(name = 'Reedwater'): Promise<LinkingClub> {
  const at = await aClub({ name })
  const [administratorId, otherGuardianId] = [newId(), newId()]
  await at.run(async (tx) => {
    await recordAdult(tx, { id: administratorId, name: 'Oda Birch', role: 'administrator', email: null })
    await recordAdult(tx, { id: otherGuardianId, name: 'Nil Fenn', role: 'guardian', email: null })
    const line = { kind: 'coach', firstDay: '2020-08-01', lastDay: null } as const
    await recordSquadCoach(tx, { squadId: at.squadId, personId: at.coach.personId, ...line })
  })
  const viewerOf = async (personId: string) => {
    const viewer = await findViewer({ clubId: at.club.id, personId })
    if (!viewer) throw new Error('nobody')
    return viewer
  }
  return { ...at, administratorId, otherGuardianId, viewerOf, childId: at.playerIds[0] ?? '' }
}

/** A sign-in as it stands in the database; nobody's yet. */
export async function aLogin(): Promise<string> {
  const id = newId()
  await ownerDatabase().login.create({ data: { id, email: `${id}@example.org`, name: 'Somebody' } })
  return id
}

/** The code in what an action answered. */
export function codeIn(answer: unknown): LinkCode {
  const href = (answer as { value?: { link?: { href?: string } } }).value?.link?.href ?? ''
  const code = codeOfText(href.split('/').at(-1) ?? '')
  if (!code) throw new Error(`no link in ${JSON.stringify(answer)}`)
  return code
}
