import type { ViewerRole } from '#access/viewer'

/** What each role may see and do, for whoever gives it. */
export const roleMeans: Readonly<Record<ViewerRole, string>> = {
  administrator: 'Adults, families’ requests, and all that a head coach sees.',
  headCoach: 'All squads, their reviews and the policy.',
  coach: 'Its own squads.',
  helper: 'Taps at the practices of its squads, on the day. Sees nothing else.',
  guardian: 'The page of its own child.',
}

export const roleTitles: Readonly<Record<ViewerRole, string>> = {
  administrator: 'Administrators',
  headCoach: 'Head coaches',
  coach: 'Coaches',
  helper: 'Helpers',
  guardian: 'Parents and guardians',
}
