'use client'

import { type FormEvent, useState } from 'react'
import { PitchButton } from '#ui/pitch/pitch-button'

/** Somebody nobody expected: a name is enough, and it needs no signal. */
export function NewFace({ onGuest }: { readonly onGuest: (name: string) => void }) {
  const [isOpen, setIsOpen] = useState(false)
  const [name, setName] = useState('')
  if (!isOpen) {
    return (
      <PitchButton className="w-full" onClick={() => setIsOpen(true)}>
        + name
      </PitchButton>
    )
  }
  const add = (event: FormEvent) => {
    event.preventDefault()
    if (name.trim() === '') return
    onGuest(name.trim())
    setName('')
    setIsOpen(false)
  }
  return (
    <form onSubmit={add} className="flex flex-wrap items-end gap-2 border-2 border-ink p-3">
      <label className="min-w-0 flex-1 font-semibold">
        First name of the new face
        <input
          // The coach has just asked for it.
          // biome-ignore lint/a11y/noAutofocus: the field is what the tap was for
          autoFocus
          className="mt-1 w-full border-2 border-ink bg-leaf px-3"
          value={name}
          maxLength={80}
          autoComplete="off"
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <PitchButton type="submit" weight="main" disabled={name.trim() === ''}>
        Here
      </PitchButton>
    </form>
  )
}
