import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { daysLater } from '#common/days-later'
import { listAdjustments, recordAdjustment } from '#data/adjustments'
import { setCountsGoals } from '#data/clubs'
import { getDesign, recordDesigns } from '#data/designs'
import { recordGuests } from '#data/guests'
import { listHelperPasses } from '#data/helper-passes'
import { newId } from '#data/ids'
import { recordPair } from '#data/player-pairs'
import { recordRegister } from '#data/register-lines'
import { recordThemes } from '#data/themes'
import { draftOf as draftOfPlan, planOfDraft } from '#planning/plan-draft'
import { addDesign, changeDesign, copyDesign, putDesignAway } from '#server/design-actions'
import { designVersion } from '#server/design-version'
import { loadFamilies } from '#server/families-views'
import { confirmPages, switchComing, writeFamilyNote } from '#server/family-actions'
import { answerFlag } from '#server/flag-actions'
import type { FormReply } from '#server/form'
import { makeHelperPass, takeBackHelperPass } from '#server/helper-actions'
import { codeOfPass } from '#server/helper-secret'
import { checkFileAction, importFileAction } from '#server/import-actions'
import { joinPractice } from '#server/join-actions'
import { saveLineUp } from '#server/line-up-actions'
import { loadLineUpPage } from '#server/line-up-views'
import { addPlayerPair, endPlayerPair, savePracticePlan } from '#server/plan-actions'
import {
  addPlayer,
  agree,
  changeAboutPlayer,
  changeKeeps,
  changeLines,
  changeMembership,
  endAgreement,
} from '#server/player-actions'
import { changePolicy } from '#server/policy-actions'
import { answerTermReview, handOver, openReview } from '#server/review-actions'
import { cancelWritten, enterSession, writeGoals, writeMatch, writePractice } from '#server/session-actions'
import { signInToDemo } from '#server/sign-in-actions'
import { addTheme, changeProgramme, changeTheme, moveTheme } from '#server/theme-actions'
import { joinGuestToPlayer, writeAsPlanned, writeFromPitch } from '#server/whistle-actions'
import { draftOf } from '#ui/designs/form/draft'
import { aSheet } from '../support/design-builder'
import { threeOn } from '../support/line-up-builder'
import { matchRequestOf } from '../support/match-request-builder'
import { aPlan, planIt, send, wholePractice } from '../support/pitch-club'
import { planAtOnce } from '../support/plan-at-once'
import { aPlanRequest, aPlanRound } from '../support/plan-builder'
import { spoilForm, spoilings } from '../support/spoil-form'
import { accepted, type Door, isRefused, sent, whatStands } from '../support/spoiled-door'
import { aTheme, enterSession as entered } from '../support/test-club'
import { typedMatch, typedPractice } from '../support/typed-session'
import {
  type Asker,
  aClubForWriting,
  askAs,
  idle,
  otherCoachId,
  twoRounds,
  versionNow,
  viewerOf,
} from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

const checkFile: Door = (_previous, form) => checkFileAction(form)
const join: Door = (_previous, form) => joinPractice(form)
const signIn: Door = (_previous, form) => signInToDemo(form)

const ofSquad = () => ({ squadId: at.club.squadId })
const ofPlayer = () => ({ ...ofSquad(), playerId: at.club.playerIds[0] })
const ofTheme = () => ({ ...ofSquad(), themeId: at.club.themeIds[1] })
const someDay = '2026-09-15'
const roster = { what: 'roster', answers: {}, columns: null, separator: ',', lengthMinutes: 60 }
const policy = {
  ...{ ageLimit: '', effectiveFrom: '2026-10-05', toleranceMinutes: '12', tolerancePercent: '15' },
  ...{ middleAttackPercent: '50', restLimitTurns: '2', goalPercent: '50', leastMatchPercent: '50' },
  ...{ writtenPercent: '50', sessionsBeforeFlags: '3', matchesBeforeRoles: '3' },
}

