import { areaPerChildOver } from '#practice/area-per-child'
import { areaVerdict, tightestPublished } from '#practice/area-sentence'
import type { DesignSheet } from '#practice/design-sheet'
import { areaOnPitch, isOfAge, type PublishedGuidance, type Source } from '#practice/published-guidance'
import { roundsThatRise } from '#practice/round-places'

export type Caution = {
  readonly subject: 'heading' | 'space' | 'numbers' | 'concussion' | 'heat' | 'load'
  /** Something of this design is outside what is published for the age; else it is the usual caution. */
  readonly isWarning: boolean
  readonly words: string
  readonly source: Source
}

type Held = { readonly age: number; readonly guidance: PublishedGuidance }

/**
 * What to mind, warnings first. Advice, and never more than that: the rules where the club plays, and whoever is
 * licensed to judge, come first. `age`: the age group, 10 for under-tens.
 */
export function designCautions(sheet: DesignSheet, held: Held): readonly Caution[] {
  return [
    ...headingCautions(sheet, held),
    ...spaceCautions(sheet, held),
    ...numberCautions(sheet, held),
    ...held.guidance.welfare.map((advice) => ({ ...advice, isWarning: false })),
  ].toSorted((one, other) => Number(other.isWarning) - Number(one.isWarning))
}

/** Heading, where the design has it: what each body advises for the age. */
export function headingCautions(
  { hasHeading }: Pick<DesignSheet, 'hasHeading'>,
  { age, guidance }: Held,
): readonly Caution[] {
  if (!hasHeading) return []
  return guidance.heading
    .filter(({ ages }) => isOfAge(ages, age))
    .map(({ source, mostHeaders, words }) => ({
      subject: 'heading',
      isWarning: mostHeaders === 0,
      words: `Heading is part of this practice. For under ${age} the advice is: ${words}. Go by each child’s own age, and by the rules where you play.`,
      source,
    }))
}

/** More space than any pitch of the age has, or less than any youth pitch at all. */
export function spaceCautions(sheet: DesignSheet, { age, guidance }: Held): readonly Caution[] {
  const area = areaPerChildOver(sheet, roundsThatRise(sheet.rounds))
  if (!area) return []
  const cautions: Caution[] = []
  const tightest = tightestPublished(guidance.pitches)
  const least = tightest ? areaOnPitch(tightest).least : 0
  if (tightest && area.least < least)
    cautions.push({
      subject: 'space',
      isWarning: true,
      words: `In its fullest round each child has ${Math.round(area.least)} m². No youth pitch published gives less than ${Math.round(least)} m²: children run into each other. Mark out more, or play fewer at a time.`,
      source: tightest.source,
    })
  const ofAge = guidance.pitches.filter(({ ages }) => isOfAge(ages, age))
  const widest = ofAge.toSorted((one, other) => areaOnPitch(other).most - areaOnPitch(one).most)[0]
  if (
    widest &&
    areaVerdict({ least: area.most, most: area.most }, { age, pitches: ofAge }).verdict === 'wider'
  )
    cautions.push({
      subject: 'space',
      isWarning: true,
      words: `In its emptiest round each child has ${Math.round(area.most)} m², more than the ${Math.round(areaOnPitch(widest).most)} m² of the largest pitch published for under ${age}: long runs, many of them. Mark out less, or give more breaks.`,
      source: widest.source,
    })
  return cautions
}

/** A side larger than the age plays with in a match. A keeper counts with the defenders. */
export function numberCautions(
  { rounds }: Pick<DesignSheet, 'rounds'>,
  { age, guidance }: Held,
): readonly Caution[] {
  const largest = Math.max(
    0,
    ...rounds.flatMap(({ stations }) =>
      stations.map(({ attack, defend, keep }) => Math.max(attack, defend + Math.min(1, keep))),
    ),
  )
  const ofAge = guidance.pitches.filter(({ ages }) => isOfAge(ages, age))
  const most = ofAge.toSorted((one, other) => other.aSide - one.aSide)[0]
  if (!most || largest <= most.aSide) return []
  return [
    {
      subject: 'numbers',
      isWarning: true,
      words: `${largest} on a side is more than the ${most.aSide} that under ${age} play with in a match. Two smaller games give each child more of the ball.`,
      source: most.source,
    },
  ]
}
