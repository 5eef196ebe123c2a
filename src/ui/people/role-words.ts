import type { ViewerRole } from '#access/viewer'

/** What each role may see and do, for whoever gives it. */
export const roleMeans: Readonly<Record<ViewerRole, string>> = {
  administrator: 'Arrange who belongs to the club, answer families, and see all that a head coach sees.',
  headCoach: 'See all squads, their reviews and the policy.',
  coach: 'See and write down their own squads.',
  helper: 'Tap at the practices of their squads, on the day. See nothing else.',
  guardian: 'Read the page of their own child.',
}

export const roleTitles: Readonly<Record<ViewerRole, string>> = {
  administrator: 'Administrators',
  headCoach: 'Head coaches',
  coach: 'Coaches',
  helper: 'Helpers',
  guardian: 'Parents and guardians',
}
