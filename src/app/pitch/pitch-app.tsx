'use client'

import { useSyncExternalStore } from 'react'
import { OneSession } from '#app/pitch/one-session'
import { PracticeList } from '#app/pitch/practice-list'
import { RolePatterns } from '#ui/figures/role-patterns'

const watchHash = (changed: () => void) => {
  window.addEventListener('hashchange', changed)
  return () => window.removeEventListener('hashchange', changed)
}

/** The practice stands behind # in the address: the page that is kept on the phone is one for all of them. */
export function PitchApp() {
  const sessionId = useSyncExternalStore(
    watchHash,
    () => decodeURIComponent(window.location.hash.slice(1)),
    () => null,
  )
  return (
    <div className="outdoors pitch min-h-dvh">
      <RolePatterns />
      {sessionId === '' ? <PracticeList /> : null}
      {sessionId ? <OneSession key={sessionId} sessionId={sessionId} /> : null}
    </div>
  )
}
