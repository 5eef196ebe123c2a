import 'server-only'
import { createHash } from 'node:crypto'
import type { MatchFormat } from '#match/format/match-format'

/** A text that is another whenever anything of the format is: pages keep it while somebody edits. */
export function formatVersion(format: MatchFormat): string {
  return createHash('sha256').update(JSON.stringify(format)).digest('base64url').slice(0, 22)
}
