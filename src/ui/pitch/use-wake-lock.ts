'use client'

import { useEffect } from 'react'

/** Keeps the screen awake while `isWanted`, where the browser can; asked for again whenever the page is back in sight. */
export function useWakeLock(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return
    let lock: WakeLockSentinel | null = null
    let isOver = false
    const ask = async () => {
      if (document.visibilityState !== 'visible') return
      // A phone that saves its battery says no; the clock goes on all the same.
      const given = await navigator.wakeLock.request('screen').catch(() => null)
      if (isOver) await given?.release()
      else lock = given
    }
    void ask()
    document.addEventListener('visibilitychange', ask)
    return () => {
      isOver = true
      document.removeEventListener('visibilitychange', ask)
      void lock?.release()
    }
  }, [isWanted])
}
