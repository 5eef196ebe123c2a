import 'server-only'
import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import { findDesign } from '#data/designs'
import type { ClubTx } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { findShowsComing } from '#data/shows-coming'
import { listThemes } from '#data/themes'
import { type ComingWhen, comingWhen, nextPractice } from '#family/next-practice'
import type { SquadId } from '#squad/squad'

/** The practice that comes next, as far as a family may know of it. */
export type ComingPractice = {
  /** Null: none is chosen yet. */
  readonly themeName: string | null
  /** Null: not told to this family. */
  readonly when: ComingWhen | null
}

const daysAhead = 28

/** It is read anew each time and never confirmed: a practice that is called off must not stand on a page until then. */
export async function loadComingPractice(
  tx: ClubTx,
  at: { readonly squadId: SquadId; readonly today: Day; readonly isWithheld: boolean },
): Promise<ComingPractice | null> {
  const { squadId, today, isWithheld } = at
  const sessions = await listSessions(tx, { squadId, from: today, to: daysLater(today, daysAhead) })
  const next = nextPractice(sessions, today)
  if (!next) return null
  const design = next.designId ? await findDesign(tx, next.designId) : null
  const themeId = next.themeId ?? design?.themeId ?? null
  const theme = themeId ? (await listThemes(tx)).find(({ id }) => id === themeId) : undefined
  const showsComing = await findShowsComing(tx, squadId)
  return { themeName: theme?.name ?? null, when: comingWhen(next, { showsComing, isWithheld }) }
}
