import type { Adaptation, DesignChange } from '#practice/adaptation'
import type { DesignRound } from '#practice/design'
import type { DraftDesign } from '#practice/design-faults'

/** What a new design begins with: an area as it is usual for a small group, one round to be changed, and a free game. */
export const firstDraft: DraftDesign = {
  name: '',
  areaLengthM: 30,
  areaWidthM: 20,
  areaUnit: 'm',
  isMirrored: false,
  hasHeading: false,
  note: '',
  sides: null,
  adaptations: [],
  rounds: [plainRound(1), freeGameRound()],
}

/** Common practice, no source: six turns of three quarters of a minute. */
export function plainRound(number: number): DesignRound {
  return {
    title: `Round ${number}`,
    turnCount: 6,
    turnSeconds: 45,
    gapSeconds: 20,
    stations: [{ attack: 2, defend: 1, keep: 0 }],
  }
}

function freeGameRound(): DesignRound {
  return {
    title: 'Free game',
    turnCount: 2,
    turnSeconds: 300,
    gapSeconds: 0,
    stations: [{ attack: 4, defend: 4, keep: 1 }],
    keepersStay: true,
    isFreeGame: true,
  }
}

/** An adaptation that does one thing and says nothing yet. `id` must be new in its design. */
export function plainAdaptation(id: string): Adaptation {
  return {
    id,
    kind: 'space',
    title: '',
    makes: 'harder',
    forWhom: 'attack',
    why: '',
    changes: [plainChange('area')],
  }
}

/** A change of a kind as it begins; those that name a round name every one. */
export function plainChange(what: DesignChange['what']): DesignChange {
  switch (what) {
    case 'area':
      return { what, lengthTimes: 0.75, widthTimes: 1 }
    case 'places':
      return { what, round: null, attack: 0, defend: 1, keep: 0 }
    case 'areas':
      return { what, round: null, by: 1 }
    case 'turns':
      return { what, round: null, secondsTimes: 0.75, countTimes: 1 }
    case 'ending':
      return { what, round: null, ending: { id: 'line', words: '', side: 'defend', points: 1 } }
    case 'condition':
      return { what, round: null, words: '' }
  }
}

/** The first of "e1", "e2" … that is not taken. */
export function freeId(letter: string, taken: readonly string[]): string {
  let number = taken.length + 1
  while (taken.includes(`${letter}${number}`)) number += 1
  return `${letter}${number}`
}
