'use client'

import { useMemo } from 'react'
import type { Role } from '#exposure/column'
import { roles } from '#exposure/column'
import { toleranceSeconds } from '#fairness/tolerance'
import { type PlannedBalance, type PlannedFigure, planBalance } from '#planning/plan-balance'
import type { MadePlan } from '#planning/plan-draft'
import type { PlannablePlayer } from '#planning/plannable-player'
import type { PlanRequest } from '#planning/practice-plan'
import { noSeason, type SeasonFigure } from '#planning/season-gaps'
import { balanceSpanSeconds } from '#ui/figures/balance-geometry'
import { differenceText } from '#ui/figures/difference'
import { wholeMinutes } from '#ui/figures/minutes'
import { RoleMark } from '#ui/figures/role-mark'
import { BeforeAfterBar } from '#ui/planning/before-after-bar'
import type { NameOf, PlanningPolicy } from '#ui/planning/planning-types'
import { seasonFor } from '#ui/planning/season-for'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

type BalancePartProps = {
  readonly made: MadePlan
  readonly request: PlanRequest
  readonly players: readonly PlannablePlayer[]
  readonly policy: PlanningPolicy
  readonly nameOf: NameOf
}

type Bars = {
  readonly role: Role
  readonly figure: PlannedFigure
  readonly before: Parameters<typeof BeforeAfterBar>[0]['before']
  readonly after: Parameters<typeof BeforeAfterBar>[0]['after']
}

/** Where each child stands before the practice and after it, role by role, with the turns it gets. */
export function BalancePart({ made, request, players, policy, nameOf }: BalancePartProps) {
  const rows = useMemo(
    () =>
      planBalance(made.problem, { plan: made.plan, request }).map((balance) => {
        const player = players.find(({ id }) => id === balance.playerId)
        const season = player ? seasonFor(player, request.rules) : noSeason
        return {
          balance,
          bars: roles.map((role) => barsOf(role, { balance, season: season.roles[role], policy })),
        }
      }),
    [made, request, players, policy],
  )
  const spanSeconds = balanceSpanSeconds(
    rows.flatMap(({ bars }) => bars.flatMap(({ before, after }) => [before, after])),
  )
  return (
    <table className="ruled book">
      <caption className="sr-only">
        Each child before and after this practice: the ring is before, the dot after, the middle the even
        share
      </caption>
      <thead>
        <tr>
          <th scope="col">Player</th>
          {roles.map((role) => (
            <th key={role} scope="col">
              <RoleMark role={role} kind="practice" />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ balance, bars }) => (
          <tr key={balance.playerId} className="keep-together">
            <th scope="row">{nameOf(balance.playerId)}</th>
            {bars.map(({ role, figure, before, after }) => (
              <td key={role}>
                <div className="lg:hidden" aria-hidden="true">
                  <RoleMark role={role} kind="practice" />
                </div>
                <div className="min-w-28">
                  <BeforeAfterBar
                    label={`${words.role[role]}: ${changeWords(figure)}`}
                    before={before}
                    after={after}
                    spanSeconds={spanSeconds}
                  />
                  <p className="font-medium">
                    {counted(figure.turns, 'turn')} · {wholeMinutes(figure.seconds)} min
                  </p>
                  <p className="text-sm text-soft">{changeWords(figure)}</p>
                </div>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function barsOf(
  role: Role,
  of: { readonly balance: PlannedBalance; readonly season: SeasonFigure; readonly policy: PlanningPolicy },
): Bars {
  const figure = of.balance.roles[role]
  const { seconds, dueSeconds } = of.season
  const bar = (had: number, due: number) => ({
    seconds: had,
    dueSeconds: due,
    toleranceSeconds: toleranceSeconds(of.policy, due),
  })
  return {
    role,
    figure,
    before: bar(seconds, dueSeconds),
    after: bar(seconds + figure.seconds, dueSeconds + figure.dueSeconds),
  }
}

/** "12 min less, then 8 min less". */
function changeWords({ before, after }: PlannedFigure): string {
  const [was, is] = [differenceText(wholeMinutes(before)), differenceText(wholeMinutes(after))]
  return was === is ? `${is} as before` : `${was}, then ${is}`
}
