import { compare, ExactSum, type Fraction, fractionOf, minus, plus, times, toNumber } from './exact-sum'
import type { MatchInSeason, PracticeInSeason, RegisterInSeason, SeasonJson } from './season-json'

/**
 * The ledger a second time, from its description alone and by other means, to hold the program against: presence is
 * looked up second by second, spans of a match are runs of seconds in which nothing changes, the fair share is counted
 * out as the mean over every way to draw the keepers from those who may keep (the rest then sharing alike), and all sums
 * are exact fractions. Nothing here comes from the program.
 */
export type SecondLedger = {
  players: SecondPlayer[]
  squad: { ballRollingShare: number | null; warnings: { path: string; player: string }[] }
}

type SecondBalance = {
  seconds: number
  fairSeconds: number
  gapSeconds: number
  turns: number
  status: 'within' | 'short' | 'over'
}
type ByName = { [name: string]: SecondBalance }
type SecondPlayer = {
  id: string
  liveSeconds: number
  longestRestTurns: number
  roles: ByName
  situations: ByName
  themes: Map<string, SecondBalance>
  practice: { roles: ByName }
  match: { roles: ByName }
}

/** A name for what is summed: `practice attack`, `match rest`, `situation level`, `theme t1`. */
type Cell = { got: ExactSum; due: ExactSum; turns: number }

const roleNames = ['attack', 'defend', 'keep', 'rest']
const situationNames = ['outnumbering', 'level', 'outnumbered']

/** Time in which the seats stay the same; a seat names every cell that its time goes into, with the part that does. */
type Stretch = {
  seconds: number
  isTurn: boolean
  theme: string | null
  present: string[]
  seats: { player: string; seat: string }[]
}

class Book {
  readonly cells = new Map<string, Map<string, Cell>>()
  constructor(readonly season: SeasonJson) {
    for (const player of season.players) this.cells.set(player.id, new Map())
  }

  cell(player: string, name: string): Cell {
    const own = this.cells.get(player)
    if (!own) throw new Error(`No such player: ${player}`)
    const cell = own.get(name) ?? { got: new ExactSum(), due: new ExactSum(), turns: 0 }
    own.set(name, cell)
    return cell
  }

  middleShare(): number {
    return this.season.policy?.middleAttackShare ?? 0.5
  }
}

export function secondLedger(season: SeasonJson): SecondLedger {
  const book = new Book(season)
  const live = new Map(season.players.map((player) => [player.id, 0]))
  const rests = new Map(season.players.map((player) => [player.id, 0]))
  const warnings: { path: string; player: string }[] = []
  let rolling = 0
  let stated = 0
  for (const [index, practice] of (season.practices ?? []).entries()) {
    const stretches = stretchesOfPractice(practice)
    for (const stretch of stretches) enter(book, stretch, live)
    for (const player of season.players) {
      rests.set(player.id, Math.max(rests.get(player.id) ?? 0, longestRest(stretches, player.id)))
    }
    for (const [turn, stretch] of stretches.entries()) {
      warn(season, stretch, `practices[${index}].turns[${turn}]`, warnings)
    }
    if (practice.lengthSeconds !== undefined) {
      rolling += practice.turns.reduce((sum, turn) => sum + turn.end - turn.start, 0)
      stated += practice.lengthSeconds
    }
  }
  for (const [index, match] of (season.matches ?? []).entries()) {
    for (const { period, from, to, stretch } of stretchesOfMatch(match)) {
      enter(book, stretch, live)
      warn(season, stretch, `matches[${index}].periods[${period}] ${from}-${to}`, warnings)
    }
  }
  return {
    players: season.players.map((player) => ({
      id: player.id,
      liveSeconds: live.get(player.id) ?? 0,
      longestRestTurns: rests.get(player.id) ?? 0,
      ...balancesOf(book, player.id),
    })),
    squad: { ballRollingShare: stated > 0 ? rolling / stated : null, warnings },
  }
}

function presenceMap(register: RegisterInSeason): Map<string, Uint8Array> {
  const length = register.reduce((most, line) => Math.max(most, line.to), 0)
  const map = new Map<string, Uint8Array>()
  for (const line of register) {
    const seconds = map.get(line.player) ?? new Uint8Array(length)
    seconds.fill(1, line.from, line.to)
    map.set(line.player, seconds)
  }
  return map
}

