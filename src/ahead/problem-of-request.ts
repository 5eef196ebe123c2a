import { expectedAttendance } from '#ahead/attendance/expected-attendance'
import { offersOf } from '#ahead/offers-of-request'
import type { AheadPlayer, AheadProblem } from '#ahead/problem'
import type { AheadRequest, RequestedPlayer } from '#ahead/request'
import { themesOfRequest } from '#ahead/themes-of-request'
import { weekOfTerm } from '#ahead/week-of-term'
import { hasDay } from '#common/dated'
import { toleranceSeconds } from '#fairness/tolerance'
import { type ColumnSeconds, type RotationColumn, rotationColumns, seatRoles } from '#rotation/problem'

/**
 * What a request for the weeks ahead comes to. Practices on days without practice, or outside the term, are left out;
 * themes and designs that are gone hold nothing. Themes, designs and players stand in its lists as in the request.
 */
export function problemOfAhead(request: AheadRequest): AheadProblem {
  const weekOf = weekOfTerm(request.term)
  const themes = themesOfRequest(request)
  const themeAt = new Map(themes.map(({ id }, index) => [id, index]))
  const designAt = new Map(request.designs.map(({ id }, index) => [id, index]))
  const { chances } = expectedAttendance(request.players)
  const offers = offersOf(request, themes)
  const practices = inTime(request.practices).flatMap((own) => {
    const week = weekOf(own.day)
    if (week === null || request.closed.some((span) => hasDay(span, own.day))) return []
    const theme = own.held ? themeAt.get(own.held.themeId) : undefined
    const design = own.held?.designId ? (designAt.get(own.held.designId) ?? null) : null
    const held = theme === undefined ? null : { theme, design }
    const comes = request.players.map((player, index) =>
      isAway(player, own.day) ? 0 : (chances[index] ?? 0),
    )
    return [{ id: own.id, day: own.day, week, offers: offers(own, { held, comes }), held, comes }]
  })
  return {
    practices,
    themes,
    blocks: request.blocks.flatMap(({ themeId, firstWeek, lastWeek }) => {
      const theme = themeAt.get(themeId)
      return theme === undefined ? [] : [{ theme, firstWeek, lastWeek }]
    }),
    designs: request.designs.map(({ id, name }) => ({ id, name })),
    players: request.players.map((player) => aheadPlayer(request, player)),
    met: inTime(request.met).flatMap(({ day, themeIds, designId }) => {
      const week = weekOf(day)
      if (week === null) return []
      const met = themeIds.flatMap((id) => themeAt.get(id) ?? [])
      return [{ day, week, themes: met, design: designId === null ? null : (designAt.get(designId) ?? null) }]
    }),
    designRest: request.designRest,
    gentle: request.gentle,
  }
}

function isAway({ away }: RequestedPlayer, day: string): boolean {
  return away.some((span) => hasDay(span, day))
}

function aheadPlayer({ themes, policy }: AheadRequest, player: RequestedPlayer): AheadPlayer {
  const tolerance = {} as Record<RotationColumn, number>
  for (const column of rotationColumns) tolerance[column] = toleranceSeconds(policy, player.fair[column])
  return {
    id: player.id,
    keeps: player.keeps,
    gap: player.gap,
    tolerance,
    gapPlayedSeconds: Math.max(player.playedSeconds, sumOfSeats(player.fair) + sumOfSeats(player.gap)),
    playedSeconds: player.playedSeconds,
    themeSeconds: themes.map(({ id }) => player.themeSeconds.get(id) ?? 0),
    themeTolerance: toleranceSeconds(policy, 0),
  }
}

function sumOfSeats(columns: ColumnSeconds): number {
  return seatRoles.reduce((all, role) => all + columns[role], 0)
}

/** Of one day in the order of the list. */
function inTime<Dated extends { readonly day: string }>(list: readonly Dated[]): readonly Dated[] {
  return list.toSorted((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0))
}
