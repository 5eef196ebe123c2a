import {
  adapt,
  area,
  areas,
  design,
  freeGame,
  goal,
  more,
  round,
  rule,
  sizes,
  turns,
  won,
  yards,
} from '#practice/our-designs/design-parts'

// With the ball: space, the way forward, the finish.

export const outOfTheYard = design('outOfTheYard', 'findingSpace', {
  name: 'Out of the yard',
  areaLengthM: 36,
  areaWidthM: 28,
  note: 'Playing out from our own goal. The attackers start beside it with the keeper’s ball and play away from it.\nWide first, then forward.',
  rounds: [
    {
      ...round('Three against one, out of the yard', '6x40', '3v1+1', '3v1+1'),
      endings: [goal(1, 'Over the half-way line with the ball'), won(1, 'Won and a goal')],
    },
    {
      ...round('Three against two, out of the yard', '6x45', '3v2+1', '3v2+1'),
      endings: [goal(2, 'Over the half-way line with the ball'), won(1, 'Won and a goal')],
    },
    {
      ...round('As many as they are', '5x60', '4v4+1', '2v2'),
      ...sizes('coach', '4v3+1 for 2', '4v4+1 for 3'),
      endings: [goal(2, 'Over the half-way line with the ball'), won(1, 'Won and a goal')],
    },
    freeGame('2x330', '5v5+1'),
  ],
  adaptations: [
    adapt('space', 'A wider yard', {
      easier: 'attack',
      why: 'The two beside the goal have room to receive facing forward.',
      changes: [area(1, 1.25)],
    }),
    adapt('task', 'Pressing from the first pass', {
      harder: 'attack',
      why: 'There is no time for a second look: the first has to come before the ball.',
      changes: [rule('Defenders may go as soon as the keeper has played')],
    }),
    adapt('task', 'A line to wait behind', {
      easier: 'attack',
      why: 'While it is new, the first pass is free.',
      changes: [rule('Defenders wait behind the line until the first touch')],
    }),
    adapt('equipment', 'Two gates on the half-way line', {
      harder: 'attack',
      why: 'Over the line is not enough, it has to be the right place: head up.',
      changes: [rule('Out counts through a gate only')],
    }),
    adapt('people', 'A second defender in the first round', {
      harder: 'attack',
      why: 'The next step for those who come out every time.',
      changes: [more({ defend: 1 }, 0)],
    }),
  ],
})

export const doorOrWindow = design('doorOrWindow', 'attacking', {
  name: 'Door or window',
  areaLengthM: 28,
  areaWidthM: 26,
  note: 'One against one. Two ways past: through the door (wide, one point) or the window (narrow, two).\nPairs of about the same speed, changed each round.',
  rounds: [
    {
      ...round('One against one, five lanes', '8x25', '1v1', '1v1', '1v1', '1v1', '1v1'),
      isUntilDead: true,
      endings: [
        goal(1, 'Through the door'),
        { id: 'window', words: 'Through the window', side: 'attack', points: 2 },
        won(1, 'Won and back over the start'),
      ],
    },
    {
      ...round('One against one to goal', '6x30', '1v1+1', '1v1+1', '1v1+1'),
      isUntilDead: true,
      endings: [goal(2), won(1, 'Won and back over the start')],
    },
    {
      ...round('One or two to beat', '6x30', '1v2', '1v2', '1v2', '1v2'),
      isUntilDead: true,
      ...sizes('attack', '1v1 for 1', '1v2 for 3'),
      endings: [goal(1, 'Through the door'), won(1, 'Won and back over the start')],
    },
    freeGame('2x300', '5v5+1'),
  ],
  adaptations: [
    adapt('space', 'Wider lanes', {
      easier: 'attack',
      why: 'A change of direction opens the whole lane.',
      changes: [area(1, 1.2), areas(-1, 0)],
    }),
    adapt('task', 'The defender starts beside, not in front', {
      easier: 'attack',
      why: 'Speed alone can win it: for those who do not dare yet.',
      changes: [rule('The defender starts beside the attacker', 0)],
    }),
    adapt('task', 'Only the window counts', {
      harder: 'attack',
      why: 'The defender knows where it goes; now a feint is needed.',
      changes: [rule('Only the window counts', 0)],
    }),
    adapt('people', 'Longer breaks, more pairs', {
      easier: 'all',
      why: 'One against one tires like nothing else: shorter turns keep them sharp.',
      changes: [turns(0.8, 1)],
    }),
  ],
})

