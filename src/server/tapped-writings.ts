import 'server-only'
import { type AuditEntry, listDeedsOn } from '#data/audit'
import type { ClubTx } from '#data/in-club'
import { listWritingTimes, type WritingTime } from '#data/writing-times'

/** Kinds of deed by which a practice or match is written without anybody typing. */
export const writeFromPitchDeed = 'writeFromPitch'
export const joinGuestDeed = 'joinGuestInSession'

/** When it went into the book last, and up to which event. */
export type LastWrite = { readonly at: Date; readonly byName: string | null; readonly upTo: number }

export type Writings = {
  /** From the taps; null: never. */
  readonly lastWrite: LastWrite | null
  /** Somebody typed or corrected since it was written from the taps, or before that: the last time. */
  readonly typed: WritingTime | null
}

/** How a practice or match came into the book so far. */
export async function loadWritings(tx: ClubTx, sessionId: string): Promise<Writings> {
  const deeds = await listDeedsOn(tx, {
    objectId: sessionId,
    actions: [writeFromPitchDeed, joinGuestDeed],
  })
  const lastWrite = lastWriteOf(deeds)
  return { lastWrite, typed: typedOf(await listWritingTimes(tx, sessionId), { deeds, lastWrite }) }
}

function lastWriteOf(deeds: readonly AuditEntry[]): LastWrite | null {
  const last = deeds.find(({ action }) => action === writeFromPitchDeed)
  return last ? { at: last.at, byName: last.personName, upTo: Number(last.detail.upTo) } : null
}

/**
 * The last time somebody typed: after it was written from the taps; and before the first such time only what was played
 * counts, since a register may well be taken beforehand.
 */
function typedOf(
  times: readonly WritingTime[],
  at: { readonly deeds: readonly AuditEntry[]; readonly lastWrite: LastWrite | null },
): WritingTime | null {
  const own = new Set(at.deeds.map((deed) => deed.at.getTime()))
  const since = at.lastWrite?.at.getTime() ?? null
  const typed = times.filter(
    (time) => !own.has(time.at.getTime()) && (since === null ? time.ofPlay : time.at.getTime() > since),
  )
  return typed.at(-1) ?? null
}
