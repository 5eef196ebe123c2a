import 'server-only'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { listFlagStates } from '#data/flag-states'
import type { ClubTx } from '#data/in-club'
import { findSeasonOn } from '#data/seasons'
import type { Session } from '#data/sessions'
import { listThemes } from '#data/themes'
import { listPassed } from '#data/turn-sums'
import type { WrittenPractice } from '#data/written-sessions'
import { type Role, roles } from '#exposure/column'
import type { SessionAccount } from '#fairness/account'
import { type JudgedFigure, judgeFigure } from '#fairness/book/judged-figure'
import { subjectNames, type ToldFlag, tellFlag } from '#fairness/book/told-flag'
import { countWritten } from '#fairness/book/written-count'
import { emptyStanding, standingsNow } from '#fairness/standing'
import type { TappedPractice } from '#server/pitch-book'
import { accountOf, loadSquadRules } from '#server/rebuild'
import { daysSoFar, type SquadSeason } from '#server/squad-season'
import type { LastWrite } from '#server/tapped-writings'
import type { Player, PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'

/** A player's season without this practice and with it. */
export type MovedPlayer = {
  readonly playerId: PlayerId
  readonly figures: readonly {
    readonly role: Role
    readonly before: JudgedFigure
    readonly after: JudgedFigure
  }[]
}

export type FlagOfPlayer = { readonly playerId: PlayerId; readonly told: ToldFlag }

/** What a practice does to the season's book. */
export type Moved = {
  /** Members who were there, in the order of `players`. */
  readonly players: readonly MovedPlayer[]
  /** Enough is written of the season to say anything. */
  readonly isJudged: boolean
  /** Flags that this practice raised. */
  readonly raised: readonly FlagOfPlayer[]
  /** Flags that went when it was written. */
  readonly cleared: readonly FlagOfPlayer[]
}

/** The account that the practice has, or would have once it is written as it was tapped. */
export async function accountOfTapped(
  tx: ClubTx,
  session: Session,
  { tapped, register }: { readonly tapped: TappedPractice; readonly register: readonly RegisterLine[] },
): Promise<SessionAccount> {
  const { book } = tapped
  const written: WrittenPractice = {
    kind: 'practice',
    session: { ...session, written: book.written, lengthSeconds: book.lengthSeconds },
    register,
    events: [],
    practice: {
      id: session.id,
      day: session.day,
      lengthSeconds: book.lengthSeconds,
      register: register.filter(({ state }) => state === 'here'),
      turns: book.turns,
    },
    passes: book.passes,
  }
  return accountOf(written, await loadSquadRules(tx, session.squadId, [written]))
}

/** What is kept of the season, held against it without this practice. */
export async function loadMoved(
  tx: ClubTx,
  of: SquadSeason,
  {
    session,
    account,
    players,
    lastWrite,
  }: {
    readonly session: Session
    readonly account: SessionAccount
    readonly players: readonly Player[]
    readonly lastWrite: LastWrite | null
  },
): Promise<Moved> {
  const days = daysSoFar(of, null)
  const all = days ? await listAccounts(tx, { squadId: of.squad.id, ...days }) : []
  const others = all.filter(({ sessionId }) => sessionId !== session.id)
  const practices = others.filter(({ kind }) => kind === 'practice')
  const adjustments = await listAdjustments(
    tx,
    players.map(({ id }) => id),
  )
  const passed = days ? await listPassed(tx, { squadId: of.squad.id, ...days }) : []
  const shared = { passed, agreements: fewerTurnsOf(adjustments) }
  const without = standingsNow({ ...shared, accounts: others })
  const withIt = standingsNow({ ...shared, accounts: [...others, account] })
  const there = new Set(
    account.presences
      .filter(({ isMember, liveSeconds }) => isMember && liveSeconds > 0)
      .map(({ playerId }) => playerId),
  )
  return {
    players: players
      .filter(({ id }) => there.has(id))
      .map(({ id: playerId, wantsToKeep }) => {
        const figureIn = (standings: typeof without, role: Role) =>
          judgeFigure((standings.get(playerId) ?? emptyStanding).practice.roles[role], {
            role,
            kind: 'practice',
            wantsToKeep,
            isMember: true,
            policy: of.policy,
          })
        return {
          playerId,
          figures: roles.map((role) => ({
            role,
            before: figureIn(without, role),
            after: figureIn(withIt, role),
          })),
        }
      }),
    isJudged: countWritten([...practices, account], of.policy).isEnough,
    ...(await loadFlagsMoved(tx, of, { session, lastWrite })),
  }
}

async function loadFlagsMoved(
  tx: ClubTx,
  of: SquadSeason,
  { session, lastWrite }: { readonly session: Session; readonly lastWrite: LastWrite | null },
): Promise<Pick<Moved, 'raised' | 'cleared'>> {
  const season = await findSeasonOn(tx, session.day)
  if (!season || !lastWrite) return { raised: [], cleared: [] }
  const states = await listFlagStates(tx, { squadIds: [of.squad.id], seasonId: season.id })
  const names = subjectNames({ themes: await listThemes(tx), terms: season.terms })
  const tell = (flags: typeof states): readonly FlagOfPlayer[] =>
    flags.flatMap((flag) => {
      const told = tellFlag(flag, names)
      return told && !told.isQuiet ? [{ playerId: flag.playerId, told }] : []
    })
  return {
    raised: tell(
      states.filter(({ status, sinceSessionId }) => status === 'open' && sinceSessionId === session.id),
    ),
    cleared: tell(states.filter(({ clearedAt }) => clearedAt?.getTime() === lastWrite.at.getTime())),
  }
}
