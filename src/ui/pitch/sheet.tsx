'use client'

import { type ReactNode, useEffect, useRef } from 'react'

type SheetProps = {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}

/** A question at the lower edge, where the thumb is. Everything behind it waits. */
export function Sheet({ title, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog
      ref={dialog}
      aria-label={title}
      onClose={onClose}
      className="mx-auto mt-auto mb-0 max-h-[90dvh] w-full max-w-xl overflow-y-auto border-2 border-b-0 border-ink bg-leaf p-0 text-ink backdrop:bg-ink/60"
    >
      <div className="space-y-3 p-4 pb-6">
        <h2 className="text-2xl font-bold">{title}</h2>
        {children}
        <button
          type="button"
          className="tap w-full cursor-pointer border-2 border-transparent font-semibold underline underline-offset-4"
          onClick={onClose}
        >
          Back
        </button>
      </div>
    </dialog>
  )
}
