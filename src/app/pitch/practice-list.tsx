'use client'

import { liveQuery } from 'dexie'
import { useEffect, useState } from 'react'
import { forgetOld, listPractices, listWaiting } from '#app/pitch/pitch-store'
import { sendWaiting } from '#app/pitch/pitch-sync'
import { useOfflinePages } from '#app/pitch/use-offline-pages'
import { ChoosePractice, type PracticeOnPhone } from '#ui/pitch/choose-practice'
import { offlineSentence } from '#ui/pitch/saved-line'

const everyMs = 10_000

/** The practices on this phone, the latest day first. What waits in any of them is sent from here too. */
export function PracticeList() {
  const [practices, setPractices] = useState<readonly PracticeOnPhone[] | null>(null)
  const sentence = offlineSentence(useOfflinePages())
  useEffect(() => {
    // A browser that keeps nothing has no practice.
    const shown = liveQuery(readPractices).subscribe({ next: setPractices, error: () => setPractices([]) })
    const send = () => void sendAll().catch(() => undefined)
    forgetOld(Date.now()).then(send, () => undefined)
    const timer = setInterval(send, everyMs)
    window.addEventListener('online', send)
    return () => {
      shown.unsubscribe()
      clearInterval(timer)
      window.removeEventListener('online', send)
    }
  }, [])
  return (
    <main id="content" className="mx-auto max-w-xl">
      <ChoosePractice practices={practices} />
      {sentence ? <p className="px-4">{sentence}</p> : null}
    </main>
  )
}

async function sendAll(): Promise<void> {
  for (const { sessionId, waiting } of await readPractices()) if (waiting > 0) await sendWaiting(sessionId)
}

async function readPractices(): Promise<readonly PracticeOnPhone[]> {
  const kept = await listPractices()
  const practices = await Promise.all(
    kept.map(async ({ sessionId, pack: { session } }) => ({
      sessionId,
      squadName: session.squadName,
      day: session.day,
      title: session.title,
      startsAt: session.startsAt,
      waiting: (await listWaiting(sessionId)).length,
    })),
  )
  return practices.toSorted((one, other) => (one.day < other.day ? 1 : -1))
}
