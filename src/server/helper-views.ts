import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { findClub } from '#data/clubs'
import { findHelperPass, listHelperPasses } from '#data/helper-passes'
import { isId } from '#data/ids'
import { inClub } from '#data/in-club'
import { countTapsByPass } from '#data/pitch-events'
import { findSession, type Session } from '#data/sessions'
import { getSquad } from '#data/squads'
import { loadClubDay } from '#server/club-day'
import { whyNoHelper } from '#server/helper-deeds'
import { codeOfPass, isSecretOf, passOfCode } from '#server/helper-secret'
import { loadFrame } from '#server/page-frame'
import { isPassGood } from '#server/pitch-asker'
import { type QrCode, qrCodeOf } from '#server/qr-code'
import { isOnlyThisMachine } from '#server/request-address'
import { getSessionOfSquad } from '#server/session-of-squad'
import type { SquadId } from '#squad/squad'

/** A code that can be scanned now. */
export type ShownPass = {
  readonly id: string
  readonly link: string
  readonly code: QrCode
  readonly madeAt: Date
  readonly expiresAt: Date
  /** How often somebody tapped with it. */
  readonly taps: number
}

/** The codes of one practice or match, for its coach. @throws AppError `notAllowed` or `notFound`. */
export async function loadHelpers(
  viewer: Viewer,
  {
    squadId,
    sessionId,
    address,
    now = new Date(),
  }: {
    readonly squadId: SquadId
    readonly sessionId: string
    /** What the installation is reached under. */
    readonly address: string
    readonly now?: Date
  },
) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'writeSession', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const { club, today } = await loadClubDay(tx, now)
    const passes = (await listHelperPasses(tx, sessionId)).filter((pass) =>
      isPassGood(pass, { sessionId, now }),
    )
    const taps = await countTapsByPass(tx, sessionId)
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad: await getSquad(tx, squadId),
      session,
      timeZone: club.timeZone,
      whyNot: whyNoHelper(session, today),
      isOnlyThisMachine: isOnlyThisMachine(address),
      passes: passes.map(({ id, madeAt, expiresAt }): ShownPass => {
        const link = `${address}/join/${codeOfPass({ clubId: viewer.clubId, passId: id })}`
        return { id, link, code: qrCodeOf(link), madeAt, expiresAt, taps: taps.get(id) ?? 0 }
      }),
    }
  })
}

/** What somebody who scanned a code is told before joining. */
export type JoinPage =
  | {
      readonly isOpen: true
      readonly clubId: string
      readonly passId: string
      readonly sessionId: string
      readonly kind: Session['kind']
      readonly expiresAt: Date
      readonly clubName: string
      readonly squadName: string
      readonly day: string
      readonly title: string
      readonly startsAt: string | null
      readonly timeZone: string
    }
  /** It was a code of this book, and opens nothing now. */
  | { readonly isOpen: false }

/** Null: this is no code of this book. No word of a club or practice is said to whoever does not hold the secret. */
export async function loadJoin(code: string, now = new Date()): Promise<JoinPage | null> {
  const asked = passOfCode(code)
  if (!asked || !isId(asked.clubId)) return null
  return inClub(asked.clubId, async (tx) => {
    const club = await findClub(tx)
    const pass = await findHelperPass(tx, asked.passId)
    if (!club || !pass || !isSecretOf(asked.secret, pass.secretHash)) return null
    const session = await findSession(tx, pass.sessionId)
    if (!session || session.isCancelled || !isPassGood(pass, { sessionId: session.id, now }))
      return { isOpen: false }
    const { kind, day, title, startsAt } = session
    return {
      isOpen: true,
      clubId: club.id,
      passId: pass.id,
      sessionId: session.id,
      kind,
      expiresAt: pass.expiresAt,
      clubName: club.name,
      squadName: (await getSquad(tx, session.squadId)).name,
      day,
      title,
      startsAt,
      timeZone: club.timeZone,
    }
  })
}
