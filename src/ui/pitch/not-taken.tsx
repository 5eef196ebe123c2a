'use client'

import { useState } from 'react'
import { PitchButton } from '#ui/pitch/pitch-button'

type NotTakenProps = { readonly refusals: readonly { readonly id: string; readonly sentence: string }[] }

/** Says once that something tapped here does not count after all; afterwards it stands under More. */
export function NotTaken({ refusals }: NotTakenProps) {
  const [seen, setSeen] = useState<ReadonlySet<string>>(new Set())
  const fresh = refusals.filter(({ id }) => !seen.has(id))
  if (fresh.length === 0) return null
  const sentences = [...new Set(fresh.map(({ sentence }) => sentence))]
  return (
    <div role="alert" className="space-y-2 border-2 border-ink p-2">
      <p className="font-bold">The book did not take this, and it does not count here either:</p>
      <ul className="list-disc pl-5">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <PitchButton onClick={() => setSeen(new Set([...seen, ...fresh.map(({ id }) => id)]))}>
        Seen
      </PitchButton>
    </div>
  )
}
