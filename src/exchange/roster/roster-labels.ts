import type { RosterField } from '#exchange/roster/roster-entry'

/** What the columns are called where a person maps them. */
export const rosterLabels: Readonly<Record<RosterField, string>> = {
  name: 'Name',
  firstName: 'First name',
  lastName: 'Last name',
  shirt: 'Shirt number (only tells players apart)',
  code: 'Code',
  keeps: 'May keep goal',
  wantsToKeep: 'Wants to keep goal',
  firstDay: 'Member from',
  lastDay: 'Member to',
}
