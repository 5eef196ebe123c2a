import { expect, it } from 'vitest'
import { focusShare } from '#exposure/focus-share'
import { ourDesigns } from '#practice/our-designs/our-designs'
import { ourThemes } from '#themes/our-themes'

const round = (stations: readonly (readonly [number, number, number])[], turns = 1) => ({
  turnCount: turns,
  turnSeconds: 60,
  stations: stations.map(([attack, defend, keep]) => ({ attack, defend, keep })),
})

it('is the part of the seat time with the theme’s roles in its situations', () => {
  // By hand: 2 v 1 with a keeper has 4 places, 2 of them attack with more of us.
  const rounds = [round([[2, 1, 1]])]
  expect(focusShare(rounds, { roles: ['attack'], situations: ['outnumbering'] })).toBe(0.5)
  expect(focusShare(rounds, { roles: ['attack'], situations: ['level'] })).toBe(0)
  expect(focusShare(rounds, { roles: ['defend'], situations: ['outnumbered'] })).toBe(0.25)
  expect(focusShare(rounds, { roles: [], situations: ['outnumbered'] })).toBe(0.25)
  expect(focusShare(rounds, { roles: ['keep'], situations: ['outnumbering'] })).toBe(0.25)
  expect(focusShare(rounds, { roles: ['attack', 'defend', 'keep'], situations: [] })).toBe(1)
})

it('weighs rounds by their time, and areas by their places', () => {
  // Three minutes of 1 v 1 in one area (2 places), one minute of 2 v 2 in two (8 places): 3·1 + 1·4 of 3·2 + 1·8.
  const rounds = [
    round([[1, 1, 0]], 3),
    round([
      [2, 2, 0],
      [2, 2, 0],
    ]),
  ]
  expect(focusShare(rounds, { roles: ['attack'], situations: [] })).toBe(7 / 14)
})

it('says nothing of a theme that is about anything, or where nothing is played', () => {
  expect(focusShare([round([[1, 1, 0]])], { roles: [], situations: [] })).toBeNull()
  expect(focusShare([], { roles: ['attack'], situations: [] })).toBeNull()
  // Nobody opposite: no situation.
  expect(focusShare([round([[3, 0, 0]])], { roles: ['attack'], situations: ['outnumbering'] })).toBe(0)
})

it('every design of ours has some of what its own theme is about', () => {
  for (const design of ourDesigns) {
    const focus = ourThemes.find(({ id }) => id === design.themeId)?.focus
    expect([design.name, (focus && focusShare(design.rounds, focus)) ?? 0]).not.toEqual([design.name, 0])
  }
})
