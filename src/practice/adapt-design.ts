import type { Adaptation, DesignChange, RoundRef } from '#practice/adaptation'
import type { AreaShape, DesignRound } from '#practice/design'
import type { DesignSheet } from '#practice/design-sheet'

/** What an adaptation can change of a design; the day's plan carries it without the rest of the sheet. */
export type Adaptable = Pick<DesignSheet, 'areaLengthM' | 'areaWidthM' | 'rounds'>

/** The design with the adaptation's changes made, one after another. The sheet's other parts stay as they are. */
export function adaptDesign<Design extends Adaptable>(design: Design, adaptation: Adaptation): Design {
  let adapted = design
  for (const change of adaptation.changes) adapted = { ...adapted, ...changed(adapted, change) }
  return adapted
}

function changed(design: Adaptable, change: DesignChange): Partial<Adaptable> {
  if (change.what === 'area')
    return {
      areaLengthM: design.areaLengthM * change.lengthTimes,
      areaWidthM: design.areaWidthM * change.widthTimes,
    }
  return {
    rounds: design.rounds.map((round, index) =>
      isMeant(round, { index, ref: change.round }) ? changedRound(round, change) : round,
    ),
  }
}

function isMeant(
  round: DesignRound,
  { index, ref }: { readonly index: number; readonly ref: RoundRef },
): boolean {
  return ref === null ? round.isFreeGame !== true : ref === index
}

function changedRound(
  round: DesignRound,
  change: Exclude<DesignChange, { readonly what: 'area' }>,
): DesignRound {
  switch (change.what) {
    case 'places':
      return { ...round, ...withPlaces(round, change) }
    case 'areas':
      return { ...round, stations: withAreas(round.stations, change.by) }
    case 'turns':
      return {
        ...round,
        turnSeconds: Math.max(1, Math.round(round.turnSeconds * change.secondsTimes)),
        turnCount: Math.max(1, Math.round(round.turnCount * change.countTimes)),
      }
    case 'ending':
      return {
        ...round,
        endings: [...(round.endings ?? []).filter(({ id }) => id !== change.ending.id), change.ending],
      }
    case 'condition':
      return { ...round, conditions: [...(round.conditions ?? []), change.words] }
  }
}

type MorePlaces = Extract<DesignChange, { readonly what: 'places' }>

/** A choice turn's sizes grow and shrink with its areas, so that the largest stays the largest. */
function withPlaces(round: DesignRound, more: MorePlaces): Pick<DesignRound, 'stations' | 'choice'> {
  const grown = (shape: AreaShape): AreaShape => ({
    attack: Math.max(0, shape.attack + more.attack),
    defend: Math.max(0, shape.defend + more.defend),
    keep: Math.max(0, shape.keep + more.keep),
  })
  const { choice } = round
  return {
    stations: round.stations.map(grown),
    ...(choice
      ? {
          choice: {
            ...choice,
            sizes: choice.sizes.map((size) => ({ ...size, shape: grown(size.shape) })),
          },
        }
      : {}),
  }
}

/** One area always stays. */
function withAreas(stations: readonly AreaShape[], by: number): readonly AreaShape[] {
  if (by <= 0) return stations.slice(0, Math.max(1, stations.length + by))
  const last = stations.at(-1)
  return last ? [...stations, ...Array.from({ length: by }, () => last)] : stations
}
