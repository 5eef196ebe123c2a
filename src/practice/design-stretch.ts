import type { AreaShape, DesignRound } from '#practice/design'
import type { DesignSheet } from '#practice/design-sheet'
import { kindOfShape } from '#practice/round-kind'
import { placesOfAll, roundsThatRise } from '#practice/round-places'
import { shapeText } from '#practice/shape-text'
import { fitsTurnout, largerAreas, smallerAreas, type Turnout } from '#practice/stretch-areas'
import { sayStretch } from '#practice/stretch-sentence'

type Stretchable = Pick<DesignSheet, 'rounds' | 'isMirrored'>

/** One round for so many children. */
export type StretchedRound = {
  /** Its place in the design, from 0. */
  readonly round: number
  readonly stations: readonly AreaShape[]
  /** Null: as it is drawn. */
  readonly sentence: string | null
  readonly keepsKind: boolean
  readonly waiting: number
  /** Most turns in a row anybody waits when turns are taken in order; null: nobody has a place. */
  readonly waitsInARow: number | null
}

/**
 * What becomes of each round that rises when so many come: as it is drawn where it can be filled and nobody waits two
 * turns in a row, else smaller, else larger areas, or more of them. Mirrored halves stay alike where that is possible.
 */
export function stretchDesign(design: Stretchable, turnout: Turnout): readonly StretchedRound[] {
  return design.rounds.flatMap((round, index) =>
    round.isFreeGame ? [] : [{ round: index, ...stretched(round, { design, turnout }) }],
  )
}

function stretched(
  { stations }: DesignRound,
  { design, turnout }: { readonly design: Stretchable; readonly turnout: Turnout },
): Omit<StretchedRound, 'round'> {
  const fits = fitsTurnout(stations, turnout)
  const { all } = placesOfAll(stations)
  const asDrawn = {
    stations,
    sentence: null,
    keepsKind: true,
    waiting: turnout.present - all,
    waitsInARow: inARow(turnout.present, all),
  }
  if (fits && turnout.present <= 2 * all) return asDrawn
  const found = fits ? largerAreas(stations, turnout, 8) : smallerAreas(stations, turnout, 8)
  const proposal =
    (design.isMirrored ? found.find((one) => isPaired(one.stations)) : undefined) ?? found[0] ?? null
  if (!proposal)
    return fits
      ? asDrawn
      : { stations: [], sentence: null, keepsKind: false, waiting: turnout.present, waitsInARow: null }
  return {
    stations: proposal.stations,
    sentence: sayStretch(stations, proposal),
    keepsKind: proposal.keepsKind,
    waiting: proposal.waiting,
    waitsInARow: inARow(turnout.present, placesOfAll(proposal.stations).all),
  }
}

/** With turns taken in order, whoever waits does so for the whole rounds of places that go before. */
function inARow(children: number, places: number): number | null {
  return places > 0 ? Math.max(0, Math.ceil((children - places) / places)) : null
}

/** Every size an even number of times. */
export function isPaired(stations: readonly AreaShape[]): boolean {
  const counts = new Map<string, number>()
  for (const shape of stations) counts.set(shapeText(shape), (counts.get(shapeText(shape)) ?? 0) + 1)
  return [...counts.values()].every((count) => count % 2 === 0)
}

/** How many children a design is for. */
export type ChildrenNeeded = {
  /** With fewer, some round loses an area, or is not of its kind any more. */
  readonly fewest: number
  /** Every place of the fullest round is taken and as few wait in the others as can be. */
  readonly best: number
  /** With more, somebody waits two turns in a row of some round, or the round needs other areas. */
  readonly most: number
}

/** Null: no round has places. Nobody is taken to be unable to keep goal. */
export function childrenNeeded({ rounds }: Pick<Stretchable, 'rounds'>): ChildrenNeeded | null {
  const rising = roundsThatRise(rounds)
  const places = rising.map(({ stations }) => placesOfAll(stations).all)
  const best = Math.max(0, ...places)
  const least = Math.min(...places)
  if (places.length === 0 || least === 0) return null
  const smallest = rising.map(({ stations }) =>
    stations.reduce((sum, shape) => sum + smallestOfKind[kindOfShape(shape)], 0),
  )
  return { fewest: Math.max(...smallest), best, most: Math.max(best, 2 * least) }
}

/** 2 against 1, 1 against 1, 1 against 2: goals can do without a keeper. */
const smallestOfKind = { outnumbering: 3, level: 2, outnumbered: 3, alone: 1 } as const
