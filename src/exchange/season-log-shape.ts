import { z } from 'zod'
import { lines } from '#match/match'

export const seasonLogFormat = 'turnbook/season-log@1'

// Which numbers and texts make sense is checked afterwards, so that one wrong kind of value hides no other fault.
const seconds = z.number()
const players = z.array(z.string())

export const policyShape = z.strictObject({
  toleranceSeconds: z.number().optional(),
  toleranceShare: z.number().optional(),
  middleAttackShare: z.number().optional(),
})

export const playerShape = z.strictObject({
  id: z.string(),
  keeps: z.boolean().optional(),
  name: z.string().optional(),
})

export const themeShape = z.strictObject({
  id: z.string(),
  name: z.string().optional(),
  parent: z.string().nullable(),
})

const registerShape = z.array(z.strictObject({ player: z.string(), from: seconds, to: seconds }))

export const practiceShape = z.strictObject({
  id: z.string(),
  date: z.string(),
  title: z.string().optional(),
  lengthSeconds: seconds.optional(),
  register: registerShape,
  turns: z.array(
    z.strictObject({
      start: seconds,
      end: seconds,
      theme: z.string().optional(),
      stations: z.array(
        z.strictObject({ attack: players.optional(), defend: players.optional(), keep: players.optional() }),
      ),
    }),
  ),
})

export const matchShape = z.strictObject({
  id: z.string(),
  date: z.string(),
  periods: z.array(z.strictObject({ start: seconds, end: seconds })),
  register: registerShape,
  spells: z.array(z.strictObject({ player: z.string(), line: z.enum(lines), start: seconds, end: seconds })),
})

/** The whole, its lists unread: each of their entries is read by itself. */
export const seasonLogShape = z.strictObject({
  format: z.literal(seasonLogFormat),
  policy: z.unknown().optional(),
  players: z.array(z.unknown()),
  themes: z.array(z.unknown()).optional(),
  practices: z.array(z.unknown()).optional(),
  matches: z.array(z.unknown()).optional(),
})

export type PlayerJson = z.output<typeof playerShape>
export type ThemeJson = z.output<typeof themeShape>
export type PracticeJson = z.output<typeof practiceShape>
export type MatchJson = z.output<typeof matchShape>
export type RegisterJson = z.output<typeof registerShape>
/** A whole log, for writing. */
export type SeasonLogJson = Omit<
  z.output<typeof seasonLogShape>,
  'policy' | 'players' | 'themes' | 'practices' | 'matches'
> & {
  policy?: z.output<typeof policyShape>
  players: PlayerJson[]
  themes?: ThemeJson[]
  practices?: PracticeJson[]
  matches?: MatchJson[]
}
