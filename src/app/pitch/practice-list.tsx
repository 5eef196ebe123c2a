'use client'

import { useEffect, useState } from 'react'
import {
  forgetOld,
  type KeptPractice,
  listPractices,
  listSessionsWaiting,
  listWaiting,
  watchPhone,
} from '#app/pitch/pitch-store'
import { fetchToday, sendWaiting } from '#app/pitch/pitch-sync'
import { useOfflinePages } from '#app/pitch/use-offline-pages'
import type { PitchToday } from '#pitch/pitch-today'
import { ChoosePractice, type PracticeOnPhone } from '#ui/pitch/choose-practice'
import { offlineSentence } from '#ui/pitch/saved-line'

const everyMs = 10_000

const nothingToday: PitchToday = { practices: [], isHelper: false }

/** The practices on this phone, the latest day first, and those of today. What waits in any of them is sent from here too. */
export function PracticeList() {
  const [practices, setPractices] = useState<readonly PracticeOnPhone[] | null>(null)
  const [today, setToday] = useState(nothingToday)
  const sentence = offlineSentence(useOfflinePages())
  useEffect(() => {
    // A browser that keeps nothing has no practice.
    const read = () => void readPractices().then(setPractices, () => setPractices([]))
    const unwatch = watchPhone({ next: read, error: () => setPractices([]) })
    const send = () => void sendAll().catch(() => undefined)
    forgetOld(Date.now()).then(send, () => undefined)
    // Without a signal there is what is on the phone.
    fetchToday().then(
      (found) => setToday(found ?? nothingToday),
      () => undefined,
    )
    const timer = setInterval(send, everyMs)
    window.addEventListener('online', send)
    return () => {
      unwatch()
      clearInterval(timer)
      window.removeEventListener('online', send)
    }
  }, [])
  return (
    <main id="content" className="mx-auto max-w-xl">
      <ChoosePractice practices={practices} today={today} />
      {sentence ? <p className="px-4">{sentence}</p> : null}
    </main>
  )
}

function kindOf(pack: KeptPractice['pack']): 'practice' | 'match' {
  return 'kind' in pack ? pack.kind : 'practice'
}

async function sendAll(): Promise<void> {
  for (const sessionId of await listSessionsWaiting()) await sendWaiting(sessionId)
}

async function readPractices(): Promise<readonly PracticeOnPhone[]> {
  const kept = await listPractices()
  const practices = await Promise.all(
    kept.map(async ({ sessionId, pack }) => ({
      sessionId,
      kind: kindOf(pack),
      squadName: pack.session.squadName,
      day: pack.session.day,
      title: pack.session.title,
      startsAt: pack.session.startsAt,
      waiting: (await listWaiting(sessionId)).length,
    })),
  )
  return practices.toSorted((one, other) => (one.day < other.day ? 1 : -1))
}
