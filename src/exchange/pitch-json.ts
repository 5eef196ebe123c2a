import { z } from 'zod'
import { designLimits } from '#exchange/design-json'
import { plannedTurnShape, stationsShape } from '#exchange/practice-plan-json'
import { eventShapeOf, lowerUuid, sharedDeeds } from '#exchange/tapped-json'
import type { AreaEnding, Deed } from '#pitch/pitch-event'
import { practiceLimits } from '#practice/practice-size'

const playerId = lowerUuid
const turnPlace = z
  .int()
  .min(0)
  .max(practiceLimits.turns - 1)
const roundPlace = z
  .int()
  .min(0)
  .max(practiceLimits.rounds - 1)
const side = z.union([z.literal(0), z.literal(1), z.literal('attack'), z.literal('defend')])
const points = z.number().min(-99).max(99)
const pointsOfRound = z.number().min(-9999).max(9999)
const turns = z.array(plannedTurnShape).max(practiceLimits.turns)

const areaEnding: z.ZodType<AreaEnding> = z.strictObject({
  station: z
    .int()
    .min(0)
    .max(practiceLimits.areas - 1),
  endingId: z.string().max(80).nullable(),
  points,
  side: side.nullable(),
})

/** In the order of #pitch/pitch-event. */
const shapes = {
  ...sharedDeeds,
  begin: z.strictObject({ kind: z.literal('begin') }),
  replan: z.strictObject({
    kind: z.literal('replan'),
    fromTurn: z.int().min(0).max(practiceLimits.turns),
    turns,
    sentence: z.string().max(1000),
  }),
  roundDone: z.strictObject({ kind: z.literal('roundDone'), round: roundPlace, turns }),
  turnStart: z.strictObject({ kind: z.literal('turnStart'), turn: turnPlace, stations: stationsShape }),
  change: z.strictObject({ kind: z.literal('change'), start: lowerUuid, stations: stationsShape }),
  turnEnd: z.strictObject({
    kind: z.literal('turnEnd'),
    start: lowerUuid,
    endings: z.array(areaEnding).max(practiceLimits.areas),
  }),
  points: z.strictObject({ kind: z.literal('points'), round: roundPlace, side, points: pointsOfRound }),
  choice: z.strictObject({
    kind: z.literal('choice'),
    turn: turnPlace,
    by: z.enum(['attack', 'coach']),
    size: z
      .int()
      .min(0)
      .max(designLimits.sizes - 1),
    side: z.union([z.literal(0), z.literal(1)]).nullable(),
  }),
  passed: z.strictObject({
    kind: z.literal('passed'),
    turn: turnPlace,
    playerId,
    role: z.enum(['attack', 'defend', 'keep']),
  }),
  asPlanned: z.strictObject({
    kind: z.literal('asPlanned'),
    turns,
    left: z
      .array(z.strictObject({ playerId, afterTurn: z.int().min(0).max(practiceLimits.turns) }))
      .max(practiceLimits.players)
      .optional(),
  }),
  stop: z.strictObject({ kind: z.literal('stop') }),
} satisfies { readonly [Kind in Deed['kind']]: z.ZodType<Extract<Deed, { kind: Kind }>> }

/** A deed by its form alone, as a phone sends it and as the database keeps it. */
export const deedShape: z.ZodType<Deed> = z.discriminatedUnion('kind', [
  shapes.begin,
  shapes.register,
  shapes.guest,
  shapes.replan,
  shapes.roundDone,
  shapes.turnStart,
  shapes.change,
  shapes.turnEnd,
  shapes.points,
  shapes.choice,
  shapes.passed,
  shapes.asPlanned,
  shapes.stop,
  shapes.undo,
])

/** One event of a practice's batch, by its form alone. */
export const pitchEventShape = eventShapeOf(deedShape)
