import { z } from 'zod'
import { plannedSpellsShape } from '#exchange/match-plan-json'
import { eventShapeOf, lowerUuid, sharedDeeds } from '#exchange/tapped-json'
import { lines } from '#match/match'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'

/** More than any match has; what is larger is a mistake, or meant to be a burden. */
const matchLimits = { periods: 40, onAtOnce: 30, seconds: 24 * 3600 } as const

const period = z
  .int()
  .min(0)
  .max(matchLimits.periods - 1)
const second = z.int().min(0).max(matchLimits.seconds)
const playerId = lowerUuid
const placed: z.ZodType<PlacedPlayer> = z.strictObject({ playerId, line: z.enum(lines) })
const on = z.array(placed).max(matchLimits.onAtOnce)

/** In the order of #touchline/match-deed. */
const shapes = {
  ...sharedDeeds,
  kickOff: z.strictObject({ kind: z.literal('kickOff'), period, on }),
  periodEnd: z.strictObject({ kind: z.literal('periodEnd'), period }),
  clockStops: z.strictObject({ kind: z.literal('clockStops') }),
  clockGoesOn: z.strictObject({ kind: z.literal('clockGoesOn') }),
  changeMade: z.strictObject({ kind: z.literal('changeMade'), due: second, on }),
  changeDropped: z.strictObject({ kind: z.literal('changeDropped'), due: second }),
  places: z.strictObject({ kind: z.literal('places'), on }),
  replan: z.strictObject({
    kind: z.literal('replan'),
    from: second,
    spells: plannedSpellsShape,
    sentence: z.string().max(1000),
  }),
  sentOff: z.strictObject({ kind: z.literal('sentOff'), playerId, seconds: second.nullable() }),
  goal: z.strictObject({ kind: z.literal('goal'), side: z.enum(['ours', 'theirs']) }),
  fullTime: z.strictObject({ kind: z.literal('fullTime') }),
} satisfies { readonly [Kind in MatchDeed['kind']]: z.ZodType<Extract<MatchDeed, { kind: Kind }>> }

/** A deed of a match by its form alone, as a phone sends it and as the database keeps it. */
export const matchDeedShape: z.ZodType<MatchDeed> = z.discriminatedUnion('kind', [
  shapes.kickOff,
  shapes.periodEnd,
  shapes.clockStops,
  shapes.clockGoesOn,
  shapes.changeMade,
  shapes.changeDropped,
  shapes.places,
  shapes.replan,
  shapes.register,
  shapes.guest,
  shapes.sentOff,
  shapes.goal,
  shapes.fullTime,
  shapes.undo,
])

/** One event of a match's batch, by its form alone. */
export const matchEventShape = eventShapeOf(matchDeedShape)
