'use client'

import { useEffect, useState } from 'react'
import type { OfflinePages } from '#ui/pitch/saved-line'

const askAgainMs = 1500

/**
 * Puts the pages of the pitch on this phone, and says whether they are all there. A new build is fetched behind the
 * one in use and is there when the page is opened next.
 */
export function useOfflinePages(): OfflinePages {
  const [state, setState] = useState<OfflinePages>('looking')
  useEffect(() => {
    if (!globalThis.isSecureContext) return setState('insecure')
    if (!('serviceWorker' in navigator)) return setState('unable')
    let isOver = false
    const watch = async () => {
      await navigator.serviceWorker.register('/sw.js', { scope: '/pitch', updateViaCache: 'none' })
      while (!isOver) {
        const registration = await navigator.serviceWorker.getRegistration('/pitch')
        if (registration?.active && (await isWhole(registration.active))) return setState('ready')
        setState('getting')
        await new Promise((resolve) => setTimeout(resolve, askAgainMs))
      }
    }
    // Without a signal the registration cannot be looked at anew; what is kept still opens.
    watch().catch(async () => {
      const registration = await navigator.serviceWorker.getRegistration('/pitch')
      const isHere = registration?.active ? await isWhole(registration.active) : false
      if (!isOver) setState(isHere ? 'ready' : 'unable')
    })
    return () => {
      isOver = true
    }
  }, [])
  return state
}

function isWhole(worker: ServiceWorker): Promise<boolean> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel()
    const giveUp = setTimeout(() => resolve(false), askAgainMs)
    port1.onmessage = ({ data }) => {
      clearTimeout(giveUp)
      resolve(data?.isReady === true)
    }
    worker.postMessage('isReady', [port2])
  })
}
