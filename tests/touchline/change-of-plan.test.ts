import { describe, expect, test } from 'vitest'
import type { LinePlaces } from '#match/format/match-format'
import type { Line } from '#match/match'
import { changeOfPlan } from '#touchline/change-of-plan'
import type { PlacedPlayer } from '#touchline/match-deed'

/** "Ka Bb Mc Fd": the letter of the line, then who. */
const letters: Readonly<Record<string, Line>> = { K: 'keeper', B: 'back', M: 'middle', F: 'forward' }
const set = (text: string): PlacedPlayer[] =>
  text.split(' ').map((mark) => ({ line: letters[mark[0] ?? ''] ?? 'middle', playerId: mark.slice(1) }))
const say = (on: readonly PlacedPlayer[]) =>
  on.map(({ line, playerId }) => `${(line[0] ?? '').toUpperCase()}${playerId}`).join(' ')
const places: LinePlaces = { keeper: 1, back: 1, middle: 1, forward: 1 }

function change(given: {
  before: string | null
  planned: string
  on: string
  gone?: string
  keeps?: string
  places?: LinePlaces
}) {
  const made = changeOfPlan(
    { on: set(given.planned), before: given.before === null ? null : set(given.before) },
    {
      on: set(given.on),
      places: given.places ?? places,
      isAble: (id) => !(given.gone ?? '').includes(id),
      keeps: (id) => (given.keeps ?? 'a').includes(id),
    },
  )
  return {
    off: made.off.join(),
    on: say(made.on),
    moved: say(made.moved),
    missing: made.missing.join(),
    after: say(made.after),
  }
}

describe('changeOfPlan', () => {
  test('as planned: who goes off, who comes on, who moves', () => {
    expect(change({ before: 'Ka Bb Mc Fd', planned: 'Ka Bb Md Fe', on: 'Ka Bb Mc Fd' })).toEqual({
      ...{ off: 'c', on: 'Fe', moved: 'Md', missing: '' },
      after: 'Ka Bb Md Fe',
    })
  })

  test('after a change that nobody planned, only the plan’s difference is made', () => {
    const made = change({ before: 'Ka Bb Mc Fd', planned: 'Ka Be Mc Fd', on: 'Ka Bb Mx Fd' })
    expect(made).toMatchObject({ off: 'b', on: 'Be', after: 'Ka Mx Fd Be' })
  })

  test('who should come on is not there: who should go off stays', () => {
    const made = change({ before: 'Ka Bb Mc Fd', planned: 'Ka Bb Me Fd', on: 'Ka Bb Mc Fd', gone: 'e' })
    expect(made).toMatchObject({ off: '', on: '', missing: 'e', after: 'Ka Bb Fd Mc' })
  })

  test('a place was empty: whoever comes on fills it, and nobody goes off', () => {
    const made = change({ before: 'Ka Bb Mc Fd', planned: 'Ka Bb Mc Fe', on: 'Ka Mc Fd', gone: 'b' })
    expect(made).toMatchObject({ on: 'Fe', after: 'Ka Mc Fe Bd', off: '' })
  })

  test('one fewer may be on: whom the plan does not name goes', () => {
    const made = change({
      ...{ before: 'Ka Bb Mc Fd', planned: 'Ka Bb Mc Fe', on: 'Ka Bb Mx' },
      places: { ...places, forward: 0 },
    })
    expect(made.after).toBe('Ka Bb Fe')
  })

  test('the new keeper is not there: the old one stays in goal', () => {
    const made = change({ before: null, planned: 'Ke Bb Mc Fd', on: 'Ka Bb Mc Fd', gone: 'e', keeps: 'ae' })
    expect(made.after).toBe('Bb Mc Fd Ka')
  })

  test('at a kick-off the plan’s set stands, whatever was before', () => {
    expect(change({ before: null, planned: 'Ka Bx My Fz', on: 'Ka Bb Mc Fd' })).toMatchObject({
      off: 'b,c,d',
      after: 'Ka Bx My Fz',
    })
  })
})
