'use client'

import { useEffect } from 'react'

/** A long, a short, a long: not to be taken for a message. In milliseconds. */
const pattern = [500, 200, 200, 200, 500]

/** Shakes the phone once whenever something new is due; a browser that cannot, or was never touched, keeps still. */
export function useAlarm(due: string | null): void {
  useEffect(() => {
    if (due !== null && 'vibrate' in navigator) navigator.vibrate(pattern)
  }, [due])
}
