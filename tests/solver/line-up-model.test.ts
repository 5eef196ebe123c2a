import { expect, it } from 'vitest'
import { lineUpProblemOf } from '#exchange/match-request/match-request'
import { mostColumns } from '#solver/line-up-class-columns'
import { singleClasses } from '#solver/line-up-classes'
import { anything, levelTable } from '#solver/line-up-levels'
import { lineUpModel } from '#solver/line-up-model'
import { aRequestOfMatch } from '../support/request-of-match'

/** Everybody told apart, as where each is owed something else. */
const modelOf = (request: Parameters<typeof aRequestOfMatch>[0]) => {
  const problem = lineUpProblemOf(aRequestOfMatch(request))
  const classes = singleClasses(problem)
  return lineUpModel(problem, classes, levelTable(problem, classes, anything).levels)
}

it('makes a model of a match that people play', () => {
  const model = modelOf({})
  expect(model?.linear.columns).toBeGreaterThan(0)
  expect(model?.linear.columns).toBeLessThan(mostColumns)
})

it('makes none where every second of two minutes is a time for changes', () => {
  expect(modelOf({ periods: [60, 60], changeEvery: 1 })).toBeNull()
})
