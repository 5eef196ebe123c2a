'use client'

import { expectedPlayer } from '#planning/new-request'
import type { PlannablePlayer } from '#planning/plannable-player'
import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { smallerSide } from '#planning/split-sides'
import { turnFrames } from '#planning/turn-frames'
import { ComingList } from '#ui/planning/coming-list'
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
  const turnCount = turnFrames(request.design.rounds).length
  const planned = new Map(request.players.map((player) => [player.playerId, player]))
  const change = (playerId: string, to: Partial<PlannedPlayer>) =>
    onAsk((own) => ({
      ...own,
      players: own.players.map((player) => (player.playerId === playerId ? { ...player, ...to } : player)),
    }))
  const toggle = (playerId: string) => {
    const player = players.find(({ id }) => id === playerId)
    onAsk((own) => {
      if (planned.has(playerId))
        return {
          ...own,
          players: own.players.filter((one) => one.playerId !== playerId),
          locks: own.locks.filter((lock) => lock.playerId !== playerId),
        }
      return player ? withPlayer(own, { player, players, turnCount }) : own
    })
  }
  return (
    <ComingList
      players={players}
      comingOf={(id) => {
        const own = planned.get(id)
        return own
          ? {
              words: todayWords(own, turnCount),
              settings: (
                <ForToday
                  player={own}
                  name={players.find((player) => player.id === id)?.name ?? ''}
                  turnCount={turnCount}
                  sides={request.rules.keepsSides ? (request.design.sides?.names ?? null) : null}
                  onChange={(to) => change(id, to)}
                />
              ),
            }
          : null
      }}
      onToggle={toggle}
      settingsName="For today"
    />
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
