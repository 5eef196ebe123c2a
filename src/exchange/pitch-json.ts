import { z } from 'zod'
import type { Problem } from '#common/problem'
import { designLimits } from '#exchange/design-json'
import { plannedTurnShape, stationsShape } from '#exchange/practice-plan-json'
import { readShape } from '#exchange/shape-problems'
import { nameProblem } from '#exchange/table/name-cells'
import { tidyName } from '#exchange/table/name-form'
import type { AreaEnding, Deed, PitchEvent } from '#pitch/pitch-event'
import { practiceLimits } from '#practice/practice-size'

/** More than any practice has; what is larger is a mistake, or meant to be a burden. */
export const pitchLimits = {
  /** Events in one batch; a phone sends the rest in the next. */
  events: 500,
  /** Length of a batch as text, in characters. */
  batchLetters: 2_000_000,
  /** Length of one deed as JSON, in bytes; the database takes somewhat more. */
  deedBytes: 200_000,
  /** Events of one practice, of all phones together. */
  eventsOfPractice: 5_000,
  /** All of them together, as the database measures them, in bytes. */
  bytesOfPractice: 8_000_000,
  /** New faces of one practice. */
  guests: 40,
  /** What helpers can have of each of these in all, so that a code in wrong hands leaves the coach's phone its room. */
  shareOfHelpers: 0.5,
} as const

/** In the order of #pitch/pitch-event. Lower case, so that one id has one spelling. */
export const lowerUuid = z.uuid().toLowerCase()
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

/** As the book takes a name; a phone's own spaces go. */
export const guestName = z
  .string()
  .max(1000)
  .transform(tidyName)
  .superRefine((name, context) => {
    const problem = name === '' ? 'a guest has a name' : nameProblem(name)
    if (problem) context.addIssue({ code: 'custom', message: problem })
  })

const shapes = {
  begin: z.strictObject({ kind: z.literal('begin') }),
  register: z.strictObject({
    kind: z.literal('register'),
    playerId,
    state: z.enum(['here', 'notPlaying', 'out', 'gone']),
    secondAnswer: z.boolean().optional(),
  }),
  guest: z.strictObject({ kind: z.literal('guest'), playerId, name: guestName }),
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
  undo: z.strictObject({ kind: z.literal('undo'), undoes: lowerUuid, secondAnswer: z.boolean().optional() }),
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

/** Milliseconds since 1970 that a phone's clock may show: from 1970 to the end of 2099. */
export const epochMs = z
  .int()
  .min(0)
  .max(Date.UTC(2100, 0, 1) - 1)

/** One event of a batch, by its form alone. */
export const pitchEventShape: z.ZodType<PitchEvent> = z.strictObject({
  id: z.uuid({ version: 'v7' }).toLowerCase(),
  deviceId: lowerUuid,
  at: epochMs,
  deed: deedShape,
})

/** What comes around the events; they themselves are read one by one, so that a bad one does not block the others. */
const batchShape = z.strictObject({
  deviceId: lowerUuid,
  cursor: z.int().min(0),
  events: z.array(z.unknown()).max(pitchLimits.events),
})

/** A batch whose events are still to be read, by what may be tapped in the session. */
export type SentBatch = {
  readonly deviceId: string
  readonly cursor: number
  readonly events: readonly unknown[]
}

/** Events that are each either read or refused in a sentence; `id` empty: not even an id could be read. */
export type ReadEvents<Event> = {
  readonly events: readonly Event[]
  readonly refused: readonly { readonly id: string; readonly why: string }[]
}

/** Reads what comes around the events. Problems: the batch as a whole cannot be read, and nothing of it counts. */
export function readBatch(
  body: unknown,
):
  | { readonly ok: true; readonly batch: SentBatch }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  const { value, problems } = readShape(batchShape, body, [])
  return value ? { ok: true, batch: value } : { ok: false, problems }
}

/** Reads the events of a batch one by one. */
export function readEvents<Event extends { readonly deed: unknown }>(
  shape: z.ZodType<Event>,
  sent: readonly unknown[],
): ReadEvents<Event> {
  const events: Event[] = []
  const refused: { id: string; why: string }[] = []
  for (const [index, one] of sent.entries()) {
    const read = readShape(shape, one, ['events', index])
    const why = read.value ? whyNotKept(read.value.deed) : sentenceOf(read.problems)
    if (read.value && why === null) events.push(read.value)
    else refused.push({ id: idOf(one), why: why ?? '' })
  }
  return { events, refused }
}

const tooLong = `This is longer than anything that happens at a pitch: at most ${pitchLimits.deedBytes} bytes are kept.`
const noText = 'A text in this holds a character that no text has and that cannot be kept. Tap it again.'

/** Why the database would not keep a deed of the right form; null when it would. */
function whyNotKept(deed: unknown): string | null {
  const text = JSON.stringify(deed)
  if (new TextEncoder().encode(text).length > pitchLimits.deedBytes) return tooLong
  let isText = true
  JSON.parse(text, (_key, value) => {
    // A zero, or one half of a character that takes two.
    if (typeof value === 'string' && (value.includes('\u0000') || /\p{Surrogate}/u.test(value)))
      isText = false
    return value
  })
  return isText ? null : noText
}

function sentenceOf(problems: readonly Problem[]): string {
  const told = problems.slice(0, 3).map(({ path, message }) => `${path} ${message}`)
  return `The book cannot read this: ${told.join('; ')}.`
}

function idOf(sent: unknown): string {
  const id = sent && typeof sent === 'object' && 'id' in sent ? sent.id : null
  return typeof id === 'string' ? id.slice(0, 80) : ''
}
