import type { AreaShape } from '#practice/design'
import { kindOfShape } from '#practice/round-kind'
import { placesOf, placesOfAll } from '#practice/round-places'

/** Who is there for a turn: how many children, and how many of them may keep goal. */
export type Turnout = { readonly present: number; readonly keepersAble: number }

/** Areas of another size for a turn. */
export type AreaProposal = {
  /** An area left out is missing at the end or in the middle; see `from`. */
  readonly stations: readonly AreaShape[]
  /** For each of the new areas, which of the old ones it comes from, from 0; null: it is added. */
  readonly from: readonly (number | null)[]
  /** Every area is for more, even or fewer of us as before. */
  readonly keepsKind: boolean
  readonly waiting: number
}

/**
 * What a change of an area counts, in places: a change of kind weighs most, then whole areas, goalkeepers, and by how
 * many one side outnumbers the other.
 */
const weights = {
  kind: 10,
  alone: 30,
  margin: 2.5,
  area: 3,
  keeper: 2.5,
  unlike: 0.5,
  waiting: 1,
  grown: 0.5,
}
const mostGrowth = 2
const mostNewAreas = 2

/** Whether a turn can be filled from those who are there. */
export function fitsTurnout(stations: readonly AreaShape[], { present, keepersAble }: Turnout): boolean {
  const { all, keep } = placesOfAll(stations)
  return all > 0 && all <= present && keep <= keepersAble
}

/**
 * Smaller areas that those who are there can fill: sides made smaller, goalkeepers left out, areas left out. Best first:
 * the kind of each area kept where that is possible, then as few changes and as few waiting as can be. Empty only where
 * nobody is there.
 */
export function smallerAreas(
  stations: readonly AreaShape[],
  turnout: Turnout,
  most = 4,
): readonly AreaProposal[] {
  const shrunk = (lowest: 0 | 1) =>
    combine(
      stations.map((shape) => smallerOptions(shape, lowest)),
      { stations, turnout, most },
    )
  const proposals = shrunk(1)
  return proposals.length > 0 ? proposals : shrunk(0)
}

/**
 * Larger areas, or more of them, that leave fewer waiting. Best first: the kind kept, then few waiting and few changes.
 * Empty where nobody more could have a place.
 */
export function largerAreas(
  stations: readonly AreaShape[],
  turnout: Turnout,
  most = 4,
): readonly AreaProposal[] {
  if (!fitsTurnout(stations, turnout)) return []
  const pattern = stations.at(-1)
  const added = pattern ? Array.from({ length: mostNewAreas }, () => newAreaOptions(pattern)) : []
  const before = placesOfAll(stations).all
  return combine([...stations.map(largerOptions), ...added], { stations, turnout, most: most + 1 })
    .filter((own) => placesOfAll(own.stations).all > before)
    .slice(0, most)
}

/** An area as it could be; null: not there. */
type Option = { readonly shape: AreaShape | null; readonly cost: number }

function smallerOptions(shape: AreaShape, lowest: 0 | 1): readonly Option[] {
  const options: Option[] = [{ shape: null, cost: weights.area + placesOf(shape) }]
  for (let attack = shape.attack; attack >= Math.min(lowest, shape.attack); attack -= 1)
    for (let defend = shape.defend; defend >= Math.min(lowest, shape.defend); defend -= 1)
      for (let keep = shape.keep; keep >= 0; keep -= 1) {
        const own = { attack, defend, keep }
        if (placesOf(own) === 0) continue
        const fewer = placesOf(shape) - placesOf(own)
        options.push({
          shape: own,
          cost: fewer + weights.keeper * (shape.keep - keep) + kindCost(shape, own),
        })
      }
  return options.sort((a, b) => a.cost - b.cost)
}

function largerOptions(shape: AreaShape): readonly Option[] {
  const options: Option[] = []
  const upTo = (count: number) => (count === 0 ? 0 : count + mostGrowth)
  for (let attack = shape.attack; attack <= upTo(shape.attack); attack += 1)
    for (let defend = shape.defend; defend <= upTo(shape.defend); defend += 1) {
      const own = { attack, defend, keep: shape.keep }
      const more = placesOf(own) - placesOf(shape)
      options.push({ shape: own, cost: weights.grown * more + kindCost(shape, own) })
    }
  return options.sort((a, b) => a.cost - b.cost)
}

