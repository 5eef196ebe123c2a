'use client'

import { useEffect, useState } from 'react'
import type { Seconds } from '#common/time'

const lookMs = 200

/** The second that `read` says it is, looked at often enough to be right whenever the screen is. */
export function useSecond(read: () => Seconds, isRunning: boolean): Seconds {
  const [second, setSecond] = useState(read)
  useEffect(() => {
    setSecond(read())
    if (!isRunning) return
    const timer = setInterval(() => setSecond(read()), lookMs)
    return () => clearInterval(timer)
  }, [read, isRunning])
  return second
}
