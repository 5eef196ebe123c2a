import type { PlannedPractice } from '#ahead/term-plan'

/** Whether two plans say the same of every practice, in whatever order. */
export function isSamePlanned(one: readonly PlannedPractice[], other: readonly PlannedPractice[]): boolean {
  const of = new Map(other.map((own) => [own.sessionId, own]))
  return (
    one.length === other.length &&
    one.every(({ sessionId, themeId, designId, isHeld }) => {
      const own = of.get(sessionId)
      return own?.themeId === themeId && own.designId === designId && own.isHeld === isHeld
    })
  )
}
