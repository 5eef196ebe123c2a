import { z } from 'zod'
import { leastTimeShape, matchFormatShape } from '#exchange/match-format-json'
import type { FormatSource } from '#match/format/match-format'
import type { PublishedFormats } from '#match/format/published-format'

const source = z.strictObject({
  body: z.string().min(1),
  title: z.string().min(1),
  season: z.string().min(1),
  readAt: z.string().min(1),
  isFromMemory: z.boolean(),
})
const key = z.string().regex(/^[a-z0-9-]{1,80}$/)

const fileShape = z.strictObject({
  sources: z.record(z.string(), source),
  formats: z.array(
    z.strictObject({ key, source: z.string().nullable(), format: z.record(z.string(), z.unknown()) }),
  ),
  leastTimes: z.array(
    z.strictObject({
      key,
      source: z.string(),
      words: z.string().min(1).max(600),
      periods: z.int().min(1).nullable(),
      leastTime: leastTimeShape,
      mostKeeperPeriods: z.int().min(1).nullable(),
    }),
  ),
})

/**
 * Formats and rules of least time from their file, sources by a key.
 * @throws ZodError when it is no such file, Error when something names a source that the file does not have.
 */
export function readPublishedFormats(json: unknown): PublishedFormats {
  const file = fileShape.parse(json)
  const sourceOf = (name: string): FormatSource => {
    const found = file.sources[name]
    if (!found) throw new Error(`no source ${name} among the published formats`)
    const { body, title, season, readAt, isFromMemory } = found
    return { body: `${body}, ${title}`, season, readAt, isFromMemory }
  }
  return {
    formats: file.formats.map((one) => ({
      key: one.key,
      format: matchFormatShape.parse({ ...one.format, source: one.source && sourceOf(one.source) }),
    })),
    leastTimes: file.leastTimes.map((one) => ({ ...one, source: sourceOf(one.source) })),
  }
}
