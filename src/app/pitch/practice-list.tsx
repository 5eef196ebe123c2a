'use client'

import { useEffect, useState } from 'react'
import { forgetOld, listPractices, listWaiting } from '#app/pitch/pitch-store'
import { useOfflinePages } from '#app/pitch/use-offline-pages'
import { ChoosePractice, type PracticeOnPhone } from '#ui/pitch/choose-practice'
import { offlineSentence } from '#ui/pitch/saved-line'

/** The practices on this phone, the latest day first. */
export function PracticeList() {
  const [practices, setPractices] = useState<readonly PracticeOnPhone[] | null>(null)
  const sentence = offlineSentence(useOfflinePages())
  useEffect(() => {
    // A browser that keeps nothing has no practice.
    void readPractices().then(setPractices, () => setPractices([]))
  }, [])
  return (
    <main id="content" className="mx-auto max-w-xl">
      <ChoosePractice practices={practices} />
      {sentence ? <p className="px-4">{sentence}</p> : null}
    </main>
  )
}

async function readPractices(): Promise<readonly PracticeOnPhone[]> {
  await forgetOld(Date.now())
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