function thereAllAlong(presence: Map<string, Uint8Array>, start: number, end: number): string[] {
  return [...presence].flatMap(([player, seconds]) => {
    for (let second = start; second < end; second += 1) if (seconds[second] !== 1) return []
    return [player]
  })
}

function stretchesOfPractice(practice: PracticeInSeason): Stretch[] {
  const presence = presenceMap(practice.register)
  return practice.turns.map((turn) => ({
    seconds: turn.end - turn.start,
    isTurn: true,
    theme: turn.theme ?? null,
    present: thereAllAlong(presence, turn.start, turn.end),
    seats: turn.stations.flatMap((station) => {
      const a = station.attack?.length ?? 0
      const d = station.defend?.length ?? 0
      const own = (mine: number, theirs: number) => {
        if (mine === 0 || theirs === 0) return ''
        return mine > theirs ? ' outnumbering' : mine < theirs ? ' outnumbered' : ' level'
      }
      return [
        ...(station.attack ?? []).map((player) => ({ player, seat: `attack${own(a, d)}` })),
        ...(station.defend ?? []).map((player) => ({ player, seat: `defend${own(d, a)}` })),
        ...(station.keep ?? []).map((player) => ({ player, seat: 'keep' })),
      ]
    }),
  }))
}

function stretchesOfMatch(match: MatchInSeason) {
  const presence = presenceMap(match.register)
  const names = [...presence.keys()]
  // What a second looks like: which spell everyone is in and who is there. A new spell in the same line is a change.
  const lookOf = (second: number) =>
    names.map((player) => {
      const spell = match.spells.findIndex((s) => s.player === player && s.start <= second && second < s.end)
      return presence.get(player)?.[second] === 1 ? spell : -2
    })
  const seatOfLine: { [line: string]: string } = {
    keeper: 'keep',
    back: 'back',
    middle: 'middle',
    forward: 'forward',
  }
  return match.periods.flatMap((period, index) => {
    const runs: { from: number; to: number; look: number[] }[] = []
    for (let second = period.start; second < period.end; second += 1) {
      const look = lookOf(second)
      const run = runs.at(-1)
      if (run?.look.every((value, place) => value === look[place])) run.to = second + 1
      else runs.push({ from: second, to: second + 1, look })
    }
    return runs.map(({ from, to, look }) => ({
      period: index,
      from,
      to,
      stretch: {
        seconds: to - from,
        isTurn: false,
        theme: null,
        present: names.filter((_, place) => look[place] !== -2),
        seats: names.flatMap((player, place) => {
          const spell = match.spells[look[place] ?? -1]
          return spell ? [{ player, seat: seatOfLine[spell.line] ?? '' }] : []
        }),
      } satisfies Stretch,
    }))
  })
}

/** The cells that the time of a seat goes into, and how many thousandths of it. */
function cellsOf(book: Book, stretch: Stretch, seat: string): { name: string; parts: number }[] {
  const kind = stretch.isTurn ? 'practice' : 'match'
  const whole = 1000
  const middle = Math.round(book.middleShare() * whole)
  if (seat === 'middle') {
    return [
      { name: `${kind} attack`, parts: middle },
      { name: `${kind} defend`, parts: whole - middle },
    ]
  }
  const [role = '', situation] = seat.split(' ')
  const inMatch: { [seat: string]: string } = { back: 'defend', forward: 'attack' }
  const cells = [{ name: `${kind} ${inMatch[role] ?? role}`, parts: whole }]
  if (situation) cells.push({ name: `situation ${situation}`, parts: whole })
  if (stretch.theme !== null && role !== 'rest') cells.push({ name: `theme ${stretch.theme}`, parts: whole })
  return cells
}

function enter(book: Book, stretch: Stretch, live: Map<string, number>): void {
  const whole = 1000
  const n = stretch.present.length
  const seated = new Set(stretch.seats.map((seat) => seat.player))
  const resting = stretch.present.filter((player) => !seated.has(player))
  const all = [...stretch.seats, ...resting.map((player) => ({ player, seat: 'rest' }))]
  for (const player of stretch.present) live.set(player, (live.get(player) ?? 0) + stretch.seconds)
  for (const { player, seat } of all) {
    for (const { name, parts } of cellsOf(book, stretch, seat)) {
      const cell = book.cell(player, name)
      cell.got.add(stretch.seconds * parts, whole)
      cell.turns += stretch.isTurn ? 1 : 0
    }
  }
  const willing = new Set(book.season.players.filter((p) => p.keeps ?? true).map((p) => p.id))
  const kept = all.filter((seat) => seat.seat === 'keep').map((seat) => seat.player)
  const able = stretch.present.filter((player) => willing.has(player) || kept.includes(player))
  const draws = drawsOf(able.length, kept.length)
  const seatNames = [...new Set(all.map((seat) => seat.seat))]
  for (const player of stretch.present) {
    const place = able.indexOf(player)
    const inGoal = place === -1 ? 0 : (draws.with[place] ?? 0)
    for (const seat of seatNames) {
      const seats = all.filter((other) => other.seat === seat).length
      for (const { name, parts } of cellsOf(book, stretch, seat)) {
        const due = book.cell(player, name).due
        const length = stretch.seconds * parts
        if (seat === 'keep') due.add(length * inGoal, whole * draws.all)
        else due.add(length * (draws.all - inGoal) * seats, whole * draws.all * (n - kept.length))
      }
    }
  }
}

