import { daysLater } from '#common/days-later'
import type { Problem } from '#common/problem'
import { isDay } from '#common/time'
import { type JsonPath, problemAt } from '#exchange/json-path'
import { designProblems } from '#exchange/plan-request/plan-design-problems'
import { planLimits } from '#exchange/plan-request/plan-limits'
import { planPlayerProblems } from '#exchange/plan-request/plan-player-problems'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { blockProblems, themesProblems } from '#exchange/plan-request/plan-theme-problems'
import { betweenProblems, datesProblems, spanProblems } from '#exchange/plan-request/plan-value-problems'
import { searchProblems } from '#exchange/search-problems'
import {
  doubledIdProblems,
  type KnownIds,
  knownIdsOf,
  secondsProblems,
  shareProblems,
  tooManyProblems,
  unknownIdProblems,
  wholeProblems,
} from '#exchange/value-problems'

/** Everything that is wrong with a request of the right shape, whatever the numbers there are. */
export function planRequestProblems(json: PlanRequestJson): readonly Problem[] {
  const themes = knownIdsOf('themes', json.themes)
  const designs = knownIdsOf('designs', json.designs)
  return [
    ...termProblems(json.term),
    ...policyProblems(json.policy ?? {}),
    ...(['practices', 'themes', 'designs', 'players'] as const).flatMap((list) => listProblems(json, list)),
    ...practiceProblems(json, { themes, designs }),
    ...closedProblems(json),
    ...themesProblems(json, themes),
    ...blockProblems(json, themes),
    ...json.designs.flatMap((design, index) => designProblems(design, themes, ['designs', index])),
    ...choiceProblems(json),
    ...metProblems(json, { themes, designs }),
    ...json.players.flatMap((player, index) => planPlayerProblems(player, themes, ['players', index])),
    ...gentleProblems(json.gentle ?? {}),
    ...wholeProblems(json.designRest, 0, ['designRest'], 'a whole number of practices'),
    ...drawsProblems(json.draws ?? undefined),
    ...searchProblems(json),
  ]
}

const mostDays = planLimits.weeks * 7

function termProblems(term: PlanRequestJson['term']): readonly Problem[] {
  const problems = spanProblems(term, ['term'])
  if (problems.length > 0 || term.to < daysLater(term.from, mostDays)) return problems
  return [
    problemAt(
      ['term', 'to'],
      `is ${term.to}; ${planLimits.weeks} weeks or less after ${term.from} would be right`,
    ),
  ]
}

function policyProblems(policy: NonNullable<PlanRequestJson['policy']>): readonly Problem[] {
  return [
    ...secondsProblems(policy.toleranceSeconds, ['policy', 'toleranceSeconds']),
    ...shareProblems(policy.toleranceShare, ['policy', 'toleranceShare']),
  ]
}

const singular = { practices: 'practice', themes: 'theme', designs: 'design', players: 'player' } as const

/** Lists that must have something in them, each with ids of its own. */
function listProblems(json: PlanRequestJson, list: keyof typeof singular): readonly Problem[] {
  const things: readonly { readonly id: string }[] = json[list]
  if (things.length === 0)
    return [problemAt([list], `are none; one ${singular[list]} or more would be right`)]
  const ids = things.map(({ id }, index) => ({ id, at: [list, index, 'id'] as JsonPath }))
  return [
    ...tooManyProblems(things.length, planLimits[list], [list]),
    ...ids.flatMap(({ id, at }) =>
      id.length > 0 && id.length <= planLimits.idLetters
        ? []
        : [problemAt(at, `has ${id.length} letters; from 1 to ${planLimits.idLetters} would be right`)],
    ),
    ...doubledIdProblems(ids, singular[list]),
  ]
}

function choiceProblems({ practices, designs }: PlanRequestJson): readonly Problem[] {
  const served = designs.reduce((sum, { themes }) => sum + themes.length, 0)
  const choices = practices.length * served
  if (choices <= planLimits.choices) return []
  const message = `serve ${served} themes in ${practices.length} practices, ${choices} choices in all; ${planLimits.choices} or fewer would be right`
  return [problemAt(['designs'], message)]
}

type Lists = { readonly themes: KnownIds; readonly designs: KnownIds }

function practiceProblems(json: PlanRequestJson, { themes, designs }: Lists): readonly Problem[] {
  const metres = { least: 1, most: planLimits.metres, what: 'a number of metres' }
  return [
    ...datesProblems(
      json.practices.map(({ date }) => date),
      { term: json.term, list: 'practices' },
    ),
    ...json.practices.flatMap(({ lengthSeconds, ground, held }, index) => {
      const at: JsonPath = ['practices', index]
      return [
        ...wholeProblems(
          lengthSeconds ?? undefined,
          1,
          [...at, 'lengthSeconds'],
          'a whole number of seconds',
        ),
        ...betweenProblems(ground?.lengthM, metres, [...at, 'ground', 'lengthM']),
        ...betweenProblems(ground?.widthM, metres, [...at, 'ground', 'widthM']),
        ...(held ? unknownIdProblems(held.theme, [...at, 'held', 'theme'], themes) : []),
        ...(held?.design ? unknownIdProblems(held.design, [...at, 'held', 'design'], designs) : []),
      ]
    }),
  ]
}

function closedProblems({ closed = [], practices }: PlanRequestJson): readonly Problem[] {
  const each = closed.flatMap((span, index) => spanProblems(span, ['closed', index]))
  const tooMany = tooManyProblems(closed.length, planLimits.spans, ['closed'])
  if (each.length + tooMany.length > 0) return [...each, ...tooMany]
  const isClosed = ({ date }: { readonly date: string }) =>
    closed.some(({ from, to }) => from <= date && date <= to)
  return practices.length > 0 && practices.every(isClosed)
    ? [problemAt(['closed'], 'leave out every practice; days with a practice between them would be right')]
    : []
}

/** A practice that was held lies before those to come. */
function metProblems(
  { met = [], term, practices }: PlanRequestJson,
  { themes, designs }: Lists,
): readonly Problem[] {
  const first = practices[0]?.date
  return [
    ...tooManyProblems(met.length, planLimits.met, ['met']),
    ...datesProblems(
      met.map(({ date }) => date),
      { term, list: 'met' },
    ),
    ...met.flatMap((own, index) => {
      const at: JsonPath = ['met', index]
      return [
        ...(first !== undefined && isDay(first) && isDay(own.date) && own.date > first
          ? [
              problemAt(
                [...at, 'date'],
                `is ${own.date}; a day not after ${first}, when the first practice to come is, would be right`,
              ),
            ]
          : []),
        ...own.themes.flatMap((id, place) => unknownIdProblems(id, [...at, 'themes', place], themes)),
        ...(own.design == null ? [] : unknownIdProblems(own.design, [...at, 'design'], designs)),
      ]
    }),
  ]
}

function gentleProblems({ least, most }: NonNullable<PlanRequestJson['gentle']>): readonly Problem[] {
  return [
    ...betweenProblems(least, { least: 0, most: 1, what: 'a share of the even one' }, ['gentle', 'least']),
    ...betweenProblems(most, { least: 1, most: 10, what: 'so many times the even share' }, [
      'gentle',
      'most',
    ]),
  ]
}

function drawsProblems(draws: number | undefined): readonly Problem[] {
  const whole = wholeProblems(draws, 1, ['draws'], 'a whole number of terms to draw')
  return whole.length > 0 ? whole : tooManyProblems(draws ?? 0, planLimits.draws, ['draws'])
}
