import 'server-only'
import { z } from 'zod'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { andList } from '#common/and-list'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { listChildrenOfSquad } from '#data/family-children'
import { saveFamilyNote } from '#data/family-notes'
import { inClub } from '#data/in-club'
import { longestNote } from '#family/family-page'
import { namesInNote } from '#family/names-in-note'
import { type Done, saved } from '#server/action'

export const familyNoteInput = z.object({
  squadId: z.uuid(),
  playerId: z.uuid(),
  text: z
    .string()
    .transform((text) => text.replace(/\r\n?/g, '\n').trim())
    .refine(
      (text) => text.length <= longestNote,
      `can be ${longestNote} letters at most; yours is longer, so say it shorter`,
    ),
  /** The question that was answered with yes, as it was asked: other names ask anew. */
  saidYesTo: z.string().max(20_000).default(''),
})

/** A coach's note to one child's family; names of others are asked about first. @throws AppError `notAllowed` or `notFound`. */
export async function saveFamilyNoteOf(
  viewer: Viewer,
  { squadId, playerId, text, saidYesTo }: z.infer<typeof familyNoteInput>,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'confirmFamilyPage', { kind: 'squad', squadId })
    const children = await listChildrenOfSquad(tx, squadId)
    const child = children.find(({ id }) => id === playerId)
    if (!child) throw new AppError('notFound', `no child ${playerId} in squad ${squadId}`)
    const otherNames = children.filter(({ id }) => id !== playerId).map(({ name }) => name)
    const named = namesInNote(text, { ownName: child.name, otherNames })
    const question = named.length > 0 ? asksToKeep(named) : ''
    if (saidYesTo !== question && question !== '') return refuse({ path: 'saidYesTo', message: question })
    const by = { personId: viewer.personId, at: now }
    await saveFamilyNote(tx, { squadId, playerId, text, by })
    await recordAudit(tx, {
      action: 'writeFamilyNote',
      objectKind: 'player',
      objectId: playerId,
      detail: { squadId, letters: text.length, names: named.length },
      by,
    })
    return saved(
      text === ''
        ? 'The note is taken away. The family reads so once you confirm the page.'
        : 'The note is kept. The family reads it once you confirm the page.',
    )
  })
}

function asksToKeep(names: readonly string[]): string {
  return `This note names ${andList(names)}. Families read only about their own child. Keep it so?`
}
