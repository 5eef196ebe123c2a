import { z } from 'zod'
import { formatLimits } from '#match/format/format-limits'
import type { FormatSource, LeastTime, LinePlaces, MatchFormat, Shape } from '#match/format/match-format'

const text = z.string().max(formatLimits.letters)
const count = z.int().min(0).max(99)
const periods = z.int().min(1).max(formatLimits.periods)
const places = z.int().min(0).max(formatLimits.aSide[1])

export const linePlacesShape: z.ZodType<LinePlaces> = z.strictObject({
  keeper: z.int().min(0).max(1),
  back: places,
  middle: places,
  forward: places,
})

const shape: z.ZodType<Shape> = z.strictObject({ name: z.string().max(40), places: linePlacesShape })

export const leastTimeShape: z.ZodType<LeastTime> = z.strictObject({
  share: z.number().min(0).max(1).nullable(),
  periods: periods.nullable(),
  late: z.array(z.strictObject({ arrivesIn: periods, periods: count })).max(formatLimits.periods),
  wherePossible: z.boolean(),
})

const source: z.ZodType<FormatSource> = z.strictObject({
  body: text,
  season: text,
  readAt: text,
  isFromMemory: z.boolean(),
})

/** A format as it is stored and sent: its form only. What makes no sense in it is for `formatFaults` to say. */
export const matchFormatShape: z.ZodType<MatchFormat> = z.strictObject({
  name: z.string().min(1).max(80),
  ages: z.tuple([z.int().min(3).max(99), z.int().min(3).max(99)]).nullable(),
  aSide: z.int().min(formatLimits.aSide[0]).max(formatLimits.aSide[1]),
  hasKeeper: z.boolean(),
  periodSeconds: z
    .array(z.int().min(formatLimits.periodSeconds[0]).max(formatLimits.periodSeconds[1]))
    .min(1)
    .max(formatLimits.periods),
  breakSeconds: z.int().min(0).max(3600),
  isShortGames: z.boolean(),
  mostSubstitutions: count.nullable(),
  changesAtBreaksOnly: z.boolean(),
  mayReturn: z.boolean(),
  leastTime: leastTimeShape,
  mostKeeperPeriods: periods.nullable(),
  mostSecondsADay: z.int().min(60).max(86_400).nullable(),
  mostPlayers: count.nullable(),
  fewestPlayers: count.nullable(),
  shapes: z.array(shape).min(1).max(formatLimits.shapes),
  source: source.nullable(),
  note: text,
})