/** Every door of the pages, with a form that it takes. */
const doors: readonly (readonly [string, Door, Asker, () => Promise<object> | object])[] = [
  ['enterSession', enterSession, 'coach', () => ({ ...ofSquad(), kind: 'match', day: '2026-09-15' })],
  ['writeGoals', writeGoals, 'coach', goals],
  ['cancelWritten', cancelWritten, 'coach', () => ({ ...ofSquad(), sessionId: at.sessionId })],
  ['writePractice', writePractice, 'coach', practice],
  ['writeMatch', writeMatch, 'coach', match],
  ['answerFlag', answerFlag, 'coach', () => ({ flagId: newId(), reason: '', ownWords: 'known' })],
  ['confirmPages', confirmPages, 'coach', seenPage],
  ['writeFamilyNote', writeFamilyNote, 'coach', () => ({ ...ofPlayer(), text: 'Well done.' })],
  ['switchComing', switchComing, 'coach', () => ({ ...ofSquad(), showsComing: 'yes' })],
  ['answerTermReview', answerTermReview, 'coach', () => ({ ...ofSquad(), termId: term(), answer: 'Yes.' })],
  ['openReview', openReview, 'headCoach', () => ({ termId: term() })],
  ['handOver', handOver, 'headCoach', () => ({ ...ofSquad(), personId: otherCoachId, day: '2026-12-01' })],
  ['changePolicy', changePolicy, 'headCoach', () => policy],
  ['addDesign', addDesign, 'coach', () => ({ ...ofSquad(), ...draftOf(aSheet({ name: 'Gates' })) })],
  ['changeDesign', changeDesign, 'coach', editing],
  ['copyDesign', copyDesign, 'coach', ofDesign],
  ['putDesignAway', putDesignAway, 'coach', async () => ({ ...(await ofDesign()), what: 'putAway' })],
  ['savePracticePlan', savePracticePlan, 'coach', planning],
  ['saveLineUp', saveLineUp, 'coach', liningUp],
  ['addPlayerPair', addPlayerPair, 'coach', () => ({ ...ofPair(), kind: 'apart' })],
  ['endPlayerPair', endPlayerPair, 'coach', endingPair],
  [
    'addPlayer',
    addPlayer,
    'coach',
    () => ({ ...ofSquad(), name: 'Ivo Weld', keeps: 'on', firstDay: someDay }),
  ],
  ['changeAboutPlayer', changeAboutPlayer, 'coach', () => ({ ...ofPlayer(), name: 'Ada Gorse' })],
  ['changeKeeps', changeKeeps, 'coach', () => ({ ...ofPlayer(), keeps: 'no', day: someDay })],
  [
    'changeLines',
    changeLines,
    'coach',
    () => ({ ...ofPlayer(), back: 'likes', middle: 'open', forward: 'notYet' }),
  ],
  [
    'changeMembership',
    changeMembership,
    'coach',
    () => ({ ...ofPlayer(), heldFrom: '2026-08-01', firstDay: '2026-08-01', lastDay: '2027-01-31' }),
  ],
  [
    'agree',
    agree,
    'coach',
    () => ({ ...ofPlayer(), kind: 'fewerTurns', duePercent: '50', firstDay: someDay, lastDay: '' }),
  ],
  ['endAgreement', endAgreement, 'coach', ending],
  ['addTheme', addTheme, 'coach', () => ({ ...ofSquad(), name: 'Pressing', parentId: '', asks: '' })],
  ['changeTheme', changeTheme, 'coach', () => ({ ...ofTheme(), name: 'Pressing', parentId: '', asks: '' })],
  ['moveTheme', moveTheme, 'coach', moving],
  [
    'changeProgramme',
    changeProgramme,
    'coach',
    () => ({ ...ofSquad(), termId: term(), [`share-${at.club.themeIds[0]}`]: '40' }),
  ],
  ['importFile', importFileAction, 'coach', () => ({ ...ofSquad(), ...roster })],
  ['checkFile', checkFile, 'coach', () => ({ ...ofSquad(), ...roster })],
  ['writeFromPitch', writeFromPitch, 'coach', tappedPractice],
  ['writeAsPlanned', writeAsPlanned, 'coach', plannedPractice],
  ['joinGuestToPlayer', joinGuestToPlayer, 'coach', guestOfPractice],
  ['makeHelperPass', makeHelperPass, 'coach', practiceOfToday],
  ['takeBackHelperPass', takeBackHelperPass, 'coach', helperPassOfToday],
  ['joinPractice', join, 'coach', codeOfToday],
  ['signIn', signIn, 'coach', () => ({ clubId: at.club.club.id, personId: at.club.coach.personId })],
]

const term = () => at.club.termIds[0]

async function seenPage() {
  const [row] = (await loadFamilies(await viewerOf(at, 'coach'), ofSquad())).rows
  return { ...ofSquad(), seen: [{ playerId: row?.playerId, mark: row?.mark }] }
}

/** A pair that ends on its first day, each time another day. */
let pairDay = 0
function ofPair() {
  pairDay += 1
  const [oneId, otherId] = at.club.playerIds
  const day = daysLater(someDay, pairDay)
  return { ...ofSquad(), oneId, otherId, firstDay: day, lastDay: day }
}

