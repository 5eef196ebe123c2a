'use client'

import { useState } from 'react'
import { expectedPlayer } from '#planning/new-request'
import type { PlannablePlayer } from '#planning/plannable-player'
import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { smallerSide } from '#planning/split-sides'
import { turnFrames } from '#planning/turn-frames'
import { ForToday, todayWords } from '#ui/planning/for-today'
import { seasonFor } from '#ui/planning/season-for'

type ExpectedPartProps = {
  readonly request: PlanRequest
  /** The squad's, and guests it knows, by name. */
  readonly players: readonly PlannablePlayer[]
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
  const toggle = (player: PlannablePlayer) =>
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
    readonly player: PlannablePlayer
    readonly players: readonly PlannablePlayer[]
    readonly turnCount: number
  },
): PlanRequest {
  const { player, players, turnCount } = of
  const added = expectedPlayer(
    { playerId: player.id, keeps: player.keeps, gap: seasonFor(player, request.rules).gap },
    turnCount,
  )
  const side = request.rules.keepsSides && request.design.sides ? smallerSide(request.players) : null
  const order = new Map(players.map(({ id }, index) => [id, index]))
  return {
    ...request,
    players: [...request.players, { ...added, side }].sort(
      (a, b) => (order.get(a.playerId) ?? 0) - (order.get(b.playerId) ?? 0),
    ),
  }
}
