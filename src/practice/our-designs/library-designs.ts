import { toMetres } from '#practice/area-unit'
import {
  adapt,
  area,
  areas,
  counts,
  design,
  freeGame,
  goal,
  more,
  type OurDesign,
  round,
  rule,
  sizes,
  turns,
  won,
} from '#practice/our-designs/design-parts'

const yards = (length: number, width: number) =>
  ({
    areaLengthM: toMetres(length, 'yd'),
    areaWidthM: toMetres(width, 'yd'),
    areaUnit: 'yd',
  }) as const

/** More of our own, all invented; no practice of the demo's season has used them yet. */
export const libraryDesigns: readonly OurDesign[] = [
  design('backToBack', 'extraPlayer', {
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
  }),
  design('outOfTheYard', 'findingSpace', {
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
  }),
  design('keepItWarm', 'extraPlayer', {
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
  }),
  design('doorOrWindow', 'attacking', {
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
  }),
  design('closeTheNet', 'winningBack', {
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
  }),
  design('threeLoudSeconds', 'changingOver', {
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
  }),
  design('lateLamp', 'finishing', {
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
  }),
  design('longWayRound', 'slowingDown', {
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
  }),
  design('farShore', 'findingSpace', {
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
  }),
  design('twoFerries', 'winningBack', {
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
  }),
]
