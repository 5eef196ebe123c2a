import type { RosterEntry } from '#exchange/roster/roster-entry'
import { nameKey } from '#exchange/table/name-form'

export type NumberedEntry = { readonly line: number; readonly entry: RosterEntry }

/**
 * How a row stands to the earlier rows of the same file. `again`: the same player by its code, for other days.
 * `unclear`: the same name with nothing that tells one player or two. `codeTaken`: the code of another name.
 */
export type Doubling =
  | { readonly kind: 'first' }
  | { readonly kind: 'doubled' | 'again' | 'unclear' | 'codeTaken'; readonly line: number }

/** In the order of the rows. Two rows of one name with other codes, or other shirts, are two players. */
export function findDoubled(rows: readonly NumberedEntry[]): readonly Doubling[] {
  const byName = new Map<string, NumberedEntry[]>()
  const byCode = new Map<string, NumberedEntry>()
  const seen = new Set<string>()
  return rows.map((row) => {
    const name = nameKey(row.entry.name)
    const earlier = byName.get(name) ?? []
    const coded = row.entry.code === null ? undefined : byCode.get(row.entry.code)
    const doubling: Doubling =
      coded && nameKey(coded.entry.name) !== name
        ? { kind: 'codeTaken', line: coded.line }
        : doublingOf(row.entry, earlier)
    // A row that is the same as an earlier one tells later rows nothing more; thousands of them must not all be compared.
    const text = JSON.stringify({ ...row.entry, name })
    if (!seen.has(text)) earlier.push(row)
    seen.add(text)
    byName.set(name, earlier)
    if (row.entry.code !== null && !coded) byCode.set(row.entry.code, row)
    return doubling
  })
}

/** The first earlier row that it doubles, or else is unclear with, or else adds days to. */
function doublingOf(entry: RosterEntry, earlier: readonly NumberedEntry[]): Doubling {
  let found: Doubling = { kind: 'first' }
  for (const other of earlier) {
    const kind = compareEntries(entry, other.entry)
    if (kind === 'other') continue
    if (strength[kind] > strength[found.kind]) found = { kind, line: other.line }
    if (kind === 'doubled') break
  }
  return found
}

const strength = { first: 0, codeTaken: 0, again: 1, unclear: 2, doubled: 3 } as const

function compareEntries(row: RosterEntry, earlier: RosterEntry): 'doubled' | 'again' | 'unclear' | 'other' {
  if (differ(row.code, earlier.code)) return 'other'
  const isSameCode = row.code !== null && row.code === earlier.code
  if (!isSameCode && differ(row.shirt, earlier.shirt)) return 'other'
  if (isSameCode && isApart(row, earlier)) return 'again'
  const fields = ['firstDay', 'lastDay', 'keeps', 'wantsToKeep'] as const
  return fields.some((field) => differ(row[field], earlier[field])) ? 'unclear' : 'doubled'
}

function differ<Value>(one: Value | null, other: Value | null): boolean {
  return one !== null && other !== null && one !== other
}

/** Whether the days of two rows do not overlap; needs the days to be there. */
function isApart(one: RosterEntry, other: RosterEntry): boolean {
  const before = (a: RosterEntry, b: RosterEntry) =>
    a.lastDay !== null && b.firstDay !== null && a.lastDay < b.firstDay
  return before(one, other) || before(other, one)
}
