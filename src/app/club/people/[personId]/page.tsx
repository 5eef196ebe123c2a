import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { makeFamilyLink, makePersonLink, revokePersonLink } from '#server/link-actions'
import {
  addSquadLine,
  changePerson,
  endAccess,
  endLineOfSquad,
  giveAccessBack,
  recordGuardian,
  removeGuardian,
  withholdComing,
} from '#server/people-actions'
import { loadPerson } from '#server/person-views'
import { getViewer } from '#server/viewer'
import { capital } from '#ui/capital'
import { PersonBody } from '#ui/people/person-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: 'One adult' }

const deeds = {
  change: changePerson,
  endAccess,
  giveAccessBack,
  addLine: addSquadLine,
  endLine: endLineOfSquad,
  recordGuardian,
  removeGuardian,
  withhold: withholdComing,
  makeLink: makePersonLink,
  makeFamilyLink,
  revoke: revokePersonLink,
}

type PersonPageProps = {
  readonly params: Promise<{ readonly personId: string }>
  readonly searchParams: Promise<{ readonly find?: string | readonly string[] }>
}

export default async function PersonPage({ params, searchParams }: PersonPageProps) {
  const viewer = await getViewer()
  const { personId } = await params
  const { find } = await searchParams
  const asked = { personId, find: typeof find === 'string' ? find : '' }
  const { frame, ...page } = await orNotFound(loadPerson(viewer, asked))
  const { name, role } = page.person
  return (
    <Shell frame={frame} tab="club" title={name} lead={capital(words.viewerRole[role])}>
      <PersonBody {...page} deeds={deeds} />
    </Shell>
  )
}
