import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { rotationColumns } from '#rotation/problem'
import { type SeededRandom, seededRandom } from './seeded-random'

type ThemeJson = PlanRequestJson['themes'][number]

/**
 * A request of two to eight practices with something of everything: rules that may clash, grounds that are too small,
 * days without practice, players who are away. The same for the same seed.
 */
export function randomPlanRequest(seed: number): PlanRequestJson {
  const random = seededRandom(seed * 7919 + 3)
  const players = random.whole(8, 13)
  const themes = themesOf(random)
  const ids = themes.map(({ id }) => id)
  const days = Array.from({ length: 14 }, (_, week) => week * 7 + 1)
  const first = random.whole(2, 5)
  const dates = days.slice(first, first + random.whole(2, 8)).map(dateOf)
  return {
    format: 'turnbook/plan-request@1',
    term: { from: dateOf(0), to: dateOf(108) },
    policy: { toleranceSeconds: random.pick([300, 600]), toleranceShare: 0.15 },
    practices: dates.map((date, index) => ({
      id: `s${index + 1}`,
      date,
      lengthSeconds: random.pick([3600, 2700, null]),
      ground: random.chance(0.3) ? { lengthM: random.pick([30, 18]), widthM: random.pick([25, 40]) } : null,
      held: random.chance(0.2) ? { theme: random.pick(ids), design: random.pick(['d1', 'd2', null]) } : null,
    })),
    closed: random.chance(0.3) && dates.length > 2 ? [{ from: dates[1] ?? '', to: dates[1] ?? '' }] : [],
    themes,
    blocks: random.chance(0.2)
      ? [{ theme: random.pick(ids), firstWeek: first + 2, lastWeek: first + 2 + random.whole(0, 1) }]
      : [],
    designs: designsOf(random, { ids, players }),
    met: random.chance(0.7)
      ? days.slice(0, first - 1).map((day) => ({
          date: dateOf(day),
          themes: [random.pick(ids)],
          design: random.pick(['d1', 'd2', null]),
        }))
      : [],
    players: playersOf(random, { ids, count: players }),
    designRest: random.pick([0, 0, 1, 2]),
    gentle: random.pick([{ least: 0.6, most: 1.4 }, { least: 0.5 }]),
    alternatives: false,
    seed,
    timeLimitMs: 1000,
    workLimit: 20,
  }
}

/** Days after Monday 7 September 2026. */
function dateOf(day: number): string {
  return new Date(Date.UTC(2026, 8, 7 + day)).toISOString().slice(0, 10)
}

function themesOf(random: SeededRandom): readonly ThemeJson[] & ThemeJson[] {
  const count = random.whole(2, 6)
  return Array.from({ length: count }, (_, index) => {
    const rule: Partial<ThemeJson> = { share: random.whole(0, 10) / (count * 8) }
    if (random.chance(0.15)) rule.firstWeek = random.whole(2, 6)
    if (random.chance(0.15)) rule.lastWeek = random.whole(6, 12)
    if (index > 0 && random.chance(0.2)) rule.after = `t${random.whole(1, index)}`
    if (random.chance(0.2)) rule.leastWeeksBetween = random.whole(1, 3)
    if (random.chance(0.2)) rule.mostWeeksBetween = random.whole(3, 5)
    const parent = index > 1 && random.chance(0.4) ? { parent: `t${random.whole(1, index - 1)}` } : {}
    return { id: `t${index + 1}`, ...parent, ...rule }
  })
}

function designsOf(
  random: SeededRandom,
  { ids, players }: { ids: readonly string[]; players: number },
): PlanRequestJson['designs'] {
  return Array.from({ length: random.whole(2, 5) }, (_, index) => {
    const half = Math.floor(players / 4)
    const stations = () => [{ attack: half + random.whole(0, 1), defend: half, keep: random.whole(0, 1) }]
    return {
      id: `d${index + 1}`,
      themes: [...new Set([ids[index % ids.length] ?? '', random.pick(ids), random.pick(ids)])],
      lengthM: random.whole(15, 32),
      widthM: random.whole(15, 30),
      rounds: Array.from({ length: random.whole(1, 3) }, () => ({
        turnCount: random.whole(4, 10),
        turnSeconds: random.whole(30, 120),
        gapSeconds: random.pick([0, 15]),
        stations: stations(),
      })),
    }
  })
}

function playersOf(
  random: SeededRandom,
  { ids, count }: { ids: readonly string[]; count: number },
): PlanRequestJson['players'] {
  return Array.from({ length: count }, (_, index) => {
    const held = random.whole(4, 9)
    const gap = Object.fromEntries(rotationColumns.map((column) => [column, random.whole(-15, 15) * 60]))
    return {
      id: `p${index + 1}`,
      keeps: index < 2 || random.chance(0.5),
      held,
      came: random.whole(Math.ceil(held * 0.6), held),
      away: random.chance(0.1) ? [{ from: dateOf(28), to: dateOf(49) }] : [],
      gap,
      fair: { attack: random.whole(10, 90) * 60, defend: random.whole(10, 90) * 60 },
      playedSeconds: 7200,
      themeSeconds: { [random.pick(ids)]: random.whole(0, 60) * 60 },
    }
  })
}
