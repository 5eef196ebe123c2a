import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { addPerson } from '#server/people-actions'
import { loadPeople } from '#server/people-views'
import { getViewer } from '#server/viewer'
import { PeopleBody } from '#ui/people/people-body'

export const metadata: Metadata = { title: 'Adults' }

export default async function PeoplePage() {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadPeople(viewer))
  return (
    <Shell frame={frame} tab="club" title="Adults of the club" lead="Who they are, and what they may see.">
      <PeopleBody {...page} add={addPerson} />
    </Shell>
  )
}
