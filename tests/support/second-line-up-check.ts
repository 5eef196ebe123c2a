import type { MatchRequestJson } from '#exchange/match-request/match-request-shape'

type Line = 'keeper' | 'back' | 'middle' | 'forward'
type Window = { period: number; start: number; end: number; off: string[]; absent: string[] } & Record<
  Line,
  string[]
>
export type MatchAnswer = {
  windows: Window[]
  spells: { player: string; line: Line; start: number; end: number }[]
  changes: { at: number; isBreak: boolean; on: { player: string }[] }[]
  players: {
    id: string
    seconds: number
    keepSeconds: number
    starts: number
    fair: { play: number; keep: number; starts: number }
    gapAfter: { play: number; keep: number; starts: number }
    least: number
  }[]
  goals: Record<string, { value: number; bound: number; proven: boolean }>
}

const allLines: readonly Line[] = ['keeper', 'back', 'middle', 'forward']

/**
 * What is wrong with an answer to a request, from the two files alone: nothing of the program's own rules or sums is
 * used. Written for these tests from the help of `match-plan`.
 */
export function secondLineUpCheck(request: MatchRequestJson, answer: MatchAnswer): readonly string[] {
  return [...placeFaults(request, answer), ...ruleFaults(request, answer), ...sumFaults(request, answer)]
}

const onIn = (window: Window) => allLines.flatMap((line) => window[line])

function placeFaults(request: MatchRequestJson, { windows }: MatchAnswer): readonly string[] {
  const whole = request.periods.reduce((sum, seconds) => sum + seconds, 0)
  return windows.flatMap((window) => {
    const at = `at ${window.start}`
    const everyone = [...onIn(window), ...window.off, ...window.absent]
    return [
      ...allLines.flatMap((line) =>
        window[line].length === (request.places[line] ?? 0) ? [] : [`${line} ${at}`],
      ),
      ...(everyone.length === request.players.length && new Set(everyone).size === everyone.length
        ? []
        : [`not everyone once ${at}`]),
      ...request.players.flatMap(({ id, keeps, lines, present = [[0, whole]] }) => [
        ...(window.keeper.includes(id) && keeps === false ? [`${id} keeps ${at}`] : []),
        ...(['back', 'middle', 'forward'] as const).flatMap((line) =>
          lines?.[line] === 'notYet' && window[line].includes(id) ? [`${id} in ${line} ${at}`] : [],
        ),
        ...(present.some(([from, to]) => from <= window.start && window.end <= to) ===
        window.absent.includes(id)
          ? [`presence of ${id} ${at}`]
          : []),
      ]),
    ]
  })
}

function ruleFaults(request: MatchRequestJson, { windows, spells, changes }: MatchAnswer): readonly string[] {
  const { rules = {}, apart = [], fixed = [] } = request
  const comeOn = changes.filter(({ isBreak }) => !isBreak).reduce((sum, { on }) => sum + on.length, 0)
  const ofPeriod = new Map<number, Set<string>>()
  for (const { period, keeper } of windows)
    for (const id of keeper) ofPeriod.set(period, (ofPeriod.get(period) ?? new Set()).add(id))
  return [
    ...windows.flatMap((window) =>
      apart.flatMap(([one, other]) =>
        onIn(window).includes(one) && onIn(window).includes(other) ? [`${one} and ${other} meet`] : [],
      ),
    ),
    ...windows.flatMap((window) =>
      fixed.flatMap(({ player, from, to, place }) => {
        if (to <= window.start || window.end <= from) return []
        const isOn = onIn(window).includes(player)
        const isHeld = place === 'on' ? isOn : place === 'off' ? !isOn : window[place].includes(player)
        return isHeld ? [] : [`${player} not ${place} at ${window.start}`]
      }),
    ),
    ...(rules.mostChanges != null && comeOn > rules.mostChanges ? [`${comeOn} changes`] : []),
    ...(rules.keeperForPeriod && [...ofPeriod.values()].some((keepers) => keepers.size > 1)
      ? ['two keepers in a period']
      : []),
    ...spells.flatMap(({ player, start, end }) =>
      start < end &&
      windows.every((one) => one.end <= start || end <= one.start || onIn(one).includes(player))
        ? []
        : [`spell of ${player} at ${start}`],
    ),
  ]
}

function sumFaults(request: MatchRequestJson, { windows, players, goals }: MatchAnswer): readonly string[] {
  const secondsOf = (id: string, lines: readonly Line[]) =>
    windows.reduce(
      (sum, window) =>
        lines.some((line) => window[line].includes(id)) ? sum + window.end - window.start : sum,
      0,
    )
  const near = (one: number, other: number) => Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one))
  const gapOf = (id: string) => request.players.find((player) => player.id === id)?.gap ?? {}
  const sum = (of: (player: MatchAnswer['players'][number]) => number) =>
    players.reduce((total, player) => total + of(player), 0)
  const playTime = windows.reduce(
    (total, window) => total + onIn(window).length * (window.end - window.start),
    0,
  )
  const uneven = sum(({ gapAfter }) => gapAfter.play ** 2)
  const missed = sum(({ seconds, least }) => Math.max(0, least - seconds))
  return [
    ...players.flatMap(({ id, seconds, keepSeconds, fair, gapAfter }) => [
      ...(seconds === secondsOf(id, allLines) ? [] : [`seconds of ${id}`]),
      ...(keepSeconds === secondsOf(id, ['keeper']) ? [] : [`seconds in goal of ${id}`]),
      ...(near(gapAfter.play, (gapOf(id).play ?? 0) + seconds - fair.play) ? [] : [`gap of ${id}`]),
    ]),
    ...(near(
      playTime,
      sum(({ fair }) => fair.play),
    )
      ? []
      : ['what is fair does not add up']),
    ...(near(goals.minutes?.value ?? -1, uneven) ? [] : ['minutes']),
    ...(near(goals.promise?.value ?? -1, missed) ? [] : ['promise']),
    ...Object.entries(goals).flatMap(([goal, { value, bound, proven }]) =>
      bound <= value + 1e-6 * Math.max(1, value) && proven === value - bound <= 1e-6 * Math.max(1, value)
        ? []
        : [`proof of ${goal}`],
    ),
  ]
}
