import 'server-only'
import { z } from 'zod'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { acknowledgeFlag, findFlagPlace } from '#data/flag-states'
import { inClub } from '#data/in-club'
import { type Done, saved } from '#server/action'

const mostLetters = 300

/** `reason`: one of the short list; else `ownWords`. */
export const flagAnswerInput = z.object({
  flagId: z.uuid(),
  reason: z.string().trim().max(mostLetters).default(''),
  ownWords: z
    .string()
    .trim()
    .max(mostLetters, `can be ${mostLetters} letters at most; yours is longer, so say it shorter`)
    .default(''),
})

/** Keeps a flag silent until it gets worse, and says why. @throws AppError `notAllowed` or `notFound`. */
export async function answerFlagOf(
  viewer: Viewer,
  { flagId, reason, ownWords }: z.infer<typeof flagAnswerInput>,
): Promise<Result<Done, Problem>> {
  const said = reason || ownWords
  if (said === '') {
    return refuse({
      path: 'ownWords',
      message: 'is empty; write a few words, or choose one of the answers above',
    })
  }
  return inClub(viewer.clubId, async (tx) => {
    const place = await findFlagPlace(tx, flagId)
    if (!place) throw new AppError('notFound', `no flag ${flagId}`)
    demand(viewer, 'answerFlag', { kind: 'squad', squadId: place.squadId })
    const by = { personId: viewer.personId, at: new Date() }
    const done = await acknowledgeFlag(tx, { flagId, reason: said, by })
    if (!done.ok) return refuse({ path: '', message: 'This flag has cleared meanwhile. Reload the page.' })
    await recordAudit(tx, { action: 'answerFlag', objectKind: 'flag', objectId: flagId, by })
    return saved('Answered. It keeps silent until it gets worse.')
  })
}
