import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import {
  chancesToCome,
  costInMinutes,
  evenShares,
  type PlanAnswer,
  practicesToPlan,
  seatsOfDesign,
  termWeek,
  themeLine,
} from './second-plan-reckoning'
import { secondPlanRules } from './second-plan-rules'

const columns = ['attack', 'defend', 'keep', 'rest', 'outnumbering', 'level', 'outnumbered'] as const

/** Which columns a seat counts for: its role, and the situation after it. */
function countsFor(seat: string): readonly string[] {
  const [, role = seat, situation = ''] = /^(attack|defend)(\w+)$/.exec(seat) ?? []
  return situation === '' || situation === 'Alone' ? [role] : [role, situation.toLowerCase()]
}

const isNear = (one: number, other: number) => Math.abs(one - other) <= 1e-3 + 1e-7 * Math.abs(one)

/**
 * What is wrong with an answer to a request for the weeks ahead, from the two files alone: weeks, chances to come, seats,
 * even shares, leans, ends and value are reckoned anew, and nothing of the program's own rules or sums is used. Written
 * for these tests from the help of `plan`.
 */
export function secondPlanCheck(request: PlanRequestJson, answer: PlanAnswer): readonly string[] {
  return [...shownFaults(request, answer), ...secondPlanRules(request, answer), ...sumFaults(request, answer)]
}

function shownFaults(request: PlanRequestJson, answer: PlanAnswer): readonly string[] {
  const asked = practicesToPlan(request)
  const chances = chancesToCome(request.players)
  const isAway = (at: number, date: string) =>
    (request.players[at]?.away ?? []).some(({ from, to }) => from <= date && date <= to)
  const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id).join()
  if (ids(asked) !== ids(answer.practices)) return [`practices are ${ids(answer.practices)}`]
  const faults = answer.practices.flatMap((own, at) => {
    const comes = request.players.map((_, player) => (isAway(player, own.date) ? 0 : (chances[player] ?? 0)))
    const expected = Math.round(comes.reduce((sum, one) => sum + one, 0))
    const keepers = Math.round(
      comes.reduce((sum, one, player) => sum + (request.players[player]?.keeps === false ? 0 : one), 0),
    )
    const design = request.designs.find(({ id }) => id === own.design)
    const played =
      design &&
      seatsOfDesign(design, { present: expected, keepers, length: asked[at]?.lengthSeconds ?? null })
    return [
      ...(own.date === asked[at]?.date && own.week === termWeek(request, own.date) ? [] : ['day or week']),
      ...(own.isFirm === at < 4 && own.isHeld === Boolean(asked[at]?.held) ? [] : ['firm or held']),
      ...(ids(own.players) === ids(request.players) ? [] : ['players']),
      ...(own.players.every((player, index) => Math.abs(player.comes - (comes[index] ?? 0)) < 1e-6)
        ? []
        : ['chances to come']),
      ...(!played || (played.live === own.liveSeconds && sameSeats(played.seats, own.seats))
        ? []
        : ['seats']),
    ].map((what) => `${what} of ${own.id}`)
  })
  const gone = request.practices.filter((own) => !asked.includes(own))
  return ids(gone) === ids(answer.leftOut) ? faults : [...faults, 'what is left out']
}

function sameSeats(own: ReadonlyMap<string, number>, shown: Readonly<Record<string, number>>): boolean {
  return (
    own.size === Object.keys(shown).length && [...own].every(([seat, seconds]) => shown[seat] === seconds)
  )
}

