import type { AheadPlayer, AheadProblem, AheadTheme } from '#ahead/problem'
import { noSeats } from '#ahead/seat-column'
import { daysLater } from '#common/days-later'
import { noSeconds } from '#rotation/fair-seconds'

export type PlainAhead = {
  /** By practice its week. */
  readonly weeks: readonly number[]
  /** By theme what is said of it; each has as many designs of its own as `designs`. */
  readonly themes: readonly Partial<AheadTheme>[]
  readonly designs?: number
  readonly problem?: Partial<AheadProblem>
}

/**
 * Practices in which every theme is offered, with each of its own designs: the offer of theme t with its first design is
 * at place t times `designs`. One player, who always comes.
 */
export function plainAhead({ weeks, themes, designs = 1, problem = {} }: PlainAhead): AheadProblem {
  const offers = themes.flatMap((_, theme) =>
    Array.from({ length: designs }, (_, own) => ({
      theme,
      design: theme * designs + own,
      seats: { ...noSeats, attackAlone: 600 },
      liveSeconds: 600,
    })),
  )
  return {
    practices: weeks.map((week, at) => ({
      id: `s${at + 1}`,
      day: daysLater('2026-01-05', (week - 1) * 7),
      week,
      offers,
      held: null,
      comes: [1],
    })),
    themes: themes.map((own, at) => ({
      id: `t${at}`,
      name: `Theme ${at}`,
      parent: null,
      wishedShare: 1 / themes.length,
      firstWeek: null,
      lastWeek: null,
      after: null,
      leastWeeksBetween: null,
      mostWeeksBetween: null,
      ...own,
    })),
    blocks: [],
    designs: offers.map((_, at) => ({ id: `d${at}`, name: `Design ${at}` })),
    players: [plainPlayer({ themeSeconds: themes.map(() => 0) })],
    met: [],
    designRest: 0,
    gentle: { least: 0.5, most: 1.5 },
    ...problem,
  }
}

/** A player who has played nothing, and is even in everything. */
export function plainPlayer(player: Partial<AheadPlayer>): AheadPlayer {
  return {
    id: 'p1',
    keeps: true,
    gap: noSeconds,
    tolerance: noSeconds,
    gapPlayedSeconds: 0,
    playedSeconds: 0,
    themeSeconds: [],
    themeTolerance: 0,
    ...player,
  }
}
