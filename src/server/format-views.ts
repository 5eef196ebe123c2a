import 'server-only'
import { demand } from '#access/demand'
import { may, mayEver } from '#access/may'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { type ClubTx, inClub } from '#data/in-club'
import { getMatchFormat, listMatchFormats, listSquadFormats } from '#data/match-formats'
import { listSquads } from '#data/squads'
import type { ClubFormat, FormatId } from '#match/format/club-format'
import { formatChanges } from '#match/format/format-changes'
import type { MatchFormat } from '#match/format/match-format'
import type { PublishedFormat, PublishedLeastTime } from '#match/format/published-format'
import { formatVersion } from '#server/format-version'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { publishedFormats } from '#server/published-formats'
import type { Squad } from '#squad/squad'

export type ListedFormat = ClubFormat & {
  /** In age order. */
  readonly squadNames: readonly string[]
  /** Parts in which it is otherwise than what it was taken over from; null: it was not taken over. */
  readonly changed: readonly (keyof MatchFormat)[] | null
}

export type FormatsPage = {
  readonly frame: FrameOfPage
  readonly mayChange: boolean
  /** By players a side, then name; those put away last. */
  readonly formats: readonly ListedFormat[]
  /** In age order, each with what it plays. */
  readonly squads: readonly (Squad & { readonly formatId: FormatId | null })[]
  /** What the club has not taken over. */
  readonly published: readonly PublishedFormat[]
}

/** How the club's matches are played. @throws AppError `notAllowed`. */
export async function loadFormats(viewer: Viewer): Promise<FormatsPage> {
  demandToSee(viewer)
  return inClub(viewer.clubId, async (tx) => {
    const formats = await loadListed(tx)
    const played = await listSquadFormats(tx)
    const taken = new Set(formats.map(({ takenFrom }) => takenFrom))
    return {
      frame: await loadFrame(tx, viewer, null),
      mayChange: may(viewer, 'changeFormats', { kind: 'club' }),
      formats,
      squads: (await listSquads(tx)).map((squad) => ({ ...squad, formatId: played.get(squad.id) ?? null })),
      published: publishedFormats.formats.filter(({ key }) => !taken.has(key)),
    }
  })
}

export type FormatPage = {
  readonly frame: FrameOfPage
  readonly mayChange: boolean
  readonly format: ListedFormat
  /** Rules of least time that speak of as many periods. */
  readonly leastTimes: readonly PublishedLeastTime[]
}

/** One format of the club. @throws AppError `notAllowed` or `notFound`. */
export async function loadFormat(viewer: Viewer, formatId: FormatId): Promise<FormatPage> {
  demandToSee(viewer)
  return inClub(viewer.clubId, async (tx) => {
    const format = (await loadListed(tx)).find(({ id }) => id === formatId)
    if (!format) throw new AppError('notFound', `no match format ${formatId}`)
    const count = format.format.periodSeconds.length
    return {
      frame: await loadFrame(tx, viewer, null),
      mayChange: may(viewer, 'changeFormats', { kind: 'club' }),
      format,
      leastTimes: publishedFormats.leastTimes.filter(({ periods }) => periods === null || periods === count),
    }
  })
}

/** The page for a new one. @throws AppError `notAllowed`. */
export async function loadNewFormat(viewer: Viewer): Promise<{ readonly frame: FrameOfPage }> {
  demand(viewer, 'changeFormats', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => ({ frame: await loadFrame(tx, viewer, null) }))
}

export type FormatToChange = {
  readonly frame: FrameOfPage
  readonly formatId: FormatId
  /** What stands there, for whoever saves. */
  readonly version: string
  readonly format: MatchFormat
  /** It came with a source, which stays. */
  readonly keepsSource: boolean
}

/** The form of a format of the club. @throws AppError `notAllowed` or `notFound`. */
export async function loadFormatForm(viewer: Viewer, formatId: FormatId): Promise<FormatToChange> {
  demand(viewer, 'changeFormats', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { format, takenFrom } = await getMatchFormat(tx, formatId)
    return {
      frame: await loadFrame(tx, viewer, null),
      formatId,
      version: formatVersion(format),
      format,
      keepsSource: takenFrom !== null && format.source !== null,
    }
  })
}

/** Everyone who coaches may read how matches are played. */
function demandToSee(viewer: Viewer): void {
  if (!mayEver(viewer, 'seeFormats'))
    throw new AppError('notAllowed', `${viewer.role} ${viewer.personId} may not see formats`)
}

async function loadListed(tx: ClubTx): Promise<readonly ListedFormat[]> {
  const squads = await listSquads(tx)
  const played = await listSquadFormats(tx)
  const formats = (await listMatchFormats(tx)).map((one) => {
    const from = publishedFormats.formats.find(({ key }) => key === one.takenFrom)
    return {
      ...one,
      squadNames: squads.filter(({ id }) => played.get(id) === one.id).map(({ name }) => name),
      changed: from ? formatChanges(from.format, one.format) : null,
    }
  })
  return [...formats.filter(({ isPutAway }) => !isPutAway), ...formats.filter(({ isPutAway }) => isPutAway)]
}
