import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { listThemes, saveProgramme } from '#data/themes'
import { type Done, saved } from '#server/action'
import { openTerm } from '#server/open-term'
import type { ProgrammeInput } from '#server/theme-input'

/**
 * What a squad wishes for in a term, in the place of what it wished for before. A term that is over keeps its own: it
 * has been reviewed by it. @throws AppError `notAllowed` or `notFound`.
 */
export async function changeProgrammeOf(
  viewer: Viewer,
  { squadId, termId, percents }: ProgrammeInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'changeProgramme', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const term = await openTerm(tx, { squadId, termId, now })
    if (!term.ok) return term
    const known = new Set((await listThemes(tx)).map(({ id }) => id))
    if ([...percents.keys()].some((id) => !known.has(id)))
      return refuse({ path: '', message: 'One of these themes is no longer there. Reload the page.' })
    const problem = problemOfSum([...percents.values()])
    if (problem) return refuse({ path: '', message: problem })
    const programme = [...percents]
      .filter(([, percent]) => percent > 0)
      .map(([themeId, percent]) => ({ themeId, wishedShare: percent / 100 }))
    await saveProgramme(tx, { squadId, termId, programme })
    const by = { personId: viewer.personId, at: now }
    const detail = { termId, themes: programme.length }
    await recordAudit(tx, { action: 'changeProgramme', objectKind: 'squad', objectId: squadId, detail, by })
    return saved(`The programme of ${term.value.name} is saved.`)
  })
}

/** Why these wishes cannot stand beside each other; null when they can. */
export function problemOfSum(percents: readonly number[]): string | null {
  const sum = percents.reduce((total, percent) => total + percent, 0)
  if (sum <= 100) return null
  return `Together these are ${sum} % of the practices; 100 % at most can be planned. Take ${sum - 100} % away somewhere.`
}
