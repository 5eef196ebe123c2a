import { presentInTurns } from '#planning/expected'
import type { PlannedPlayer, PlanRequest } from '#planning/practice-plan'
import { withSidesOfDesign } from '#planning/split-sides'
import { turnFrames } from '#planning/turn-frames'
import { adaptDesign } from '#practice/adapt-design'
import type { DesignSheet } from '#practice/design-sheet'

/** A design as it is to be played on the day: with these of its adaptations made. */
export function designForDay(
  sheet: DesignSheet,
  adaptationIds: readonly string[] = [],
): PlanRequest['design'] {
  const chosen = sheet.adaptations.filter(({ id }) => adaptationIds.includes(id))
  const adapted = chosen.reduce((design, adaptation) => adaptDesign(design, adaptation), sheet)
  return {
    id: sheet.id,
    name: sheet.name,
    themeId: sheet.themeId,
    sides: sheet.sides ?? null,
    rounds: adapted.rounds,
    ...(chosen.length > 0 ? { changes: chosen.map(({ title }) => title) } : {}),
  }
}

/** Which adaptations of a design were made for the day, by their ids. */
export function changesMade(
  sheet: DesignSheet,
  { changes }: Pick<PlanRequest['design'], 'changes'>,
): readonly string[] {
  return sheet.adaptations.filter(({ title }) => changes?.includes(title)).map(({ id }) => id)
}

/**
 * A request with another design: who was expected to the end still is, and locks, which were of other turns, are gone.
 * A design with sides after one without puts everyone in bibs.
 */
export function withDesign(request: PlanRequest, design: PlanRequest['design']): PlanRequest {
  const [before, after] = [request.design.rounds, design.rounds].map((rounds) => turnFrames(rounds).length)
  const players = request.players.map((player) => ({
    ...player,
    side: design.sides ? player.side : null,
    present: presentInTurns(player.present, { before: before ?? 0, after: after ?? 0 }),
    mostTurns: player.mostTurns === null ? null : Math.min(player.mostTurns, after ?? 0),
  }))
  const there = players.filter(({ present }) => present.length > 0)
  const next = { ...request, design, players: there, locks: [] }
  return request.design.sides ? next : withSidesOfDesign(next)
}

/** Somebody who is expected from the first turn to the last, with nothing special about the day. */
export function expectedPlayer(
  player: Pick<PlannedPlayer, 'playerId' | 'keeps' | 'gap'>,
  turnCount: number,
): PlannedPlayer {
  return {
    playerId: player.playerId,
    keeps: player.keeps,
    side: null,
    present: [[1, turnCount]],
    notInGoal: false,
    waitsAfterEachTurn: false,
    mostTurns: null,
    gap: player.gap,
  }
}
