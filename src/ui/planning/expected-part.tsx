'use client'

import { useState } from 'react'
import { expectedPlayer } from '#planning/new-request'
import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { turnFrames } from '#planning/turn-frames'
import { Stepper } from '#ui/entry/stepper'
import { Toggle } from '#ui/entry/toggle'
import type { PlanningPlayer } from '#ui/planning/planning-types'
import { seasonFor } from '#ui/planning/season-for'

type ExpectedPartProps = {
  readonly request: PlanRequest
  /** The squad's, and guests it knows, by name. */
  readonly players: readonly PlanningPlayer[]
  readonly onAsk: (change: (request: PlanRequest) => PlanRequest) => void
}

/** Who is expected, for which turns, and what holds for a child on this day alone. */
export function ExpectedPart({ request, players, onAsk }: ExpectedPartProps) {
  const [open, setOpen] = useState<string | null>(null)
  const turnCount = turnFrames(request.design.rounds).length
  const planned = new Map(request.players.map((player) => [player.playerId, player]))
  const change = (playerId: string, to: Partial<PlannedPlayer>) =>
    onAsk((own) => ({
      ...own,
      players: own.players.map((player) => (player.playerId === playerId ? { ...player, ...to } : player)),
    }))
  const toggle = (player: PlanningPlayer) =>
    onAsk((own) =>
      planned.has(player.id)
        ? {
            ...own,
            players: own.players.filter(({ playerId }) => playerId !== player.id),
            locks: own.locks.filter(({ playerId }) => playerId !== player.id),
          }
        : withPlayer(own, { player, players, turnCount }),
    )
  return (
    <ul className="border-t border-rule sm:columns-2 sm:gap-8 lg:columns-3">
      {players.map((player) => {
        const own = planned.get(player.id)
        return (
          <li key={player.id} className="break-inside-avoid border-b border-rule py-0.5">
            <div className="flex items-center gap-2">
              <label className="tap flex flex-1 cursor-pointer items-center gap-3">
                <input
                  type="checkbox"
                  className="size-6 shrink-0 accent-accent"
                  checked={own !== undefined}
                  onChange={() => toggle(player)}
                />
                <span className={own ? 'font-medium' : 'text-soft'}>
                  {player.name}
                  {player.isMember ? '' : ', guest'}
                </span>
              </label>
              {own ? (
                <button
                  type="button"
                  aria-expanded={open === player.id}
                  aria-label={`For today: ${player.name}`}
                  className="tap cursor-pointer px-2 text-sm text-accent underline underline-offset-4"
                  onClick={() => setOpen(open === player.id ? null : player.id)}
                >
                  {todayWords(own, turnCount) || 'for today'}
                </button>
              ) : null}
            </div>
            {own && open === player.id ? (
              <ForToday
                player={own}
                name={player.name}
                turnCount={turnCount}
                sides={request.rules.keepsSides ? (request.design.sides?.names ?? null) : null}
                onChange={(to) => change(player.id, to)}
              />
            ) : null}
          </li>
        )
      })}
    </ul>
  )
}

/** In the order of the list on the page. */
function withPlayer(
  request: PlanRequest,
  of: {
    readonly player: PlanningPlayer
    readonly players: readonly PlanningPlayer[]
    readonly turnCount: number
  },
): PlanRequest {
  const { player, players, turnCount } = of
  const added = expectedPlayer(
    { playerId: player.id, keeps: player.keeps, gap: seasonFor(player, request.rules).gap },
    turnCount,
  )
  const order = new Map(players.map(({ id }, index) => [id, index]))
  return {
    ...request,
    players: [...request.players, added].sort(
      (a, b) => (order.get(a.playerId) ?? 0) - (order.get(b.playerId) ?? 0),
    ),
  }
}

/** What is special about a child's day, short; empty: nothing. */
function todayWords(player: PlannedPlayer, turnCount: number): string {
  const [from, to] = [player.present[0]?.[0] ?? 1, player.present.at(-1)?.[1] ?? turnCount]
  return [
    from > 1 ? `from turn ${from}` : '',
    to < turnCount ? `to turn ${to}` : '',
    player.present.length > 1 ? 'with a break' : '',
    player.notInGoal ? 'not in goal' : '',
    player.waitsAfterEachTurn ? 'waits after each turn' : '',
    player.mostTurns === null
      ? ''
      : `at most ${player.mostTurns} ${player.mostTurns === 1 ? 'turn' : 'turns'}`,
  ]
    .filter(Boolean)
    .join(', ')
}

function ForToday({
  player,
  name,
  turnCount,
  sides,
  onChange,
}: {
  readonly player: PlannedPlayer
  readonly name: string
  readonly turnCount: number
  readonly sides: readonly [string, string] | null
  readonly onChange: (to: Partial<PlannedPlayer>) => void
}) {
  const [from, to] = [player.present[0]?.[0] ?? 1, player.present.at(-1)?.[1] ?? turnCount]
  return (
    <div className="space-y-3 border-l-4 border-rule-strong py-2 pl-3">
      <div className="flex flex-wrap gap-x-6 gap-y-2">
        <Stepper
          label={`${name} is there from turn`}
          value={from}
          least={1}
          most={to}
          onChange={(turn) => onChange({ present: [[turn, to]] })}
        />
        <Stepper
          label={`${name} is there to turn`}
          value={to}
          least={from}
          most={turnCount}
          onChange={(turn) => onChange({ present: [[from, turn]] })}
        />
      </div>
      {player.keeps ? (
        <Check
          label="Not in goal today"
          isTicked={player.notInGoal}
          onChange={(notInGoal) => onChange({ notInGoal })}
        />
      ) : null}
      <Check
        label="Waits after each turn"
        isTicked={player.waitsAfterEachTurn}
        onChange={(waitsAfterEachTurn) => onChange({ waitsAfterEachTurn })}
      />
      <Check
        label="At most so many turns"
        isTicked={player.mostTurns !== null}
        onChange={(isOn) => onChange({ mostTurns: isOn ? Math.ceil(turnCount / 2) : null })}
      />
      {player.mostTurns === null ? null : (
        <Stepper
          label={`Most turns for ${name}`}
          value={player.mostTurns}
          least={0}
          most={turnCount}
          onChange={(mostTurns) => onChange({ mostTurns })}
        />
      )}
      {sides ? (
        <Toggle
          label={`Bib of ${name}`}
          options={[
            { value: '0', label: sides[0] },
            { value: '1', label: sides[1] },
            { value: 'both', label: 'With the ball' },
          ]}
          value={player.side === null ? 'both' : player.side === 0 ? '0' : '1'}
          onChange={(value) => onChange({ side: value === 'both' ? null : value === '0' ? 0 : 1 })}
        />
      ) : null}
      <p className="text-sm text-soft">For this practice only. No reason is kept.</p>
    </div>
  )
}

export function Check({
  label,
  hint,
  isTicked,
  onChange,
}: {
  readonly label: string
  readonly hint?: string
  readonly isTicked: boolean
  readonly onChange: (isTicked: boolean) => void
}) {
  return (
    <label className="tap flex cursor-pointer items-start gap-3 py-1.5">
      <input
        type="checkbox"
        className="size-6 shrink-0 accent-accent"
        checked={isTicked}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span>
        <span className="font-medium">{label}</span>
        {hint ? <span className="block text-sm text-soft">{hint}</span> : null}
      </span>
    </label>
  )
}
