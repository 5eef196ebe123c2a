/**
 * Whether a season log must be refused, decided a second time from the description of the format alone and in the
 * plainest way there is: pair by pair and second by second. Nothing here comes from the program.
 */
export function mustRefuse(log: unknown): boolean {
  try {
    checkLog(log)
    return false
  } catch (error) {
    if (error instanceof Refused) return true
    throw error
  }
}

class Refused extends Error {}

type Fields = { [key: string]: unknown }

function demand(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Refused(what)
}

function fieldsOf(value: unknown, needed: string[], optional: string[]): Fields {
  demand(typeof value === 'object' && value !== null && !Array.isArray(value), 'object')
  const fields = new Map(Object.entries(value))
  for (const key of needed) demand(fields.has(key), `missing ${key}`)
  for (const key of fields.keys()) demand(needed.includes(key) || optional.includes(key), `unknown ${key}`)
  const plain: Fields = {}
  for (const key of [...needed, ...optional]) plain[key] = fields.get(key)
  return plain
}

function listOf(value: unknown): unknown[] {
  demand(Array.isArray(value), 'list')
  return value
}

function textOf(value: unknown): string {
  demand(typeof value === 'string', 'text')
  return value
}

function secondsOf(value: unknown): number {
  demand(typeof value === 'number' && Number.isSafeInteger(value) && value >= 0, 'seconds')
  return value
}

function shareOf(value: unknown): void {
  demand(typeof value === 'number' && value >= 0 && value <= 1, 'share')
}

function dayOf(value: unknown): void {
  const parts = /^(\d\d\d\d)-(\d\d)-(\d\d)$/.exec(textOf(value))
  demand(parts !== null, 'day')
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number]
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  const lengths = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
  demand(year >= 1 && day >= 1 && day <= (lengths[month - 1] ?? 0), 'calendar')
}

type Line = { player: string; from: number; to: number }

const meet = (a: { from: number; to: number }, b: { from: number; to: number }) =>
  a.from < b.to && b.from < a.to

function noneMeet(lines: Line[]): void {
  for (const [index, line] of lines.entries()) {
    demand(line.from < line.to, 'length')
    for (const other of lines.slice(0, index))
      demand(other.player !== line.player || !meet(line, other), 'overlap')
  }
}

function registerOf(value: unknown, players: Set<string>): Line[] {
  const lines = listOf(value).map((entry) => {
    const { player, from, to } = fieldsOf(entry, ['player', 'from', 'to'], [])
    demand(players.has(textOf(player)), 'player')
    return { player: textOf(player), from: secondsOf(from), to: secondsOf(to) }
  })
  noneMeet(lines)
  return lines
}

function isThere(register: Line[], player: string, from: number, to: number): boolean {
  for (let second = from; second < to; second += 1) {
    if (!register.some((line) => line.player === player && line.from <= second && second < line.to))
      return false
  }
  return true
}

function inOrder(spans: { from: number; to: number }[]): void {
  for (const [index, span] of spans.entries()) {
    demand(span.from < span.to, 'length')
    const last = spans[index - 1]
    demand(last === undefined || last.to <= span.from, 'order')
  }
}

function checkPractice(value: unknown, players: Set<string>): string {
  const practice = fieldsOf(value, ['id', 'date', 'register', 'turns'], ['title', 'lengthSeconds'])
  dayOf(practice.date)
  if (practice.title !== undefined) textOf(practice.title)
  const length = practice.lengthSeconds === undefined ? null : secondsOf(practice.lengthSeconds)
  const register = registerOf(practice.register, players)
  const turns = listOf(practice.turns).map((entry) => {
    const turn = fieldsOf(entry, ['start', 'end', 'stations'], ['theme'])
    if (turn.theme !== undefined) textOf(turn.theme)
    const seats = listOf(turn.stations).flatMap((station) =>
      Object.values(fieldsOf(station, [], ['attack', 'defend', 'keep'])).flatMap((list) =>
        list === undefined ? [] : listOf(list).map(textOf),
      ),
    )
    return { from: secondsOf(turn.start), to: secondsOf(turn.end), seats }
  })
  inOrder(turns)
  for (const turn of turns) {
    demand(length === null || turn.to <= length, 'after the end')
    demand(new Set(turn.seats).size === turn.seats.length, 'two seats')
    for (const player of turn.seats) {
      demand(players.has(player), 'player')
      demand(isThere(register, player, turn.from, turn.to), 'away')
    }
  }
  return textOf(practice.id)
}

function checkMatch(value: unknown, players: Set<string>): string {
  const match = fieldsOf(value, ['id', 'date', 'periods', 'register', 'spells'], [])
  dayOf(match.date)
  const periods = listOf(match.periods).map((entry) => {
    const { start, end } = fieldsOf(entry, ['start', 'end'], [])
    return { from: secondsOf(start), to: secondsOf(end) }
  })
  inOrder(periods)
  const register = registerOf(match.register, players)
  const spells = listOf(match.spells).map((entry) => {
    const spell = fieldsOf(entry, ['player', 'line', 'start', 'end'], [])
    demand(['keeper', 'back', 'middle', 'forward'].includes(textOf(spell.line)), 'line')
    demand(players.has(textOf(spell.player)), 'player')
    return { player: textOf(spell.player), from: secondsOf(spell.start), to: secondsOf(spell.end) }
  })
  noneMeet(spells)
  for (const spell of spells) {
    demand(
      periods.some((period) => period.from <= spell.from && spell.to <= period.to),
      'period',
    )
    demand(isThere(register, spell.player, spell.from, spell.to), 'away')
  }
  return textOf(match.id)
}

function allDiffer(ids: string[]): void {
  demand(new Set(ids).size === ids.length, 'doubled')
}

function checkLog(value: unknown): void {
  const log = fieldsOf(value, ['format', 'players'], ['policy', 'themes', 'practices', 'matches'])
  demand(log.format === 'turnbook/season-log@1', 'format')
  if (log.policy !== undefined) {
    const policy = fieldsOf(log.policy, [], ['toleranceSeconds', 'toleranceShare', 'middleAttackShare'])
    if (policy.toleranceSeconds !== undefined) secondsOf(policy.toleranceSeconds)
    if (policy.toleranceShare !== undefined) shareOf(policy.toleranceShare)
    if (policy.middleAttackShare !== undefined) shareOf(policy.middleAttackShare)
  }
  const ids = listOf(log.players).map((entry) => {
    const player = fieldsOf(entry, ['id'], ['keeps', 'name'])
    demand(player.keeps === undefined || typeof player.keeps === 'boolean', 'keeps')
    if (player.name !== undefined) textOf(player.name)
    return textOf(player.id)
  })
  allDiffer(ids)
  const themes = listOf(log.themes === undefined ? [] : log.themes).map((entry) => {
    const theme = fieldsOf(entry, ['id', 'parent'], ['name'])
    if (theme.name !== undefined) textOf(theme.name)
    return { id: textOf(theme.id), parent: theme.parent === null ? null : textOf(theme.parent) }
  })
  allDiffer(themes.map((theme) => theme.id))
  for (const { parent } of themes)
    demand(parent === null || themes.some((theme) => theme.id === parent), 'parent')
  const players = new Set(ids)
  allDiffer([
    ...listOf(log.practices === undefined ? [] : log.practices).map((practice) =>
      checkPractice(practice, players),
    ),
    ...listOf(log.matches === undefined ? [] : log.matches).map((match) => checkMatch(match, players)),
  ])
}
