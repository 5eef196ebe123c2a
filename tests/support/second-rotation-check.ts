import type { rotationJson } from '#exchange/rotation-json'
import type { RotationRequestJson } from '#exchange/rotation-request-shape'

export type RotationAnswerJson = ReturnType<typeof rotationJson>

/**
 * A second opinion on an answer, from the words of the format alone: it looks at the two JSON texts and shares no code
 * with the program. Returns every fault as a sentence; none: the answer keeps what it says.
 */
export function secondRotationCheck(
  request: RotationRequestJson,
  answer: RotationAnswerJson,
): readonly string[] {
  const turns = turnsOf(request)
  const players = request.players.map((player) => ({ ...player, there: thereIn(player, turns.length) }))
  const seated = answer.turns.map((turn) => placesOf(turn))
  const all = { request, answer, turns, players, seated }
  return [...hardFaults(all, seated), ...figureFaults(all), ...proofFaults(answer), ...exchangeFaults(all)]
}

type Turn = {
  readonly round: RotationRequestJson['rounds'][number]
  readonly stations: readonly { readonly attack: number; readonly defend: number; readonly keep: number }[]
}
/** Where a player is: 'rest', or 'attack 1' at the first station and so on. */
type Places = ReadonlyMap<string, string>
type All = {
  readonly request: RotationRequestJson
  readonly answer: RotationAnswerJson
  readonly turns: readonly Turn[]
  readonly players: readonly (RotationRequestJson['players'][number] & {
    readonly there: readonly boolean[]
  })[]
  readonly seated: readonly Places[]
}

function turnsOf(request: RotationRequestJson): readonly Turn[] {
  return request.rounds.flatMap((round) =>
    round.turns.map((turn) => ({
      round,
      stations: turn.stations.map((own) => ({
        attack: own.attack ?? 0,
        defend: own.defend ?? 0,
        keep: own.keep ?? 0,
      })),
    })),
  )
}

function thereIn(player: RotationRequestJson['players'][number], turns: number): readonly boolean[] {
  const spans = player.present ?? [[player.fromTurn ?? 1, player.toTurn ?? turns]]
  return Array.from({ length: turns }, (_, at) => spans.some(([from, to]) => at + 1 >= from && at + 1 <= to))
}

function placesOf(turn: RotationAnswerJson['turns'][number]): Places {
  const places = new Map<string, string>()
  const give = (id: string, place: string) => places.set(id, places.has(id) ? 'two places' : place)
  for (const id of turn.rest) give(id, 'rest')
  turn.stations.forEach((station, index) => {
    for (const role of ['attack', 'defend', 'keep'] as const)
      for (const id of station[role]) give(id, `${role} ${index + 1}`)
  })
  return places
}

function hardFaults(all: All, seated: readonly Places[]): readonly string[] {
  const { request, turns, players } = all
  const faults: string[] = []
  if (seated.length !== turns.length) faults.push(`${seated.length} turns for ${turns.length}`)
  const limit = all.answer.restLimit.used
  const waits = new Map<string, number>()
  const keeperOf = new Map<string, string>()
  turns.forEach((turn, at) => {
    const places: Places = seated[at] ?? new Map<string, string>()
    for (const { id, keeps = true, there } of players) {
      const place = places.get(id)
      if ((place !== undefined) !== there[at])
        faults.push(`turn ${at + 1}: ${id} there ${there[at]}, place ${place}`)
      const role = (place ?? '').split(' ')[0]
      if (role === 'keep' && !keeps) faults.push(`turn ${at + 1}: ${id} keeps`)
      const side = turn.round.sides
      if (side && (role === 'attack' || role === 'defend') && !side[role].includes(id))
        faults.push(`turn ${at + 1}: ${id} on the wrong side`)
      waits.set(id, place === 'rest' ? (waits.get(id) ?? 0) + 1 : 0)
      if (limit !== null && (waits.get(id) ?? 0) > limit) faults.push(`turn ${at + 1}: ${id} waits too long`)
    }
    turn.stations.forEach((station, index) => {
      for (const role of ['attack', 'defend', 'keep'] as const) {
        const there = [...places.values()].filter((place) => place === `${role} ${index + 1}`).length
        if (there !== station[role]) faults.push(`turn ${at + 1}: ${there} ${role} at station ${index + 1}`)
      }
      const at1 = (id: string) => (places.get(id) ?? '').endsWith(` ${index + 1}`)
      for (const [one, other] of request.apart ?? [])
        if (at1(one) && at1(other)) faults.push(`turn ${at + 1}: ${one} and ${other} together`)
      if (!turn.round.keepersStay || station.keep === 0) return
      const key = `${turn.round.id} ${index}`
      const keeper = [...places].find(([, place]) => place === `keep ${index + 1}`)?.[0] ?? ''
      const before = keeperOf.get(key)
      if (before !== undefined && before !== keeper && players.find(({ id }) => id === before)?.there[at])
        faults.push(`turn ${at + 1}: ${before} does not stay in goal`)
      keeperOf.set(key, keeper)
    })
    if ([...places.values()].includes('two places')) faults.push(`turn ${at + 1}: two places`)
    if (places.size !== players.filter(({ there }) => there[at]).length)
      faults.push(`turn ${at + 1}: strangers`)
  })
  for (const { turn, station, role, player } of request.fixed ?? []) {
    const wanted = role === 'rest' ? 'rest' : `${role} ${station}`
    if (seated[turn - 1]?.get(player) !== wanted) faults.push(`turn ${turn}: ${player} is not fixed`)
  }
  return faults
}

