import type { SeatRole } from '#practice/turn'

type RoleLetter = 'A' | 'D' | 'K'

/**
 * What is typed into a cell: `A2` attacks in the second area, `K` keeps goal, `W` waits, `pA` was offered a place in
 * attack and passed. Empty is waiting too, once anyone in the column has a place.
 */
export type Mark = '' | 'W' | RoleLetter | `${RoleLetter}${number}` | `p${RoleLetter}`

const roleOfLetter: Readonly<Record<string, SeatRole>> = { A: 'attack', D: 'defend', K: 'keep' }
const letterOfRole = { attack: 'A', defend: 'D', keep: 'K' } as const satisfies Record<SeatRole, RoleLetter>

/** Words a spreadsheet may hold in place of the letters. */
const words: Readonly<Record<string, Mark>> = {
  ATTACK: 'A',
  DEFEND: 'D',
  KEEP: 'K',
  KEEPER: 'K',
  WAIT: 'W',
  WAITING: 'W',
  PASSED: 'pA',
  P: 'pA',
  '-': '',
  '–': '',
}

/** The place a mark gives: its role and, when written, its area (from 1). Null for who waits. */
export function placeOf(mark: Mark): { readonly role: SeatRole; readonly area: number | null } | null {
  const role = roleOfLetter[mark.charAt(0)]
  if (!role) return null
  return { role, area: mark.length > 1 ? Number(mark.slice(1)) : null }
}

/** The role that was offered and passed, or null. */
export function passedRoleOf(mark: Mark): SeatRole | null {
  return mark.startsWith('p') ? (roleOfLetter[mark.charAt(1)] ?? null) : null
}

export function markOf(place: { readonly role: SeatRole; readonly area: number | null }): Mark {
  const letter = letterOfRole[place.role]
  return place.area === null ? letter : `${letter}${place.area}`
}

export function passedMarkOf(role: SeatRole): Mark {
  return `p${letterOfRole[role]}`
}

/** Understands a cell as people write it, in any case and with spaces; null when it is no mark. */
export function parseMark(text: string): Mark | null {
  const bare = text.replace(/\s+/g, '').toUpperCase()
  if (bare === '' || bare === 'W') return bare
  if (/^[ADK]([1-9]\d?)?$/.test(bare)) return bare as Mark
  if (/^P[ADK]$/.test(bare)) return `p${bare.charAt(1)}` as Mark
  return Object.hasOwn(words, bare) ? (words[bare] ?? null) : null
}

const nextByTap: Readonly<Record<string, Mark>> = { '': 'A', A: 'D', D: 'K', K: 'W', W: '' }

/** The mark after one more tap: attack, defend, keep, waiting, empty. */
export function nextMark(mark: Mark): Mark {
  return mark.startsWith('p') ? '' : (nextByTap[mark.charAt(0)] ?? '')
}

/** What one tap on "was offered, passed" makes of a mark: the role it held, attack when it held none; a second tap takes it back. */
export function passMark(mark: Mark): Mark {
  if (mark.startsWith('p')) return ''
  return passedMarkOf(placeOf(mark)?.role ?? 'attack')
}

/** Attack and defence exchanged; keepers and waiting stay. An offer that was passed is not copied: it happened once. */
export function swapSides(mark: Mark): Mark {
  if (mark.startsWith('p')) return ''
  const place = placeOf(mark)
  if (!place || place.role === 'keep') return mark
  return markOf({ role: place.role === 'attack' ? 'defend' : 'attack', area: place.area })
}
