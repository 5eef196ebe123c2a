import type { AdaptationFor, AdaptationKind } from '#practice/adaptation'
import { fromMetres, fromSquareMetres } from '#practice/area-unit'
import type { DesignRound, Ending } from '#practice/design'
import type { AreaUnit } from '#practice/design-sheet'
import type { RoundKind } from '#practice/round-kind'
import { durationText } from '#ui/duration-text'
import { counted } from '#ui/plural'
import { words } from '#ui/words'

/** From the attackers' side. */
export const kindWords: Readonly<Record<RoundKind, string>> = {
  ...words.situation,
  free: 'free game',
  chosen: 'numbers chosen',
  mixed: 'different numbers',
  alone: 'nobody against us',
}

export const adaptationKindWords: Readonly<Record<AdaptationKind, string>> = {
  space: 'Space',
  task: 'Task',
  equipment: 'Equipment',
  people: 'People',
}

export const forWhomWords: Readonly<Record<AdaptationFor, string>> = {
  attack: 'the attackers',
  defend: 'the defenders',
  keep: 'the keeper',
  all: 'everyone',
}

export const unitWords: Readonly<Record<AreaUnit, string>> = { m: 'm', yd: 'yd' }

/** "30 × 24 m". */
export function sizeText(
  { areaLengthM, areaWidthM }: { readonly areaLengthM: number; readonly areaWidthM: number },
  unit: AreaUnit,
): string {
  return `${lengthText(areaLengthM, unit)} × ${lengthText(areaWidthM, unit)} ${unitWords[unit]}`
}

/** To the tenth. */
export function lengthText(metres: number, unit: AreaUnit): string {
  return String(Math.round(fromMetres(metres, unit) * 10) / 10)
}

/** "80 m²", in yards "80 m² (96 yd²)"; null: "–". */
export function squareText(squareMetres: number | null, unit: AreaUnit): string {
  if (squareMetres === null) return '–'
  const metres = `${Math.round(squareMetres)} m²`
  return unit === 'yd' ? `${metres} (${Math.round(fromSquareMetres(squareMetres, 'yd'))} yd²)` : metres
}

/** "6 turns of 40 s, 20 s between", "until the ball is dead, about 40 s". */
export function turnsText(round: DesignRound): string {
  if (round.isFreeGame) return `2 halves of ${durationText(round.turnSeconds)}, sides swapped`
  const length = round.isUntilDead
    ? `, each until the ball is dead, about ${durationText(round.turnSeconds)}`
    : ` of ${durationText(round.turnSeconds)}`
  const gap = round.gapSeconds > 0 && round.turnCount > 1 ? `, ${durationText(round.gapSeconds)} between` : ''
  return `${words.turns(round.turnCount)}${length}${gap}`
}

/** "Goal: 2 points to the attackers". */
export function endingText({ words: said, side, points }: Ending): string {
  return `${said}: ${counted(points, 'point')} to ${forWhomWords[side]}`
}

/** "children" for a span: "9 to 18", "12". */
export function spanText(from: number, to: number): string {
  return from === to ? String(from) : `${from} to ${to}`
}