const counted = new Map<string, { all: number; with: number[] }>()

/** Every way to draw so many keepers from so many able players, counted out: how many ways, and how many with each. */
function drawsOf(able: number, keepers: number): { all: number; with: number[] } {
  const key = `${able} ${keepers}`
  const known = counted.get(key)
  if (known) return known
  const draws = { all: 0, with: Array.from({ length: able }, () => 0) }
  for (let draw = 0; draw < 2 ** able; draw += 1) {
    const drawn = draws.with.map((_, place) => (draw >> place) & 1)
    if (drawn.reduce((sum, one) => sum + one, 0) !== keepers) continue
    draws.all += 1
    draws.with = draws.with.map((count, place) => count + (drawn[place] ?? 0))
  }
  counted.set(key, draws)
  return draws
}

function longestRest(stretches: Stretch[], player: string): number {
  const waits = stretches.map(
    (stretch) => stretch.present.includes(player) && !stretch.seats.some((seat) => seat.player === player),
  )
  const runs = waits
    .map((wait) => (wait ? 'w' : '-'))
    .join('')
    .split('-')
  return Math.max(...runs.map((run) => run.length))
}

function warn(
  season: SeasonJson,
  stretch: Stretch,
  path: string,
  into: { path: string; player: string }[],
): void {
  for (const { player, seat } of stretch.seats) {
    const keeps = season.players.find((p) => p.id === player)?.keeps ?? true
    if (seat === 'keep' && !keeps) into.push({ path, player })
  }
}

function balancesOf(book: Book, player: string) {
  const own = book.cells.get(player) ?? new Map<string, Cell>()
  const sum = (names: string[]) => {
    const cells = names.flatMap((name) => own.get(name) ?? [])
    const nothing: Fraction = { over: 0n, under: 1n }
    const got = cells.reduce((all, cell) => plus(all, cell.got.value()), nothing)
    const due = cells.reduce((all, cell) => plus(all, cell.due.value()), nothing)
    return balance(
      book,
      got,
      due,
      cells.reduce((turns, cell) => turns + cell.turns, 0),
    )
  }
  const named = (names: string[], cellsFor: (name: string) => string[]): ByName =>
    Object.fromEntries(names.map((name) => [name, sum(cellsFor(name))]))
  const themes = (book.season.practices ?? []).flatMap((practice) =>
    practice.turns.flatMap((turn) => turn.theme ?? []),
  )
  return {
    roles: named(roleNames, (role) => [`practice ${role}`, `match ${role}`]),
    situations: named(situationNames, (situation) => [`situation ${situation}`]),
    themes: new Map([...new Set(themes)].map((theme) => [theme, sum([`theme ${theme}`])])),
    practice: { roles: named(roleNames, (role) => [`practice ${role}`]) },
    match: { roles: named(roleNames, (role) => [`match ${role}`]) },
  }
}

function balance(book: Book, got: Fraction, due: Fraction, turns: number): SecondBalance {
  const gap = minus(got, due)
  const seconds = fractionOf(book.season.policy?.toleranceSeconds ?? 600)
  const share = times(fractionOf(book.season.policy?.toleranceShare ?? 0.15), due)
  const tolerance = compare(seconds, share) > 0 ? seconds : share
  const below = compare(plus(gap, tolerance), { over: 0n, under: 1n }) < 0
  const above = compare(gap, tolerance) > 0
  return {
    seconds: toNumber(got),
    fairSeconds: toNumber(due),
    gapSeconds: toNumber(gap),
    turns,
    status: below ? 'short' : above ? 'over' : 'within',
  }
}
