import 'server-only'
import { shareADay } from '#common/dated'
import type { ClubTx } from '#data/in-club'
import type { SquadDays } from '#data/sessions'
import { findTermPlan } from '#data/term-plans'
import { jsonText } from '#exchange/json-text'
import { writePlanRequest } from '#exchange/plan-request/write-plan-request'
import { loadAheadRequest } from '#server/ahead-request'
import { getSquadSeason } from '#server/squad-season'
import { termNow } from '#squad/term-now'

/**
 * What a plan of the squad's weeks ahead rests on, as a request for `turnbook plan`: of the term that runs or comes next
 * within the days asked for. Children stand in it by id, never by name. Where no term is left it has no practices.
 */
export async function exportAhead(tx: ClubTx, { squadId, from, to }: SquadDays, now: Date): Promise<string> {
  const of = await getSquadSeason(tx, { squadId, now })
  const terms = of.season.terms.filter((own) => shareADay(own, { firstDay: from, lastDay: to }))
  const toCome = terms.filter(({ lastDay }) => lastDay >= of.today)
  const term = termNow(toCome, of.today) ?? terms.at(-1) ?? of.season
  const stored = await findTermPlan(tx, { squadId, termId: term.id })
  const { request } = await loadAheadRequest(tx, { of, term, stored: stored?.plan ?? null })
  return jsonText(writePlanRequest(request))
}
