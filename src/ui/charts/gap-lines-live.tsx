'use client'

import dynamic from 'next/dynamic'
import { type ReactNode, useCallback, useState } from 'react'
import type { GapSeries } from '#ui/charts/gap-lines'

const GapLinesHover = dynamic(() => import('#ui/charts/gap-lines-hover').then((file) => file.GapLinesHover), {
  ssr: false,
  loading: () => null,
})

type GapLinesLiveProps = {
  readonly series: readonly GapSeries[]
  readonly kind: 'practice' | 'match'
  /** The same drawing from the server: it shows until the one that answers the pointer has come. */
  readonly children: ReactNode
}

/** Fetches the drawing that answers the pointer only once a pointer comes near. */
export function GapLinesLive({ series, kind, children }: GapLinesLiveProps) {
  const [isWanted, setWanted] = useState(false)
  const [isReady, setReady] = useState(false)
  const showLive = useCallback(() => setReady(true), [])
  return (
    <div onPointerEnter={() => setWanted(true)}>
      {isReady ? null : children}
      {isWanted ? <GapLinesHover series={series} kind={kind} onReady={showLive} /> : null}
    </div>
  )
}