export const lateLamp = design('lateLamp', 'finishing', {
  name: 'The late lamp',
  areaLengthM: 28,
  areaWidthM: 28,
  note: 'Finishing from a ball pulled back. One goes to the near post, one to the far one, and the late lamp comes last and is seen first.\nOn the ground: no high balls.',
  rounds: [
    {
      ...round('Two and the pull-back', '8x30', '2v1+1', '2v1+1', '1v1'),
      isUntilDead: true,
      endings: [goal(1), won(1, 'Won and played out wide')],
    },
    {
      ...round('Three and the late lamp', '6x40', '3v2+1', '3v2'),
      isUntilDead: true,
      endings: [
        goal(1),
        { id: 'late', words: 'Goal by whoever came last', side: 'attack', points: 2 },
        won(1, 'Won and played out wide'),
      ],
    },
    {
      ...round('Pick how many come', '5x50', '3v3+1', '2v2'),
      ...sizes('attack', '3v2+1 for 1', '3v3+1 for 2', '2v3+1 for 3'),
      endings: [goal(1), won(1, 'Won and played out wide')],
    },
    freeGame('2x330', '5v5+1'),
  ],
  adaptations: [
    adapt('space', 'A strip for the one out wide', {
      easier: 'attack',
      why: 'Nobody may go in there: the pull-back comes in peace.',
      changes: [area(1, 1.2), rule('Only the one with the ball may be in the strip')],
    }),
    adapt('task', 'One touch in front of goal', {
      harder: 'attack',
      why: 'Arriving is everything when there is no second touch.',
      changes: [rule('One touch for whoever shoots')],
    }),
    adapt('equipment', 'Two small goals and no keeper', {
      easier: 'attack',
      why: 'For a day without a keeper: near post or far post is the choice.',
      changes: [more({ keep: -1 }), rule('Two small goals, near post and far post')],
    }),
    adapt('people', 'One defender more in the first round', {
      harder: 'attack',
      why: 'The first runner has to take somebody along.',
      changes: [more({ defend: 1 }, 0)],
    }),
  ],
})

export const farShore = design('farShore', 'findingSpace', {
  name: 'The far shore',
  ...yards(44, 36),
  note: 'Changing sides. Two goals on each shore: when one is crowded, the other is empty.',
  rounds: [
    {
      ...round('Four against two, both shores', '6x45', '4v2', '4v2'),
      endings: [
        goal(1, 'A small goal'),
        { id: 'switched', words: 'Goal after a change of sides', side: 'attack', points: 2 },
      ],
    },
    {
      ...round('Four against three, both shores', '6x50', '4v3', '3v2'),
      endings: [goal(1, 'A small goal'), won(1, 'Won and any small goal')],
    },
    {
      ...round('Even, both shores', '5x60', '3v3', '3v3'),
      endings: [goal(2, 'A small goal'), won(1, 'Won and any small goal')],
    },
    freeGame('2x330', '6v6'),
  ],
  adaptations: [
    adapt('space', 'A fifth wider', {
      harder: 'defend',
      why: 'The far shore is really far: shifting together is needed.',
      changes: [area(1, 1.2)],
    }),
    adapt('task', 'Only the far shore counts', {
      harder: 'attack',
      why: 'Where it began it may not end.',
      changes: [rule('A goal counts on the side where the ball did not start', 1)],
    }),
    adapt('equipment', 'A third goal in the middle', {
      easier: 'attack',
      why: 'There is always one that is free.',
      changes: [rule('A third small goal in the middle of each line')],
    }),
    adapt('people', 'One defender fewer', {
      easier: 'attack',
      why: 'Time to see the far side before it closes.',
      changes: [more({ defend: -1 }, 1)],
    }),
  ],
})
