import type { Viewer } from '#access/viewer'
import { findViewer } from '#server/find-viewer'
import { type AdultKey, clubId, personId } from '../../seeds/club'

/** Who an adult of the demo club is as a viewer today. */
export async function demoViewer(key: AdultKey): Promise<Viewer> {
  const viewer = await findViewer({ clubId, personId: personId(key) })
  if (!viewer) throw new Error(`the demo club has no ${key}`)
  return viewer
}
