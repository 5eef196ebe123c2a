import 'server-only'
import type { DeedName } from '#access/deed-words'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import {
  changeDesign,
  getDesign,
  listEveryDesign,
  lockDesign,
  putDesignAway,
  recordDesigns,
} from '#data/designs'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { listThemes } from '#data/themes'
import { longestName } from '#exchange/table/name-cells'
import { nameKey } from '#exchange/table/name-form'
import { castFaults } from '#practice/cast-faults'
import type { DesignId } from '#practice/design'
import { designFaults } from '#practice/design-faults'
import type { DesignSheet } from '#practice/design-sheet'
import { type Done, goTo, saved } from '#server/action'
import { loadCast } from '#server/design-cast'
import type { DesignInput, DesignOfSquad, NewDesignInput, PutAwayInput } from '#server/design-input'
import { designVersion } from '#server/design-version'
import { loadSquadSeason } from '#server/squad-season'

type Answer = Promise<Result<Done, Problem>>

/** A design more for the club. @throws AppError `notAllowed`. */
export async function addDesignOf(viewer: Viewer, input: NewDesignInput, now = new Date()): Answer {
  demand(viewer, 'changeDesign', { kind: 'squad', squadId: input.squadId })
  return inClub(viewer.clubId, async (tx) => {
    const problems = await problemsOfDesign(tx, viewer, { input, id: null, now })
    if (problems.length > 0) return refuse(...problems)
    const id = newId()
    await recordDesigns(tx, [{ ...input.design, id, copiedFromId: null, isPutAway: false }])
    await recordAudit(tx, { ...aDeed('addDesign', id), by: { personId: viewer.personId, at: now } })
    return goTo(`/squads/${input.squadId}/designs/${id}`)
  })
}

/** Everything of a design. @throws AppError `notAllowed`, `notFound`, or `conflict` when somebody else saved meanwhile. */
export async function changeDesignOf(viewer: Viewer, input: DesignInput, now = new Date()): Answer {
  const { squadId, designId, version, design } = input
  demand(viewer, 'changeDesign', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    await lockDesign(tx, designId)
    const held = await getDesign(tx, designId)
    if (designVersion(held) !== version) throw new AppError('conflict', `design ${designId} was changed`)
    const problems = await problemsOfDesign(tx, viewer, { input, id: designId, now })
    if (problems.length > 0) return refuse(...problems)
    await changeDesign(tx, { ...held, ...design })
    const detail = { rounds: design.rounds.length, adaptations: design.adaptations.length }
    await recordAudit(tx, {
      ...aDeed('changeDesign', designId),
      detail,
      by: { personId: viewer.personId, at: now },
    })
    return goTo(`/squads/${squadId}/designs/${designId}`)
  })
}

/** A copy under a name of its own, to be edited. @throws AppError `notAllowed` or `notFound`. */
export async function copyDesignOf(
  viewer: Viewer,
  { squadId, designId }: DesignOfSquad,
  now = new Date(),
): Answer {
  demand(viewer, 'changeDesign', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const held = await getDesign(tx, designId)
    const id = newId()
    const name = nameOfCopy(
      held.name,
      (await listEveryDesign(tx)).map((design) => design.name),
    )
    await recordDesigns(tx, [{ ...held, id, name, copiedFromId: designId, isPutAway: false }])
    const detail = { copiedFromId: designId }
    await recordAudit(tx, { ...aDeed('copyDesign', id), detail, by: { personId: viewer.personId, at: now } })
    return goTo(`/squads/${squadId}/designs/${id}/edit`)
  })
}

/** Offered no more, or offered again. @throws AppError `notAllowed` or `notFound`. */
export async function putDesignAwayOf(
  viewer: Viewer,
  { squadId, designId, what }: PutAwayInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeDesign', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    const { name } = await getDesign(tx, designId)
    const isAway = what === 'putAway'
    await putDesignAway(tx, { designId, at: isAway ? now : null })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { ...aDeed(isAway ? 'putDesignAway' : 'takeDesignOut', designId), by })
    return saved(isAway ? `${name} is put away.` : `${name} can be chosen again.`)
  })
}

function aDeed(action: DeedName, objectId: DesignId) {
  return { action, objectKind: 'design', objectId }
}

type Wanted = { readonly input: NewDesignInput; readonly id: DesignId | null; readonly now: Date }

async function problemsOfDesign(
  tx: ClubTx,
  viewer: Viewer,
  { input, id, now }: Wanted,
): Promise<readonly Problem[]> {
  const { design, squadId, isForOthers } = input
  const { squad, today } = await loadSquadSeason(tx, viewer, { squadId, now })
  const themeIds = (await listThemes(tx)).map((theme) => theme.id)
  const problems = [
    ...designFaults(design),
    ...sameName(design.name, { id, others: await listEveryDesign(tx) }),
    ...(isForOthers ? [] : castFaults(design.rounds, await loadCast(tx, { squad, today }))),
  ]
  return design.themeId && !themeIds.includes(design.themeId)
    ? [...problems, { path: 'themeId', message: 'is no longer there; choose another, or none' }]
    : problems
}

function sameName(
  name: string,
  { id, others }: { readonly id: DesignId | null; readonly others: readonly DesignSheet[] },
): readonly Problem[] {
  const same = others.find((other) => other.id !== id && nameKey(other.name) === nameKey(name))
  if (!same) return []
  const where = same.isPutAway ? ', put away' : ''
  return [{ path: 'name', message: `there is a design ${same.name} already${where}; choose another name` }]
}

/** "Door to door, copy", then "Door to door, copy 2" …, cut where it would be too long. */
export function nameOfCopy(name: string, taken: readonly string[]): string {
  const keys = new Set(taken.map(nameKey))
  for (let number = 1; ; number += 1) {
    const end = number === 1 ? ', copy' : `, copy ${number}`
    const start = [...name.replace(/, copy(?: \d+)?$/, '')].slice(0, longestName - end.length).join('')
    if (!keys.has(nameKey(start + end))) return start + end
  }
}
