import { liveQuery, type Observable } from 'dexie'
import { v7 as uuidv7 } from 'uuid'
import {
  deletePhone,
  type EventRow,
  eventRow,
  nameOfEvent,
  nameOfPractice,
  type PracticeRow,
  phoneKey,
  store,
} from '#app/pitch/phone-database'
import { forgetOpened, open, seal } from '#app/pitch/phone-seal'
import { isToForget } from '#pitch/kept-on-phone'
import { missingInBook } from '#pitch/missing-in-book'
import type { PitchAnswer, PitchPack } from '#pitch/pitch-pack'
import type { MatchPack } from '#touchline/match-pack'
import type { TappedDeed, TappedEvent } from '#touchline/tapped-event'

/** What was tapped here, or on another phone and came from the server. */
export type KeptEvent = TappedEvent & {
  readonly sessionId: string
  /** `waiting`: not yet with the server. `refused`: the server will not have it; `why` says so. */
  readonly state: 'waiting' | 'sent' | 'refused'
  readonly why: string | null
}

export type PracticePack = Omit<PitchPack, 'events' | 'cursor'>
export type PackOfMatch = Omit<MatchPack, 'events' | 'cursor'>

/** A practice or match as it was fetched last, without its events. */
export type KeptPractice = {
  readonly sessionId: string
  readonly pack: PracticePack | PackOfMatch
  /** Up to where the server's events are here. */
  readonly cursor: number
  readonly fetchedAt: number
  /** When everything tapped here was last known to be with the server; null: never yet. */
  readonly sentAt: number | null
}

export async function listPractices(): Promise<readonly KeptPractice[]> {
  const practices = await Promise.all((await store.practices.toArray()).map(openPractice))
  return practices.filter((practice) => practice !== null)
}

/** Up to where the server's events are here; 0: nothing is. */
export async function cursorOf(sessionId: string): Promise<number> {
  return (await store.practices.get(sessionId))?.cursor ?? 0
}

/** In the order tapped: ids of version 7 sort by their time. */
export async function listWaiting(sessionId: string): Promise<readonly KeptEvent[]> {
  return openEvents(await store.events.where({ sessionId, state: 'waiting' }).sortBy('id'))
}

/** Of all practices on this phone. */
export const countWaiting = () => store.events.filter(({ state }) => state === 'waiting').count()

/** Practices in which something waits, also those of which nothing else can be read here. */
export async function listSessionsWaiting(): Promise<readonly string[]> {
  const waiting = await store.events.filter(({ state }) => state === 'waiting').toArray()
  return [...new Set(waiting.map(({ sessionId }) => sessionId))]
}

/** What this phone has of a practice, told anew whenever that changes, also by another tab. */
export function watchPractice(
  sessionId: string,
  observer: {
    readonly next: (practice: KeptPractice | null, events: readonly KeptEvent[]) => void
    readonly error: () => void
  },
): () => void {
  const rows = liveQuery(() =>
    Promise.all([store.practices.get(sessionId), store.events.where({ sessionId }).toArray()]),
  )
  return watch(rows, observer.error, async ([practice, events]) => {
    const kept = practice ? await openPractice(practice) : null
    const opened = await openEvents(events)
    return () => observer.next(kept, opened)
  })
}

/** Calls back whenever anything of any practice changes. */
export function watchPhone(observer: { readonly next: () => void; readonly error: () => void }): () => void {
  const rows = liveQuery(() => Promise.all([store.practices.toArray(), store.events.count()]))
  return watch(rows, observer.error, async () => observer.next)
}

/** Opening takes a moment: what changed meanwhile is not overtaken by what was there before. */
function watch<Rows>(
  rows: Observable<Rows>,
  error: () => void,
  opened: (rows: Rows) => Promise<() => void>,
): () => void {
  let last = Promise.resolve()
  let isOver = false
  const next = (found: Rows) => {
    const show = opened(found)
    last = last.then(async () => (isOver ? undefined : (await show)())).catch(error)
  }
  const subscription = rows.subscribe({ next, error })
  return () => {
    isOver = true
    subscription.unsubscribe()
  }
}

/** What was tapped is kept before the screen shows it. */
export async function keepTapped(sessionId: string, events: readonly TappedEvent[]): Promise<void> {
  const key = await phoneKey()
  const rows = events.map((event) => eventRow(key, { sessionId, event, state: 'waiting', why: null }))
  await store.events.bulkAdd(await Promise.all(rows))
}

/**
 * A fetched practice, with the events it came with; what waits here to be sent goes on waiting, and what was sent to a
 * book that no longer has it waits again.
 */
