import type {
  MatchInSeason,
  PracticeInSeason,
  RegisterInSeason,
  SeasonJson,
  StationInSeason,
} from './season-json'
import { type SeededRandom, seededRandom } from './seeded-random'

export type SeasonSize = {
  /** Most players, practices, turns of a practice and matches. */
  readonly players: number
  readonly practices: number
  readonly turns: number
  readonly matches: number
}

const usualSize: SeasonSize = { players: 11, practices: 4, turns: 9, matches: 2 }
const oddIds = ['__proto__', 'constructor', '', 'ö 7', 'a"b', 'line\nbreak', '0']

/**
 * A season log by chance that the program must accept: registers with lines that touch, gaps, late comers and early
 * leavers, players never there; lone keepers, keepers marked not to keep, several stations, empty ones and none at all;
 * matches with and without keepers, with changes, touching spells and players who come and go. The same seed gives the
 * same season.
 */
export function randomSeason(seed: number, size: SeasonSize = usualSize): SeasonJson {
  const random = seededRandom(seed)
  const players = randomPlayers(random, size.players)
  const ids = players.map((player) => player.id)
  const themes = random.shuffle(['t1', 't2', 't3', random.chance(0.1) ? '__proto__' : 't4'])
  const season: SeasonJson = { format: 'turnbook/season-log@1', players }
  if (random.chance(0.8)) season.policy = randomPolicy(random)
  if (random.chance(0.5)) {
    season.themes = themes
      .slice(0, 2)
      .map((id, index) => ({ id, parent: index === 0 ? null : (themes[0] ?? null) }))
  }
  if (random.chance(0.95)) {
    season.practices = Array.from({ length: random.whole(0, size.practices) }, (_, index) =>
      randomPractice(random, { id: `s${index}`, ids, players, themes, turns: size.turns }),
    )
  }
  if (random.chance(0.8)) {
    season.matches = Array.from({ length: random.whole(0, size.matches) }, (_, index) =>
      randomMatch(random, { id: `m${index}`, ids, players }),
    )
  }
  return season
}

function randomPlayers(random: SeededRandom, most: number): SeasonJson['players'] {
  const count = random.whole(random.chance(0.05) ? 0 : 2, most)
  const odd = random.chance(0.1) ? random.shuffle(oddIds) : []
  const keepers = random.pick(['most', 'few', 'none', 'one'])
  return Array.from({ length: count }, (_, index) => {
    const id = odd[index] ?? `p${String(index).padStart(2, '0')}`
    const keeps = keepers === 'most' ? random.chance(0.8) : keepers === 'few' ? random.chance(0.2) : false
    if (keepers === 'one' && index === 0) return { id }
    return keeps && random.chance(0.5) ? { id } : { id, keeps }
  })
}

function randomPolicy(random: SeededRandom): NonNullable<SeasonJson['policy']> {
  const policy: NonNullable<SeasonJson['policy']> = {}
  if (random.chance(0.8)) policy.toleranceSeconds = random.pick([0, 10, 45, 60, 120, 600])
  if (random.chance(0.8)) policy.toleranceShare = random.pick([0, 0.05, 0.15, 0.2, 0.5, 1])
  if (random.chance(0.8)) policy.middleAttackShare = random.pick([0, 0.2, 0.25, 0.5, 0.6, 1])
  return policy
}

/** A register in which everyone is there in some way of its own, or not at all. */
function randomRegister(random: SeededRandom, ids: readonly string[], length: number): RegisterInSeason {
  const line = (player: string, from: number, to: number) => ({ player, from, to })
  const lines = ids.flatMap((player) => {
    const cut = random.whole(1, length - 2)
    const later = random.whole(cut + 1, length - 1)
    switch (random.pick(['all', 'all', 'all', 'late', 'left', 'touching', 'gap', 'away', 'inside'])) {
      case 'all':
        return [line(player, 0, length)]
      case 'late':
        return [line(player, cut, length)]
      case 'left':
        return [line(player, 0, later)]
      case 'touching':
        return [line(player, 0, cut), line(player, cut, later), line(player, later, length)]
      case 'gap':
        return [line(player, 0, cut), line(player, later, length)]
      case 'inside':
        return [line(player, cut, later)]
      default:
        return []
    }
  })
  return random.chance(0.5) ? lines : random.shuffle(lines)
}

function presentFor(register: RegisterInSeason, span: { start: number; end: number }): string[] {
  const ids = [...new Set(register.map((line) => line.player))]
  return ids.filter((player) => {
    const own = register.filter((line) => line.player === player)
    for (let second = span.start; second < span.end; second += 1) {
      if (!own.some((line) => line.from <= second && second < line.to)) return false
    }
    return true
  })
}

