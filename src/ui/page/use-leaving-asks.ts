'use client'

import { useEffect } from 'react'

/** What is not saved yet is not lost by a slip: the browser asks first. */
export function useLeavingAsks(isUnsaved: boolean): void {
  useEffect(() => {
    if (!isUnsaved) return
    const ask = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', ask)
    return () => window.removeEventListener('beforeunload', ask)
  }, [isUnsaved])
}
