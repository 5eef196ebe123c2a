import Dexie, { type EntityTable } from 'dexie'
import { v7 as uuidv7 } from 'uuid'
import { isToForget } from '#pitch/kept-on-phone'
import { missingInBook } from '#pitch/missing-in-book'
import type { PitchEvent } from '#pitch/pitch-event'
import type { PitchAnswer, PitchPack } from '#pitch/pitch-pack'

/** What was tapped here, or on another phone and came from the server. */
export type KeptEvent = PitchEvent & {
  readonly sessionId: string
  /** `waiting`: not yet with the server. `refused`: the server will not have it; `why` says so. */
  readonly state: 'waiting' | 'sent' | 'refused'
  readonly why: string | null
}

/** A practice as it was fetched last, without its events. */
export type KeptPractice = {
  readonly sessionId: string
  readonly pack: Omit<PitchPack, 'events' | 'cursor'>
  /** Up to where the server's events are here. */
  readonly cursor: number
  readonly fetchedAt: number
  /** When everything tapped here was last known to be with the server; null: never yet. */
  readonly sentAt: number | null
}

type KeptSetting = { readonly name: string; readonly value: unknown }

export const storeName = 'turnbook-pitch'

const store = new Dexie(storeName) as Dexie & {
  practices: EntityTable<KeptPractice, 'sessionId'>
  events: EntityTable<KeptEvent, 'id'>
  settings: EntityTable<KeptSetting, 'name'>
}
store
  .version(1)
  .stores({ practices: 'sessionId', events: 'id, sessionId, [sessionId+state]', settings: 'name' })

export const listPractices = () => store.practices.toArray()

export const findPractice = (sessionId: string) => store.practices.get(sessionId)

export const listEvents = (sessionId: string) => store.events.where({ sessionId }).toArray()

/** In the order tapped: ids of version 7 sort by their time. */
export const listWaiting = (sessionId: string) =>
  store.events.where({ sessionId, state: 'waiting' }).sortBy('id')

/** Of all practices on this phone. */
export const countWaiting = () => store.events.filter(({ state }) => state === 'waiting').count()

/** What was tapped is kept before the screen shows it. */
export async function keepTapped(sessionId: string, events: readonly PitchEvent[]): Promise<void> {
  await store.events.bulkAdd(events.map((event) => ({ ...event, sessionId, state: 'waiting', why: null })))
}

/**
 * A fetched practice, with the events it came with; what waits here to be sent goes on waiting, and what was sent to a
 * book that no longer has it waits again.
 */
export async function keepPack({ events, cursor, ...pack }: PitchPack, now: number): Promise<void> {
  const sessionId = pack.session.id
  const isHelper = pack.viewer.kind === 'helper'
  const own = await deviceId()
  await store.transaction('rw', store.practices, store.events, async () => {
    const before = await store.practices.get(sessionId)
    const sent = await store.events.where({ sessionId, state: 'sent' }).toArray()
    const lost = missingInBook(sent, { events, deviceId: own, isHelper })
    await Promise.all(lost.map((id) => store.events.update(id, { state: 'waiting' })))
    await keepReceived(sessionId, events)
    await store.practices.put({ sessionId, pack, cursor, fetchedAt: now, sentAt: before?.sentAt ?? null })
  })
}

/** What the server said about what was sent to it, and what other phones had told it. */
export async function keepAnswer(sessionId: string, answer: PitchAnswer, now: number): Promise<void> {
  await store.transaction('rw', store.practices, store.events, async () => {
    await Promise.all(answer.stored.map((id) => store.events.update(id, { state: 'sent', why: null })))
    await Promise.all(answer.refused.map(({ id, why }) => store.events.update(id, { state: 'refused', why })))
    await keepReceived(sessionId, answer.events)
    const isAllSent = (await store.events.where({ sessionId, state: 'waiting' }).count()) === 0
    await store.practices.update(sessionId, {
      cursor: answer.cursor,
      ...(isAllSent ? { sentAt: now } : {}),
    })
  })
}

async function keepReceived(sessionId: string, events: readonly PitchEvent[]): Promise<void> {
  await store.events.bulkPut(
    events.map((event) => ({ ...event, sessionId, state: 'sent' as const, why: null })),
  )
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
  await store.delete()
}

/** Practices that are over and done with are taken off this phone, but not the one that a coach has open. */
export async function forgetOld(now: number, openId: string | null = null): Promise<void> {
  await store.transaction('rw', store.practices, store.events, async () => {
    for (const { sessionId, pack, fetchedAt } of await store.practices.toArray()) {
      const waiting = await store.events.where({ sessionId, state: 'waiting' }).count()
      const isOpen = sessionId === openId && pack.viewer.kind === 'coach'
      if (isOpen || !isToForget({ pack, fetchedAt, waiting }, now)) continue
      await store.events.where({ sessionId }).delete()
      await store.practices.delete(sessionId)
    }
  })
}
