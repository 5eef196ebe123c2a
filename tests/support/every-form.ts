import { newId } from '#data/ids'
import { draftOf as draftOfPlan, planOfDraft } from '#planning/plan-draft'
import { draftOf } from '#ui/designs/form/draft'
import { aSheet } from './design-builder'
import { aPickable, matchRequestOf } from './match-request-builder'
import { planAtOnce } from './plan-at-once'
import { aPlanRequest, aPlanRound } from './plan-builder'
import type { Things } from './two-clubs'
import { typedFormat } from './typed-format'
import { typedMatch, typedPractice } from './typed-session'

const day = '2026-06-08'

/** For every door that asks who comes, a form that is in order, about the given things. */
export function formsAbout(at: Things): Readonly<Record<string, object>> {
  const squad = { squadId: at.squadId }
  const player = { ...squad, playerId: at.playerId }
  const session = { ...squad, sessionId: at.comingId }
  const person = { personId: at.coachId }
  const guardian = { personId: at.guardianId, playerId: at.playerId }
  const ofDesign = { ...squad, designId: at.designId }
  const ofTheme = { ...squad, themeId: at.themeId }
  const design = draftOf(aSheet({ name: 'Gates' }))
  const agreed = { kind: 'fewerTurns', duePercent: '50', firstDay: day, lastDay: '' }
  const typed = { squadId: at.squadId, playerIds: [at.playerId, at.otherPlayerId] } as const
  const version = 'x'
  return {
    addAway: { ...player, firstDay: '2026-06-10', lastDay: '' },
    addClosedDays: { ...squad, firstDay: '2026-07-01', lastDay: '', name: 'Fair' },
    addClubClosedDays: { firstDay: '2026-07-01', lastDay: '', name: 'Fair' },
    addDesign: { ...squad, ...design },
    addPerson: { name: 'Ivo Weld', role: 'coach', email: 'ivo@example.org' },
    addPlayer: { ...squad, name: 'Ivo Weld', keeps: 'on', firstDay: day },
    addPlayerPair: {
      ...squad,
      ...{ oneId: at.playerId, otherId: at.otherPlayerId, kind: 'apart', firstDay: day, lastDay: day },
    },
    addSquadLine: { ...person, ...squad, kind: 'cover', firstDay: day, lastDay: '' },
    addTheme: { ...squad, name: 'Pressing', parentId: '', asks: '' },
    agree: { ...player, ...agreed },
    answerFlag: { flagId: at.flagId, reason: '', ownWords: 'known' },
    answerRequest: { requestId: at.requestId, outcome: 'done', answer: 'Here it is.' },
    answerTermReview: { ...squad, termId: at.termId, answer: 'Yes.' },
    askAboutChild: { playerId: at.playerId, kind: 'question', text: 'What is kept?' },
    cancelWritten: session,
    changeAboutPlayer: { ...player, name: 'Nobody Atall' },
    changeClub: { name: 'Taken Over', timeZone: 'Europe/London' },
    changeClubRights: { retentionMonths: '1', askWhom: '', holidays: '' },
    changeDesign: { ...ofDesign, ...design, version },
    changeKeeps: { ...player, keeps: 'no', day },
    changeLines: { ...player, back: 'likes', middle: 'open', forward: 'notYet' },
    changeMembership: { ...player, heldFrom: '2025-09-01', firstDay: '2025-09-01', lastDay: day },
    changePerson: { ...person, name: 'Nobody Atall', role: 'coach', email: '' },
    changePolicy: {
      ...{ ageLimit: '', effectiveFrom: '2026-06-15', toleranceMinutes: '12', tolerancePercent: '15' },
      ...{ middleAttackPercent: '50', restLimitTurns: '2', goalPercent: '50', leastMatchPercent: '50' },
      ...{ writtenPercent: '50', sessionsBeforeFlags: '3', matchesBeforeRoles: '3' },
    },
    changeProgramme: { ...squad, termId: at.termId, [`share-${at.themeId}`]: '40' },
    changeProgrammeBlocks: {
      ...{ ...squad, termId: at.termId },
      ...{ 'blockTheme-0': at.themeId, 'blockFirst-0': '2', 'blockLast-0': '3' },
    },
    changeProgrammeRules: { ...squad, termId: at.termId },
    changeTheme: { ...ofTheme, name: 'Pressing', parentId: '', asks: '' },
    changeThemeFocus: { ...ofTheme, roles: 'attack' },
    changeWhenAndWhere: { ...session, day, title: 'Moved', startsAt: '', place: '' },
    checkFileAction: { ...squad, ...roster },
    chooseFormat: { ...squad, formatId: at.formatId },
    confirmPages: { ...squad, seen: [{ playerId: at.playerId, mark: 'x' }] },
    copyDesign: ofDesign,
    countGoals: { countsGoals: 'yes' },
    endAccess: person,
    endAgreement: { ...player, agreementId: newId(), lastDay: day },
    endLineOfSquad: { ...person, lineId: newId(), lastDay: day },
    endPlayerPair: { ...squad, pairId: newId(), lastDay: day },
    enterSession: { ...squad, kind: 'practice', day },
    enterWeekly: {
      ...{ ...squad, weekday: '2', firstDay: '2026-06-09', lastDay: '2026-06-09' },
      ...{ startsAt: '', place: '', lengthMinutes: '60', days: '' },
    },
    eraseChild: { playerId: at.playerId, name: 'Nobody Atall' },
    extendRequest: { requestId: at.requestId, to: '2026-08-01', why: 'Many.' },
    giveAccessBack: person,
    handOver: { ...squad, ...person, day: '2026-06-20' },
    importFileAction: { ...squad, ...roster },
    joinGuestToPlayer: { ...session, guestId: at.otherPlayerId, playerId: at.playerId },
    makeFamilyLink: { ...guardian, how: 'show' },
    makeHelperPass: session,
    makePersonLink: { ...person, kind: 'recover', how: 'show' },
    moveTheme: { ...ofTheme, step: 'down' },
    openReview: { termId: at.termId },
    putDesignAway: { ...ofDesign, what: 'putAway' },
    putFormatAway: { formatId: at.formatId, what: 'takeOut' },
    recordConsent: {
      ...{ playerId: at.playerId, kind: 'messages', wording: 'Yes.', givenById: at.guardianId },
      givenOn: day,
    },
    recordGuardian: { ...guardian, personId: at.coachId },
    removeAway: { ...player, awayId: newId() },
    removeClosedDays: { ...squad, closedId: newId() },
    removeClubClosedDays: { closedId: newId() },
    removeGround: { ...squad, place: 'Nowhere' },
    removeGuardian: guardian,
    revokeFamilyLink: { playerId: at.playerId, linkId: newId() },
    revokePersonLink: { ...person, linkId: newId() },
    saveFormat: { formatId: '', version, ...typedFormat },
    saveLineUp: { ...session, knownVersion: 0, plan: aLineUpOf(typed.playerIds) },
    savePracticePlan: { ...session, knownVersion: 0, plan: aPlanOf(typed.playerIds) },
    saveSeason: {
      ...{ seasonId: '', name: 'Next', firstDay: '2027-08-01', lastDay: '2028-06-30' },
      ...{ 'termName-0': 'Autumn', 'termFirstDay-0': '2027-08-01', 'termLastDay-0': '2027-12-31' },
    },
    saveSquad: { squadId: '', name: 'Stoats', ageLimit: '11' },
    saveWeeksAhead: {
      ...squad,
      ...{ termId: at.termId, knownVersion: 0, isTold: false, plan: { practices: [], asOf: null } },
    },
    setGround: { ...squad, place: 'Long Meadow', lengthM: '60', widthM: '40' },
    switchComing: { ...squad, showsComing: 'yes' },
    takeBackHelperPass: { ...session, passId: newId() },
    takeFormat: { key: 'ours-5-halves' },
    takeLeastTime: { formatId: at.formatId, key: 'half-recreational' },
    takeOurContent: {},
    takeProgramme: { ...squad, termId: at.termId, from: 'ours playingTogether' },
    withdrawConsent: { playerId: at.playerId, consentId: newId(), on: day },
    withholdComing: { ...guardian, withholdsComing: 'on' },
    writeAsPlanned: { ...session, version, stoppedAfterRound: '1', left: [] },
    writeDownRequest: {
      ...{ playerId: at.playerId, kind: 'copy', text: '', askedById: at.guardianId, receivedOn: day },
    },
    writeFamilyNote: { ...player, text: 'Well done.' },
    writeFromPitch: { ...session, version, cursor: '9', takenBack: [] },
    writeGoals: { ...session, ours: '3', theirs: '1' },
    writeMatch: typedMatch(typed, ['K K K', 'F F F'], { sessionId: at.sessionId, version }),
    writePractice: typedPractice(typed, ['A D', 'D A'], { sessionId: at.sessionId, version }),
  }
}

const roster = { what: 'roster', answers: {}, columns: null, separator: ',', lengthMinutes: 60 }

function aPlanOf(playerIds: readonly string[]) {
  const request = aPlanRequest({
    players: 2,
    rounds: [aPlanRound({ turnCount: 2, stations: [{ attack: 1, defend: 1, keep: 0 }] })],
  })
  const players = request.players.map((own, index) => ({ ...own, playerId: playerIds[index] ?? '' }))
  return planOfDraft(draftOfPlan({ ...request, players }))
}

function aLineUpOf(playerIds: readonly string[]) {
  const players = playerIds.map((id) => aPickable({ id, name: 'Ivo Weld' }))
  const shapes = [{ name: '1', places: { keeper: 1, back: 0, middle: 0, forward: 1 } }]
  return planAtOnce(matchRequestOf(players, { shapes }), () => 'Ivo Weld')
}
