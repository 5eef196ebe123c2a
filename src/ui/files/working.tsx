'use client'

import { useEffect, useState } from 'react'

/** Says what is going on, and after a second for how long it has been. */
export function Working({ isWorking, text }: { readonly isWorking: boolean; readonly text: string }) {
  const [seconds, setSeconds] = useState(0)
  useEffect(() => {
    if (!isWorking) return
    setSeconds(0)
    const timer = setInterval(() => setSeconds((before) => before + 1), 1000)
    return () => clearInterval(timer)
  }, [isWorking])
  return (
    <div role="status" className="min-h-6">
      {isWorking ? (
        <p className="flex items-center gap-3 text-soft">
          <progress aria-label={text} className="h-2 w-32 accent-accent" />
          <span>
            {text}
            {seconds > 0 ? <span aria-hidden="true">, {seconds} s</span> : null}
          </span>
        </p>
      ) : null}
    </div>
  )
}
