'use client'

import type { ReactNode } from 'react'
import { Button } from '#ui/page/button'

type SaveBarProps = {
  readonly canUndo: boolean
  readonly isSaving: boolean
  readonly onUndo: () => void
  readonly children?: ReactNode
}

/** Always in reach at the foot of the screen: what a tap sets, one step back, and writing it down. */
export function SaveBar({ canUndo, isSaving, onUndo, children }: SaveBarProps) {
  return (
    <div className="sticky bottom-0 z-10 -mx-4 border-t-2 border-rule-strong bg-leaf px-2 py-2 sm:-mx-8 sm:px-8">
      <div className="flex flex-wrap items-center gap-x-4 gap-y-2">
        <div className="min-w-0 flex-1 basis-80 sm:flex-none">{children}</div>
        <div className="flex flex-1 justify-end gap-2">
          <Button type="button" weight="plain" disabled={!canUndo} onClick={onUndo}>
            Undo
          </Button>
          <Button disabled={isSaving}>{isSaving ? 'Writing…' : 'Write it down'}</Button>
        </div>
      </div>
    </div>
  )
}
