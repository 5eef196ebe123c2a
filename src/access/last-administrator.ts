import type { ViewerRole } from '#access/viewer'

export type AdultStanding = {
  readonly id: string
  readonly role: ViewerRole
  readonly hasAccess: boolean
  /** Has a sign-in of its own. */
  readonly canSignIn: boolean
}

/**
 * Whether the club would be left without an administrator if this one were none any more. One who has never signed in
 * does not stand in for one who does: the invitation may never be taken up.
 */
export function isLastAdministrator(adults: readonly AdultStanding[], personId: string): boolean {
  const administrators = adults.filter(({ role, hasAccess }) => role === 'administrator' && hasAccess)
  const leaving = administrators.find(({ id }) => id === personId)
  if (!leaving) return false
  return !administrators.some((one) => one.id !== personId && (one.canSignIn || !leaving.canSignIn))
}
