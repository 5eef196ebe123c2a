import { z } from 'zod'
import { toMetres } from '#practice/area-unit'
import { areaUnits } from '#practice/design-sheet'
import type { PublishedGuidance } from '#practice/published-guidance'

const source = z.strictObject({
  body: z.string().min(1),
  title: z.string().min(1),
  season: z.string().min(1),
  readAt: z.string().min(1),
})
const age = z.int().min(3).max(21)
const ages = z.tuple([age, age]).transform(([from, to]) => ({ from, to }))
const lengths = z.tuple([z.number().positive(), z.number().positive()])
const named = { source: z.string(), ages }

const fileShape = z.strictObject({
  sources: z.record(z.string(), source),
  pitches: z.array(
    z.strictObject({
      ...named,
      aSide: z.int().min(2).max(11),
      hasKeeper: z.boolean(),
      unit: z.enum(areaUnits),
      length: lengths,
      width: lengths,
    }),
  ),
  heading: z.array(z.strictObject({ ...named, mostHeaders: z.int().min(0), words: z.string().min(1) })),
  welfare: z.array(
    z.strictObject({
      subject: z.enum(['heat', 'concussion', 'load']),
      source: z.string(),
      words: z.string().min(1),
    }),
  ),
})

/**
 * Published figures from their file: sources by a key, lengths in the unit they were published in.
 * @throws ZodError when it is no such file, Error when a figure names a source that the file does not have.
 */
export function readPublishedGuidance(json: unknown): PublishedGuidance {
  const file = fileShape.parse(json)
  const sourceOf = (key: string) => {
    const found = file.sources[key]
    if (!found) throw new Error(`no source ${key} among the published figures`)
    return found
  }
  return {
    pitches: file.pitches.map(({ source: key, unit, length, width, ...pitch }) => ({
      ...pitch,
      source: sourceOf(key),
      lengthM: { least: toMetres(length[0], unit), most: toMetres(length[1], unit) },
      widthM: { least: toMetres(width[0], unit), most: toMetres(width[1], unit) },
    })),
    heading: file.heading.map((advice) => ({ ...advice, source: sourceOf(advice.source) })),
    welfare: file.welfare.map((advice) => ({ ...advice, source: sourceOf(advice.source) })),
  }
}
