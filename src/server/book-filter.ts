import 'server-only'
import { type Situation, situations } from '#exposure/column'
import type { Season, Term } from '#squad/squad'
import type { Theme } from '#themes/theme'

/** What an address asks the season book for, as it stands there. */
export type BookQuery = Readonly<Partial<Record<'term' | 'theme' | 'kind' | 'situation', string | string[]>>>

/** What the book is looked at for. Matches have no themes and no situations. */
export type BookFilter = {
  readonly kind: 'practice' | 'match'
  readonly termId: string | null
  readonly themeId: string | null
  readonly situation: Situation | null
}

/** Anything the address asks for that is not there means all of it: a link from last season still opens. */
export function readBookFilter(
  query: BookQuery,
  known: { readonly season: Season; readonly themes: readonly Theme[] },
): BookFilter {
  const kind = query.kind === 'match' ? 'match' : 'practice'
  const term = known.season.terms.find(({ id }) => id === query.term)
  if (kind === 'match') return { kind, termId: term?.id ?? null, themeId: null, situation: null }
  return {
    kind,
    termId: term?.id ?? null,
    themeId: known.themes.find(({ id }) => id === query.theme)?.id ?? null,
    situation: situations.find((situation) => situation === query.situation) ?? null,
  }
}

export function termOf(season: Season, termId: string | null): Term | null {
  return season.terms.find(({ id }) => id === termId) ?? null
}
