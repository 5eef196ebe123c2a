import type { ViewerRole } from '#access/viewer'

/** How far a role reaches in an action: every object of the club, only its own squads, only its own children, or nothing. */
export type Reach = 'club' | 'ownSquads' | 'ownChildren' | 'nothing'

export const actions = [
  'seeSquad',
  'seePlayer',
  'writeSession',
  'planPractice',
  'answerFlag',
  'importFiles',
  'exportFiles',
  'seeReview',
  'answerReview',
  'openReview',
  'handOverSquad',
  'changePlayer',
  'changeProgramme',
  'changeDesign',
  'seePolicy',
  'changePolicy',
  'seeFamilyPage',
] as const
export type Action = (typeof actions)[number]

const coaching = {
  administrator: 'club',
  headCoach: 'club',
  coach: 'ownSquads',
  helper: 'nothing',
  guardian: 'nothing',
} as const
const heading = {
  administrator: 'club',
  headCoach: 'club',
  coach: 'nothing',
  helper: 'nothing',
  guardian: 'nothing',
} as const

/** Who may do what: the one table that the checks, and the tests of the checks, are made from. */
export const reachOf: Readonly<Record<Action, Readonly<Record<ViewerRole, Reach>>>> = {
  seeSquad: coaching,
  seePlayer: coaching,
  writeSession: coaching,
  // Pairs of players are part of it: nobody but coaches sees them.
  planPractice: coaching,
  answerFlag: coaching,
  importFiles: coaching,
  exportFiles: coaching,
  // A coach sees the review of its own squads, and can answer it, before it is final.
  seeReview: coaching,
  answerReview: coaching,
  openReview: heading,
  handOverSquad: heading,
  changePlayer: coaching,
  // Themes are the club's, and every coach of it writes them; the programme is the squad's own.
  changeProgramme: coaching,
  // Designs are the club's; every coach of it copies and edits them.
  changeDesign: coaching,
  seePolicy: coaching,
  changePolicy: heading,
  seeFamilyPage: { ...coaching, guardian: 'ownChildren' },
}
