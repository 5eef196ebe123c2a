'use client'

import { useCallback, useEffect, useRef, useState } from 'react'

type Kept<Draft> = { readonly version: string; readonly draft: Draft }

/** What is being typed, with a way back for every change. */
export type Editing<Draft> = {
  readonly draft: Draft
  readonly edit: (change: (draft: Draft) => Draft) => void
  readonly undo: () => void
  readonly canUndo: boolean
  /** It was found again after the page had been closed or reloaded. */
  readonly wasFound: boolean
  /** Forgets what was kept: it is written now. */
  readonly drop: () => void
}

const stepsBack = 60

/**
 * What is typed is kept in this tab, so that a reload loses nothing, until it is written or the tab is closed. Only ids,
 * marks and times are kept, never a name: `forKeeping` leaves out what must not lie on a device that others use. A
 * draft of another version of the session is not taken up: somebody has written it since.
 */
export function useDraft<Draft>(
  place: { readonly key: string; readonly version: string; readonly forKeeping: (draft: Draft) => Draft },
  first: Draft,
): Editing<Draft> {
  const [{ draft, past }, setState] = useState<{ draft: Draft; past: readonly Draft[] }>({
    draft: first,
    past: [],
  })
  const [wasFound, setWasFound] = useState(false)
  const { key, version, forKeeping } = place
  const isDropped = useRef(false)

  useEffect(() => {
    const kept = read<Draft>(key)
    if (kept?.version !== version) return
    setState({ draft: kept.draft, past: [] })
    setWasFound(true)
  }, [key, version])

  const edit = useCallback((change: (draft: Draft) => Draft) => {
    isDropped.current = false
    setState((state) => {
      const next = change(state.draft)
      return next === state.draft
        ? state
        : { draft: next, past: [...state.past.slice(-stepsBack), state.draft] }
    })
  }, [])
  const undo = useCallback(() => {
    setState((state) => ({ draft: state.past.at(-1) ?? state.draft, past: state.past.slice(0, -1) }))
  }, [])
  const drop = useCallback(() => {
    isDropped.current = true
    sessionStorage.removeItem(key)
  }, [key])

  useEffect(() => {
    if (past.length > 0 && !isDropped.current) {
      sessionStorage.setItem(key, JSON.stringify({ version, draft: forKeeping(draft) }))
    }
  }, [key, version, forKeeping, draft, past])

  return { draft, edit, undo, canUndo: past.length > 0, wasFound, drop }
}

function read<Draft>(key: string): Kept<Draft> | null {
  try {
    return JSON.parse(sessionStorage.getItem(key) ?? 'null')
  } catch {
    // A draft that cannot be read is none; what is written in the book is not touched by it.
    return null
  }
}
