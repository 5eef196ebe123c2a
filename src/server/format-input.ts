import 'server-only'
import { z } from 'zod'
import type { Problem } from '#common/problem'
import { longestName } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import { formatLimits } from '#match/format/format-limits'
import type { MatchFormat } from '#match/format/match-format'
import { shapeOfText } from '#match/format/shape-text'
import { minutesOf, numberOf, percent, ticked, whole, wholeOrEmpty, words } from '#server/typed-fields'

const name = words(longestName)
  .transform(tidyName)
  .refine((text) => text !== '', 'is empty; write what the format is called')

const [fewestASide, mostASide] = formatLimits.aSide

const fields = {
  name,
  agesFrom: wholeOrEmpty(3, 99, 'years'),
  agesTo: wholeOrEmpty(3, 99, 'years'),
  aSide: whole(fewestASide, mostASide, 'players'),
  hasKeeper: ticked,
  shapes: z
    .string('write a shape, such as 2-3-1')
    .max(formatLimits.letters)
    .trim()
    .min(1, 'is empty; write a shape, such as 2-3-1'),
  periods: whole(1, formatLimits.periods, 'periods'),
  minutes: z
    .string('write minutes, such as 25')
    .max(formatLimits.letters)
    .trim()
    .min(1, 'is empty; write minutes, such as 25'),
  breakMinutes: minutesOf(0, 60, { orEmpty: false }),
  isShortGames: ticked,
  mostSubstitutions: wholeOrEmpty(0, 99, 'players'),
  changesAtBreaksOnly: ticked,
  mayReturn: ticked,
  leastShare: percent,
  leastPeriods: wholeOrEmpty(1, formatLimits.periods, 'periods'),
  wherePossible: ticked,
  mostKeeperPeriods: wholeOrEmpty(1, formatLimits.periods, 'periods'),
  mostMinutesADay: minutesOf(1, 1440, { orEmpty: true }),
  mostPlayers: wholeOrEmpty(1, 99, 'players'),
  fewestPlayers: wholeOrEmpty(1, 99, 'players'),
  sourceBody: words(formatLimits.letters),
  sourceSeason: words(formatLimits.letters),
  sourceReadAt: words(formatLimits.letters),
  note: words(formatLimits.letters),
}

const formatId = z.uuid()

/** Everything of a format, new or changed; `slips`: what of it cannot be read, to be said with what makes no sense. */
export const saveFormatInput = z
  .object({
    /** Empty: a new one. */
    formatId: z.union([z.literal(''), formatId]),
    /** What stood there when the page was opened. */
    version: z.string().max(100),
    ...fields,
  })
  .catchall(z.unknown())
  .transform((form) => {
    const slips: Problem[] = []
    const issue = (path: string, message: string) => slips.push({ path, message })
    const format: MatchFormat = {
      name: form.name,
      ages: agesOf(form, issue),
      aSide: form.aSide,
      hasKeeper: form.hasKeeper,
      periodSeconds: periodsOf(form, issue),
      breakSeconds: form.breakMinutes ?? 0,
      isShortGames: form.isShortGames,
      mostSubstitutions: form.mostSubstitutions,
      changesAtBreaksOnly: form.changesAtBreaksOnly,
      mayReturn: form.mayReturn,
      leastTime: {
        share: form.leastShare,
        periods: form.leastPeriods,
        late: lateOf(form, issue),
        wherePossible: form.wherePossible,
      },
      mostKeeperPeriods: form.mostKeeperPeriods,
      mostSecondsADay: form.mostMinutesADay,
      mostPlayers: form.mostPlayers,
      fewestPlayers: form.fewestPlayers,
      shapes: shapesOf(form, issue),
      source: sourceOf(form, issue),
      note: form.note,
    }
    return { formatId: form.formatId === '' ? null : form.formatId, version: form.version, format, slips }
  })
export type SaveFormatInput = z.infer<typeof saveFormatInput>

type Issue = (path: string, message: string) => unknown

