import { columnLeans } from '#ahead/explain/column-leans'
import type { AheadPlayer, AheadPractice, AheadProblem, AheadTheme, Offer } from '#ahead/problem'
import { noSeats, type SeatColumn, type SeatSeconds, seatColumns } from '#ahead/seat-column'
import { themeWithAbove } from '#ahead/theme-with-above'
import { daysLater } from '#common/days-later'
import { type ColumnSeconds, rotationColumns } from '#rotation/problem'
import { withRandomRules } from './random-ahead-rules'
import { type SeededRandom, seededRandom } from './seeded-random'

export type RandomAheadWish = {
  readonly practices?: number
  readonly themes?: number
  readonly designs?: number
  readonly players?: number
  /** How many rules are tried; of these all stay that a hidden plan keeps. */
  readonly rules?: number
  /** Rules that no plan may keep are among them. */
  readonly mayClash?: boolean
}

/**
 * Practices to come like those of a term at half-time: one or two a week with a week without, themes under themes,
 * designs that serve one to three of them, gaps that add up to nothing, some who may be away. Rules are laid on so that
 * a hidden plan keeps them, unless they may clash. The same for the same seed.
 */
export function randomAhead(seed: number, wish: RandomAheadWish = {}): AheadProblem {
  const random = seededRandom(seed * 6151 + 29)
  const counts = {
    practices: wish.practices ?? random.whole(3, 20),
    themes: wish.themes ?? random.whole(3, 20),
    designs: wish.designs ?? random.whole(3, 15),
    players: wish.players ?? random.whole(6, 18),
  }
  const designs = Array.from({ length: counts.designs }, (_, at) => ({
    id: `d${at + 1}`,
    name: `Design ${at + 1}`,
  }))
  const themes = themesOf(random, counts.themes)
  const serves = servedThemes(random, counts)
  const shapes = designs.map(() => shapeOf(random, counts.players))
  const practices = practicesOf(random, { ...counts, serves, shapes })
  const bare: AheadProblem = {
    practices,
    themes,
    blocks: [],
    designs,
    ...recordOf(random, { themes, shapes, players: counts.players }),
    designRest: 0,
    gentle: { least: 0.5, most: 1.5 },
  }
  return withRandomRules(random, bare, {
    tries: wish.rules ?? counts.themes,
    mayClash: wish.mayClash ?? false,
  })
}

function themesOf(random: SeededRandom, count: number): readonly AheadTheme[] {
  const weights = Array.from({ length: count }, () => random.pick([0, 1, 1, 1, 2, 3]))
  const all = weights.reduce((sum, one) => sum + one, 0) || 1
  return weights.map((weight, at) => ({
    id: `t${at + 1}`,
    name: `Theme ${at + 1}`,
    parent: at > 1 && random.chance(0.5) ? random.whole(0, Math.ceil(at / 2) - 1) : null,
    wishedShare: weight / all,
    firstWeek: null,
    lastWeek: null,
    after: null,
    leastWeeksBetween: null,
    mostWeeksBetween: null,
  }))
}

/** Themes by design; every theme has one that serves it where there are enough. */
function servedThemes(
  random: SeededRandom,
  { themes, designs }: { readonly themes: number; readonly designs: number },
): readonly (readonly number[])[] {
  const served = Array.from({ length: designs }, () => new Set<number>())
  for (let theme = 0; theme < themes; theme++) served[theme % designs]?.add(theme)
  for (const own of served)
    for (let more = random.whole(1, 2); more > 0; more--) own.add(random.whole(0, themes - 1))
  return served.map((own) => [...own])
}

/** Of the term, before the first practice to come. */
const weeksBefore = 6

type Shape = { readonly seats: SeatSeconds; readonly liveSeconds: number }

/** A practice of one to three rounds; seats for most of those expected. */
function shapeOf(random: SeededRandom, players: number): Shape {
  const seats: Record<SeatColumn, number> = { ...noSeats }
  let liveSeconds = 0
  for (let round = random.whole(1, 3); round > 0; round--) {
    const seconds = random.whole(6, 16) * 60
    const places = Math.max(2, random.whole(Math.ceil(players * 0.4), Math.ceil(players * 0.7)))
    const keep = random.chance(0.7) && places > 2 ? 1 : 0
    const attack = Math.max(1, Math.round((places - keep) * random.pick([0.4, 0.5, 0.5, 0.6])))
    const defend = Math.max(0, places - keep - attack)
    const columns: readonly [SeatColumn, SeatColumn] =
      defend === 0
        ? ['attackAlone', 'defendAlone']
        : attack > defend
          ? ['attackOutnumbering', 'defendOutnumbered']
          : attack < defend
            ? ['attackOutnumbered', 'defendOutnumbering']
            : ['attackLevel', 'defendLevel']
    seats[columns[0]] += attack * seconds
    seats[columns[1]] += defend * seconds
    seats.keep += keep * seconds
    liveSeconds += seconds
  }
  return { seats, liveSeconds }
}

