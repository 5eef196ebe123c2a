import type { AreaShape, DesignRound } from '#practice/design'
import { type DesignSheet, plainSheet } from '#practice/design-sheet'
import { demoId } from './ids'
import { type ThemeKey, themeId } from './programme'

export type DesignKey = 'lanes' | 'doors' | 'quickFinish' | 'bridge' | 'overTheLine'

/** The round with both sides whole, played as two equal halves with the roles swapped. */
export const freeGameTitle = 'Free game'
/** In these rounds the side with the ball chooses how many come to play. */
export const choiceTitle = 'Your choice of numbers'

export function designId(key: DesignKey): string {
  return demoId(`design/${key}`)
}

/** `3v2+1` is three attackers, two defenders and a keeper. */
function shape(text: string): AreaShape {
  const [attack = 0, defend = 0, keep = 0] = text.split(/[v+]/).map(Number)
  return { attack, defend, keep }
}

function round(title: string, turns: string, ...stations: readonly string[]): DesignRound {
  const [turnCount = 0, turnSeconds = 0] = turns.split('x').map(Number)
  return {
    title,
    turnCount,
    turnSeconds,
    gapSeconds: title === freeGameTitle ? 0 : 20,
    stations: stations.map(shape),
  }
}

const freeGame = round(freeGameTitle, '2x330', '5v5+1')

function design(
  key: DesignKey,
  theme: ThemeKey,
  parts: Omit<DesignSheet, 'id' | 'themeId' | keyof typeof plainSheet> & Partial<DesignSheet>,
): DesignSheet {
  return { ...plainSheet, ...parts, id: designId(key), themeId: themeId(theme) }
}

/** Our own five: small groups with uneven numbers, rising in size, a free game at the end. */
export const demoDesigns: readonly DesignSheet[] = [
  design('lanes', 'extraPlayer', {
    name: 'Lanes and the extra one',
    areaLengthM: 30,
    areaWidthM: 24,
    note: 'Three lanes first, then two areas side by side.',
    rounds: [
      round('Two against one in lanes', '6x40', '2v1', '2v1', '2v1'),
      round('Three against two to goal', '6x50', '3v2+1', '3v2'),
      round('Even numbers, same goals', '4x60', '3v3+1', '2v2'),
      freeGame,
    ],
  }),
  design('doors', 'findingSpace', {
    name: 'Door to door',
    areaLengthM: 34,
    areaWidthM: 26,
    note: 'A point through any door; doors far apart.',
    rounds: [
      round('Three against two across', '6x45', '3v2', '3v2'),
      round('Four against three to goal', '5x60', '4v3+1', '2v1'),
      round(choiceTitle, '4x60', '3v3+1', '2v2'),
      freeGame,
    ],
  }),
  design('quickFinish', 'finishing', {
    name: 'First look, first shot',
    areaLengthM: 22,
    areaWidthM: 24,
    note: 'Short distances; the next ball comes at once.',
    rounds: [
      round('One against one to goal', '8x30', '1v1+1', '1v1+1', '2v2'),
      round('Two against two, quick finish', '6x45', '2v2+1', '2v2', '1v1'),
      round('Three against two, late runner', '5x50', '3v2+1', '3v2'),
      freeGame,
    ],
  }),
  design('bridge', 'slowingDown', {
    name: 'Hold the bridge',
    areaLengthM: 26,
    areaWidthM: 20,
    note: 'The bridge is the middle third; nobody crosses it for free.',
    rounds: [
      round('One holds up two', '6x40', '2v1+1', '2v1', '2v1'),
      round('Two against three', '6x50', '2v3+1', '2v3'),
      round('Even numbers over the bridge', '4x60', '3v3+1', '2v2'),
      freeGame,
    ],
  }),
  design('overTheLine', 'changingOver', {
    name: 'Over the line',
    areaLengthM: 32,
    areaWidthM: 24,
    note: 'Won it? Over the line within five seconds.',
    rounds: [
      round('Break with three against two', '6x45', '3v2+1', '3v2'),
      round('Four against four with outlets', '5x70', '4v4+1', '1v1'),
      round('Two against three, then away', '4x50', '2v3', '2v3+1'),
      freeGame,
    ],
  }),
]
