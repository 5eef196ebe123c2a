import 'server-only'
import { createHash } from 'node:crypto'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { firstAhead } from '#ahead/draft/first-ahead'
import type { WrittenSince } from '#ahead/explain/what-changed'
import { type ClubTx, inClub } from '#data/in-club'
import { findTermPlan, type StoredTermPlan } from '#data/term-plans'
import { type LoadedAhead, loadAheadRequest } from '#server/ahead-request'
import { termOf } from '#server/book-filter'
import { loadFrame } from '#server/page-frame'
import { loadSquadSeason, type SquadSeason } from '#server/squad-season'
import type { SquadId, Term } from '#squad/squad'
import { termNow } from '#squad/term-now'
import { themeLines } from '#themes/theme-lines'
import { themeAndAbove } from '#themes/theme-tree'

export type AtAhead = {
  readonly squadId: SquadId
  readonly query: { readonly term?: string | string[] }
  readonly now?: Date
}

/** Everything that the page of the weeks ahead needs. @throws AppError `notAllowed`, `notFound` or `noSeason`. */
export async function loadAheadPage(viewer: Viewer, at: AtAhead) {
  return inClub(viewer.clubId, async (tx) => {
    const { of, term, stored, loaded } = await loadTermAhead(tx, viewer, at)
    const { squad, season, today } = of
    const terms = season.terms.filter(({ lastDay }) => lastDay >= today)
    const frame = await loadFrame(tx, viewer, squad.id)
    if (!term || !loaded) return { frame, squad, terms, today, term: null }
    const asOf = loaded.written.at(-1)?.day ?? null
    return {
      frame,
      squad,
      terms,
      today,
      term: {
        ...term,
        version: stored?.version ?? 0,
        stored: stored?.plan ?? null,
        asOf,
        request: loaded.request,
        basis: basisOf(loaded),
        first: firstAhead(loaded.request, { stored: stored?.plan ?? null, asOf }),
        since: sinceSaved(loaded),
        sessions: loaded.sessions.map(({ id, day, startsAt, title, place }) => ({
          id,
          day,
          startsAt,
          title,
          place,
          isFixed: loaded.fixed.has(id),
        })),
        players: loaded.players,
        lines: themeLines(loaded.themes).map(({ theme, depth }) => ({
          id: theme.id,
          name: theme.name,
          depth,
        })),
        closed: loaded.closed.map(({ name, firstDay, lastDay }) => ({ name, firstDay, lastDay })),
      },
    }
  })
}

/** A squad's term with its plan as it is kept, and what a plan rests on. Both null: no term runs or is to come. */
export async function loadTermAhead(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, query, now = new Date() }: AtAhead,
): Promise<{
  readonly of: SquadSeason
  readonly term: Term | null
  readonly stored: StoredTermPlan | null
  readonly loaded: LoadedAhead | null
}> {
  demand(viewer, 'planPractice', { kind: 'squad', squadId })
  const of = await loadSquadSeason(tx, viewer, { squadId, now })
  const toCome = of.season.terms.filter(({ lastDay }) => lastDay >= of.today)
  const asked = typeof query.term === 'string' ? termOf(of.season, query.term) : null
  const term = toCome.find(({ id }) => id === asked?.id) ?? termNow(toCome, of.today)
  if (!term) return { of, term: null, stored: null, loaded: null }
  const stored = await findTermPlan(tx, { squadId, termId: term.id })
  const loaded = await loadAheadRequest(tx, { of, term, stored: stored?.plan ?? null })
  return { of, term, stored, loaded }
}

/** Names what a plan rests on, but for what the coach holds: another one where anything of it is otherwise. */
function basisOf({ request }: LoadedAhead): string {
  const practices = request.practices.map(({ held: _, ...own }) => own)
  const players = request.players.map((own) => ({ ...own, themeSeconds: [...own.themeSeconds] }))
  return createHash('sha256')
    .update(JSON.stringify({ ...request, practices, players }))
    .digest('hex')
}

/** The practices of the term that are written, with all that they met. */
function sinceSaved({ written, request }: LoadedAhead): readonly WrittenSince[] {
  return written.map(({ id, day }, index) => ({
    sessionId: id,
    day,
    themeIds: [
      ...new Set(
        (request.met[index]?.themeIds ?? []).flatMap((themeId) => themeAndAbove(request.themes, themeId)),
      ),
    ],
  }))
}
