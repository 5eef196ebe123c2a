import { dealWindow } from '#lineup/deal-window'
import { allowedPlaces, offPlace } from '#lineup/line-up-board'
import type { LineUpClash } from '#lineup/line-up-clash'
import { mostOnTogether } from '#lineup/most-on-together'
import type { LineUpProblem } from '#lineup/problem'
import { placesInAll } from '#match/format/places-in-all'
import { lines } from '#match/match'

/** Windows whose places cannot be filled from those who are there: too few, nobody for goal, lines, pairs apart. */
export function clashOfPlaces(problem: LineUpProblem): readonly LineUpClash[] {
  const found: LineUpClash[] = []
  for (const [window, { places }] of problem.windows.entries()) {
    const present = problem.players.flatMap(({ isThere }, player) => (isThere[window] ? [player] : []))
    const able = present.filter((player) => problem.players[player]?.keeps).length
    const asked = placesInAll(places)
    if (asked > present.length) {
      add(found, { kind: 'places', first: window, last: window, asked, there: present.length })
    } else if (places.keeper > able) {
      add(found, { kind: 'keepers', first: window, last: window, asked: places.keeper, able })
    } else if (asked > mostOnTogether(present, problem.apart)) {
      const pair = problem.apart.findIndex(([one, other]) => present.includes(one) && present.includes(other))
      if (!found.some(({ kind }) => kind === 'apartFills')) found.push({ kind: 'apartFills', pair, window })
    } else if (!canFill({ ...problem, fixed: [] }, window)) {
      add(found, { kind: 'lines', first: window, last: window })
    }
  }
  return found
}

/** Whether a window's places can be dealt out, pairs left aside. */
export function canFill(problem: LineUpProblem, window: number): boolean {
  const places = problem.windows[window]?.places
  if (!places) return false
  const allowed = allowedPlaces(problem)
  const count = problem.players.length
  const off = count - placesInAll(places)
  if (off < 0) return false
  const costs = problem.players.map((_, player) =>
    [...lines.keys(), offPlace].map((place) =>
      (allowed[player * problem.windows.length + window] ?? 0) & (1 << place) ? 0 : null,
    ),
  )
  return dealWindow({ capacity: [...lines.map((line) => places[line]), off], costs }) !== null
}

type OfWindows = Extract<LineUpClash, { readonly kind: 'places' | 'keepers' | 'lines' }>

/** The same reason in one window after another is said once. */
function add(found: LineUpClash[], clash: OfWindows) {
  const before = found.at(-1)
  const isSame =
    before?.kind === clash.kind &&
    'last' in before &&
    before.last === clash.first - 1 &&
    JSON.stringify({ ...before, first: 0, last: 0 }) === JSON.stringify({ ...clash, first: 0, last: 0 })
  if (isSame) found[found.length - 1] = { ...clash, first: before.first }
  else found.push(clash)
}