export async function keepPack(
  { events, cursor, ...pack }: PitchPack | MatchPack,
  now: number,
): Promise<void> {
  const sessionId = pack.session.id
  const isHelper = pack.viewer.kind === 'helper'
  const own = await deviceId()
  const sealed = await seal(await phoneKey(), nameOfPractice({ sessionId, fetchedAt: now }), pack)
  const received = await receivedRows(sessionId, events)
  await store.transaction('rw', store.practices, store.events, async () => {
    const before = await store.practices.get(sessionId)
    const sent = await store.events.where({ sessionId, state: 'sent' }).toArray()
    const lost = missingInBook(sent, { events, deviceId: own, isHelper })
    await Promise.all(lost.map((id) => store.events.update(id, { state: 'waiting' })))
    await store.events.bulkPut([...received])
    const sentAt = before?.sentAt ?? null
    await store.practices.put({
      sessionId,
      viewerKind: pack.viewer.kind,
      cursor,
      fetchedAt: now,
      sentAt,
      sealed,
    })
  })
}

/** What the server said about what was sent to it, and what other phones had told it. */
export async function keepAnswer(
  sessionId: string,
  answer: PitchAnswer<TappedDeed>,
  now: number,
): Promise<void> {
  const received = await receivedRows(sessionId, answer.events)
  await store.transaction('rw', store.practices, store.events, async () => {
    await Promise.all(answer.stored.map((id) => store.events.update(id, { state: 'sent', why: null })))
    await Promise.all(answer.refused.map(({ id, why }) => store.events.update(id, { state: 'refused', why })))
    await store.events.bulkPut([...received])
    const isAllSent = (await store.events.where({ sessionId, state: 'waiting' }).count()) === 0
    await store.practices.update(sessionId, {
      cursor: answer.cursor,
      ...(isAllSent ? { sentAt: now } : {}),
    })
  })
}

async function receivedRows(sessionId: string, events: readonly TappedEvent[]): Promise<readonly EventRow[]> {
  const key = await phoneKey()
  return Promise.all(events.map((event) => eventRow(key, { sessionId, event, state: 'sent', why: null })))
}

async function openPractice(row: PracticeRow): Promise<KeptPractice | null> {
  const { sessionId, cursor, fetchedAt, sentAt } = row
  const pack = await open<KeptPractice['pack']>(await phoneKey(), nameOfPractice(row), row.sealed)
  return pack && { sessionId, pack, cursor, fetchedAt, sentAt }
}

async function openEvents(rows: readonly EventRow[]): Promise<readonly KeptEvent[]> {
  const key = await phoneKey()
  const opened = rows.map(async (row): Promise<KeptEvent | null> => {
    const event = (await open<TappedEvent>(key, nameOfEvent(row), row.sealed)) ?? row.bare
    return event && { ...event, sessionId: row.sessionId, state: row.state, why: row.why }
  })
  return (await Promise.all(opened)).filter((event) => event !== null)
}

/** This phone's own name among phones. */
export async function deviceId(): Promise<string> {
  return store.transaction('rw', store.settings, async () => {
    const kept = await store.settings.get('deviceId')
    if (typeof kept?.value === 'string') return kept.value
    const value = uuidv7()
    await store.settings.put({ name: 'deviceId', value })
    return value
  })
}

export async function readSetting<Value>(name: string): Promise<Value | null> {
  return ((await store.settings.get(name))?.value as Value | undefined) ?? null
}

export async function keepSetting(name: string, value: unknown): Promise<void> {
  await store.settings.put({ name, value })
}

/** Nothing of any practice is left on this phone. */
export async function forgetEverything(): Promise<void> {
  forgetOpened()
  await deletePhone()
}

/**
 * The book says that this practice is not for whoever holds the phone, or no longer: nothing of it stays, but for taps
 * that are nowhere else.
 */
export async function forgetPractice(sessionId: string): Promise<void> {
  await store.transaction('rw', store.practices, store.events, async () => {
    if ((await store.events.where({ sessionId, state: 'waiting' }).count()) > 0) return
    await store.events.where({ sessionId }).delete()
    await store.practices.delete(sessionId)
  })
}

/** Practices that are over and done with are taken off this phone, but not the one that a coach has open. */
export async function forgetOld(now: number, openId: string | null = null): Promise<void> {
  await store.transaction('rw', store.practices, store.events, async () => {
    for (const { sessionId, viewerKind, fetchedAt } of await store.practices.toArray()) {
      const waiting = await store.events.where({ sessionId, state: 'waiting' }).count()
      const isOpen = sessionId === openId && viewerKind === 'coach'
      if (isOpen || !isToForget({ viewerKind, fetchedAt, waiting }, now)) continue
      await store.events.where({ sessionId }).delete()
      await store.practices.delete(sessionId)
    }
  })
}
