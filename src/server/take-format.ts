import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { lockClub } from '#data/clubs'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import {
  changeMatchFormat,
  getMatchFormat,
  lockMatchFormat,
  recordMatchFormats,
  setFormatOfSquad,
} from '#data/match-formats'
import { getSquad } from '#data/squads'
import { formatFaults } from '#match/format/format-faults'
import { formatLimits } from '#match/format/format-limits'
import { type Done, goTo, saved } from '#server/action'
import { sameName } from '#server/change-format'
import type { ChooseFormatInput, TakeFormatInput, TakeLeastTimeInput } from '#server/format-input'
import { publishedFormats } from '#server/published-formats'

type Answer = Promise<Result<Done, Problem>>

/** A published format, or one of ours, becomes the club's. @throws AppError `notAllowed` or `notFound`. */
export async function takeFormatOf(viewer: Viewer, { key }: TakeFormatInput, now = new Date()): Answer {
  demand(viewer, 'changeFormats', { kind: 'club' })
  const published = publishedFormats.formats.find((one) => one.key === key)
  if (!published) throw new AppError('notFound', `no published format ${key}`)
  const { format } = published
  return inClub(viewer.clubId, async (tx) => {
    await lockClub(tx)
    const [taken] = await sameName(tx, { name: format.name, id: null })
    if (taken)
      return refuse({
        path: '',
        message: `There is a format of this name already: ${format.name}. Give that one another name first.`,
      })
    const id = newId()
    await recordMatchFormats(tx, [{ id, format, takenFrom: key }])
    await recordAudit(tx, {
      action: 'takeFormat',
      objectKind: 'format',
      objectId: id,
      detail: { key },
      by: { personId: viewer.personId, at: now },
    })
    return goTo(`/club/formats/${id}`)
  })
}

/**
 * A published rule of least time takes the place of what a format promises; where it is from goes into its note.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function takeLeastTimeOf(
  viewer: Viewer,
  { formatId, key }: TakeLeastTimeInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeFormats', { kind: 'club' })
  const rule = publishedFormats.leastTimes.find((one) => one.key === key)
  if (!rule) throw new AppError('notFound', `no published rule of least time ${key}`)
  return inClub(viewer.clubId, async (tx) => {
    await lockMatchFormat(tx, formatId)
    const { format } = await getMatchFormat(tx, formatId)
    const count = format.periodSeconds.length
    if (rule.periods !== null && rule.periods !== count)
      return refuse({
        path: '',
        message: `This rule speaks of ${rule.periods} periods, and ${format.name} has ${count}. Take a format of ${rule.periods} periods for it.`,
      })
    const changed = {
      ...format,
      leastTime: rule.leastTime,
      mostKeeperPeriods: rule.mostKeeperPeriods ?? format.mostKeeperPeriods,
      note: withLine(format.note, `Least time: ${rule.source.body}, ${rule.source.season}.`),
    }
    const faults = formatFaults(changed)
    if (faults.length > 0)
      return refuse(
        ...faults.map(({ message }) => ({
          path: '',
          message: `With this rule ${format.name} would make no sense: ${message}.`,
        })),
      )
    await changeMatchFormat(tx, { id: formatId, format: changed })
    await recordAudit(tx, {
      action: 'takeLeastTime',
      objectKind: 'format',
      objectId: formatId,
      detail: { key },
      by: { personId: viewer.personId, at: now },
    })
    return saved('Saved. Everyone is promised this least time in matches of this format.')
  })
}

/** In place of an earlier line of the same beginning; a note that is full stays as it is. */
function withLine(note: string, line: string): string {
  const kept = note.split('\n').filter((one) => one !== '' && !one.startsWith('Least time: '))
  const whole = [...kept, line].join('\n')
  return [...whole].length > formatLimits.letters ? note : whole
}

/** How a squad's matches are played; null: nobody says. @throws AppError `notAllowed` or `notFound`. */
export async function chooseFormatOf(
  viewer: Viewer,
  { squadId, formatId }: ChooseFormatInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeFormats', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const squad = await getSquad(tx, squadId)
    if (formatId !== null) await lockMatchFormat(tx, formatId)
    const chosen = formatId === null ? null : await getMatchFormat(tx, formatId)
    if (chosen?.isPutAway)
      return refuse({ path: 'formatId', message: `${chosen.format.name} is put away; take it out first` })
    await setFormatOfSquad(tx, { squadId, formatId })
    await recordAudit(tx, {
      action: 'chooseFormat',
      objectKind: 'squad',
      objectId: squadId,
      detail: { formatId },
      by: { personId: viewer.personId, at: now },
    })
    return saved(
      chosen ? `${squad.name} plays ${chosen.format.name}.` : `No format is chosen for ${squad.name}.`,
    )
  })
}
