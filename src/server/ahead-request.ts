import 'server-only'
import { gentleBounds } from '#ahead/gentle-bounds'
import type { AheadRequest, RequestedDesign, RequestedPractice } from '#ahead/request'
import type { TermPlan } from '#ahead/term-plan'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { listAccounts } from '#data/accounts'
import { listClosedDays } from '#data/closed-days'
import { listDesigns } from '#data/designs'
import { listGroundSizes } from '#data/ground-sizes'
import type { ClubTx } from '#data/in-club'
import { listProgrammeBlocks } from '#data/programme-blocks'
import { listProgrammeRules } from '#data/programme-rules'
import { listPlanned } from '#data/session-plans'
import { listSessions, type Session } from '#data/sessions'
import { listThemeDesigns } from '#data/theme-designs'
import { listThemes, type StoredTheme } from '#data/themes'
import { themedPractices } from '#fairness/theme-parts'
import { loadAheadPlayers } from '#server/ahead-players'
import { daysSoFar, type SquadSeason } from '#server/squad-season'
import type { ClosedDays } from '#squad/closed-days'
import type { Term } from '#squad/squad'

/** A design rests in so many practices after it: our own judgement. */
const designRest = 2

/** The practices to come of a squad's term, with all that a plan of them rests on. */
export type LoadedAhead = {
  readonly request: AheadRequest
  /** Practices to come, in order of time. */
  readonly sessions: readonly Session[]
  /** Those whose turns are planned: they are held with what they are planned with. */
  readonly fixed: ReadonlySet<string>
  /** By name, in the order of the request. */
  readonly players: readonly { readonly id: string; readonly name: string }[]
  readonly themes: readonly StoredTheme[]
  /** Days without practice, with their names. */
  readonly closed: readonly ClosedDays[]
  /** Practices of the term that are written, in order of time. */
  readonly written: readonly { readonly id: string; readonly day: Day }[]
}

/** Reads what a term's plan is asked for. `stored`: the plan that stands, whose held practices stay held. */
export async function loadAheadRequest(
  tx: ClubTx,
  { of, term, stored }: { readonly of: SquadSeason; readonly term: Term; readonly stored: TermPlan | null },
): Promise<LoadedAhead> {
  const { squad, today, policy } = of
  const squadTerm = { squadId: squad.id, termId: term.id }
  const sessionsOfTerm = await listSessions(tx, {
    squadId: squad.id,
    from: term.firstDay,
    to: term.lastDay,
    kind: 'practice',
    withCancelled: false,
  })
  const sessions = sessionsOfTerm.filter(({ day, written }) => day >= today && written === 'notWritten')
  const themes = await listThemes(tx)
  const sheets = await listDesigns(tx)
  const serving = groupBy(await listThemeDesigns(tx), ({ designId }) => designId)
  const designs = sheets.map(
    ({ id, name, themeId, areaLengthM, areaWidthM, rounds }): RequestedDesign => ({
      id,
      name,
      themeIds: [
        ...new Set([
          ...(themeId === null ? [] : [themeId]),
          ...(serving.get(id) ?? []).map((own) => own.themeId),
        ]),
      ],
      lengthM: areaLengthM,
      widthM: areaWidthM,
      rounds,
    }),
  )
  const soFar = daysSoFar(of, term)
  const accounts = soFar ? await listAccounts(tx, { squadId: squad.id, ...soFar, kinds: ['practice'] }) : []
  const written = themedPractices(accounts)
  const designOf = new Map(sessionsOfTerm.map(({ id, designId }) => [id, designId]))
  const planned = await listPlanned(
    tx,
    sessions.map(({ id }) => id),
  )
  const held = heldBy({ sessions, planned, stored, designs })
  const grounds = new Map((await listGroundSizes(tx)).map((ground) => [ground.place, ground]))
  const closed = await listClosedDays(tx, { squadId: squad.id })
  const players = await loadAheadPlayers(tx, { of, term, accounts, themes })
  return {
    request: {
      term: { firstDay: term.firstDay, lastDay: term.lastDay },
      policy: { toleranceSeconds: policy.toleranceSeconds, toleranceShare: policy.toleranceShare },
      practices: sessions.map(({ id, day, lengthSeconds, place }): RequestedPractice => {
        const ground = grounds.get(place)
        return {
          id,
          day,
          lengthSeconds,
          ground: ground ? { lengthM: ground.lengthM, widthM: ground.widthM } : null,
          held: held.get(id) ?? null,
        }
      }),
      closed: closed.map(({ firstDay, lastDay }) => ({ firstDay, lastDay })),
      themes: themes.map(({ id, name, parentId, order }) => ({ id, name, parentId, order })),
      programme: await listProgrammeRules(tx, squadTerm),
      blocks: await listProgrammeBlocks(tx, squadTerm),
      designs,
      met: written.map(({ sessionId, day, themes: met }) => ({
        day,
        themeIds: met.map(({ themeId }) => themeId),
        designId: designOf.get(sessionId) ?? null,
      })),
      players: players.map(({ name: _, ...player }) => player),
      designRest,
      gentle: gentleBounds,
    },
    sessions,
    fixed: new Set(sessions.filter(({ id }) => planned.has(id) && held.has(id)).map(({ id }) => id)),
    players: players.map(({ id, name }) => ({ id, name })),
    themes,
    closed,
    written: written.map(({ sessionId, day }) => ({ id: sessionId, day })),
  }
}

/** What must not be planned over: what the coach holds, and practices whose turns are planned. */
function heldBy({
  sessions,
  planned,
  stored,
  designs,
}: {
  readonly sessions: readonly Session[]
  readonly planned: ReadonlySet<string>
  readonly stored: TermPlan | null
  readonly designs: readonly RequestedDesign[]
}): ReadonlyMap<string, NonNullable<RequestedPractice['held']>> {
  const byDesign = new Map(designs.map((design) => [design.id, design.themeIds[0]]))
  return new Map([
    ...(stored?.practices ?? []).flatMap(({ sessionId, themeId, designId, isHeld }) =>
      isHeld ? [[sessionId, { themeId, designId }] as const] : [],
    ),
    ...sessions.flatMap(({ id, themeId, designId }) => {
      const theme = themeId ?? byDesign.get(designId ?? '')
      return planned.has(id) && theme ? [[id, { themeId: theme, designId }] as const] : []
    }),
  ])
}
