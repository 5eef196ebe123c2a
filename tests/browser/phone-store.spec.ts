import { expect, type Page, test } from '@playwright/test'
import { atThePitch, keptWhole } from './support/pitch'

/** Everything that lies in the phone's store, as text: what somebody who reads its files would find. */
function everythingOnPhone(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const opening = indexedDB.open('turnbook-pitch')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = async () => {
          const names = [...opening.result.objectStoreNames]
          const reading = opening.result.transaction(names)
          const rows = names.map(
            (name) =>
              new Promise<unknown[]>((done) => {
                const all = reading.objectStore(name).getAll()
                all.onsuccess = () => done(all.result)
              }),
          )
          const asText = (_: string, value: unknown) =>
            value instanceof ArrayBuffer || ArrayBuffer.isView(value)
              ? new TextDecoder('latin1').decode(value as ArrayBuffer)
              : value
          const text = JSON.stringify(await Promise.all(rows), asText)
          opening.result.close()
          resolve(text)
        }
      }),
  )
}

const namesOf = (page: Page) =>
  page.evaluate(async () => {
    const response = await fetch(`/api/pitch/${location.hash.slice(1)}`)
    const { players } = (await response.json()) as { players: { name: string }[] }
    return players.map(({ name }) => name)
  })

test('no name lies open on the phone, and what an older version left open is sealed', async ({
  page,
  context,
}) => {
  await page.close()
  const phone = await atThePitch(context, 'Idris')
  const names = await namesOf(phone)
  expect(names.length).toBeGreaterThan(8)
  const kept = await everythingOnPhone(phone)
  expect(kept).toContain('sealed')
  for (const name of names) expect(kept).not.toContain(name)

  // As the first version of the store kept it, names and all.
  const address = phone.url()
  await phone.goto('/api/health')
  await phone.evaluate(
    (sessionId) =>
      new Promise<void>((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase('turnbook-pitch')
        deleting.onsuccess = () => {
          // The library counts in tens.
          const opening = indexedDB.open('turnbook-pitch', 10)
          opening.onerror = () => reject(opening.error)
          opening.onupgradeneeded = () => {
            const { result: store } = opening
            store.createObjectStore('practices', { keyPath: 'sessionId' })
            const events = store.createObjectStore('events', { keyPath: 'id' })
            events.createIndex('sessionId', 'sessionId')
            events.createIndex('[sessionId+state]', ['sessionId', 'state'])
            store.createObjectStore('settings', { keyPath: 'name' })
          }
          opening.onsuccess = () => {
            const tx = opening.result.transaction(['events'], 'readwrite')
            tx.objectStore('events').put({
              id: '019e9a00-0000-7000-8000-000000000001',
              deviceId: '019e9a00-0000-7000-8000-00000000000d',
              at: Date.UTC(2026, 5, 9, 16),
              deed: {
                kind: 'guest',
                playerId: '019e9a00-0000-7000-8000-0000000000aa',
                name: 'Tamsin Oldrow',
              },
              sessionId,
              state: 'waiting',
              why: null,
            })
            tx.oncomplete = () => {
              opening.result.close()
              resolve()
            }
          }
        }
      }),
    new URL(address).hash.slice(1),
  )
  await phone.goto(address)
  await keptWhole(phone)
  // It was still to be sent, and is.
  const sent = () =>
    phone.evaluate(async () => {
      const response = await fetch(`/api/pitch/${location.hash.slice(1)}`)
      return JSON.stringify((await response.json()).events)
    })
  await expect.poll(sent).toContain('Tamsin Oldrow')
  expect(await everythingOnPhone(phone)).not.toContain('Tamsin')
})

test('whoever is signed out elsewhere has no names left on the phone at the next contact', async ({
  page,
  context,
}) => {
  await page.close()
  const phone = await atThePitch(context, 'Samir')
  await context.clearCookies()
  await phone.reload()
  await expect(
    phone.getByRole('status').filter({ hasText: 'You are signed out on this phone' }),
  ).toBeVisible()
  const kept = JSON.parse(await everythingOnPhone(phone)) as unknown[][]
  // Its own name among phones, its settings and its key are all that is left.
  expect(kept.flat().filter((row) => 'sessionId' in (row as object))).toEqual([])
})
