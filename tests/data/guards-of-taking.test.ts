import { describe, expect, it } from 'vitest'
import { ask, ids } from '../support/guarded-club'
import {
  adjustment,
  answered,
  audit,
  design,
  exposure,
  flag,
  membership,
  passed,
  person,
  policy,
  presence,
  registerLine,
  review,
  season,
  session,
  spell,
  theme,
  turn,
  turnWithSeat,
  voiding,
} from '../support/guarded-rows'

describe('rows as they should be are taken', () => {
  it.each<[string, () => string]>([
    ['a person', () => person('Kit')],
    ['a name of 80 characters', () => person('Ł'.repeat(80))],
    ['a season after the last', () => season('2027-07-01', '2028-06-30')],
    ['a membership of another time', () => membership('2020-01-01', '2026-07-31')],
    ['an agreement', () => adjustment({})],
    ['a design', () => design({})],
    ['a practice', () => session({ startsAt: '23:59', lengthSeconds: 0 })],
    ['a match', () => session({ kind: 'match', periods: '[{"start":0,"end":9}]' })],
    ['a line that touches another', () => registerLine({})],
    ['a voided line over another', () => registerLine({ fromSecond: 0, voidedAt: 'now()' })],
    ['a spell that touches another', () => spell({})],
    ['a turn with a seat', () => turnWithSeat({})],
    ['a turn without stations', () => turn({ stationCount: 0 })],
    ['a turn where a voided one stood', () => turn({ startSecond: 100, endSecond: 200 })],
    ['a turn that touches another', () => turn({ startSecond: 45, endSecond: 50 })],
    ['a pass', () => passed({})],
    ['a void of a turn', () => voiding(ids.turn)],
    ['a void of a pass', () => voiding(ids.passed)],
    ['an exposure', () => exposure({})],
    ['a presence', () => presence({})],
    ['a policy', () => policy({ ageLimit: 10 })],
    ['an open flag', () => flag({})],
    [
      'an acknowledged flag',
      () => flag({ status: 'acknowledged', acknowledgedById: ids.coach, ...answered }),
    ],
    ['a cleared flag', () => flag({ status: 'cleared', clearedAt: 'now()' })],
    ['a review', () => review({})],
    [
      'an answered review',
      () => review({ answer: 'So it is.', answeredById: ids.coach, answeredAt: 'now()' }),
    ],
    ['an audit row', () => audit({})],
    ['a theme under another', () => theme({ parentId: ids.childTheme })],
  ])('%s', async (_what, statement) => {
    expect(await ask(statement())).toBeNull()
  })
})
