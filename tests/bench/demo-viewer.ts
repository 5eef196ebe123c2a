import type { Viewer } from '#access/viewer'
import { listDemoPeople } from '#data/people'
import { findViewer } from '#server/find-viewer'

/** The head coach of the demo club. */
export async function demoHeadCoach(): Promise<Viewer> {
  const person = (await listDemoPeople()).find((one) => one.role === 'headCoach')
  const viewer = person && (await findViewer({ clubId: person.clubId, personId: person.id }))
  if (!viewer) throw new Error('The demo club has no head coach.')
  return viewer
}
