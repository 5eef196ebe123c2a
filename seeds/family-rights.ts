import { recordRequest } from '#data/child-requests'
import { saveClubRights } from '#data/club-rights'
import { recordConsent, withdrawConsent } from '#data/consents'
import type { ClubTx } from '#data/in-club'
import { dueDays } from '#rights/child-request'
import { type ConsentKind, consentKinds } from '#rights/consent-kind'
import { personId } from './club'
import { demoId } from './ids'
import { playerId } from './names'

const child = playerId('adaeze')
const guardian = personId('chinwe')
/** Of the demo's own place and season; invented, and of no nation. */
const holidays = ['2026-05-25', '2026-07-06']

/** What one family asked and agreed to, and what the club has set. The length for which names are kept is left to decide. */
export async function recordFamilyRights(tx: ClubTx): Promise<void> {
  const askWhom =
    'Maren Oakenshade, at the club house on Thursdays from 17:00, or by mail to maren@example.org'
  await saveClubRights(tx, { retentionMonths: null, askWhom, holidays })
  const receivedOn = '2026-06-04'
  await recordRequest(tx, {
    id: demoId('request/adaeze'),
    playerId: child,
    kind: 'copy',
    text: 'Could I see everything you keep about Adaeze, please? She is proud of her turns and would like to read it with me.',
    askedById: guardian,
    receivedOn,
    dueOn: dueDays(receivedOn, holidays).dueOn,
  })
  const agreed = [
    ['picturesInside', '2025-09-02', null],
    ['picturesOutside', '2025-09-02', '2026-02-10'],
    ['nameOutside', '2025-09-02', null],
  ] as const satisfies readonly (readonly [ConsentKind, string, string | null])[]
  for (const [kind, givenOn, withdrawnOn] of agreed) {
    const wording = consentKinds.find((one) => one.kind === kind)?.wording ?? ''
    const by = { personId: personId('maren'), at: new Date(`${givenOn}T18:00:00.000Z`) }
    const id = demoId(`consent/${kind}`)
    await recordConsent(tx, { id, playerId: child, kind, wording, givenById: guardian, givenOn, by })
    if (withdrawnOn) await withdrawConsent(tx, { id, playerId: child, on: withdrawnOn })
  }
}
