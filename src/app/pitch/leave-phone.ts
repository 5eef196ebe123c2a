import { storeName } from '#app/pitch/phone-database'
import { countWaiting, forgetEverything } from '#app/pitch/pitch-store'
import { forgetClock } from '#app/pitch/use-pitch-clock'

/** How many taps of practices would be lost if this phone forgot them now. */
export const tapsOnlyHere = countWaiting

/** Whether any practice has ever been kept on this phone since it was last forgotten. */
export async function hasPractices(): Promise<boolean> {
  return (await indexedDB.databases()).some(({ name }) => name === storeName)
}

/** Takes everything of every practice off this phone: names, taps, and the pages that open without a signal. */
export async function forgetPhone(): Promise<void> {
  await forgetEverything()
  forgetClock()
  // Without its files the worker could only stand in the way; the next visit brings it back whole.
  const registrations = (await navigator.serviceWorker?.getRegistrations()) ?? []
  await Promise.all(registrations.map((registration) => registration.unregister()))
  const names = 'caches' in globalThis ? await caches.keys() : []
  await Promise.all(names.filter((name) => name.startsWith('turnbook-')).map((name) => caches.delete(name)))
}