function practicesOf(
  random: SeededRandom,
  asked: {
    readonly practices: number
    readonly players: number
    readonly serves: readonly (readonly number[])[]
    readonly shapes: readonly Shape[]
  },
): readonly AheadPractice[] {
  const chances = Array.from({ length: asked.players }, () =>
    random.pick([1, 0.95, 0.9, 0.85, 0.8, 0.7, 0.6]),
  )
  const twice = random.chance(0.4)
  const closedWeek = weeksBefore + random.whole(3, 12)
  const practices: AheadPractice[] = []
  for (let week = weeksBefore + 1; practices.length < asked.practices; week++) {
    if (week === closedWeek) continue
    for (const weekday of twice ? [1, 3] : [1]) {
      if (practices.length === asked.practices) break
      const offers = asked.serves.flatMap((themes, design): readonly Offer[] => {
        const shape = asked.shapes[design]
        const isTooLarge = random.chance(0.1)
        return shape && !isTooLarge ? themes.map((theme) => ({ theme, design, ...shape })) : []
      })
      const [first] = asked.serves
      const [shape] = asked.shapes
      practices.push({
        id: `s${practices.length + 1}`,
        day: daysLater('2026-01-05', (week - 1) * 7 + weekday),
        week,
        offers:
          offers.length > 0 || !shape
            ? offers
            : (first ?? []).map((theme) => ({ theme, design: 0, ...shape })),
        held: null,
        comes: chances.map((chance) => (random.chance(0.05) ? 0 : chance)),
      })
    }
  }
  return practices
}

type Played = Pick<AheadProblem, 'met'> & { readonly players: readonly AheadPlayer[] }

/** Some practices were held: what everyone played of which theme follows from who came; gaps from the seats they got. */
function recordOf(
  random: SeededRandom,
  asked: {
    readonly themes: readonly AheadTheme[]
    readonly shapes: readonly Shape[]
    readonly players: number
  },
): Played {
  const { themes, shapes } = asked
  const met = Array.from({ length: random.whole(0, weeksBefore) }, (_, at) => ({
    day: daysLater('2026-01-05', at * 7 + 1),
    week: at + 1,
    themes: [random.whole(0, themes.length - 1)],
    design: random.chance(0.8) ? random.whole(0, shapes.length - 1) : null,
  }))
  const keeps = Array.from({ length: asked.players }, (_, at) => at === 0 || random.chance(0.6))
  const seatGaps = seatGapsOf(random, keeps)
  const players = keeps.map((own, at): AheadPlayer => {
    let playedSeconds = 0
    const themeSeconds = themes.map(() => 0)
    for (const practice of met) {
      if (random.chance(0.2)) continue
      const seconds = random.whole(18, 26) * 60
      playedSeconds += seconds
      for (const theme of themeWithAbove(themes, practice.themes[0] ?? 0))
        themeSeconds[theme] = (themeSeconds[theme] ?? 0) + seconds
    }
    const tolerance = Object.fromEntries(
      rotationColumns.map((column) => [column, random.pick([300, 450, 600])]),
    )
    return {
      id: `p${String(at + 1).padStart(2, '0')}`,
      keeps: own,
      gap: columnLeans(seatGaps[at]),
      tolerance: tolerance as ColumnSeconds,
      gapPlayedSeconds: playedSeconds,
      playedSeconds,
      themeSeconds,
      themeTolerance: 600,
    }
  })
  return { met, players }
}

/** Of every seat column they add up to nothing over the players; who does not keep has none of keeping. */
function seatGapsOf(random: SeededRandom, keeps: readonly boolean[]): readonly SeatSeconds[] {
  const gaps = keeps.map((): Record<SeatColumn, number> => ({ ...noSeats }))
  for (const column of seatColumns) {
    const who = gaps.filter((_, at) => column !== 'keep' || keeps[at])
    if (column.endsWith('Alone') && random.chance(0.7)) continue
    for (const gap of who) gap[column] = random.whole(-10, 10) * 60
    const mean = who.reduce((sum, gap) => sum + gap[column], 0) / who.length
    for (const gap of who) gap[column] -= mean
  }
  return gaps
}
