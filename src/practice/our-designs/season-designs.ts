import {
  adapt,
  area,
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

/** In these rounds the side with the ball chooses how many come to play. */
export const choiceTitle = 'Your choice of numbers'

const lastGame = freeGame('2x330', '5v5+1')
const overLine = won(1, 'Won and over the other line')

/** Five of our own, which the demo's season was played by: small groups with uneven numbers, rising in size, a free game at the end. */
export const seasonDesigns: readonly OurDesign[] = [
  design('lanes', 'extraPlayer', {
    name: 'Lanes and the extra one',
    areaLengthM: 30,
    areaWidthM: 24,
    note: 'Three lanes first, then two areas side by side.',
    rounds: [
      {
        ...round('Two against one in lanes', '6x40', '2v1', '2v1', '2v1'),
        endings: [goal(1, 'Stopped on the end line'), overLine],
      },
      { ...round('Three against two to goal', '6x50', '3v2+1', '3v2'), endings: [goal(1), overLine] },
      { ...round('Even numbers, same goals', '4x60', '3v3+1', '2v2'), endings: [goal(2), overLine] },
      lastGame,
    ],
    adaptations: [
      adapt('space', 'A third wider', {
        easier: 'attack',
        why: 'One defender cannot close both ways, so the pass to the free one opens early.',
        changes: [area(1, 1.33)],
      }),
      adapt('task', 'Pass before the middle line', {
        harder: 'attack',
        why: 'The carrier has to draw the defender soon instead of running past.',
        changes: [rule('The first pass before the middle line')],
      }),
      adapt('equipment', 'Two small goals on the end line', {
        easier: 'attack',
        why: 'Two ways to finish, and the defender has to choose.',
        changes: [rule('Two small goals, one in each corner of the end line')],
      }),
      adapt('people', 'A second defender who starts late', {
        harder: 'attack',
        why: 'The extra one is only extra for five seconds, so the first pass has to be quick.',
        changes: [more({ defend: 1 }, 0), rule('The second defender starts after five seconds', 0)],
      }),
    ],
  }),
  design('doors', 'findingSpace', {
    name: 'Door to door',
    areaLengthM: 34,
    areaWidthM: 26,
    note: 'A point through any door; doors far apart.',
    rounds: [
      {
        ...round('Three against two across', '6x45', '3v2', '3v2'),
        endings: [goal(1, 'Through a door to a friend'), won(1, 'Won and dribbled through a door')],
      },
      {
        ...round('Four against three to goal', '5x60', '4v3+1', '2v1'),
        endings: [goal(1), won(1, 'Won and dribbled through a door')],
      },
      {
        ...round(choiceTitle, '4x60', '3v3+1', '2v2'),
        ...sizes('attack', '3v2+1 for 1', '3v3+1 for 2', '2v3+1 for 3'),
        endings: [goal(1), won(1, 'Won and dribbled through a door')],
      },
      lastGame,
    ],
    adaptations: [
      adapt('space', 'A quarter narrower', {
        harder: 'attack',
        why: 'Less room beside the ball: looking up before it comes pays more.',
        changes: [area(1, 0.75)],
      }),
      adapt('task', 'Not the same door twice', {
        harder: 'attack',
        why: 'Everybody has to look for the next door while the ball is still on its way.',
        changes: [rule('Never the same door twice running')],
      }),
      adapt('equipment', 'Two doors more', {
        easier: 'attack',
        why: 'There is always one that nobody guards.',
        changes: [rule('Two more doors, on the long sides')],
      }),
      adapt('people', 'One defender fewer in the first round', {
        easier: 'attack',
        why: 'Time to lift the head; for the first weeks.',
        changes: [more({ defend: -1 }, 0)],
      }),
    ],
  }),
  design('quickFinish', 'finishing', {
    name: 'First look, first shot',
    areaLengthM: 22,
    areaWidthM: 24,
    note: 'Short distances; the next ball comes at once.',
    rounds: [
      {
        ...round('One against one to goal', '8x30', '1v1+1', '1v1+1', '2v2'),
        isUntilDead: true,
        endings: [goal(1), won(1, 'Won and out over the start line')],
      },
      {
        ...round('Two against two, quick finish', '6x45', '2v2+1', '2v2', '1v1'),
        isUntilDead: true,
        endings: [goal(2), won(1, 'Won and out over the start line')],
      },
      {
        ...round('Three against two, late runner', '5x50', '3v2+1', '3v2'),
        endings: [goal(1), { id: 'late', words: 'Goal by the late runner', side: 'attack', points: 2 }],
      },
      lastGame,
    ],
    adaptations: [
      adapt('space', 'A quarter longer', {
        harder: 'attack',
        why: 'The defender has time to come back, so the first touch has to go forward.',
        changes: [area(1.25, 1)],
      }),
      adapt('task', 'First time counts double', {
        harder: 'attack',
        why: 'It asks for the look before the ball comes, not after.',
        changes: [counts({ id: 'first', words: 'Goal with the first touch', side: 'attack', points: 3 })],
      }),
      adapt('equipment', 'A ball ready at each post', {
        easier: 'attack',
        why: 'Nobody fetches: more finishes in the same time.',
        changes: [turns(1, 1.25), rule('A new ball from the post as soon as one is dead')],
      }),
      adapt('people', 'A neutral passer beside the goal', {
        easier: 'attack',
        why: 'Somebody to bounce the ball off, so that the shot comes facing goal.',
        changes: [more({ attack: 1 }, 1), rule('The one beside the goal only passes', 1)],
      }),
    ],
  }),
  design('bridge', 'slowingDown', {
    name: 'Hold the bridge',
    areaLengthM: 26,
    areaWidthM: 20,
    note: 'The bridge is the middle third; nobody crosses it for free.',
    rounds: [
      {
        ...round('One holds up two', '6x40', '2v1+1', '2v1', '2v1'),
        endings: [goal(1, 'Over the bridge with the ball'), won(2, 'Held up until the coach calls')],
      },
      {
        ...round('Two against three', '6x50', '2v3+1', '2v3'),
        endings: [goal(2, 'Over the bridge with the ball'), won(1, 'Won on the bridge')],
      },
      {
        ...round('Even numbers over the bridge', '4x60', '3v3+1', '2v2'),
        endings: [goal(1), won(1, 'Won on the bridge')],
      },
      lastGame,
    ],
    adaptations: [
      adapt('space', 'A narrower bridge', {
        easier: 'defend',
        why: 'Fewer ways past: holding up works, and whoever is new to it feels that.',
        changes: [area(1, 0.8)],
      }),
      adapt('task', 'Ten seconds are enough', {
        easier: 'defend',
        why: 'Delay alone scores, so nobody dives in.',
        changes: [counts(won(2, 'Held up for ten seconds'))],
      }),
      adapt('equipment', 'Cones for a side gate', {
        harder: 'defend',
        why: 'A second way to watch teaches standing half turned.',
        changes: [rule('A side gate counts as over the bridge')],
      }),
      adapt('people', 'The second defender comes from behind', {
        harder: 'defend',
        why: 'The first has to wait for help, which is the point.',
        changes: [more({ defend: 1 }, 0), rule('The second defender starts behind the attackers', 0)],
      }),
    ],
  }),
  design('overTheLine', 'changingOver', {
    name: 'Over the line',
    areaLengthM: 32,
    areaWidthM: 24,
    note: 'Won it? Over the line within five seconds.',
    rounds: [
      {
        ...round('Break with three against two', '6x45', '3v2+1', '3v2'),
        endings: [goal(1), won(1, 'Won and over the line within five seconds')],
      },
      {
        ...round('Four against four with outlets', '5x70', '4v4+1', '1v1'),
        endings: [goal(1), won(2, 'Won and over the line within five seconds')],
      },
      {
        ...round('Two against three, then away', '4x50', '2v3', '2v3+1'),
        endings: [goal(2), won(1, 'Won and over the line within five seconds')],
      },
      lastGame,
    ],
    adaptations: [
      adapt('space', 'A longer area', {
        harder: 'defend',
        why: 'The way to the line is longer: the first pass forward matters more.',
        changes: [area(1.25, 1)],
      }),
      adapt('task', 'Eight seconds to the line', {
        easier: 'defend',
        why: 'Time for one more pass while it is new.',
        changes: [counts(won(1, 'Won and over the line within eight seconds'))],
      }),
      adapt('task', 'No way back for the ball', {
        harder: 'attack',
        why: 'Whoever has just won it has to look forward first.',
        changes: [rule('After winning it, no pass back')],
      }),
      adapt('people', 'An outlet on the line', {
        easier: 'defend',
        why: 'Somebody to aim at in the first second.',
        changes: [more({ defend: 1 }, 0), rule('One defender stays on the line as an outlet', 0)],
      }),
    ],
  }),
]
