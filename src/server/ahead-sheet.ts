import 'server-only'
import type { Viewer } from '#access/viewer'
import { choicesOfPlan } from '#ahead/draft/choices-of-plan'
import { explainPractice } from '#ahead/explain/explain-practice'
import { leansFor } from '#ahead/lean-to'
import { chosenOffer } from '#ahead/plan'
import { problemOfAhead } from '#ahead/problem-of-request'
import { firmPractices } from '#ahead/term-plan'
import { inClub } from '#data/in-club'
import { type AtAhead, loadTermAhead } from '#server/ahead-views'

/**
 * The saved plan of a term to print. No child is named on it, unless `withNames`; null where none is saved.
 * @throws AppError `notAllowed`, `notFound` or `noSeason`.
 */
export async function loadAheadSheet(viewer: Viewer, at: AtAhead & { readonly withNames: boolean }) {
  return inClub(viewer.clubId, async (tx) => {
    const { of, term, stored, loaded } = await loadTermAhead(tx, viewer, at)
    if (!term || !stored || !loaded) return null
    const problem = problemOfAhead(loaded.request)
    const choices = choicesOfPlan(problem, stored.plan.practices)
    // What cannot be played any more is left empty on the sheet, and so is what was entered since.
    const plan = { choices, leans: leansFor(problem, choices) }
    const sessions = new Map(loaded.sessions.map((session) => [session.id, session]))
    const nameOf = at.withNames ? (player: number) => loaded.players[player]?.name ?? '' : null
    return {
      squadName: of.squad.name,
      termName: term.name,
      madeOn: of.today,
      withNames: at.withNames,
      practices: problem.practices.map(({ id, day, week }, practice) => {
        const offer = chosenOffer(problem, choices, practice)
        const session = sessions.get(id)
        return {
          id,
          day,
          week,
          startsAt: session?.startsAt ?? null,
          place: session?.place ?? '',
          isFirm: practice < firmPractices,
          theme: problem.themes[offer?.theme ?? -1]?.name ?? null,
          design: problem.designs[offer?.design ?? -1]?.name ?? null,
          sentence: offer ? explainPractice(problem, plan, { practice, nameOf }) : '',
        }
      }),
    }
  })
}
