import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { inClub } from '#data/in-club'
import { recordSquadCoach } from '#data/squad-coaches'
import { endSquadLine, listSquadLines } from '#data/squad-lines'
import { getSquad } from '#data/squads'
import { type Done, saved } from '#server/action'
import { openPerson, recordDeed } from '#server/change-people'
import type { EndSquadLineInput, SquadLineInput } from '#server/people-input'

type Answer = Promise<Result<Done, Problem>>

/** Lets somebody coach, cover or help with a squad from a day on. @throws AppError `notAllowed` or `notFound`. */
export async function addSquadLineOf(viewer: Viewer, input: SquadLineInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    const { squadId, kind, firstDay, lastDay } = input
    const why = whyNotThis(person.role, kind)
    if (why) return refuse({ path: 'kind', message: why })
    const squad = await getSquad(tx, squadId)
    if (lastDay !== null && lastDay < firstDay)
      return refuse({ path: 'lastDay', message: `is before ${firstDay}; choose that day or a later one` })
    const meets = (await listSquadLines(tx, person.id)).find(
      (line) =>
        line.squadId === squad.id &&
        line.firstDay <= (lastDay ?? '9999-12-31') &&
        firstDay <= (line.lastDay ?? '9999-12-31'),
    )
    if (meets)
      return refuse({
        path: 'firstDay',
        message: `meets days that stand there already: ${meets.firstDay} to ${meets.lastDay ?? 'today and on'}; end those first, or choose other days`,
      })
    await recordSquadCoach(tx, { squadId: squad.id, personId: person.id, kind, firstDay, lastDay })
    const detail = { squadId: squad.id, kind, firstDay, lastDay }
    await recordDeed(tx, viewer, { action: 'addSquadLine', personId: person.id, detail, now })
    return saved(`Saved: ${squad.name}.`)
  })
}

/** The last day with a squad. @throws AppError `notAllowed` or `notFound`. */
export async function endSquadLineOf(viewer: Viewer, input: EndSquadLineInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    const lines = await listSquadLines(tx, person.id)
    const line = lines.find(({ id }) => id === input.lineId)
    if (!line) throw new AppError('notFound', `no line ${input.lineId} of person ${person.id}`)
    const { lastDay } = input
    if (lastDay < line.firstDay)
      return refuse({
        path: 'lastDay',
        message: `is before ${line.firstDay}; choose that day or a later one`,
      })
    const next = lines.find(
      (one) => one.squadId === line.squadId && one.firstDay > line.firstDay && one.firstDay <= lastDay,
    )
    if (next)
      return refuse({
        path: 'lastDay',
        message: `is after ${next.firstDay}, where the next days with this squad begin; choose an earlier day`,
      })
    await endSquadLine(tx, { lineId: line.id, lastDay })
    const detail = { squadId: line.squadId, lastDay }
    await recordDeed(tx, viewer, { action: 'endSquadLine', personId: person.id, detail, now })
    return saved(`Saved: ${line.squadName} until ${lastDay}.`)
  })
}

/** A helper coaches nobody, and whoever has no part in squads gets none by a line alone. */
function whyNotThis(role: Viewer['role'], kind: SquadLineInput['kind']): string | null {
  if (role === 'guardian') return 'needs another role: give this person the role of coach or helper first'
  if (role === 'helper' && kind !== 'helps')
    return 'is for coaches; choose “helps at the pitch”, or change the role first'
  return null
}
