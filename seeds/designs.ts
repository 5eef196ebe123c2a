import type { DesignSheet } from '#practice/design-sheet'
import { ourDesigns } from '#practice/our-designs/our-designs'
import { demoId } from './ids'
import { themeId } from './programme'

/** Those that the practices of the season were played by. */
export type DesignKey = 'lanes' | 'doors' | 'quickFinish' | 'bridge' | 'overTheLine'

export function designId(key: string): string {
  return demoId(`design/${key}`)
}

/** The five of the season, then the rest of the club's library. */
export const demoDesigns: readonly DesignSheet[] = ourDesigns.map((design) => ({
  ...design,
  id: designId(design.id),
  themeId: themeId(design.themeId),
}))
