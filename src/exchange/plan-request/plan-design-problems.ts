import type { Problem } from '#common/problem'
import { type JsonPath, problemAt } from '#exchange/json-path'
import { planLimits } from '#exchange/plan-request/plan-limits'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { betweenProblems, wholeBetweenProblems } from '#exchange/plan-request/plan-value-problems'
import { type KnownIds, tooManyProblems, unknownIdProblems } from '#exchange/value-problems'
import { practiceLimits } from '#practice/practice-size'
import { seatRoles } from '#practice/turn'

type DesignJson = PlanRequestJson['designs'][number]
type RoundJson = DesignJson['rounds'][number]

/** What is wrong with one design of a request; its rounds are no larger than the book's may be. */
export function designProblems(design: DesignJson, themes: KnownIds, at: JsonPath): readonly Problem[] {
  const { lengthM, widthM, rounds } = design
  const metres = { least: 1, most: planLimits.metres, what: 'a number of metres' }
  const turns = rounds.reduce((sum, { turnCount }) => sum + turnCount, 0)
  return [
    ...tooManyProblems(design.themes.length, planLimits.themes, [...at, 'themes']),
    ...design.themes.flatMap((id, index) => unknownIdProblems(id, [...at, 'themes', index], themes)),
    ...betweenProblems(lengthM, metres, [...at, 'lengthM']),
    ...betweenProblems(widthM, metres, [...at, 'widthM']),
    ...(rounds.length === 0
      ? [problemAt([...at, 'rounds'], 'are none; one round or more would be right')]
      : []),
    ...tooManyProblems(rounds.length, practiceLimits.rounds, [...at, 'rounds']),
    ...rounds.flatMap((round, index) => roundProblems(round, [...at, 'rounds', index])),
    ...(turns > practiceLimits.turns
      ? [
          problemAt(
            [...at, 'rounds'],
            `have ${turns} turns together; ${practiceLimits.turns} or fewer would be right`,
          ),
        ]
      : []),
  ]
}

function roundProblems({ turnCount, turnSeconds, gapSeconds, stations, freeGame }: RoundJson, at: JsonPath) {
  const places = stations.reduce(
    (sum, { attack = 0, defend = 0, keep = 0 }) => sum + attack + defend + keep,
    0,
  )
  return [
    ...wholeBetweenProblems(turnCount, { least: 1, most: practiceLimits.turnCount, what: 'turns' }, [
      ...at,
      'turnCount',
    ]),
    ...(freeGame && turnCount !== 2
      ? [
          problemAt(
            [...at, 'turnCount'],
            `is ${turnCount}; 2, as a free game is two equal halves, would be right`,
          ),
        ]
      : []),
    ...wholeBetweenProblems(turnSeconds, { least: 1, most: practiceLimits.turnSeconds, what: 'seconds' }, [
      ...at,
      'turnSeconds',
    ]),
    ...wholeBetweenProblems(gapSeconds ?? 0, { least: 0, most: practiceLimits.gapSeconds, what: 'seconds' }, [
      ...at,
      'gapSeconds',
    ]),
    ...tooManyProblems(stations.length, practiceLimits.areas, [...at, 'stations']),
    ...stations.flatMap((station, index) =>
      seatRoles.flatMap((role) =>
        wholeBetweenProblems(station[role] ?? 0, { least: 0, most: practiceLimits.places, what: 'seats' }, [
          ...at,
          'stations',
          index,
          role,
        ]),
      ),
    ),
    ...(places > 0
      ? []
      : [problemAt([...at, 'stations'], 'have no seat; a station with a seat would be right')]),
  ]
}
