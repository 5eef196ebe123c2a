import 'server-only'
import { createHash } from 'node:crypto'
import type { FamilyPage } from '#family/family-page'

/** A mark of what a coach has seen, so that nothing else is confirmed. That a day has gone by changes nothing in it. */
export function pageDigest({ upTo: _, ...page }: FamilyPage): string {
  return createHash('sha256').update(JSON.stringify(page)).digest('base64url').slice(0, 22)
}
