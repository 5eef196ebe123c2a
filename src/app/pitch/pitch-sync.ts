import { cursorOf, deviceId, forgetPractice, keepAnswer, keepPack, listWaiting } from '#app/pitch/pitch-store'
import { firstBatch } from '#pitch/first-batch'
import type { PitchAnswer, PitchBatch, PitchPack, PitchRefusal } from '#pitch/pitch-pack'
import type { PitchToday } from '#pitch/pitch-today'
import type { MatchPack } from '#touchline/match-pack'
import type { TappedDeed } from '#touchline/tapped-event'

/** How an exchange with the server went. */
export type Exchange =
  | { readonly kind: 'done'; readonly clock: ServerClock }
  /** No signal, or no server behind it. */
  | { readonly kind: 'noSignal' }
  /** The server answered and will not: signed out, not this viewer's, cancelled. */
  | { readonly kind: 'refused'; readonly why: string }

/** What the server's clock read between the sending and the answer, by this phone's steady clock. In milliseconds. */
export type ServerClock = {
  readonly sentSteady: number
  readonly receivedSteady: number
  readonly serverNow: number
}

/** Half of what the server takes at once. */
const most = { events: 200, letters: 1_000_000 }
const patienceMs = 12_000

/** Fetches the practice anew and keeps it. */
export async function fetchPractice(sessionId: string): Promise<Exchange> {
  const answer = await ask<PitchPack | MatchPack>(sessionId, {})
  if (answer.kind === 'done') await keepPack(answer.value, Date.now())
  return answer
}

/**
 * Sends what waits, oldest first, and takes what other phones sent, until nothing waits. An event is sent again until
 * the server has said that it has it: the same id is stored once.
 */
export async function sendWaiting(sessionId: string): Promise<Exchange> {
  for (;;) {
    const waiting = (await listWaiting(sessionId)).map(({ id, deviceId, at, deed }) => ({
      id,
      deviceId,
      at,
      deed,
    }))
    const cursor = await cursorOf(sessionId)
    const events = firstBatch(waiting, most)
    const body: PitchBatch<TappedDeed> = { deviceId: await deviceId(), cursor, events }
    const answer = await ask<PitchAnswer<TappedDeed>>(sessionId, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })
    if (answer.kind !== 'done') return answer
    await keepAnswer(sessionId, answer.value, Date.now())
    if (answer.value.cursor < cursor) {
      // The book was restored from an older copy: what it had of this phone since is held against what it has now.
      const fetched = await fetchPractice(sessionId)
      if (fetched.kind !== 'done') return fetched
      continue
    }
    const isStuck = answer.value.stored.length + answer.value.refused.length === 0
    if (events.length === waiting.length || isStuck) return answer
  }
}

/** Today's practices of whoever is signed in; null without a signal, or when nobody is. */
export async function fetchToday(): Promise<PitchToday | null> {
  const response = await fetch('/api/pitch', {
    cache: 'no-store',
    redirect: 'error',
    signal: AbortSignal.timeout(patienceMs),
  })
  return response.ok ? response.json() : null
}

type Asked<Value> = Exclude<Exchange, { kind: 'done' }> | { kind: 'done'; value: Value; clock: ServerClock }

async function ask<Value extends { readonly serverNow: number }>(
  sessionId: string,
  how: RequestInit,
): Promise<Asked<Value>> {
  const sentSteady = performance.now()
  try {
    const response = await fetch(`/api/pitch/${encodeURIComponent(sessionId)}`, {
      ...how,
      cache: 'no-store',
      redirect: 'error',
      signal: AbortSignal.timeout(patienceMs),
    })
    // A server that is being started again, or a proxy without one, is no answer.
    if (response.status >= 500) return { kind: 'noSignal' }
    const receivedSteady = performance.now()
    const value = await response.json()
    if (!response.ok) {
      // Signed out, or no longer this viewer's: names of children do not stay with whoever holds the phone.
      if (response.status === 401 || response.status === 404) await forgetPractice(sessionId)
      return { kind: 'refused', why: whyOf(value, response.status) }
    }
    return { kind: 'done', value, clock: { sentSteady, receivedSteady, serverNow: value.serverNow } }
  } catch {
    return { kind: 'noSignal' }
  }
}

function whyOf(value: unknown, status: number): string {
  const why = (value as Partial<PitchRefusal> | null)?.why
  if (typeof why === 'string') return why
  return status === 401
    ? 'You are signed out on this phone.'
    : 'The book does not take this practice from you.'
}
