import type { Problem } from '#common/problem'
import type { DesignRound } from '#practice/design'
import { practiceLimits } from '#practice/practice-size'
import { placesOf, placesOfAll } from '#practice/round-places'
import { shapeText } from '#practice/shape-text'

type Rule = (round: DesignRound) => readonly Problem[]

/** What makes no sense in a round, whoever plays it. Paths are inside the round: `stations.0`, `turnSeconds`. */
export function roundFaults(round: DesignRound): readonly Problem[] {
  return rules.flatMap((rule) => rule(round))
}

/** A round without places, and an area without any. */
export const hasPlaces: Rule = ({ stations }) => {
  if (stations.length === 0 || placesOfAll(stations).all === 0)
    return [
      {
        path: 'stations',
        message: 'has no places, so nobody can play; write an area, such as 2 attackers and 1 defender',
      },
    ]
  return stations.flatMap((shape, index) =>
    placesOf(shape) === 0
      ? [
          {
            path: `stations.${index}`,
            message: 'has no places; give it attackers, defenders or a keeper, or take the area out',
          },
        ]
      : [],
  )
}

export const hasTurns: Rule = ({ turnCount }) => {
  if (!(turnCount >= 1))
    return [
      { path: 'turnCount', message: 'is a round without turns; 6 turns would be usual, 1 is the fewest' },
    ]
  return wholeUpTo(practiceLimits.turnCount, { path: 'turnCount', value: turnCount })
}

export const turnsHaveLength: Rule = ({ turnSeconds, isUntilDead }) => {
  if (turnSeconds >= 1)
    return wholeUpTo(practiceLimits.turnSeconds, { path: 'turnSeconds', value: turnSeconds })
  return [
    {
      path: 'turnSeconds',
      message: isUntilDead
        ? 'is no length; write how long a ball usually lives, such as 40 seconds'
        : 'is no length; write how long a turn lasts, such as 45 seconds',
    },
  ]
}

export const gapIsATime: Rule = ({ gapSeconds }) =>
  gapSeconds >= 0
    ? wholeUpTo(practiceLimits.gapSeconds, { path: 'gapSeconds', value: gapSeconds })
    : [{ path: 'gapSeconds', message: 'is no time; write seconds, such as 20, or 0 for none' }]

function wholeUpTo(
  most: number,
  { path, value }: { readonly path: string; readonly value: number },
): readonly Problem[] {
  return Number.isInteger(value) && value <= most
    ? []
    : [{ path, message: `must be a whole number, ${most} at most` }]
}

/** It is written down as two equal turns with the roles swapped. */
export const freeGameIsTwoHalves: Rule = ({ isFreeGame, turnCount }) =>
  isFreeGame && turnCount !== 2
    ? [{ path: 'turnCount', message: 'a free game is two equal halves, so 2 turns would be right' }]
    : []

export const freeGameHasNoChoice: Rule = ({ isFreeGame, choice }) =>
  isFreeGame && choice
    ? [{ path: 'choice', message: 'nobody picks a size in a free game; take the choice out' }]
    : []

/** Two sizes at least, none larger than the area that was counted on, none empty. */
export const choiceIsOne: Rule = ({ choice, stations }) => {
  if (!choice) return []
  const problems: Problem[] = []
  if (choice.sizes.length < 2)
    problems.push({
      path: 'choice',
      message: 'needs two sizes at least, such as 3v2 for 1 point and 2v2 for 2',
    })
  choice.sizes.forEach(({ shape, points }, index) => {
    const path = `choice.sizes.${index}`
    if (!isPoints(points)) problems.push({ path, message: noPoints })
    else if (placesOf(shape) === 0)
      problems.push({ path, message: 'has no places; write a size such as 2v2' })
    else if (
      stations.length > 0 &&
      !stations.some(
        (most) => shape.attack <= most.attack && shape.defend <= most.defend && shape.keep <= most.keep,
      )
    )
      problems.push({
        path,
        message: `${shapeText(shape)} is larger than every area of the round; make an area ${shapeText(shape)}, or the size smaller`,
      })
  })
  return problems
}

/** Points grow with difficulty: who attacks with fewer against as many, or against more, never gets less for it. */
export const harderIsWorthMore: Rule = ({ choice }) => {
  const sizes = choice?.sizes ?? []
  return sizes.flatMap((size, index) => {
    const easier = sizes.find(
      (other) =>
        size.shape.attack - size.shape.defend < other.shape.attack - other.shape.defend &&
        size.points < other.points,
    )
    return easier
      ? [
          {
            path: `choice.sizes.${index}`,
            message: `${shapeText(size.shape)} is harder for the attackers than ${shapeText(easier.shape)} and worth less; ${easier.points} points or more would be right`,
          },
        ]
      : []
  })
}

export const endingsAreNamed: Rule = ({ endings = [] }) =>
  endings.flatMap(({ words, id, points }, index) => {
    const path = `endings.${index}`
    if (!isPoints(points)) return [{ path, message: noPoints }]
    if (words.trim() === '')
      return [{ path, message: 'says nothing; write what ends the turn, such as “Goal”' }]
    const isDouble = endings.findIndex((ending) => ending.id === id) !== index
    return isDouble ? [{ path, message: 'stands there twice; take one out' }] : []
  })

const mostPoints = 99
const noPoints = `needs points from 0 to ${mostPoints}; 1 would be usual`

function isPoints(points: number): boolean {
  return points >= 0 && points <= mostPoints
}

const rules: readonly Rule[] = [
  hasPlaces,
  hasTurns,
  turnsHaveLength,
  gapIsATime,
  freeGameIsTwoHalves,
  freeGameHasNoChoice,
  choiceIsOne,
  harderIsWorthMore,
  endingsAreNamed,
]
