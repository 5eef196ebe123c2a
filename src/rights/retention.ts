import { daysLater } from '#common/days-later'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { monthsLater } from '#rights/due-day'
import type { PlayerId } from '#squad/player'

/** From when to when a child belonged to a squad. */
export type ChildDays = { readonly playerId: PlayerId; readonly firstDay: Day; readonly lastDay: Day | null }

export type SeasonDays = { readonly firstDay: Day; readonly lastDay: Day }

/**
 * The last day on which a child is kept by name: so many months after the season in which it left its last squad. Null:
 * it has not left, or belonged to no squad (a guest's name goes much sooner). A child who left between two seasons left
 * in the one before.
 */
export function keptUntil(
  days: readonly ChildDays[],
  {
    seasons,
    months,
    today,
  }: { readonly seasons: readonly SeasonDays[]; readonly months: number; readonly today: Day },
): Day | null {
  const lastDays = days.map(({ lastDay }) => lastDay)
  if (lastDays.length === 0 || lastDays.some((lastDay) => lastDay === null || lastDay >= today)) return null
  const left = lastDays.reduce((latest, day) => ((day as Day) > (latest as Day) ? day : latest)) as Day
  const season = seasons.find(({ firstDay, lastDay }) => firstDay <= left && left <= lastDay)
  return monthsLater(season?.lastDay ?? left, months)
}

export type RetentionDue = { readonly playerId: PlayerId; readonly keptUntil: Day }

/** Days ahead that the page of requests looks, so that nobody is surprised. */
export const daysWarned = 60

/** Whose time is over today, and whose will be soon; the earliest first. */
export function retentionOf(
  days: readonly ChildDays[],
  rule: { readonly seasons: readonly SeasonDays[]; readonly months: number; readonly today: Day },
): { readonly over: readonly RetentionDue[]; readonly soon: readonly RetentionDue[] } {
  const all = groupBy(days, ({ playerId }) => playerId)
  const due = [...all]
    .flatMap(([playerId, own]): readonly RetentionDue[] => {
      const until = keptUntil(own, rule)
      return until ? [{ playerId, keptUntil: until }] : []
    })
    .toSorted((a, b) => (a.keptUntil < b.keptUntil ? -1 : a.keptUntil > b.keptUntil ? 1 : 0))
  const horizon = daysLater(rule.today, daysWarned)
  return {
    over: due.filter((one) => one.keptUntil < rule.today),
    soon: due.filter((one) => one.keptUntil >= rule.today && one.keptUntil <= horizon),
  }
}
