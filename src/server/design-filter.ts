import 'server-only'
import type { DesignSheet } from '#practice/design-sheet'
import { childrenNeeded } from '#practice/design-stretch'
import { kindOfRound, type RoundKind, roundKinds } from '#practice/round-kind'
import type { Theme, ThemeId } from '#themes/theme'
import { themeAndBelow } from '#themes/theme-lines'

/** What of the library is asked for; null leaves it open. */
export type DesignFilter = {
  readonly themeId: ThemeId | null
  readonly children: number | null
  readonly kind: RoundKind | null
  readonly isPutAway: boolean
}

/** What an address says behind its question mark. */
export type DesignQuery = Readonly<Partial<Record<'theme' | 'children' | 'kind' | 'away', string | string[]>>>

export const mostChildren = 40

/** What an address asks for; what makes no sense in it is left open. */
export function designFilterOf(query: DesignQuery, themes: readonly Theme[]): DesignFilter {
  const { theme, kind, away } = query
  return {
    themeId: themes.find(({ id }) => id === theme)?.id ?? null,
    children: childrenOf(query.children),
    kind: roundKinds.find((one) => one === kind) ?? null,
    isPutAway: away === 'yes',
  }
}

/** A number of children in an address; null: none, or none that makes sense. */
export function childrenOf(text: string | string[] | undefined): number | null {
  const count = typeof text === 'string' && /^\d{1,2}$/.test(text) ? Number(text) : 0
  return count >= 2 && count <= mostChildren ? count : null
}

/** Whether a design is among what is asked for. A theme's designs count for those it stands under too. */
export function isAskedFor(sheet: DesignSheet, filter: DesignFilter, themes: readonly Theme[]): boolean {
  const { themeId, children, kind, isPutAway } = filter
  if (sheet.isPutAway !== isPutAway) return false
  if (themeId !== null && !(sheet.themeId && themeAndBelow(themes, themeId).has(sheet.themeId))) return false
  if (kind !== null && !sheet.rounds.some((round) => kindOfRound(round) === kind)) return false
  if (children === null) return true
  const needed = childrenNeeded(sheet)
  return needed !== null && needed.fewest <= children && children <= needed.most
}