const columns = ['attack', 'defend', 'keep', 'rest', 'outnumbering', 'level', 'outnumbered'] as const
type Column = (typeof columns)[number]
type Figures = Record<Column, number>
const nothing = (): Figures => ({
  attack: 0,
  defend: 0,
  keep: 0,
  rest: 0,
  outnumbering: 0,
  level: 0,
  outnumbered: 0,
})

function situation(
  station: Turn['stations'][number],
  role: string,
): 'outnumbering' | 'level' | 'outnumbered' | null {
  const { attack, defend } = station
  if (attack === 0 || defend === 0 || (role !== 'attack' && role !== 'defend')) return null
  if (attack === defend) return 'level'
  return attack > defend === (role === 'attack') ? 'outnumbering' : 'outnumbered'
}

function gapsAfter(all: All, seated: readonly Places[]): readonly Figures[] {
  return all.players.map((player) => {
    const gap = { ...nothing(), ...player.gap }
    all.turns.forEach(({ round, stations }, at) => {
      if (!player.there[at]) return
      const there = all.players.filter((other) => other.there[at])
      const able = there.filter(({ keeps }) => keeps ?? true).length
      const keeperSeats = stations.reduce((sum, { keep }) => sum + keep, 0)
      const ownKeep = keeperSeats > 0 && (player.keeps ?? true) ? keeperSeats / able : 0
      const seats = nothing()
      for (const station of stations) {
        for (const role of ['attack', 'defend'] as const) {
          seats[role] += station[role]
          const own = situation(station, role)
          if (own) seats[own] += station[role]
        }
      }
      seats.rest = there.length - seats.attack - seats.defend - keeperSeats
      for (const column of columns) {
        const fair =
          column === 'keep'
            ? ownKeep
            : there.length > keeperSeats
              ? (1 - ownKeep) * (seats[column] / (there.length - keeperSeats))
              : 0
        gap[column] -= round.turnSeconds * fair
      }
      const [role = '', station = ''] = (seated[at]?.get(player.id) ?? '').split(' ')
      gap[role as Column] += round.turnSeconds
      const own =
        role === 'rest' ? null : situation(stations[Number(station) - 1] as Turn['stations'][number], role)
      if (own) gap[own] += round.turnSeconds
    })
    return gap
  })
}

function squares(gaps: readonly Figures[], of: readonly Column[]): number {
  return gaps.reduce((sum, gap) => of.reduce((own, column) => own + gap[column] ** 2, sum), 0)
}