function sumFaults(request: PlanRequestJson, answer: PlanAnswer): readonly string[] {
  const { least = 0.6, most = 1.4 } = request.gentle ?? {}
  const faults: string[] = []
  const ends = request.players.map(({ gap, playedSeconds = 0, themeSeconds = {} }) => ({
    gap: new Map(columns.map((column) => [column as string, gap?.[column] ?? 0])),
    played: playedSeconds,
    themes: new Map(Object.entries(themeSeconds)),
    even: new Map<string, number>(),
    got: new Map<string, number>(),
  }))
  for (const own of answer.practices) {
    const seats = new Map(Object.entries(own.seats))
    const comes = own.players.map((player) => player.comes)
    const shares = evenShares(request.players, { comes, seats, live: own.liveSeconds })
    for (const seat of new Set(own.players.flatMap(({ lean }) => Object.keys(lean)))) {
      const all = own.players.reduce((sum, { lean }) => sum + (lean[seat] ?? 0), 0)
      if (!seats.has(seat) || !isNear(all, 0)) faults.push(`leans of ${seat} in ${own.id} add up to ${all}`)
    }
    own.players.forEach(({ id, lean, comes: chance }, at) => {
      const end = ends[at]
      if (!end) return
      let sits = 0
      for (const seat of new Set([...seats.keys(), ...Object.keys(lean)])) {
        const [even, more] = [shares[at]?.get(seat) ?? 0, lean[seat] ?? 0]
        if (even + more < -1e-3) faults.push(`${id} has less than nothing of ${seat} in ${own.id}`)
        if (seat === 'keep' && more !== 0 && request.players[at]?.keeps === false)
          faults.push(`${id} keeps in ${own.id}`)
        sits += even + more
        add(end.even, seat, even)
        add(end.got, seat, even + more)
        for (const column of countsFor(seat)) add(end.gap, column, more)
        add(end.gap, 'rest', -more)
      }
      if (sits > chance * own.liveSeconds + 1e-3) faults.push(`${id} sits too long in ${own.id}`)
      end.played += sits
      for (const theme of themeLine(request, own.theme)) add(end.themes, theme, sits)
    })
  }
  let [balance, short, outside] = [0, 0, 0]
  request.players.forEach(({ id, fair }, at) => {
    const [end, shown] = [ends[at], answer.players[at]]
    if (!end || shown?.id !== id) {
      faults.push(`no end of ${id}`)
      return
    }
    for (const [seat, even] of end.even) {
      const got = end.got.get(seat) ?? 0
      if (got < least * even - 1e-3 || got > most * even + 1e-3) faults.push(`${seat} of ${id} is not gentle`)
    }
    const { toleranceSeconds = 600, toleranceShare = 0.15 } = request.policy ?? {}
    for (const column of columns) {
      const gap = end.gap.get(column) ?? 0
      const tolerance = Math.max(toleranceSeconds, toleranceShare * (fair?.[column] ?? 0))
      const said = shown.columns[column]
      balance += costInMinutes(Math.abs(gap), tolerance)
      if (!said || !isNear(said.gapAfter, gap) || !isNear(said.tolerance, tolerance))
        faults.push(`${column} of ${id}`)
      const isWithin = Math.abs(gap) < tolerance
      if (Math.abs(Math.abs(gap) - tolerance) > 1e-3 && said?.within !== isWithin)
        faults.push(`${column} of ${id}, within or not`)
      if (isWithin && said?.reachable === 'no') faults.push(`${column} of ${id} is reached`)
      outside += Math.max(0, Math.abs(gap) - tolerance) / 60
      // Too much goal and waiting, too little of all else, is outside.
      const beyond = (column === 'keep' || column === 'rest' ? gap : -gap) - tolerance
      if (Math.abs(beyond) > 1e-3 && said?.inside !== beyond < 0)
        faults.push(`${column} of ${id} is not ${said?.inside ? 'inside' : 'outside'}`)
    }
    if (!isNear(shown.playedSeconds, end.played)) faults.push(`time played of ${id}`)
    for (const { id: theme, share = 0 } of request.themes) {
      if (share === 0) continue
      const [due, had] = [share * end.played, end.themes.get(theme) ?? 0]
      short += costInMinutes(due - had, toleranceSeconds)
      const said = shown.themes[theme]
      if (!said || !isNear(said.seconds, had) || !isNear(said.due, due)) faults.push(`${theme} of ${id}`)
      const late = due - had - toleranceSeconds
      if (Math.abs(late) > 1e-3 && said?.inside !== late < 0) faults.push(`${theme} of ${id}, inside or not`)
    }
  })
  const { value, bound, proven } = answer.value
  const isSound = bound <= value + 1e-9 && proven === value - bound <= 1e-6 * Math.max(1, value)
  return [
    ...faults,
    ...(isNear(answer.value.balance, balance) &&
    isNear(answer.value.themes, short) &&
    isNear(value, balance + short)
      ? []
      : [`value is ${value} and not ${balance} + ${short}`]),
    ...(isSound ? [] : ['proof']),
    ...(answer.leastOutside && answer.leastOutside.value > outside + 1e-3
      ? ['least outside is more than here']
      : []),
  ]
}

function add(to: Map<string, number>, key: string, seconds: number): void {
  to.set(key, (to.get(key) ?? 0) + seconds)
}
