import { z } from 'zod'
import type { Problem } from '#common/problem'
import { readShape } from '#exchange/shape-problems'
import { lowerUuid } from '#exchange/tapped-json'

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
