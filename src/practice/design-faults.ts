import type { Problem } from '#common/problem'
import { adaptationFaults } from '#practice/adaptation-faults'
import type { DesignRound } from '#practice/design'
import type { DesignSheet } from '#practice/design-sheet'
import { sizeFaults } from '#practice/practice-size'
import { roundFaults } from '#practice/round-faults'
import { roundsThatRise } from '#practice/round-places'
import { shapeText } from '#practice/shape-text'

/** Of a design as it is typed; the library's own fields do not matter. */
export type DraftDesign = Omit<DesignSheet, 'id' | 'themeId' | 'copiedFromId' | 'isPutAway'>

/** Sides of a whole area, in metres. Common practice, no source: from a goal's width to more than the largest pitch. */
export const areaSideM = { least: 2, most: 150 } as const

/**
 * What makes no sense in a design, whoever plays it: each with its place and what would be right. Paths as the form has
 * them: `rounds.1.stations.0`.
 */
export function designFaults(design: DraftDesign): readonly Problem[] {
  return [
    ...nameFaults(design),
    ...areaFaults(design),
    ...roundsFaults(design.rounds),
    ...sizeFaults(design.rounds),
    ...halvesFaults(design),
    ...sidesFaults(design),
    ...design.adaptations.flatMap((adaptation, index) =>
      under(`adaptations.${index}`, adaptationFaults(design, adaptation)),
    ),
  ]
}

export function under(path: string, problems: readonly Problem[]): readonly Problem[] {
  return problems.map((problem) => ({ ...problem, path: problem.path ? `${path}.${problem.path}` : path }))
}

function nameFaults({ name }: DraftDesign): readonly Problem[] {
  return name.trim() === '' ? [{ path: 'name', message: 'is empty; write what the design is called' }] : []
}

function areaFaults({ areaLengthM, areaWidthM }: DraftDesign): readonly Problem[] {
  const fault = (path: string, metres: number): readonly Problem[] =>
    metres >= areaSideM.least && metres <= areaSideM.most
      ? []
      : [
          {
            path,
            message: `must be between ${areaSideM.least} and ${areaSideM.most} metres; 30 by 20 m is usual for a small group`,
          },
        ]
  return [...fault('areaLengthM', areaLengthM), ...fault('areaWidthM', areaWidthM)]
}

/** All rounds, each by itself. */
export function roundsFaults(rounds: readonly DesignRound[]): readonly Problem[] {
  if (rounds.length === 0) return [{ path: 'rounds', message: 'are none; a design has at least one round' }]
  return rounds.flatMap((round, index) =>
    under(`rounds.${index}`, [
      ...(round.title.trim() === ''
        ? [{ path: 'title', message: 'is empty; write what the round is called' }]
        : []),
      ...roundFaults(round),
    ]),
  )
}

/** What stands in one half stands in the other. */
export function halvesFaults({
  isMirrored,
  rounds,
}: Pick<DraftDesign, 'isMirrored' | 'rounds'>): readonly Problem[] {
  if (!isMirrored) return []
  return rounds.flatMap((round, index) => {
    if (round.isFreeGame || round.stations.length === 0) return []
    const single = round.stations
      .map(shapeText)
      .find((text, _, all) => all.filter((own) => own === text).length % 2 === 1)
    return single
      ? [
          {
            path: `rounds.${index}.stations`,
            message: `two halves that mirror each other need every area twice; add another ${single}, or untick the halves`,
          },
        ]
      : []
  })
}

/** Two names that are not the same, and somebody to play against. */
export function sidesFaults({ sides, rounds }: Pick<DraftDesign, 'sides' | 'rounds'>): readonly Problem[] {
  if (!sides) return []
  const [one, other] = sides.names.map((name) => name.trim())
  const problems: Problem[] = []
  if (!one) problems.push({ path: 'sides.0', message: 'is empty; write a colour, such as “yellow”' })
  if (!other) problems.push({ path: 'sides.1', message: 'is empty; write a colour, such as “blue”' })
  if (one && one.toLowerCase() === other?.toLowerCase())
    problems.push({ path: 'sides.1', message: `is ${one} too; two sides need two colours` })
  const lonely = roundsThatRise(rounds).findIndex(({ stations }) =>
    stations.some(({ attack, defend }) => attack + defend > 0 && (attack === 0 || defend === 0)),
  )
  if (lonely >= 0)
    problems.push({
      path: 'sides.swap',
      message: `one side has nothing to do in ${rounds[lonely]?.title || `round ${lonely + 1}`}; give every area attackers and defenders, or play without sides`,
    })
  return problems
}
