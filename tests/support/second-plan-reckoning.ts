import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'

/** What `turnbook plan` writes, as far as a second reckoning reads it. */
export type PlanAnswer = {
  practices: {
    id: string
    date: string
    week: number
    theme: string
    design: string
    isFirm: boolean
    isHeld: boolean
    liveSeconds: number
    seats: Record<string, number>
    players: { id: string; comes: number; lean: Record<string, number> }[]
  }[]
  leftOut: { id: string; date: string }[]
  players: {
    id: string
    columns: Record<
      string,
      {
        gap: number
        gapAfter: number
        tolerance: number
        within: boolean
        reachable: 'yes' | 'no' | 'open'
        inside: boolean
      }
    >
    playedSeconds: number
    themes: Record<string, { seconds: number; due: number; tolerance: number; inside: boolean }>
  }[]
  themes: { id: string; share: number; met: number; planned: number }[]
  value: { balance: number; themes: number; value: number; bound: number; proven: boolean }
  leastOutside: { value: number; bound: number; proven: boolean } | null
  sentence: string
}

type Seats = Map<string, number>
type Player = PlanRequestJson['players'][number]

/** Days since 1970, of which 5 January was a Monday. */
const dayNumber = (date: string) => {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number)
  return Date.UTC(year, month - 1, day) / 86_400_000
}
/** Of the term, from 1; weeks begin on Mondays. */
export const termWeek = (request: PlanRequestJson, date: string) => {
  const weekNumber = (text: string) => Math.floor((dayNumber(text) - 4) / 7)
  return weekNumber(date) - weekNumber(request.term.from) + 1
}

/** The practices that are to be planned. */
export function practicesToPlan(request: PlanRequestJson) {
  return request.practices.filter(
    ({ date }) =>
      !(request.closed ?? []).some(
        ({ from, to }) => dayNumber(from) <= dayNumber(date) && dayNumber(date) <= dayNumber(to),
      ),
  )
}

/** A theme and those that it stands under. */
export function themeLine(request: PlanRequestJson, id: string): readonly string[] {
  const own = request.themes.find((theme) => theme.id === id)
  return own?.parent == null ? [id] : [id, ...themeLine(request, own.parent)]
}

/**
 * How likely each is to come: Morris's estimator by his own iteration (J. Am. Stat. Assoc. 78 (1983) 47-55, from memory):
 * spread = Σ w (k/(k-1) (rate - mean)² - variance) / Σ w with w = 1 / (variance + spread), until it stands still.
 */
export function chancesToCome(players: readonly Player[]): readonly number[] {
  const known = players.flatMap(({ came = 0, held = 0 }) => (held > 0 ? [{ came, held }] : []))
  const total = known.reduce((all, { held }) => all + held, 0)
  if (total === 0) return players.map(() => 1)
  const squad = known.reduce((all, { came }) => all + came, 0) / total
  const count = known.length
  const noise = (held: number) => (squad * (1 - squad)) / held
  if (count < 4 || squad === 0 || squad === 1) return players.map(() => squad)
  let [spread, mean] = [0, squad]
  for (let step = 0; step < 2000; step++) {
    const weights = known.map(({ held }) => 1 / (noise(held) + spread))
    const all = weights.reduce((sum, weight) => sum + weight, 0)
    mean = known.reduce((sum, { came, held }, at) => sum + ((weights[at] ?? 0) * came) / held, 0) / all
    const next =
      known.reduce(
        (sum, { came, held }, at) =>
          sum + (weights[at] ?? 0) * ((count / (count - 1)) * (came / held - mean) ** 2 - noise(held)),
        0,
      ) / all
    spread = Math.max(0, next)
  }
  if (spread < 1e-12) return players.map(() => squad)
  return players.map(({ came = 0, held = 0 }) => {
    if (held === 0) return mean
    const toMean = (((count - 3) / (count - 1)) * noise(held)) / (noise(held) + spread)
    return toMean * mean + (1 - toMean) * (came / held)
  })
}

const sideOf = (own: number, other: number) =>
  other === 0 || own === 0 ? 'Alone' : own > other ? 'Outnumbering' : own < other ? 'Outnumbered' : 'Level'

/**
 * Seat seconds of a design for so many, turn by turn until the time is up; null where it would have to be made smaller
 * or larger for them, or has a free game: that is not reckoned here.
 */
export function seatsOfDesign(
  design: PlanRequestJson['designs'][number],
  day: { readonly present: number; readonly keepers: number; readonly length: number | null },
): { readonly seats: Seats; readonly live: number } | null {
  const seats: Seats = new Map()
  let [live, clock] = [0, 0]
  let isOver = false
  for (const { turnCount, turnSeconds, gapSeconds = 0, stations, freeGame } of design.rounds) {
    const [attack, defend, keep] = (['attack', 'defend', 'keep'] as const).map((role) =>
      stations.reduce((sum, own) => sum + (own[role] ?? 0), 0),
    ) as [number, number, number]
    const places = attack + defend + keep
    if (freeGame || places > day.present || day.present > 2 * places || keep > day.keepers) return null
    for (let turn = 0; turn < turnCount && !isOver; turn++) {
      clock += turnSeconds + (turn > 0 ? gapSeconds : 0)
      isOver = day.length !== null && clock > day.length
      if (isOver) break
      live += turnSeconds
      for (const { attack: a = 0, defend: d = 0, keep: k = 0 } of stations) {
        const add = (column: string, count: number) =>
          count > 0 && seats.set(column, (seats.get(column) ?? 0) + count * turnSeconds)
        add(`attack${sideOf(a, d)}`, a)
        add(`defend${sideOf(d, a)}`, d)
        add('keep', k)
      }
    }
  }
  return { seats, live }
}

/** What each may expect of a practice when all is shared evenly, by the help's own words. */
export function evenShares(
  players: readonly Player[],
  practice: { readonly comes: readonly number[]; readonly seats: Seats; readonly live: number },
): readonly Seats[] {
  const { comes, seats, live } = practice
  const able = players.reduce((sum, { keeps = true }, at) => sum + (keeps ? (comes[at] ?? 0) : 0), 0)
  const inGoal = able > 0 ? Math.min(live, (seats.get('keep') ?? 0) / able) : 0
  const free = players.map(({ keeps = true }, at) => (comes[at] ?? 0) * (live - (keeps ? inGoal : 0)))
  const allFree = free.reduce((sum, own) => sum + own, 0)
  let field = 0
  for (const [column, seconds] of seats) if (column !== 'keep') field += seconds
  const part = allFree === 0 ? 0 : 1 / Math.max(field, allFree)
  return players.map(({ keeps = true }, at) => {
    const own: Seats = new Map()
    for (const [column, seconds] of seats)
      if (column !== 'keep') own.set(column, seconds * part * (free[at] ?? 0))
    if (keeps) own.set('keep', (comes[at] ?? 0) * inGoal)
    return own
  })
}

/** A gap of no more than the tolerance counts once, each minute beyond it ten times. */
export const costInMinutes = (seconds: number, tolerance: number) =>
  seconds <= 0 ? 0 : (Math.min(seconds, tolerance) + 10 * Math.max(0, seconds - tolerance)) / 60
