import Dexie, { type EntityTable } from 'dexie'
import { canSeal, makeKey, type Sealed, seal } from '#app/pitch/phone-seal'
import type { PitchPack, PitchViewer } from '#pitch/pitch-pack'
import { withoutNames } from '#pitch/without-names'
import type { TappedEvent } from '#touchline/tapped-event'

/** A practice or match as it lies on the phone: the names and the plan are in `sealed`, or nowhere but in the open page. */
export type PracticeRow = {
  readonly sessionId: string
  readonly viewerKind: PitchViewer['kind']
  readonly cursor: number
  readonly fetchedAt: number
  readonly sentAt: number | null
  readonly sealed: Sealed | null
}

/** A tap as it lies on the phone. `bare`: where nothing can be sealed, one tapped here without the words in it, so that it is never lost. */
export type EventRow = {
  readonly id: string
  readonly sessionId: string
  readonly state: 'waiting' | 'sent' | 'refused'
  readonly why: string | null
  readonly deviceId: string
  readonly sealed: Sealed | null
  readonly bare: TappedEvent | null
}

type SettingRow = { readonly name: string; readonly value: unknown }
type KeyRow = { readonly name: string; readonly key: CryptoKey }

export const storeName = 'turnbook-pitch'

export const store = new Dexie(storeName) as Dexie & {
  practices: EntityTable<PracticeRow, 'sessionId'>
  events: EntityTable<EventRow, 'id'>
  settings: EntityTable<SettingRow, 'name'>
  keys: EntityTable<KeyRow, 'name'>
}
const tables = { practices: 'sessionId', events: 'id, sessionId, [sessionId+state]', settings: 'name' }
store.version(1).stores(tables)
store.version(2).stores({ ...tables, keys: 'name' })

export const nameOfPractice = ({ sessionId, fetchedAt }: Pick<PracticeRow, 'sessionId' | 'fetchedAt'>) =>
  `practice/${sessionId}/${fetchedAt}`
export const nameOfEvent = ({ sessionId, id }: Pick<EventRow, 'sessionId' | 'id'>) =>
  `event/${sessionId}/${id}`

let opened: Promise<CryptoKey | null> | null = null

/** This phone's key, made when there is none; null where the browser seals nothing. Whatever an older version left open is sealed first. */
export function phoneKey(): Promise<CryptoKey | null> {
  opened ??= openPhone().catch((error) => {
    opened = null
    throw error
  })
  return opened
}

/** Nothing of any practice is left on this phone; without its key nothing that was overlooked could be read either. */
export async function deletePhone(): Promise<void> {
  opened = null
  await store.delete()
}

async function openPhone(): Promise<CryptoKey | null> {
  const key = canSeal() ? await keptKey() : null
  await sealWhatIsOpen(key)
  return key
}

async function keptKey(): Promise<CryptoKey> {
  // Made before it is known whether it is needed: inside a transaction nothing else can be waited for.
  const before = await store.keys.get('own')
  if (before) return before.key
  const made = await makeKey()
  return store.transaction('rw', store.keys, async () => {
    const kept = await store.keys.get('own')
    if (kept) return kept.key
    await store.keys.put({ name: 'own', key: made })
    return made
  })
}

type OldPractice = PracticeRow & { readonly pack?: Omit<PitchPack, 'events' | 'cursor'> }
type OldEvent = EventRow & Partial<TappedEvent>

/** Rows as the first version of this store kept them become rows as they are now, where they lie. */
async function sealWhatIsOpen(key: CryptoKey | null): Promise<void> {
  const practices = (await store.practices.toArray()) as readonly OldPractice[]
  for (const { pack, ...row } of practices) {
    if (!pack) continue
    const sealed = await seal(key, nameOfPractice(row), pack)
    await store.practices.put({ ...row, viewerKind: pack.viewer.kind, sealed })
  }
  const events = (await store.events.toArray()) as readonly OldEvent[]
  for (const { id, sessionId, deviceId, state, why, at, deed } of events) {
    if (at === undefined || deed === undefined) continue
    const event: TappedEvent = { id, deviceId, at, deed }
    await store.events.put(await eventRow(key, { sessionId, event, state, why }))
  }
}

/** `state` and `why` stand open beside it. */
export async function eventRow(
  key: CryptoKey | null,
  {
    sessionId,
    event,
    state,
    why,
  }: Pick<EventRow, 'sessionId' | 'state' | 'why'> & { readonly event: TappedEvent },
): Promise<EventRow> {
  const { id, deviceId } = event
  const sealed = await seal(key, nameOfEvent({ sessionId, id }), event)
  // What came from the book can be fetched from there again.
  const bare = key || state === 'sent' ? null : withoutNames(event)
  return { id, sessionId, state, why, deviceId, sealed, bare }
}