async function endingPair() {
  const [one = '', other = ''] = at.club.playerIds
  const pair = {
    id: newId(),
    squadId: at.club.squadId,
    playerIds: [one, other] as const,
    kind: 'apart' as const,
  }
  await at.club.run((tx) => recordPair(tx, { ...pair, firstDay: someDay, lastDay: null, madeById: null }))
  return { ...ofSquad(), pairId: pair.id, lastDay: someDay }
}

/** A plan of a practice of its own, so that none has a version yet. */
async function planning() {
  const sessionId = await entered(at.club, { title: newId() })
  const request = aPlanRequest({
    players: 5,
    rounds: [aPlanRound({ turnCount: 3, stations: [{ attack: 2, defend: 1, keep: 1 }] })],
    own: { 5: { keeps: false } },
  })
  const players = request.players.map((own, index) => ({ ...own, playerId: at.club.playerIds[index] ?? '' }))
  return { ...ofSquad(), sessionId, knownVersion: 0, plan: planOfDraft(draftOfPlan({ ...request, players })) }
}

async function liningUp() {
  const sessionId = await entered(at.club, { title: newId(), kind: 'match', periods: null })
  plannedLineUp ??= lineUpFor(sessionId)
  return { ...ofSquad(), sessionId, knownVersion: 0, plan: await plannedLineUp }
}

/** Worked out once: it fits each of the matches. */
let plannedLineUp: ReturnType<typeof lineUpFor> | undefined
async function lineUpFor(sessionId: string) {
  const format = { aSide: 3, shapes: [{ name: '1-1-0', places: threeOn }] }
  const { players } = await loadLineUpPage(await viewerOf(at, 'coach'), { ...ofSquad(), sessionId })
  return planAtOnce(matchRequestOf(players, format), () => 'Ivo Weld')
}

async function practice() {
  const version = await versionNow(at)
  return typedPractice(at.club, twoRounds, { sessionId: at.sessionId, version })
}

/** Something that is agreed, whatever was ended before. */
async function ending() {
  const { playerIds, run } = at.club
  const [held] = await run((tx) => listAdjustments(tx, playerIds))
  const agreementId = held?.id ?? newId()
  const agreed = { id: agreementId, playerId: playerIds[0] as string, firstDay: someDay, lastDay: null }
  if (!held) await run((tx) => recordAdjustment(tx, { ...agreed, kind: 'sameSide' }))
  return { ...ofPlayer(), agreementId, lastDay: someDay }
}

async function ofDesign() {
  const design = aSheet({ id: newId(), name: `Lanes ${newId()}` })
  await at.club.run((tx) => recordDesigns(tx, [design]))
  return { ...ofSquad(), designId: design.id }
}

async function editing() {
  const own = await ofDesign()
  const held = await at.club.run((tx) => getDesign(tx, own.designId))
  return { ...own, version: designVersion(held), ...draftOf(held) }
}

/** A theme with another one below it. */
async function moving() {
  await at.club.run((tx) => recordThemes(tx, [aTheme({ parentId: at.club.themeIds[0], order: 99 })]))
  return { ...ofTheme(), step: 'down' }
}

async function match() {
  const sessionId = await entered(at.club, { kind: 'match' })
  const version = await versionNow({ ...at, sessionId })
  return typedMatch(at.club, ['K K K', 'B B O', 'O O B', 'F F F', 'M M M'], { sessionId, version })
}

async function plannedPractice() {
  const sessionId = await entered(at.club, { title: newId() })
  await planIt(at.club, sessionId)
  const version = await versionNow({ ...at, sessionId })
  const left = [`${at.club.playerIds[4]}:none`, `${at.club.playerIds[0]}:0`]
  return { ...ofSquad(), sessionId, version, stoppedAfterRound: '1', left }
}

async function tappedPractice() {
  const { sessionId, version, squadId } = await plannedPractice()
  await send(sessionId, { events: wholePractice(at.club, aPlan(at.club)) })
  return { squadId, sessionId, version, cursor: '9', takenBack: at.club.playerIds }
}

async function guestOfPractice() {
  const sessionId = await entered(at.club, { title: newId() })
  const guestId = newId()
  await at.club.run(async (tx) => {
    await recordGuests(tx, { guests: [{ id: guestId, name: 'Zoë Pike' }], since: '2026-09-08' })
    const lines = [{ playerId: guestId, state: 'here', from: 0, to: 60 } as const]
    await recordRegister(tx, { sessionId, lines, by: at.club.coach })
  })
  return { ...ofSquad(), sessionId, guestId, playerId: at.club.playerIds[0] }
}

/** Codes for helpers are made on the day alone. */
async function practiceOfToday() {
  return { ...ofSquad(), sessionId: await entered(at.club, { day: '2026-10-01', title: newId() }) }
}

