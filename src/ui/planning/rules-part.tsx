'use client'

import type { PlannablePlayer } from '#planning/plannable-player'
import type { PlanRequest, PlanRules } from '#planning/practice-plan'
import { withEvenSides } from '#planning/split-sides'
import { Stepper } from '#ui/entry/stepper'
import { Button } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'
import type { NameOf } from '#ui/planning/planning-types'
import { seasonFor } from '#ui/planning/season-for'
import { listed } from '#ui/plural'

type RulesPartProps = {
  readonly request: PlanRequest
  readonly players: readonly PlannablePlayer[]
  readonly nameOf: NameOf
  readonly onAsk: (change: (request: PlanRequest) => PlanRequest) => void
}

/** What every plan of this practice has to keep, and what it should make up for. */
export function RulesPart({ request, players, nameOf, onAsk }: RulesPartProps) {
  const { rules } = request
  const setRules = (to: Partial<PlanRules>) => onAsk((own) => ({ ...own, rules: { ...own.rules, ...to } }))
  const countMatches = (countsMatches: boolean) =>
    onAsk((own) => {
      const next = { ...own.rules, countsMatches }
      const known = new Map(players.map((player) => [player.id, player]))
      return {
        ...own,
        rules: next,
        players: own.players.map((player) => {
          const season = known.get(player.playerId)
          return season ? { ...player, gap: seasonFor(season, next).gap } : player
        }),
      }
    })
  return (
    <div className="grid gap-x-10 gap-y-2 sm:grid-cols-2">
      <div>
        <CheckBox
          label="Nobody waits long"
          hint="Most turns in a row that anyone waits. Where the numbers forbid it, the fewest possible."
          isTicked={rules.restLimit !== null}
          onChange={(isOn) => setRules({ restLimit: isOn ? 2 : null })}
        />
        {rules.restLimit === null ? null : (
          <div className="pl-9">
            <Stepper
              label="Turns in a row at most"
              value={rules.restLimit}
              least={1}
              most={9}
              onChange={(restLimit) => setRules({ restLimit })}
            />
          </div>
        )}
      </div>
      <CheckBox
        label="Catch up gently"
        hint="Nobody is to get more than half as much again, or less than half, of an even share of attack, defence or waiting today, as near as the turns allow; the rest carries over."
        isTicked={rules.isGentle}
        onChange={(isGentle) => setRules({ isGentle })}
      />
      <CheckBox
        label="Make up for matches, too"
        hint="Otherwise only what happened in practices counts."
        isTicked={rules.countsMatches ?? false}
        onChange={countMatches}
      />
      {request.design.sides ? <Sides request={request} nameOf={nameOf} onAsk={onAsk} /> : null}
    </div>
  )
}

function Sides({ request, nameOf, onAsk }: Pick<RulesPartProps, 'request' | 'nameOf' | 'onAsk'>) {
  const names = request.design.sides?.names ?? (['first', 'second'] as const)
  const keep = (keepsSides: boolean) =>
    onAsk((own) => {
      const next = { ...own, rules: { ...own.rules, keepsSides } }
      return keepsSides && own.players.every(({ side }) => side === null) ? withEvenSides(next) : next
    })
  const bibs = (side: 0 | 1 | null) =>
    listed(request.players.filter((player) => player.side === side).map(({ playerId }) => nameOf(playerId)))
  return (
    <div>
      <CheckBox
        label="Everyone keeps to their bibs"
        hint="The same side all practice. What that costs in evenness stands under the prices."
        isTicked={request.rules.keepsSides}
        onChange={keep}
      />
      {request.rules.keepsSides ? (
        <div className="space-y-2 pl-9">
          <dl className="space-y-1">
            {([0, 1] as const).map((side) => (
              <div key={side}>
                <dt className="font-medium">
                  {names[side]}, {request.players.filter((player) => player.side === side).length}
                </dt>
                <dd className="text-sm text-soft">{bibs(side) || 'nobody yet'}</dd>
              </div>
            ))}
            {request.players.some(({ side }) => side === null) ? (
              <div>
                <dt className="font-medium">For the side with the ball</dt>
                <dd className="text-sm text-soft">{bibs(null)}</dd>
              </div>
            ) : null}
          </dl>
          <Button type="button" weight="plain" onClick={() => onAsk(withEvenSides)}>
            Split them evenly
          </Button>
          <p className="text-sm text-soft">
            By numbers, pairs, goalkeepers and what each side is owed; never by how good anyone is. Single
            children change bibs under “for today”.
          </p>
        </div>
      ) : null}
    </div>
  )
}
