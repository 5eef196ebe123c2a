import type { AreaShape, DesignRound } from '#practice/design'
import type { PracticeGrid } from '#practice/grid'
import { gridColumnsOf } from '#practice/grid-columns'
import { type Mark, markOf } from '#practice/grid-mark'
import { timesOfColumns } from '#practice/grid-times'
import { type SeatRole, seatRoles } from '#practice/turn'
import { isPresentThroughout, joinPresence } from '#squad/joined-presence'
import type { Player, PlayerId } from '#squad/player'
import type { PresenceLine } from '#squad/presence'
import type { ThemeId } from '#themes/theme'

/** What dealing needs to know of a player. */
export type DealtPlayer = Pick<Player, 'id' | 'keeps'>

type Had = Record<SeatRole | 'wait', number> & { lastWait: number }

/**
 * A design dealt to the players of a register, turn by turn, as a grid of single turns. In each turn those wait who have
 * waited least, not twice running where it can be helped; goal goes to the able player who has kept least; attack to those who
 * have attacked least beside defending; the rest defend. Ties go by the order of the register. Nobody who asked not to
 * keep is put in goal: that place stays empty instead. With fewer players than places, places are left out, from the
 * last area and the larger side first. A turn depends on what was before it only, so a player who leaves
 * changes nothing that was played before.
 */
export function dealEvenly(deal: {
  readonly rounds: readonly DesignRound[]
  readonly themeId: ThemeId | null
  /** In the order of the register. */
  readonly players: readonly DealtPlayer[]
  readonly register: readonly PresenceLine[]
}): PracticeGrid {
  const columns = gridColumnsOf(deal)
  const presence = joinPresence(deal.register)
  const had = new Map<PlayerId, Had>(
    deal.players.map(({ id }) => [id, { attack: 0, defend: 0, keep: 0, wait: 0, lastWait: -2 }]),
  )
  const shapes = deal.rounds.flatMap((round) => Array.from({ length: round.turnCount }, () => round.stations))
  const marksByTurn = timesOfColumns(columns).map(({ turns }, number) => {
    const turn = turns[0] ?? { from: 0, to: 0 }
    const present = deal.players.filter(({ id }) => isPresentThroughout(presence, id, turn))
    return dealTurn(present, shapesFor(shapes[number] ?? [], present), { had, number })
  })
  return {
    columns,
    rows: deal.players.map(({ id }) => ({
      playerId: id,
      marks: marksByTurn.map((marks) => marks.get(id) ?? ''),
    })),
  }
}

function dealTurn(
  present: readonly DealtPlayer[],
  shapes: readonly AreaShape[],
  { had, number }: { readonly had: Map<PlayerId, Had>; readonly number: number },
): ReadonlyMap<PlayerId, Mark> {
  const of = (id: PlayerId) => had.get(id) as Had
  const placeCount = shapes.reduce((sum, { attack, defend, keep }) => sum + attack + defend + keep, 0)
  const keeperCount = countOf(shapes, 'keep')
  const waitsTwice = (id: PlayerId) => (of(id).lastWait === number - 1 ? 1 : 0)
  const inOrderOfWaiting = sortedBy(present, ({ id }) => [waitsTwice(id), of(id).wait])
  const waiting = leaveKeepers(inOrderOfWaiting, { count: present.length - placeCount, keeperCount })
  const playing = present.filter((player) => !waiting.includes(player))
  const keepers = sortedBy(
    playing.filter((player) => player.keeps),
    ({ id }) => [of(id).keep],
  ).slice(0, keeperCount)
  const field = playing.filter((player) => !keepers.includes(player))
  const attackers = sortedBy(field, ({ id }) => [of(id).attack - of(id).defend, of(id).attack]).slice(
    0,
    countOf(shapes, 'attack'),
  )
  const defenders = field.filter((player) => !attackers.includes(player))
  for (const { id } of waiting) of(id).lastWait = number
  for (const { id } of waiting) of(id).wait += 1
  const marks = new Map<PlayerId, Mark>(waiting.map(({ id }) => [id, 'W']))
  const groups = { attack: attackers, defend: defenders, keep: keepers }
  for (const role of seatRoles) {
    const areas = shapes.flatMap((shape, index) => Array.from({ length: shape[role] }, () => index + 1))
    groups[role].forEach(({ id }, index) => {
      of(id)[role] += 1
      marks.set(id, markOf({ role, area: shapes.length > 1 ? (areas[index] ?? shapes.length) : null }))
    })
  }
  return marks
}

/** The first `count` to wait, passing over an able keeper whose waiting would leave a goal empty. */
function leaveKeepers(
  order: readonly DealtPlayer[],
  { count, keeperCount }: { readonly count: number; readonly keeperCount: number },
): readonly DealtPlayer[] {
  let able = order.filter((player) => player.keeps).length
  const waiting: DealtPlayer[] = []
  for (const player of order) {
    if (waiting.length >= count || (player.keeps && able <= keeperCount)) continue
    if (player.keeps) able -= 1
    waiting.push(player)
  }
  return waiting
}

/** The places of a turn that the players who are there can fill. */
function shapesFor(shapes: readonly AreaShape[], present: readonly DealtPlayer[]): readonly AreaShape[] {
  const able = present.filter((player) => player.keeps).length
  let kept = shapes
  while (countOf(kept, 'keep') > able) kept = without(kept, 'keep')
  while (kept.some(hasPlaces) && present.length < totalOf(kept)) {
    kept = without(kept, largerSide(kept))
  }
  return kept
}

/** One place fewer of a role in the last area that has one. */
function without(shapes: readonly AreaShape[], role: SeatRole): readonly AreaShape[] {
  const at = shapes.findLastIndex((shape) => shape[role] > 0)
  return shapes.map((shape, index) => (index === at ? { ...shape, [role]: shape[role] - 1 } : shape))
}

/** The larger side of the last area that still plays; defence when they are alike, goal when nobody else is left. */
function largerSide(shapes: readonly AreaShape[]): SeatRole {
  const last = shapes.findLast((shape) => shape.attack + shape.defend > 0)
  if (!last) return 'keep'
  return last.attack > last.defend ? 'attack' : 'defend'
}

function countOf(shapes: readonly AreaShape[], role: SeatRole): number {
  return shapes.reduce((sum, shape) => sum + shape[role], 0)
}

function totalOf(shapes: readonly AreaShape[]): number {
  return countOf(shapes, 'attack') + countOf(shapes, 'defend') + countOf(shapes, 'keep')
}

function hasPlaces(shape: AreaShape): boolean {
  return shape.attack + shape.defend + shape.keep > 0
}

/** In order of the numbers of a key, earlier numbers first; equals keep their order. */
function sortedBy<Item>(items: readonly Item[], key: (item: Item) => readonly number[]): readonly Item[] {
  return items.toSorted((one, other) => {
    const [mine, theirs] = [key(one), key(other)]
    const at = mine.findIndex((number, index) => number !== theirs[index])
    return at < 0 ? 0 : (mine[at] ?? 0) - (theirs[at] ?? 0)
  })
}
