import {
  adapt,
  area,
  areas,
  counts,
  design,
  freeGame,
  goal,
  more,
  round,
  rule,
  turns,
  won,
  yards,
} from '#practice/our-designs/design-parts'

// Without the ball: winning it back, slowing it down, changing over.

export const closeTheNet = design('closeTheNet', 'winningBack', {
  name: 'Close the net',
  areaLengthM: 32,
  areaWidthM: 26,
  note: 'Pressing together. The defenders are three fishers with one net: nobody runs alone.\nCall “net!” when the ball is near a line.',
  rounds: [
    {
      ...round('Three close in on two', '6x40', '2v3', '2v3'),
      endings: [goal(2, 'Out of the net, over the end line'), won(1, 'Won within six seconds')],
    },
    {
      ...round('Three close in on three', '6x45', '3v3', '3v3'),
      endings: [goal(1, 'Over the end line'), won(2, 'Won within six seconds')],
    },
    {
      ...round('Three close in on four', '5x60', '4v3+1', '2v2'),
      endings: [goal(1), won(3, 'Won within six seconds, then a goal')],
    },
    freeGame('2x330', '5v5+1'),
  ],
  adaptations: [
    adapt('space', 'A third narrower', {
      easier: 'defend',
      why: 'The lines help: the net closes sooner.',
      changes: [area(1, 0.7)],
    }),
    adapt('task', 'Four seconds', {
      harder: 'defend',
      why: 'Only going all together is quick enough.',
      changes: [counts(won(3, 'Won within four seconds'))],
    }),
    adapt('equipment', 'A coloured zone along each line', {
      easier: 'defend',
      why: 'Everybody sees when to go: ball in the colour, net closes.',
      changes: [rule('Zones of two steps along the lines: the call to go')],
    }),
    adapt('people', 'A neutral who plays with the ball', {
      harder: 'defend',
      why: 'One more way out has to be shut.',
      changes: [more({ attack: 1 }, 0), rule('The neutral plays for whoever has the ball', 0)],
    }),
  ],
})

export const threeLoudSeconds = design('threeLoudSeconds', 'changingOver', {
  name: 'Three loud seconds',
  areaLengthM: 34,
  areaWidthM: 28,
  sides: { names: ['Green', 'Red'], swap: 'eachRound' },
  note: 'Transitions. When the ball changes hands everybody counts aloud to three: forward, or behind the ball, before three.',
  rounds: [
    {
      ...round('Two against two, and back', '6x40', '2v2+1', '2v2+1'),
      isUntilDead: true,
      endings: [goal(1), won(1, 'Won and over the half-way line before three')],
    },
    {
      ...round('Three against two, and back', '6x45', '3v2+1', '3v2+1'),
      isUntilDead: true,
      endings: [goal(1), won(2, 'Won and over the half-way line before three')],
    },
    {
      ...round('Even, and back', '5x60', '3v3+1', '3v3'),
      endings: [goal(2), won(2, 'Won and over the half-way line before three')],
    },
    freeGame('2x330', '6v6+1'),
  ],
  adaptations: [
    adapt('space', 'A nearer half-way line', {
      easier: 'defend',
      why: 'The first good pass is enough: success comes soon.',
      changes: [area(0.8, 1)],
    }),
    adapt('task', 'Loser fetches nothing', {
      harder: 'attack',
      why: 'A new ball from the coach at once: no time to be sad.',
      changes: [rule('The coach plays the next ball to the side that won it')],
    }),
    adapt('equipment', 'Balls on all four sides', {
      harder: 'all',
      why: 'The next one may come from anywhere: turn and look.',
      changes: [turns(1, 1.2), rule('The next ball comes from any side')],
    }),
    adapt('people', 'One waits on the half-way line', {
      easier: 'defend',
      why: 'The first pass has somebody to go to.',
      changes: [more({ defend: 1 }, 0), rule('One defender waits on the half-way line', 0)],
    }),
  ],
})

export const longWayRound = design('longWayRound', 'slowingDown', {
  name: 'The long way round',
  ...yards(34, 28),
  note: 'Defending one against one and two against two: show them the long way, to the side line.\nArm’s length, half turned, small steps.',
  rounds: [
    {
      ...round('One shows the way', '8x25', '1v1', '1v1', '1v1', '1v1'),
      isUntilDead: true,
      endings: [goal(1, 'Over the line in the middle part'), won(1, 'Out over the side line')],
    },
    {
      ...round('Two, one holds up and one covers', '6x40', '2v2', '2v2', '2v2'),
      endings: [goal(1, 'Over the line in the middle part'), won(1, 'Out over the side line, or won')],
    },
    {
      ...round('Two against three, hold on', '6x45', '3v2+1', '3v2+1'),
      endings: [goal(1), won(3, 'Held for fifteen seconds, or won')],
    },
    freeGame('2x330', '5v5+1'),
  ],
  adaptations: [
    adapt('space', 'Narrower lanes', {
      easier: 'defend',
      why: 'The side line is near and helps.',
      changes: [area(1, 0.85)],
    }),
    adapt('task', 'Hands behind the back', {
      harder: 'defend',
      why: 'Feet have to do the work, and nobody pulls a shirt.',
      changes: [rule('Defenders hold their hands behind their backs', 0)],
    }),
    adapt('equipment', 'A cone as the second defender', {
      easier: 'defend',
      why: 'It shows where cover would stand.',
      changes: [rule('A cone behind each defender shows where cover stands', 0)],
    }),
    adapt('people', 'An attacker more', {
      harder: 'defend',
      why: 'Now holding up is all there is, until help comes.',
      changes: [more({ attack: 1 }, 1), areas(-1, 1)],
    }),
  ],
})

export const twoFerries = design('twoFerries', 'winningBack', {
  name: 'Two ferries',
  areaLengthM: 36,
  areaWidthM: 26,
  sides: { names: ['White', 'Orange'], swap: 'eachRound' },
  note: 'Winning it back at once: whoever loses the ball has six seconds before it is ferried to the other half.',
  rounds: [
    {
      ...round('Three against two at each landing', '6x40', '3v2', '3v2'),
      endings: [goal(1, 'Six passes'), won(1, 'Won and ferried across')],
    },
    {
      ...round('Three against three at each landing', '6x45', '3v3', '3v3'),
      endings: [goal(2, 'Five passes'), won(1, 'Won and ferried across')],
    },
    {
      ...round('Two hunted by three', '6x40', '2v3', '2v3'),
      endings: [goal(3, 'Four passes'), won(1, 'Won and ferried across')],
    },
    freeGame('2x330', '6v6'),
  ],
  adaptations: [
    adapt('space', 'A sixth smaller', {
      easier: 'defend',
      why: 'The nearest is always near enough.',
      changes: [area(0.9, 0.92)],
    }),
    adapt('task', 'Back within six seconds counts', {
      harder: 'attack',
      why: 'Losing it is not the end of the turn: hunt at once.',
      changes: [rule('Won back within six seconds, the turn goes on')],
    }),
    adapt('equipment', 'Two balls at hand', {
      harder: 'all',
      why: 'A ball that flies away does not end the hunt.',
      changes: [turns(1.2, 1), rule('The coach plays a second ball when the first flies out')],
    }),
    adapt('people', 'A hunter more', {
      harder: 'attack',
      why: 'Every pass has to be played under pressure.',
      changes: [more({ defend: 1 }, 0)],
    }),
  ],
})
