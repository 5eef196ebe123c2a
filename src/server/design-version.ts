import 'server-only'
import { createHash } from 'node:crypto'
import type { DesignSheet } from '#practice/design-sheet'

/** A text that is another whenever anything of the design is: pages keep it while somebody edits. */
export function designVersion(sheet: DesignSheet): string {
  return createHash('sha256').update(JSON.stringify(sheet)).digest('base64url').slice(0, 22)
}
