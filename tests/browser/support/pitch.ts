import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, expect, type Page } from '@playwright/test'
import { tryPort } from '../../../src/boot/ports.mjs'
import { TurnbookProcess } from '../../support/turnbook-process'

/** A book of its own for the tests that stop its server in the middle of a practice. */
export async function ownBook() {
  const data = mkdtempSync(join(tmpdir(), 'turnbook-pitch-'))
  const port = await tryPort(0)
  const start = () => new TurnbookProcess({ data, env: { PORT: String(port) } }).untilReady()
  let server = await start()
  return {
    address: `http://localhost:${port}`,
    /** As when the power goes: nothing is put in order first. */
    kill: () => server.stop('SIGKILL'),
    startAgain: async () => {
      server = await start()
    },
    end: async () => {
      await server.stop()
      rmSync(data, { recursive: true, force: true })
    },
  }
}

/** Coaches of the demo whose next practice is planned. */
export type PlannedBy = 'Idris' | 'Samir'

/** A coach's phone at the pitch page of the practice that is planned next, with everything kept that it needs. */
export async function atThePitch(context: BrowserContext, coach: PlannedBy): Promise<Page> {
  const page = await context.newPage()
  await page.goto('/')
  const button = page.getByRole('button', { name: new RegExp(coach) }).first()
  if (!(await button.isVisible())) await page.getByText('Others of this club').click()
  await button.click()
  await expect(page).toHaveURL(/today$/)
  await page.getByRole('link', { name: 'To the pitch' }).click()
  await keptWhole(page)
  return page
}

/** Waits until the page and the practice are on the phone. */
export async function keptWhole(page: Page): Promise<void> {
  await expect(page.getByRole('navigation', { name: 'Screens of the practice' })).toBeVisible()
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
  })
  await expect(page.getByText('Getting ready to work without a signal')).toBeHidden({ timeout: 20_000 })
}

type StoredEvent = { readonly id: string; readonly at: number; readonly deed: { readonly kind: string } }

/** What the book has of this practice, as it tells a phone. */
export function eventsInBook(page: Page): Promise<readonly StoredEvent[]> {
  return page.evaluate(async () => {
    const response = await fetch(`/api/pitch/${location.hash.slice(1)}`)
    return (await response.json()).events
  })
}

/** What this phone has of this practice, read from its store by the browser's own means. */
export function eventsOnPhone(page: Page): Promise<readonly StoredEvent[]> {
  return page.evaluate(
    () =>
      new Promise<StoredEvent[]>((resolve, reject) => {
        const opening = indexedDB.open('turnbook-pitch')
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const all = opening.result.transaction('events').objectStore('events').getAll()
          all.onerror = () => reject(all.error)
          all.onsuccess = () => {
            opening.result.close()
            const sessionId = location.hash.slice(1)
            resolve(all.result.filter((event: { sessionId: string }) => event.sessionId === sessionId))
          }
        }
      }),
  )
}

export const ids = (events: readonly StoredEvent[]) => events.map(({ id }) => id).sort()

/** Nothing lost, nothing doubled: the book has what the phones have, each once. */
export async function expectSameInBook(page: Page, phones: readonly Page[] = [page]): Promise<void> {
  const tapped = new Set<string>()
  for (const phone of phones) for (const id of ids(await eventsOnPhone(phone))) tapped.add(id)
  const inBook = ids(await eventsInBook(page))
  expect(new Set(inBook).size).toBe(inBook.length)
  expect(inBook).toEqual([...tapped].sort())
}

/** The clock at the top, in seconds. */
export async function practiceSecond(page: Page): Promise<number> {
  const text = await page.getByRole('timer', { name: 'Time of the practice' }).textContent()
  const [minutes = 0, seconds = 0] = (text ?? '').split(':').map(Number)
  return minutes * 60 + seconds
}
