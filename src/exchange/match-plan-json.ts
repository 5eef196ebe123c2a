import { z } from 'zod'
import type { Proof } from '#common/proof'
import { linePlacesShape, matchFormatShape } from '#exchange/match-format-json'
import { lineUpGoals } from '#lineup/line-up'
import type { MatchLock, MatchPlan, MatchPlanPlayer, PlannedSpell } from '#lineup/match-plan'
import type { LineUpRules } from '#lineup/problem'
import { lineWishes } from '#match/format/line-wish'
import { lines } from '#match/match'

/** What is larger is a mistake, or meant to be a burden. */
const planLimits = {
  players: 60,
  marks: 60,
  periods: 12,
  windows: 120,
  locks: 2000,
  pairs: 100,
  spells: 2000,
} as const

const dayLong = 24 * 3600
/** In one spelling, as the database has it: an erased player's is found by it. */
const id = z.uuid().toLowerCase()
const second = z.int().min(0).max(dayLong)
const owed = z.number().min(-1e7).max(1e7)
const wish = z.enum(lineWishes)
const pairs = z.array(z.tuple([id, id])).max(planLimits.pairs)
const proof: z.ZodType<Proof> = z.strictObject({
  value: z.number().min(0),
  bound: z.number().min(0),
  proven: z.boolean(),
})

/** A spell of a plan, or of a plan made anew beside the match. */
const plannedSpellShape: z.ZodType<PlannedSpell> = z.strictObject({
  playerId: id,
  line: z.enum(lines),
  start: second,
  end: second,
})

export const plannedSpellsShape = z.array(plannedSpellShape).max(planLimits.spells)

const player: z.ZodType<MatchPlanPlayer> = z.strictObject({
  playerId: id,
  keeps: z.boolean(),
  from: second,
  to: second.nullable(),
  owed: z.strictObject({ playSeconds: owed, keepSeconds: owed, starts: owed }),
  wishes: z.strictObject({ back: wish, middle: wish, forward: wish }),
  metSeconds: z.strictObject({
    back: z.number().min(0).max(1e7),
    middle: z.number().min(0).max(1e7),
    forward: z.number().min(0).max(1e7),
  }),
  playedToday: z.number().min(0).max(dayLong),
})

const rules: z.ZodType<LineUpRules> = z.strictObject({
  keeperForPeriod: z.boolean(),
  mostKeeperPeriods: z.int().min(1).max(planLimits.periods).nullable(),
  leastSpellSeconds: second,
  longestSpellSeconds: second.nullable(),
  longestOffSeconds: second.nullable(),
  mostChanges: z.int().min(0).max(999).nullable(),
  mostSubstitutions: z.int().min(0).max(999).nullable(),
  mayReturn: z.boolean(),
})

const lock: z.ZodType<MatchLock> = z.strictObject({
  playerId: id,
  start: second,
  end: second,
  place: z.enum([...lines, 'on', 'off']),
})

const requestFields = {
  format: matchFormatShape,
  places: linePlacesShape,
  marks: z
    .array(z.array(second).max(planLimits.marks))
    .max(planLimits.periods)
    .refine(
      (marks) => marks.reduce((sum, { length }) => sum + length + 1, 0) <= planLimits.windows,
      `cut the match into more than ${planLimits.windows} parts; fewer times for changes would be right`,
    ),
  players: z.array(player).max(planLimits.players, `at most ${planLimits.players} players`),
  rules,
  leastShare: z.number().min(0).max(1).nullable(),
  apart: pairs,
  mayMeet: pairs.optional(),
  together: pairs,
  isAfresh: z.boolean().optional(),
  locks: z.array(lock).max(planLimits.locks),
}

/** A plan of a match as it is stored and sent: its form only. Whether it can be played is for `checkLineUp` to say. */
export const matchPlanShape: z.ZodType<MatchPlan> = z.strictObject({
  ...requestFields,
  spells: plannedSpellsShape,
  proof: z.strictObject({
    sentence: z.string().max(2000),
    goals: z.strictObject(
      Object.fromEntries(lineUpGoals.map((goal) => [goal, proof])) as Record<
        (typeof lineUpGoals)[number],
        typeof proof
      >,
    ),
  }),
})