function randomPractice(
  random: SeededRandom,
  of: {
    id: string
    ids: readonly string[]
    players: SeasonJson['players']
    themes: readonly string[]
    turns: number
  },
): PracticeInSeason {
  const times: { start: number; end: number }[] = []
  let now = random.whole(0, 60)
  for (let turn = random.whole(0, of.turns); turn > 0; turn -= 1) {
    const length = random.pick([1, 20, 37, 45, 60, 90])
    times.push({ start: now, end: now + length })
    now += length + (random.chance(0.4) ? 0 : random.whole(1, 40))
  }
  const length = now + random.whole(5, 100)
  const register = randomRegister(random, of.ids, length)
  const practice: PracticeInSeason = {
    id: of.id,
    date: randomDay(random),
    register,
    turns: times.map((time) => ({
      ...time,
      ...(random.chance(0.6) ? { theme: random.pick(of.themes) } : {}),
      stations: randomStations(random, presentFor(register, time), of.players),
    })),
  }
  if (random.chance(0.2)) practice.title = 'Practice'
  if (random.chance(0.6)) practice.lengthSeconds = length
  return practice
}

function randomStations(
  random: SeededRandom,
  present: readonly string[],
  players: SeasonJson['players'],
): StationInSeason[] {
  const waiting = random.shuffle(present)
  const willing = new Set(players.filter((player) => player.keeps !== false).map((player) => player.id))
  const stations: StationInSeason[] = []
  for (let station = random.whole(0, 3); station > 0; station -= 1) {
    const take = (most: number) => waiting.splice(0, random.whole(0, most))
    const attack = take(3)
    const defend = take(3)
    const keep: string[] = []
    for (let seats = random.pick([0, 0, 1, 1, 1, 2]); seats > 0 && waiting.length > 0; seats -= 1) {
      const asked = random.chance(0.85) ? waiting.findIndex((player) => willing.has(player)) : 0
      keep.push(...waiting.splice(Math.max(asked, 0), 1))
    }
    const seats = { attack, defend, keep }
    // An empty list of seats may be written or left out.
    const written = Object.entries(seats).filter(([, list]) => list.length > 0 || random.chance(0.3))
    stations.push(Object.fromEntries(written))
  }
  return stations
}

function randomMatch(
  random: SeededRandom,
  of: { id: string; ids: readonly string[]; players: SeasonJson['players'] },
): MatchInSeason {
  const periods: MatchInSeason['periods'] = []
  let now = random.pick([0, 0, 30])
  for (let period = random.whole(0, 4); period > 0; period -= 1) {
    const length = random.whole(5, 120)
    periods.push({ start: now, end: now + length })
    now += length + (random.chance(0.3) ? 0 : random.whole(1, 60))
  }
  const register = randomRegister(random, of.ids, now + 10)
  const pieces = periods.flatMap((period) => cutByChance(random, period))
  const lines = random.chance(0.8) ? ['keeper', 'back', 'middle', 'forward'] : ['back', 'middle', 'forward']
  const spells: MatchInSeason['spells'] = []
  for (const piece of pieces) {
    const present = presentFor(register, piece)
    const places = random.whole(0, present.length)
    for (const player of random.shuffle(present).slice(0, places)) {
      const before = spells.find((spell) => spell.player === player && spell.end === piece.start)
      const sameHalf = periods.some((period) => period.start < piece.start && piece.start < period.end)
      // A spell may go on over a change of others, or end and begin anew at the same second.
      if (before && sameHalf && random.chance(0.6)) before.end = piece.end
      else spells.push({ player, line: random.pick(lines), start: piece.start, end: piece.end })
    }
  }
  return {
    id: of.id,
    date: randomDay(random),
    periods,
    register,
    spells: random.chance(0.5) ? spells : random.shuffle(spells),
  }
}

function cutByChance(random: SeededRandom, period: { start: number; end: number }) {
  const inside = Array.from({ length: random.whole(0, 3) }, () =>
    random.whole(period.start + 1, period.end - 1),
  )
  const edges = [...new Set([period.start, ...inside, period.end])].sort((a, b) => a - b)
  return edges.slice(1).map((end, index) => ({ start: edges[index] as number, end }))
}

function randomDay(random: SeededRandom): string {
  const two = (value: number) => String(value).padStart(2, '0')
  return `2026-${two(random.whole(1, 12))}-${two(random.whole(1, 28))}`
}