function agesOf(
  { agesFrom, agesTo }: { readonly agesFrom: number | null; readonly agesTo: number | null },
  issue: Issue,
): MatchFormat['ages'] {
  if (agesFrom === null && agesTo === null) return null
  if (agesFrom !== null && agesTo !== null) return [agesFrom, agesTo]
  issue(agesFrom === null ? 'agesFrom' : 'agesTo', 'is empty; write both ages, or neither')
  return null
}

/** One length for all, or one for each, in their order. */
function periodsOf(
  { minutes, periods }: { readonly minutes: string; readonly periods: number },
  issue: Issue,
): readonly number[] {
  const lengths = minutes.split(/[;/]|,\s|\s+/).filter((text) => text !== '')
  const seconds = lengths.map((text) => Math.round(numberOf(text) * 60))
  const [least, most] = formatLimits.periodSeconds
  const isWrong = seconds.some((length) => !(length >= least && length <= most))
  if (isWrong || seconds.length === 0)
    issue('minutes', `write minutes, ${least / 60} to ${most / 60}, such as 25`)
  else if (seconds.length !== 1 && seconds.length !== periods)
    issue(
      'minutes',
      `has ${seconds.length} lengths for ${periods} periods; write one for all, or one for each`,
    )
  return seconds.length === 1 ? Array.from({ length: periods }, () => seconds[0] ?? 0) : seconds
}

function shapesOf(
  { shapes, hasKeeper }: { readonly shapes: string; readonly hasKeeper: boolean },
  issue: Issue,
): MatchFormat['shapes'] {
  const texts = shapes.split(/[,;\n]/).map((text) => text.trim())
  const typed = texts.filter((text) => text !== '')
  if (typed.length === 0) issue('shapes', 'is empty; write a shape, such as 2-3-1')
  if (typed.length > formatLimits.shapes)
    issue('shapes', `has ${typed.length} shapes; ${formatLimits.shapes} at most would be right`)
  return typed.flatMap((text) => {
    const shape = shapeOfText(text, { hasKeeper })
    if (!shape)
      issue('shapes', `“${text.slice(0, 40)}” is no shape; write numbers from back to front, such as 2-3-1`)
    return shape ?? []
  })
}

/** Fields `late-1`, `late-2` …: periods for whoever comes during that one; empty ones say nothing. */
function lateOf(form: Readonly<Record<string, unknown>>, issue: Issue): MatchFormat['leastTime']['late'] {
  const periods = Array.from({ length: formatLimits.periods }, (_, index) => index + 1)
  return periods.flatMap((arrivesIn) => {
    const typed = form[`late-${arrivesIn}`]
    if (typeof typed !== 'string' || typed.trim() === '') return []
    if (/^\s*\d{1,2}\s*$/.test(typed)) return [{ arrivesIn, periods: Number(typed) }]
    issue(`late-${arrivesIn}`, 'write a whole number of periods, or leave it empty')
    return []
  })
}

function sourceOf(
  form: { readonly sourceBody: string; readonly sourceSeason: string; readonly sourceReadAt: string },
  issue: Issue,
): MatchFormat['source'] {
  const { sourceBody: body, sourceSeason: season, sourceReadAt: readAt } = form
  if (body === '' && (season !== '' || readAt !== ''))
    issue('sourceBody', 'is empty; write who says so, or leave season and place empty too')
  return body === '' ? null : { body, season, readAt, isFromMemory: false }
}

const key = z.string().max(80)

export const takeFormatInput = z.object({ key })
export type TakeFormatInput = z.infer<typeof takeFormatInput>

export const putFormatAwayInput = z.object({ formatId, what: z.enum(['putAway', 'takeOut']) })
export type PutFormatAwayInput = z.infer<typeof putFormatAwayInput>

export const takeLeastTimeInput = z.object({ formatId, key })
export type TakeLeastTimeInput = z.infer<typeof takeLeastTimeInput>

/** An empty format: nobody says how the squad plays. */
export const chooseFormatInput = z.object({
  squadId: z.uuid(),
  formatId: z.preprocess((id) => (id === '' ? null : id), formatId.nullable()),
})
export type ChooseFormatInput = z.infer<typeof chooseFormatInput>
