import { z } from 'zod'
import { designRoundsShape, designSidesShape } from '#exchange/design-json'
import type { AgreedToday, PlanLock, PlannedPlayer, PlannedTurn, PracticePlan } from '#planning/practice-plan'
import { practiceLimits } from '#practice/practice-size'
import type { Station } from '#practice/turn'
import { rotationColumns } from '#rotation/problem'

/** What is larger is a mistake, or meant to be a burden. Sizes of a practice are those of practice-size.ts. */
const planLimits = { pairs: 100, locks: 2000 } as const

const dayLong = 24 * 3600
const id = z.string().min(1).max(80)
const title = z.string().max(200)

const playerIds = z.array(id).max(practiceLimits.places)

export const stationsShape: z.ZodType<readonly Station[]> = z
  .array(z.strictObject({ attack: playerIds, defend: playerIds, keep: playerIds }))
  .max(practiceLimits.areas)

/** One turn with its places, in a plan or in what is tapped at the pitch. */
export const plannedTurnShape: z.ZodType<PlannedTurn> = z.strictObject({
  round: z
    .int()
    .min(0)
    .max(practiceLimits.rounds - 1),
  seconds: z.int().min(1).max(dayLong),
  gapSeconds: z.int().min(0).max(dayLong),
  stations: stationsShape,
})

const turnNumber = z.int().min(1).max(practiceLimits.turns)
const gap = z.number().min(-1e7).max(1e7)

const agreed: z.ZodType<AgreedToday> = z.strictObject({
  dueShare: z.number().min(0).max(1).optional(),
  sameSide: z.boolean().optional(),
  neverWaitsAlone: z.boolean().optional(),
  planShownEarly: z.boolean().optional(),
  firstPartner: id.nullable().optional(),
})

const player: z.ZodType<PlannedPlayer> = z.strictObject({
  playerId: id,
  keeps: z.boolean(),
  side: z.union([z.literal(0), z.literal(1)]).nullable(),
  present: z.array(z.tuple([turnNumber, turnNumber])).max(40),
  notInGoal: z.boolean(),
  waitsAfterEachTurn: z.boolean(),
  mostTurns: z.int().min(0).max(practiceLimits.turns).nullable(),
  gap: z.strictObject(
    Object.fromEntries(rotationColumns.map((column) => [column, gap])) as Record<
      (typeof rotationColumns)[number],
      typeof gap
    >,
  ),
  agreed: agreed.optional(),
})

const lock: z.ZodType<PlanLock> = z.strictObject({
  turn: turnNumber,
  playerId: id,
  place: z.union([
    z.literal('rest'),
    z.strictObject({
      station: z.int().min(1).max(practiceLimits.areas),
      role: z.enum(['attack', 'defend', 'keep']),
    }),
  ]),
  agreed: z.enum(['partner', 'shown']).optional(),
})

const pairs = z.array(z.tuple([id, id])).max(planLimits.pairs)

/**
 * A plan of a practice as it is stored and sent: its form only. Whether it can be played is for `planFaults` of
 * #planning/plan-faults to say.
 */
export const practicePlanShape: z.ZodType<PracticePlan> = z.strictObject({
  design: z.strictObject({
    id: id.nullable(),
    name: title,
    themeId: id.nullable(),
    sides: designSidesShape,
    rounds: designRoundsShape,
    changes: z.array(title).max(40).optional(),
  }),
  players: z.array(player).max(practiceLimits.players, `at most ${practiceLimits.players} players`),
  rules: z.strictObject({
    restLimit: z.int().min(1).max(practiceLimits.turns).nullable(),
    isGentle: z.boolean(),
    keepsSides: z.boolean(),
    countsMatches: z.boolean().optional(),
  }),
  apart: pairs,
  mayMeet: pairs.optional(),
  together: pairs,
  locks: z.array(lock).max(planLimits.locks),
  turns: z
    .array(plannedTurnShape)
    .max(practiceLimits.turns, `at most ${practiceLimits.turns} turns in all rounds`),
  proof: z.strictObject({
    sentence: z.string().max(1000),
    value: z.number().min(0),
    bound: z.number().min(0),
    proven: z.boolean(),
    restLimitUsed: z.int().min(1).max(practiceLimits.turns).nullable(),
  }),
})
