import { describe, expect, it } from 'vitest'
import { demand } from '#access/demand'
import { type AccessObject, may, mayEver } from '#access/may'
import { type Action, actions, reachOf } from '#access/rules'
import { type Viewer, type ViewerRole, viewerRoles } from '#access/viewer'
import { AppError } from '#common/app-error'

const ownSquad = 'squad-own'
const otherSquad = 'squad-other'
const ownChild = 'child-own'
const otherChild = 'child-other'

function aViewer(role: ViewerRole): Viewer {
  return {
    clubId: 'club',
    personId: 'person',
    name: 'Somebody',
    role,
    squadIds: role === 'coach' || role === 'helper' ? [ownSquad] : [],
    playerIds: role === 'guardian' ? [ownChild] : [],
  }
}

const objects: Readonly<Record<string, AccessObject>> = {
  club: { kind: 'club' },
  ownSquad: { kind: 'squad', squadId: ownSquad },
  otherSquad: { kind: 'squad', squadId: otherSquad },
  ownChild: { kind: 'player', playerId: ownChild, squadIds: [ownSquad] },
  otherChild: { kind: 'player', playerId: otherChild, squadIds: [otherSquad] },
}

// Written out by hand and not derived from the table, so that a slip in the table shows.
const coachingReach: Record<ViewerRole, readonly string[]> = {
  administrator: ['club', 'ownSquad', 'otherSquad', 'ownChild', 'otherChild'],
  headCoach: ['club', 'ownSquad', 'otherSquad', 'ownChild', 'otherChild'],
  coach: ['ownSquad', 'ownChild'],
  helper: [],
  guardian: [],
}
const headingReach = { ...coachingReach, coach: [] }
const nobodysReach = { administrator: [], headCoach: [], coach: [], helper: [], guardian: [] }
const administratorsReach = { ...nobodysReach, administrator: coachingReach.administrator }
const expected: Record<Action, Record<ViewerRole, readonly string[]>> = {
  seeSquad: coachingReach,
  seePlayer: coachingReach,
  writeSession: coachingReach,
  planPractice: coachingReach,
  // By their own squads, of which the administrator and the head coach here have none.
  seeLuck: { ...nobodysReach, coach: ['ownSquad', 'ownChild'] },
  seeReviewedLuck: { ...nobodysReach, headCoach: coachingReach.headCoach },
  answerFlag: coachingReach,
  importFiles: coachingReach,
  exportFiles: coachingReach,
  seeReview: coachingReach,
  answerReview: coachingReach,
  openReview: headingReach,
  handOverSquad: headingReach,
  changePlayer: coachingReach,
  changeProgramme: coachingReach,
  changeDesign: coachingReach,
  seeFormats: coachingReach,
  changeFormats: headingReach,
  seePolicy: coachingReach,
  changePolicy: headingReach,
  tapAtPitch: { ...coachingReach, helper: ['ownSquad', 'ownChild'] },
  seeFamilyPage: { ...coachingReach, guardian: ['ownChild'] },
  confirmFamilyPage: coachingReach,
  inviteFamily: coachingReach,
  askAboutChild: { ...nobodysReach, guardian: ['ownChild'] },
  arrangeClub: headingReach,
  managePeople: administratorsReach,
  answerRequests: administratorsReach,
  seeAudit: administratorsReach,
}

const cases = actions.flatMap((action) =>
  viewerRoles.flatMap((role) => Object.keys(objects).map((object) => ({ action, role, object }))),
)

describe('who may do what', () => {
  it.each(cases)('$role asks to $action on $object', ({ action, role, object }) => {
    const answer = may(aViewer(role), action, objects[object] as AccessObject)
    expect(answer).toBe(expected[action][role].includes(object))
  })

  it('names every role for every action', () => {
    for (const action of actions) expect(Object.keys(reachOf[action]).sort()).toEqual([...viewerRoles].sort())
  })

  it('shows a door only to who can reach something behind it', () => {
    expect(mayEver(aViewer('coach'), 'seeReview')).toBe(true)
    expect(mayEver({ ...aViewer('coach'), squadIds: [] }, 'seeReview')).toBe(false)
    expect(mayEver(aViewer('guardian'), 'seeFamilyPage')).toBe(true)
    expect(mayEver(aViewer('guardian'), 'seeSquad')).toBe(false)
  })

  it('stops who may not, with a text for the log that names neither child nor adult', () => {
    const ask = () => demand(aViewer('guardian'), 'seeFamilyPage', objects.otherChild as AccessObject)
    expect(ask).toThrow(AppError)
    expect(ask).not.toThrow(/Somebody/)
  })
})
