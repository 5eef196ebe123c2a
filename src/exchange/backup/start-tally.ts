import { createHash } from 'node:crypto'
import type { Tally } from '#exchange/backup/backup-shape'

const lineEnd = 10

/** Counts and hashes the text of a section as it passes: one line a row, as PostgreSQL's COPY writes it. */
export function startTally(): { add: (text: Buffer) => void; tally: () => Tally } {
  const hash = createHash('sha256')
  let rows = 0
  return {
    add: (text) => {
      hash.update(text)
      for (let at = text.indexOf(lineEnd); at !== -1; at = text.indexOf(lineEnd, at + 1)) rows += 1
    },
    tally: () => ({ rows, sha256: hash.digest('hex') }),
  }
}
