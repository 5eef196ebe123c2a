import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { andList } from '#common/and-list'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { lockClub } from '#data/clubs'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import {
  changeMatchFormat,
  getMatchFormat,
  listMatchFormats,
  listSquadFormats,
  lockMatchFormat,
  putMatchFormatAway,
  recordMatchFormats,
} from '#data/match-formats'
import { listSquads } from '#data/squads'
import { nameKey } from '#exchange/table/name-form'
import type { FormatId } from '#match/format/club-format'
import { formatChanges } from '#match/format/format-changes'
import { formatFaults } from '#match/format/format-faults'
import type { MatchFormat } from '#match/format/match-format'
import { type Done, goTo, saved } from '#server/action'
import type { PutFormatAwayInput, SaveFormatInput } from '#server/format-input'
import { formatVersion } from '#server/format-version'

type Answer = Promise<Result<Done, Problem>>

/**
 * A format, new or changed. One that was taken over keeps the source it was taken from.
 * @throws AppError `notAllowed`, `notFound`, or `conflict` when somebody else saved meanwhile.
 */
export async function saveFormatOf(viewer: Viewer, input: SaveFormatInput, now = new Date()): Answer {
  demand(viewer, 'changeFormats', { kind: 'club' })
  const { formatId, version, format, slips } = input
  return inClub(viewer.clubId, async (tx) => {
    // No two of one name, whoever else saves one at this moment.
    await lockClub(tx)
    const by = { personId: viewer.personId, at: now }
    const problems = [
      ...slips,
      ...faultsBeside(slips, format),
      ...(await sameName(tx, { name: format.name, id: formatId })),
    ]
    if (formatId === null) {
      if (problems.length > 0) return refuse(...problems)
      const id = newId()
      await recordMatchFormats(tx, [{ id, format, takenFrom: null }])
      await recordAudit(tx, { action: 'addFormat', objectKind: 'format', objectId: id, by })
      return goTo(`/club/formats/${id}`)
    }
    await lockMatchFormat(tx, formatId)
    const held = await getMatchFormat(tx, formatId)
    if (formatVersion(held.format) !== version)
      throw new AppError('conflict', `match format ${formatId} was changed`)
    if (problems.length > 0) return refuse(...problems)
    const changed = withSource(format, held)
    await changeMatchFormat(tx, { id: formatId, format: changed })
    const detail = { parts: formatChanges(held.format, changed).join(' ') }
    await recordAudit(tx, { action: 'changeFormat', objectKind: 'format', objectId: formatId, detail, by })
    return goTo(`/club/formats/${formatId}`)
  })
}

/** What makes no sense, but where a slip stands already, or stands in the way of knowing. */
function faultsBeside(slips: readonly Problem[], format: MatchFormat): readonly Problem[] {
  const said = new Set(slips.map(({ path }) => path))
  const isUnknown = (path: string) => said.has('minutes') && path.startsWith('least')
  return formatFaults(format).filter(({ path }) => !said.has(path) && !isUnknown(path))
}

/** A source that came with it stays: what the club changes of it, the body does not say. */
function withSource(
  format: MatchFormat,
  held: { readonly format: MatchFormat; readonly takenFrom: string | null },
): MatchFormat {
  const { source } = held.format
  return held.takenFrom === null || source === null ? format : { ...format, source }
}

/** Offered no more, or offered again; one that a squad plays stays. @throws AppError `notAllowed` or `notFound`. */
export async function putFormatAwayOf(
  viewer: Viewer,
  { formatId, what }: PutFormatAwayInput,
  now = new Date(),
): Answer {
  demand(viewer, 'changeFormats', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    await lockMatchFormat(tx, formatId)
    const { format } = await getMatchFormat(tx, formatId)
    const isAway = what === 'putAway'
    const playing = isAway ? await squadsPlaying(tx, formatId) : []
    if (playing.length > 0)
      return refuse({
        path: '',
        message: `${andList(playing)} ${playing.length === 1 ? 'plays' : 'play'} ${format.name}. Choose another format there first.`,
      })
    await putMatchFormatAway(tx, { id: formatId, at: isAway ? now : null })
    await recordAudit(tx, {
      action: isAway ? 'putFormatAway' : 'takeFormatOut',
      objectKind: 'format',
      objectId: formatId,
      by: { personId: viewer.personId, at: now },
    })
    return saved(isAway ? `${format.name} is put away.` : `${format.name} can be chosen again.`)
  })
}

async function squadsPlaying(tx: ClubTx, formatId: FormatId): Promise<readonly string[]> {
  const played = await listSquadFormats(tx)
  return (await listSquads(tx)).filter(({ id }) => played.get(id) === formatId).map(({ name }) => name)
}

/** Formats are chosen by name, so that no two of a club have one. */
export async function sameName(
  tx: ClubTx,
  { name, id }: { readonly name: string; readonly id: FormatId | null },
): Promise<readonly Problem[]> {
  const same = (await listMatchFormats(tx)).find(
    (other) => other.id !== id && nameKey(other.format.name) === nameKey(name),
  )
  if (!same) return []
  const where = same.isPutAway ? ', put away' : ''
  const message = `there is a format ${same.format.name} already${where}; choose another name`
  return [{ path: 'name', message }]
}
