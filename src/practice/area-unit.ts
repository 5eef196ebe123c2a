import type { AreaUnit } from '#practice/design-sheet'

/** The international yard, exactly (1959 agreement of the English-speaking countries' standards laboratories). */
export const metresInYard = 0.9144

/** Of one unit, in metres. */
const metresIn: Readonly<Record<AreaUnit, number>> = { m: 1, yd: metresInYard }

/** A length written in the unit, in metres. */
export function toMetres(length: number, unit: AreaUnit): number {
  return length * metresIn[unit]
}

/** A length of metres in the unit, without the dust of having been stored: 40 yards come back as 40. */
export function fromMetres(metres: number, unit: AreaUnit): number {
  return Math.round((metres / metresIn[unit]) * 1000) / 1000
}

/** Square metres in the unit's square. */
export function fromSquareMetres(squareMetres: number, unit: AreaUnit): number {
  return squareMetres / metresIn[unit] ** 2
}
