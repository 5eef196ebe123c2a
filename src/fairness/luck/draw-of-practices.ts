import { practiceSpans } from '#exposure/practice-spans'
import type { Span } from '#exposure/span'
import type { Draw, DrawnBlock, DrawnTurn, PlaceTurns } from '#fairness/luck/draw'
import type { Practice } from '#practice/practice'
import type { PlayerId } from '#squad/player'

export type LuckPractice = {
  readonly practice: Pick<Practice, 'register' | 'turns'>
  /** Who might be put in goal that day. */
  readonly able: ReadonlySet<PlayerId>
  /** Whose places stay as they were: something was agreed with them, or they passed a turn that day. */
  readonly still: ReadonlySet<PlayerId>
}

/**
 * The draw that practices could have been: who was there, what places there were, and who might keep goal stay as they
 * were. A free game is one turn of it; whoever was not there for all of a turn stays where it was.
 */
export function drawOfPractices(practices: readonly LuckPractice[]): Draw {
  const players: PlayerId[] = []
  const indexes = new Map<PlayerId, number>()
  const indexOf = (id: PlayerId) => {
    const known = indexes.get(id)
    if (known !== undefined) return known
    indexes.set(id, players.length)
    return players.push(id) - 1
  }
  const blocks: DrawnBlock[] = []
  let [turns, leftOut] = [0, 0]
  for (const own of practices) {
    const units = unitsOf(own)
    const whole = units.map((unit) => drawnTurn(unit, own.still))
    units.forEach((unit, at) => {
      if (whole[at]) turns += unit.spans.length
      else leftOut += unit.spans.length
    })
    for (const run of runsOfKeepers(units, whole)) blocks.push(blockOf(run, { able: own.able, indexOf }))
  }
  return { players, blocks, turns, leftOut }
}

/** A turn, the two halves of a free game, or a turn with the parts that its changes made of it. */
type Unit = { readonly round: string | null; readonly spans: Span[]; hasChange: boolean }

function unitsOf({ practice }: LuckPractice): readonly Unit[] {
  const units: Unit[] = []
  practiceSpans(practice).forEach((span, at) => {
    const round = practice.turns[at]?.round ?? null
    const last = units.at(-1)
    if (last && (span.continuesWait || span.continuesTurn)) {
      last.spans.push(span)
      if (span.continuesTurn) last.hasChange = true
    } else units.push({ round, spans: [span], hasChange: false })
  })
  return units
}

type WholeTurn = {
  readonly places: ReadonlyMap<PlayerId, PlaceTurns>
  readonly keepers: readonly PlayerId[]
}

/** Null: its places cannot be dealt as whole ones. */
function drawnTurn({ spans, hasChange }: Unit, still: ReadonlySet<PlayerId>): WholeTurn | null {
  if (hasChange) return null
  const [first] = spans
  const there = (first?.present ?? []).filter(
    (id) => !still.has(id) && spans.every(({ present }) => present.includes(id)),
  )
  const places = new Map(there.map((id) => [id, placeOf(id, spans)]))
  const keepers = there.filter((id) => places.get(id)?.[2] === spans.length)
  const isMixed = there.some((id) => !keepers.includes(id) && (places.get(id)?.[2] ?? 0) > 0)
  return isMixed ? null : { places, keepers }
}

function placeOf(playerId: PlayerId, spans: readonly Span[]): PlaceTurns {
  const roles = spans.map(
    ({ seats }) => seats.find(({ playerIds }) => playerIds.includes(playerId))?.column.role ?? 'rest',
  )
  const of = (role: string) => roles.filter((own) => own === role).length
  return [of('attack'), of('defend'), of('keep'), of('rest')]
}

/** Neighbours of one round with the same keepers. A turn that is left out parts them. */
function runsOfKeepers(
  units: readonly Unit[],
  whole: readonly (WholeTurn | null)[],
): readonly (readonly WholeTurn[])[] {
  const runs: { key: string; turns: WholeTurn[] }[] = []
  units.forEach(({ round }, at) => {
    const turn = whole[at]
    if (!turn) {
      runs.push({ key: '', turns: [] })
      return
    }
    const key = JSON.stringify([round, [...turn.keepers].sort()])
    const last = runs.at(-1)
    if (last && last.key === key) last.turns.push(turn)
    else runs.push({ key, turns: [turn] })
  })
  return runs.map(({ turns }) => turns).filter((turns) => turns.length > 0)
}

function blockOf(
  run: readonly WholeTurn[],
  { able, indexOf }: { readonly able: ReadonlySet<PlayerId>; readonly indexOf: (id: PlayerId) => number },
): DrawnBlock {
  const [first] = run
  const keepers = first?.keepers ?? []
  const stays = [...(first?.places.keys() ?? [])].filter((id) => run.every(({ places }) => places.has(id)))
  const turns = run.map(
    ({ places }): DrawnTurn => ({ players: [...places.keys()].map(indexOf), places: [...places.values()] }),
  )
  return {
    keepers: keepers.map(indexOf),
    able: stays.filter((id) => able.has(id) || keepers.includes(id)).map(indexOf),
    turns,
  }
}
