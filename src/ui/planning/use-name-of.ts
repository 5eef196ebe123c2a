'use client'

import { useCallback, useMemo } from 'react'

/** How players are called; whoever is not known is somebody. */
export function useNameOf(
  players: readonly { readonly id: string; readonly name: string }[],
): (id: string) => string {
  const names = useMemo(() => new Map(players.map(({ id, name }) => [id, name])), [players])
  return useCallback((id: string) => names.get(id) ?? 'Somebody', [names])
}
