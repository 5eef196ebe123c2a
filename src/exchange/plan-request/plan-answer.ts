import { isColumnInside, isThemeInside } from '#ahead/chance/is-inside'
import type { ReachOfPlayer } from '#ahead/draft/ahead-engine'
import { expectedEnd } from '#ahead/expected-end'
import { explainPractice } from '#ahead/explain/explain-practice'
import { favoursOf } from '#ahead/explain/favours-of'
import { chosenOffer, type ExpectedEnd, type SolvedAhead } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { sayAheadProof } from '#ahead/say-ahead-proof'
import { type SeatSeconds, seatColumns } from '#ahead/seat-column'
import { firmPractices } from '#ahead/term-plan'
import { themeWithAbove } from '#ahead/theme-with-above'
import type { Proof } from '#common/proof'
import type { PlanRequest } from '#exchange/plan-request/plan-request'
import { proofJson } from '#exchange/proof-json'
import { noise, quiet } from '#exchange/quiet'
import { rotationColumns } from '#rotation/problem'

export const planFormat = 'turnbook/plan@1'

/** What is known of what any plan could bring inside, as the solver tells it; null: there was no time to look. */
type Reachable = {
  readonly players: readonly ReachOfPlayer[]
  /** Minutes beyond the tolerance, over all. */
  readonly outside: Proof
}

/** A plan of the weeks ahead as the parts of `turnbook/plan@1` that it alone decides, ready for JSON. */
export function planAnswer(
  problem: AheadProblem,
  { plan, proof }: SolvedAhead,
  { json, reachable }: Pick<PlanRequest, 'json'> & { readonly reachable: Reachable | null },
) {
  const { balance, themes } = planValue(problem, plan)
  const planned = new Set(problem.practices.map(({ id }) => id))
  const ends = expectedEnd(problem, plan)
  return {
    practices: problem.practices.map((_, at) => practiceJson(problem, plan, at)),
    leftOut: json.practices.flatMap(({ id, date }) => (planned.has(id) ? [] : [{ id, date }])),
    players: problem.players.map((_, at) => playerJson(problem, { ends, reachable }, at)),
    themes: themesJson(problem, plan),
    value: { balance: quiet(balance), themes: quiet(themes), ...proofJson(proof) },
    leastOutside: reachable && proofJson(reachable.outside),
    sentence: sayAheadProof(proof),
  }
}

function practiceJson(problem: AheadProblem, plan: SolvedAhead['plan'], at: number) {
  const { choices, leans } = plan
  const idOf = (player: number) => problem.players[player]?.id ?? ''
  const practice = problem.practices[at]
  const offer = chosenOffer(problem, choices, at)
  if (!practice || !offer) throw new Error('A plan has an offer for each practice.')
  return {
    id: practice.id,
    date: practice.day,
    week: practice.week,
    theme: problem.themes[offer.theme]?.id ?? '',
    design: problem.designs[offer.design]?.id ?? '',
    isFirm: at < firmPractices,
    isHeld: practice.held !== null,
    sentence: explainPractice(problem, plan, { practice: at, nameOf: idOf }),
    favours: favoursOf(problem, plan, at).map(({ player, ...favour }) => ({
      player: idOf(player),
      ...favour,
    })),
    liveSeconds: offer.liveSeconds,
    seats: seatsJson(offer.seats),
    players: problem.players.map(({ id }, player) => ({
      id,
      comes: practice.comes[player] ?? 0,
      lean: seatsJson(leans[at]?.[player]),
    })),
  }
}

function playerJson(
  { players, themes }: AheadProblem,
  { ends, reachable }: { readonly ends: readonly ExpectedEnd[]; readonly reachable: Reachable | null },
  at: number,
) {
  const [player, end, reach] = [players[at], ends[at], reachable?.players[at]]
  if (!player || !end) throw new Error('Every player has an end.')
  return {
    id: player.id,
    columns: Object.fromEntries(
      rotationColumns.map((column) => {
        const [gap, tolerance] = [end.gap[column], player.tolerance[column]]
        const within = Math.abs(gap) <= tolerance + noise
        return [
          column,
          {
            gap: quiet(player.gap[column]),
            gapAfter: quiet(gap),
            tolerance,
            within,
            reachable: reach?.[column] ?? (within ? 'yes' : 'open'),
            inside: isColumnInside(column, { gap, tolerance }),
          },
        ]
      }),
    ),
    playedSeconds: end.playedSeconds,
    themes: Object.fromEntries(
      themes.flatMap(({ id, wishedShare }, theme) => {
        if (wishedShare === 0) return []
        const [seconds = 0, due = 0] = [end.themeSeconds[theme], end.themeDue[theme]]
        const tolerance = player.themeTolerance
        return [[id, { seconds, due, tolerance, inside: isThemeInside({ due, seconds, tolerance }) }]]
      }),
    ),
  }
}

/** How often each theme of the programme, or met, was met so far and is in the plan; those under it count for it. */
function themesJson(problem: AheadProblem, { choices }: SolvedAhead['plan']) {
  const chosen = problem.practices.map((_, at) => chosenOffer(problem, choices, at)?.theme)
  return problem.themes.flatMap(({ id, wishedShare }, theme) => {
    const isOf = (own: number | undefined) =>
      own !== undefined && themeWithAbove(problem.themes, own).includes(theme)
    const met = problem.met.filter(({ themes }) => themes.some(isOf)).length
    const planned = chosen.filter(isOf).length
    return wishedShare > 0 || met + planned > 0 ? [{ id, share: wishedShare, met, planned }] : []
  })
}

/** Only columns of which there is something. */
function seatsJson(seats: SeatSeconds | undefined): Readonly<Record<string, number>> {
  return Object.fromEntries(
    seatColumns.flatMap((column) => {
      const seconds = quiet(seats?.[column] ?? 0)
      return seconds === 0 ? [] : [[column, seconds]]
    }),
  )
}
