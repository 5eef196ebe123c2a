import type { PitchEvent } from '#pitch/pitch-event'

/**
 * What a phone believes to be with the book, and the book does not have: it was restored from an older copy. To be sent
 * again; the same id is stored once. A coach's phone brings back what other phones had tapped, too; a helper's only what
 * it tapped itself, since its names for new faces are shortened and new plans are not its to send.
 */
export function missingInBook(
  believed: readonly Pick<PitchEvent, 'id' | 'deviceId'>[],
  book: {
    readonly events: readonly Pick<PitchEvent, 'id'>[]
    readonly deviceId: string
    readonly isHelper: boolean
  },
): readonly string[] {
  const there = new Set(book.events.map(({ id }) => id))
  return believed
    .filter(({ id, deviceId }) => !there.has(id) && (!book.isHelper || deviceId === book.deviceId))
    .map(({ id }) => id)
}