function figureFaults(all: All): readonly string[] {
  const { answer, seated } = all
  const gaps = gapsAfter(all, seated)
  const faults: string[] = []
  const same = (what: string, said: number, found: number) => {
    if (Math.abs(said - found) > 1e-6 * Math.max(1, Math.abs(found)))
      faults.push(`${what}: said ${said}, is ${found}`)
  }
  same('unfairness', answer.unfairness.value, squares(gaps, columns.slice(0, 4)))
  same('situations', answer.situationUnfairness.value, squares(gaps, columns.slice(4)))
  answer.players.forEach(({ id, gapAfter, seconds, fairSeconds }, index) => {
    const request = all.players[index]
    if (request?.id !== id) faults.push(`player ${index}: ${id}`)
    for (const column of columns) {
      same(`${id} ${column}`, gapAfter[column] ?? Number.NaN, gaps[index]?.[column] ?? Number.NaN)
      const sum = (request?.gap?.[column] ?? 0) + (seconds[column] ?? 0) - (fairSeconds[column] ?? 0)
      same(`${id} ${column} sum`, gapAfter[column] ?? Number.NaN, sum)
    }
  })
  let changes = 0
  seated.forEach((places, at) => {
    for (const [id, place] of places) {
      const before = seated[at - 1]?.get(id)
      if (!before || all.turns[at]?.round !== all.turns[at - 1]?.round) continue
      if (before !== 'rest' && place !== 'rest' && before.split(' ')[0] !== place.split(' ')[0]) changes += 1
    }
  })
  same('role changes', answer.roleChanges, changes)
  const together = new Map<string, number>()
  for (const turn of answer.turns)
    for (const { attack, defend } of turn.stations)
      for (const side of [attack, defend])
        for (const one of side)
          for (const other of side)
            if (one < other) together.set(`${one} ${other}`, (together.get(`${one} ${other}`) ?? 0) + 1)
  same(
    'mixing',
    answer.mixing.value,
    [...together.values()].reduce((sum, times) => sum + times ** 2, 0),
  )
  return faults
}

function proofFaults(answer: RotationAnswerJson): readonly string[] {
  const faults: string[] = []
  for (const what of ['unfairness', 'situationUnfairness', 'mixing'] as const) {
    const { value, bound, proven } = answer[what]
    if (bound > value || bound < 0) faults.push(`${what}: bound ${bound} for ${value}`)
    if (proven !== value - bound <= 1e-6 * Math.max(1, value)) faults.push(`${what}: proven ${proven}`)
  }
  const { asked, used, leastPossible, price, priceAtMost } = answer.restLimit
  if (used !== leastPossible) faults.push('used is not the least possible')
  if (asked !== null && (used === null || used < asked)) faults.push(`asked ${asked}, used ${used}`)
  if (asked === null && (used !== null || price !== null || priceAtMost !== null))
    faults.push('a limit unasked')
  if (price !== null && (price < 0 || priceAtMost === null || priceAtMost < price))
    faults.push(`price ${price}`)
  return faults
}

/** No exchange of two players' places in one turn makes the plan fairer without breaking a hard rule. */
function exchangeFaults(all: All): readonly string[] {
  const { seated, players } = all
  const gaps = gapsAfter(all, seated)
  const faults: string[] = []
  seated.forEach((places, at) => {
    const ids = [...places.keys()]
    for (const [first, one] of ids.entries()) {
      for (const other of ids.slice(first + 1)) {
        const [mine = '', theirs = ''] = [places.get(one), places.get(other)]
        const [a, b] = [mine.split(' ')[0] as Column, theirs.split(' ')[0] as Column]
        if (a === b) continue
        const seconds = all.turns[at]?.round.turnSeconds ?? 0
        const gapOf = (id: string) => gaps[players.findIndex((player) => player.id === id)] ?? nothing()
        const [g, h] = [gapOf(one), gapOf(other)]
        const before = g[a] ** 2 + g[b] ** 2 + h[a] ** 2 + h[b] ** 2
        const after =
          (g[a] - seconds) ** 2 + (g[b] + seconds) ** 2 + (h[a] + seconds) ** 2 + (h[b] - seconds) ** 2
        if (after >= before - 1e-6) continue
        const changed = seated.map((own, index) =>
          index === at ? new Map([...own, [one, theirs] as const, [other, mine] as const]) : own,
        )
        if (hardFaults(all, changed).length === 0)
          faults.push(`turn ${at + 1}: ${one} and ${other} exchanged would be fairer by ${before - after}`)
      }
    }
  })
  return faults
}
