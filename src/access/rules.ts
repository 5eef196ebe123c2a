import type { ViewerRole } from '#access/viewer'

/** How far a role reaches in an action: every object of the club, only its own squads, only its own children, or nothing. */
export type Reach = 'club' | 'ownSquads' | 'ownChildren' | 'nothing'

export const actions = [
  'seeSquad',
  'seePlayer',
  'writeSession',
  'planPractice',
  'seeLuck',
  'seeReviewedLuck',
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
  'seeFormats',
  'changeFormats',
  'seePolicy',
  'changePolicy',
  'tapAtPitch',
  'seeFamilyPage',
  'confirmFamilyPage',
  'inviteFamily',
  'askAboutChild',
  'arrangeClub',
  'managePeople',
  'answerRequests',
  'seeAudit',
] as const
export type Action = (typeof actions)[number]

const nobody = {
  administrator: 'nothing',
  headCoach: 'nothing',
  coach: 'nothing',
  helper: 'nothing',
  guardian: 'nothing',
} as const
const administering = { ...nobody, administrator: 'club' } as const
const heading = { ...administering, headCoach: 'club' } as const
const ownSquads = {
  ...nobody,
  administrator: 'ownSquads',
  headCoach: 'ownSquads',
  coach: 'ownSquads',
} as const
const coaching = { ...heading, coach: 'ownSquads' } as const

/** Who may do what: the one table that the checks, and the tests of the checks, are made from. */
export const reachOf: Readonly<Record<Action, Readonly<Record<ViewerRole, Reach>>>> = {
  seeSquad: coaching,
  seePlayer: coaching,
  writeSession: coaching,
  // Pairs of players are part of it: nobody but coaches sees them.
  planPractice: coaching,
  // Luck or habit: whoever coaches the squad sees it first; the head coach of every squad once its coach had the days of the review.
  seeLuck: ownSquads,
  seeReviewedLuck: { ...nobody, headCoach: 'club' },
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
  // How matches are played, as the club has written it down; a squad's coach changes them for one match in its plan.
  seeFormats: coaching,
  changeFormats: heading,
  seePolicy: coaching,
  changePolicy: heading,
  // A helper taps what happens and sees nothing else of the book.
  tapAtPitch: { ...coaching, helper: 'ownSquads' },
  seeFamilyPage: { ...coaching, guardian: 'ownChildren' },
  // What a family will read, and when it changes.
  confirmFamilyPage: coaching,
  // Handing a link to a guardian whom the administrator has recorded; and taking it back.
  inviteFamily: coaching,
  askAboutChild: { ...nobody, guardian: 'ownChildren' },
  // Seasons, terms and squads.
  arrangeClub: heading,
  // Adults, their roles and squads, and whose guardians they are.
  managePeople: administering,
  // What families ask, copies, corrections, erasures, consents and how long anything is kept.
  answerRequests: administering,
  seeAudit: administering,
}
