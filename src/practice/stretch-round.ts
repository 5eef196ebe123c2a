import type { AreaShape, DesignRound } from '#practice/design'
import {
  type AreaProposal,
  fitsTurnout,
  largerAreas,
  smallerAreas,
  type Turnout,
} from '#practice/stretch-areas'
import { sayStretch } from '#practice/stretch-sentence'

/** Another size for a round, with what it changes in a sentence. */
export type ShapeProposal = AreaProposal & { readonly sentence: string }

export type RoundProposals = {
  /** Its place in the list of rounds, from 0. */
  readonly round: number
  /** Whether it can be played as it is. */
  readonly fits: boolean
  /** Best first. */
  readonly proposals: readonly ShapeProposal[]
}

const mostShapes = 4

/**
 * How rounds shrink for those who are there; only rounds that cannot be filled are among the answers. 3 against 2 with
 * four children becomes 2 against 1 or 2 against 2, with a mirrored area one of the two goes, and so on.
 */
export function smallerShapes(rounds: readonly DesignRound[], turnout: Turnout): readonly RoundProposals[] {
  return rounds.flatMap(({ stations }, round) =>
    fitsTurnout(stations, turnout)
      ? []
      : [{ round, fits: false, proposals: smallerShapesOf(stations, turnout, mostShapes) }],
  )
}

/** How rounds grow so that fewer wait; only rounds in which more could have a place are among the answers. */
export function largerShapes(rounds: readonly DesignRound[], turnout: Turnout): readonly RoundProposals[] {
  return rounds.flatMap(({ stations }, round) => {
    const proposals = largerShapesOf(stations, turnout, mostShapes)
    return proposals.length === 0 ? [] : [{ round, fits: true, proposals }]
  })
}

/** Smaller areas for one turn, each in a sentence; for a turn that can be filled none is needed. */
export function smallerShapesOf(
  stations: readonly AreaShape[],
  turnout: Turnout,
  most: number,
): readonly ShapeProposal[] {
  return said(stations, smallerAreas(stations, turnout, most))
}

/** Larger areas for one turn, each in a sentence. */
export function largerShapesOf(
  stations: readonly AreaShape[],
  turnout: Turnout,
  most: number,
): readonly ShapeProposal[] {
  return said(stations, largerAreas(stations, turnout, most))
}

function said(before: readonly AreaShape[], proposals: readonly AreaProposal[]): readonly ShapeProposal[] {
  return proposals.map((proposal) => ({ ...proposal, sentence: sayStretch(before, proposal) }))
}

/** The round with its areas as proposed. Sizes of a choice turn that no longer fit into any of them are left out. */
export function stretchRound(round: DesignRound, { stations }: Pick<AreaProposal, 'stations'>): DesignRound {
  const sizes = round.choice?.sizes.filter(({ shape }) =>
    stations.some(
      (own) => own.attack >= shape.attack && own.defend >= shape.defend && own.keep >= shape.keep,
    ),
  )
  return {
    ...round,
    stations,
    ...(round.choice ? { choice: sizes && sizes.length > 1 ? { ...round.choice, sizes } : null } : {}),
  }
}
