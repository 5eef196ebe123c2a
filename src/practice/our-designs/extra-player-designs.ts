import {
  adapt,
  area,
  design,
  freeGame,
  goal,
  more,
  round,
  rule,
  won,
  yards,
} from '#practice/our-designs/design-parts'

// The extra player: who is free, and how that is found.

export const backToBack = design('backToBack', 'extraPlayer', {
  name: 'Back to back',
  ...yards(70, 40),
  isMirrored: true,
  sides: { names: ['Yellow', 'Blue'], swap: 'eachRound' },
  note: 'Both halves start on one call. Whoever waits keeps the points for both sides.\nAsk: who is free, and how do you know?',
  rounds: [
    {
      ...round('Three against two to the middle goals', '6x45', '3v2+1', '3v2+1'),
      endings: [goal(1), won(1, 'Won and over the end line')],
    },
    {
      ...round('Even numbers to the middle goals', '6x50', '3v3+1', '3v3+1'),
      endings: [goal(2), won(1, 'Won and over the end line')],
    },
    {
      ...round('Two against three', '6x45', '2v3+1', '2v3+1'),
      isUntilDead: true,
      endings: [goal(3), won(1, 'Won and over the end line')],
    },
    freeGame('2x360', '6v6+2'),
  ],
  adaptations: [
    adapt('space', 'Halves a quarter shorter', {
      harder: 'attack',
      why: 'Fewer touches before the shot; the free one has to be found at once.',
      changes: [area(0.75, 1)],
    }),
    adapt('task', 'Everyone touches it first', {
      harder: 'attack',
      why: 'The extra player has to move to be found, not wait to be.',
      changes: [rule('All attackers have touched the ball before a shot', 0)],
    }),
    adapt('equipment', 'Wider goals', {
      easier: 'attack',
      why: 'Shots from further away pay, so defenders have to come out.',
      changes: [rule('Goals half as wide again')],
    }),
    adapt('people', 'Without keepers', {
      easier: 'attack',
      why: 'For a day when nobody wishes to keep goal; only goals from inside the last third count.',
      changes: [more({ keep: -1 }), rule('Goals count from the last third only')],
    }),
  ],
})

export const keepItWarm = design('keepItWarm', 'extraPlayer', {
  name: 'Keep it warm',
  areaLengthM: 26,
  areaWidthM: 22,
  note: 'Keeping the ball with somebody free. The ball is a hot potato for whoever stands still.',
  rounds: [
    {
      ...round('Three keep it from one', '6x35', '3v1', '3v1', '3v1'),
      endings: [goal(1, 'Five passes'), won(1, 'Won and stopped dead')],
    },
    {
      ...round('Four keep it from two', '6x45', '4v2', '4v2'),
      endings: [goal(1, 'Six passes'), won(1, 'Won and out of the area')],
    },
    {
      ...round('Three against three and who is free', '5x60', '3v3', '3v3'),
      endings: [goal(3, 'Five passes'), won(1, 'Won and out of the area')],
    },
    freeGame('2x300', '6v6'),
  ],
  adaptations: [
    adapt('space', 'A quarter larger', {
      easier: 'attack',
      why: 'Time for a touch before the pass.',
      changes: [area(1.12, 1.12)],
    }),
    adapt('task', 'Two touches', {
      harder: 'attack',
      why: 'Where to next has to be known before it comes.',
      changes: [rule('Two touches each', 1), rule('Two touches each', 2)],
    }),
    adapt('equipment', 'A lighter, larger ball', {
      easier: 'all',
      why: 'It rolls slower and forgives a hurried foot; for the youngest.',
      changes: [rule('A size larger, light ball')],
    }),
    adapt('people', 'One more who chases', {
      harder: 'attack',
      why: 'Two lines to cut at once: the free one is never where he was.',
      changes: [more({ defend: 1 }, 0)],
    }),
  ],
})