function newAreaOptions(pattern: AreaShape): readonly Option[] {
  const withoutKeeper = { ...pattern, keep: 0 }
  return [
    { shape: null, cost: 0 },
    { shape: pattern, cost: weights.area },
    ...(pattern.keep > 0 && placesOf(withoutKeeper) > 0
      ? [{ shape: withoutKeeper, cost: weights.area + weights.keeper }]
      : []),
  ]
}

function kindCost(before: AreaShape, after: AreaShape): number {
  const kind = kindOfShape(after)
  const margin = Math.abs(after.attack - after.defend - before.attack + before.defend)
  const other = kind === kindOfShape(before) ? 0 : kind === 'alone' ? weights.alone : weights.kind
  return weights.margin * margin + other
}

type Wanted = {
  readonly stations: readonly AreaShape[]
  readonly turnout: Turnout
  readonly most: number
}

/** The cheapest ways to choose one option an area; areas that were alike are chosen for in order, so that none comes twice. */
function combine(
  options: readonly (readonly Option[])[],
  { stations, turnout, most }: Wanted,
): readonly AreaProposal[] {
  const found: { readonly proposal: AreaProposal; readonly cost: number }[] = []
  const limit = () => (found.length < most ? Number.POSITIVE_INFINITY : (found.at(-1)?.cost ?? 0))
  choose([], { places: 0, keep: 0, cost: 0 })
  return found.map(({ proposal }) => proposal)

  function choose(chosen: readonly number[], sum: { places: number; keep: number; cost: number }): void {
    if (sum.places > turnout.present || sum.keep > turnout.keepersAble || sum.cost > limit()) return
    const area = chosen.length
    const own = options[area]
    if (!own) {
      take(chosen, sum)
      return
    }
    const first = area > 0 && isAlike(stations, area) ? (chosen[area - 1] ?? 0) : 0
    own.forEach(({ shape, cost }, index) => {
      if (index < first) return
      const places = sum.places + (shape ? placesOf(shape) : 0)
      choose([...chosen, index], { places, keep: sum.keep + (shape?.keep ?? 0), cost: sum.cost + cost })
    })
  }

  function take(chosen: readonly number[], sum: { readonly places: number; readonly cost: number }): void {
    if (sum.places === 0) return
    const areas = chosen.flatMap((index, area) => {
      const shape = options[area]?.[index]?.shape
      return shape ? [{ shape, from: area < stations.length ? area : null }] : []
    })
    const waiting = turnout.present - sum.places
    const unlike = new Set(areas.map(({ shape }) => JSON.stringify(shape))).size - 1
    const cost = sum.cost + weights.waiting * waiting + weights.unlike * unlike
    if (cost >= limit()) return
    const keepsKind = areas.every(
      ({ shape, from }) => from === null || kindOfShape(shape) === kindOfShape(stations[from] as AreaShape),
    )
    const proposal = {
      stations: areas.map(({ shape }) => shape),
      from: areas.map(({ from }) => from),
      keepsKind,
      waiting,
    }
    const key = sizesOf(proposal.stations)
    const same = found.findIndex((other) => sizesOf(other.proposal.stations) === key)
    if (same >= 0 && (found[same]?.cost ?? 0) <= cost) return
    if (same >= 0) found.splice(same, 1)
    found.push({ proposal, cost })
    found.sort((a, b) => a.cost - b.cost)
    found.length = Math.min(found.length, most)
  }
}

/** The same for areas of the same sizes in whatever order. */
function sizesOf(stations: readonly AreaShape[]): string {
  return stations
    .map(({ attack, defend, keep }) => `${attack} ${defend} ${keep}`)
    .sort()
    .join()
}

function isAlike(stations: readonly AreaShape[], area: number): boolean {
  const [one, before] = [stations[area], stations[area - 1]]
  // Areas that would be added are alike, too.
  if (!one) return area > stations.length
  return !!before && one.attack === before.attack && one.defend === before.defend && one.keep === before.keep
}
