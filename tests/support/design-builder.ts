import type { AreaShape, DesignRound } from '#practice/design'
import { type DesignSheet, plainSheet } from '#practice/design-sheet'

/** `3v2+1` is three attackers, two defenders and a keeper. */
export function aShape(text: string): AreaShape {
  const [attack = 0, defend = 0, keep = 0] = text.split(/[v+]/).map(Number)
  return { attack, defend, keep }
}

/** Four turns of a minute with half a minute between, in areas written as `3v2+1`. */
export function aRound(areas: readonly string[], parts: Partial<DesignRound> = {}): DesignRound {
  return {
    title: 'A round',
    turnCount: 4,
    turnSeconds: 60,
    gapSeconds: 30,
    stations: areas.map(aShape),
    ...parts,
  }
}

/** On 30 by 20 m, with one round of two against one unless something else is said. */
export function aSheet(parts: Partial<DesignSheet> = {}): DesignSheet {
  return {
    ...plainSheet,
    id: '0198c0de-0000-7000-8000-000000000001',
    name: 'A design',
    themeId: null,
    areaLengthM: 30,
    areaWidthM: 20,
    rounds: [aRound(['2v1'])],
    ...parts,
  }
}
