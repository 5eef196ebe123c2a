import 'server-only'
import { z } from 'zod'
import { practiceLimits } from '#practice/practice-size'
import { sessionOfSquad } from '#server/session-input'

const dayMinutes = 24 * 60

const ids = z
  .union([z.uuid().transform((id) => [id]), z.array(z.uuid()).max(practiceLimits.players)])
  .default([])

/** What a coach who writes a practice into the book saw on the page, and answered. */
export const confirmInput = sessionOfSquad.extend({
  /** What stood in the book when the page was opened. */
  version: z.string().max(200),
  /** Up to which tap the page knew; null: it does not matter. */
  cursor: z.coerce.number('reload the page').int().min(0).nullable().default(null),
  /** How long the practice was, where nothing that was tapped says so; null: not answered. */
  lengthMinutes: z.preprocess(
    (value) => (value === '' || value === undefined ? null : value),
    z.coerce
      .number('write a whole number of minutes, such as 75')
      .int('write a whole number of minutes, such as 75')
      .min(1, 'is no practice; write how many minutes it was, such as 75')
      .max(dayMinutes, 'is longer than a day; write how many minutes it was, such as 75')
      .nullable(),
  ),
  /** What was tapped is to stand in the place of what was typed. */
  overTyped: z
    .literal('on')
    .optional()
    .transform((answer) => answer === 'on'),
  /** Whose being out for today is taken back, each after a second answer. */
  takenBack: ids,
})
export type ConfirmInput = z.output<typeof confirmInput>

const round = z.preprocess(
  (value) => (value === '' || value === undefined ? null : value),
  z.coerce.number('choose one of the rounds').int().min(0).max(practiceLimits.turns).nullable(),
)

/** The answer to one question after a practice that nobody tapped. */
export const asPlannedInput = sessionOfSquad.extend({
  version: z.string().max(200),
  /** Place of the last round that was played, from 0; null: all were. */
  stoppedAfterRound: round,
  /** Of each who was not there to the end: its id and, after a colon, the place of its last round, or `none`. */
  left: z
    .preprocess(
      (value) => (value === undefined ? [] : [value].flat().filter((text) => text !== '')),
      z
        .array(z.string().regex(/^[0-9a-f-]{36}:(\d{1,3}|none)$/, 'choose one of the rounds'))
        .max(practiceLimits.players),
    )
    .transform((texts) =>
      texts.map((text) => {
        const [playerId = '', round = ''] = text.split(':')
        return { playerId, afterRound: round === 'none' ? null : Number(round) }
      }),
    ),
})
export type AsPlannedInput = z.output<typeof asPlannedInput>

/** A guest of a practice or match, and who of the club it turned out to be. */
export const joinGuestInput = sessionOfSquad.extend({
  guestId: z.uuid(),
  playerId: z.uuid('choose a player of the list'),
})
export type JoinGuestInput = z.output<typeof joinGuestInput>