async function helperPassOfToday() {
  const own = await practiceOfToday()
  await makeHelperPass(idle, sent(own, 'json'))
  const [pass] = await at.club.run((tx) => listHelperPasses(tx, own.sessionId))
  return { ...own, passId: pass?.id }
}

async function codeOfToday() {
  const { passId } = await helperPassOfToday()
  return { code: codeOfPass({ clubId: at.club.club.id, passId: passId ?? '' }) }
}

async function goals() {
  await at.club.run((tx) => setCountsGoals(tx, true))
  const sessionId = await entered(at.club, { title: newId(), kind: 'match' })
  return { ...ofSquad(), sessionId, ours: '3', theirs: '1' }
}

/** There is no such flag, and no review has been opened. */
const neverTaken: readonly Door[] = [answerFlag, answerTermReview]

describe('whatever is sent to a door', () => {
  it.each(doors)(
    '%s takes all of it or refuses it in words, and what is refused leaves no trace',
    async (_name, door, asker, valid) => {
      askAs(at.club, asker)
      const own = await door(idle, sent(await valid(), 'json')).catch(accepted)
      expect(isRefused(own)).toBe(neverTaken.includes(door))
      const way = fc.constantFrom('json' as const, 'fields' as const)
      await fc.assert(
        fc.asyncProperty(spoilings, way, async (places, way) => {
          askAs(at.club, asker)
          const form = sent(spoilForm(await valid(), places), way)
          const stood = await whatStands(at.club.club.id)
          const answer = await door(idle, form).catch(accepted)
          expect(JSON.stringify(answer)).not.toMatch(/Something went wrong|could not be looked at/)
          if (isRefused(answer)) expect(await whatStands(at.club.club.id)).toBe(stood)
        }),
        { numRuns: 5 },
      )
    },
    30_000,
  )

  it.each([...[undefined, { keys: 1 }, new Map()]])('%s is no form, and every door says so', async (form) => {
    for (const [, door, asker] of doors) {
      askAs(at.club, asker)
      const answer = await door(idle, form as unknown as FormData).catch(accepted)
      expect(answer === '/' || isRefused(answer)).toBe(true)
    }
  })

  // One piece of code reads the form of every door; one door answers for what else is none.
  it.each([...[null, 'form', 3, [], {}, () => {}]])('%s is no form, and is refused', async (form) => {
    expect(isRefused(await writePractice(idle, form as unknown as FormData))).toBe(true)
  })

  it('and what stands is another text once anything was written', async () => {
    const stood = await whatStands(at.club.club.id)
    expect(await whatStands(at.club.club.id)).toBe(stood)
    await at.club.run((tx) => recordThemes(tx, [aTheme({ name: 'Pressing', order: 99 })]))
    expect(await whatStands(at.club.club.id)).not.toBe(stood)
  })

  it('a form of very many fields is not read to its end', async () => {
    const form = new FormData()
    for (let field = 0; field < 20_000; field++) form.append(`field ${field}`, '')
    expect(await answerFlag(idle, form)).toMatchObject({
      status: 'refused',
      problems: [{ message: expect.stringContaining('1000 fields at most') }],
    })
  })

  it.each([
    ['a text', JSON.stringify('a'.repeat(100_000))],
    ['a list', `${'['.repeat(100_000)}${']'.repeat(100_000)}`],
    ['very many keys', `{${Array.from({ length: 50_000 }, (_, key) => `"k${key}":1`).join(',')}}`],
    ['a zero in a text', JSON.stringify({ ownWords: 'a\u0000b' })],
    ['a zero, deep down', `{"a":${'['.repeat(50_000)}"\\u0000"${']'.repeat(50_000)}}`],
    ['half a character in a text', '{"ownWords":"a\\ud800b"}'],
  ])('%s for a form is refused with an answer that stays short', async (_what, json) => {
    const form = new FormData()
    form.set('json', json)
    const answer = (await writePractice(idle, form)) as FormReply
    expect(answer).toMatchObject({ status: 'refused' })
    expect(JSON.stringify(answer.status === 'refused' && answer.problems).length).toBeLessThan(5000)
  })

  it.each(['\\u0000', '\\ud800', '\\uDC00'])(
    '%s in a text cannot be kept, and is said to be so',
    async (sign) => {
      const form = new FormData()
      form.set('json', `{"ownWords":["a${sign}b"]}`)
      expect(await writePractice(idle, form)).toMatchObject({
        problems: [{ message: expect.stringContaining('a character that no text has') }],
      })
      form.set('json', '{"ownWords":["a\\ud83d\\ude00b"]}')
      expect(JSON.stringify(await writePractice(idle, form))).not.toContain('a character that no text has')
    },
  )
})
