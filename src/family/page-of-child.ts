import type { Day } from '#common/time'
import type { SessionAccount } from '#fairness/account'
import { playerAttendance, sessionsOfPlayer } from '#fairness/book/player-attendance'
import { playerThemes } from '#fairness/book/player-themes'
import { countWritten } from '#fairness/book/written-count'
import type { MatchFigure } from '#fairness/matches/match-figure'
import type { KindStanding, SessionKind, Standing } from '#fairness/standing'
import { aboutMinutes } from '#family/about-minutes'
import type { FamilyKind, FamilyPage, TimeDone } from '#family/family-page'
import {
  type FlagForFamily,
  familyFigure,
  familySentences,
  sessionsBeforeSentences,
} from '#family/family-sentences'
import { matchesPlayed } from '#family/matches-played'
import type { Player } from '#squad/player'
import type { Policy } from '#squad/policy'
import type { Membership } from '#squad/squad'
import type { Theme } from '#themes/theme'

export type ChildInBook = {
  readonly player: Player
  /** Its own in this squad. */
  readonly memberships: readonly Membership[]
  /** Every session of the squad that was held so far. */
  readonly accounts: readonly SessionAccount[]
  /** The child's own, over the sessions that are its own. */
  readonly standing: Standing
  /** What the squad's written matches were for the child, as a member. */
  readonly matchFigures: readonly MatchFigure[]
  readonly policy: Policy
  /** The child's own in this squad and season. */
  readonly flags: readonly FlagForFamily[]
  readonly themes: readonly Theme[]
  readonly note: string
  readonly today: Day
}

/** What the book says of one child to its family today. */
export function pageOfChild(child: ChildInBook): FamilyPage {
  const { player, themes, note, today } = child
  // A session of today that nobody has written may still be to come.
  const held = child.accounts.filter(({ day, written }) => day < today || written !== 'notWritten')
  const own = sessionsOfPlayer(held, { playerId: player.id, memberships: child.memberships })
  return {
    version: 1,
    upTo: today,
    kinds: (['practice', 'match'] as const).map((kind) => kindOfPage(own, { kind, child })),
    themes: playerThemes(own, { playerId: player.id, themes }).map(({ theme, depth, meeting }) => ({
      name: theme.name,
      depth,
      missed: meeting.missed,
      practices: meeting.practices,
      practicesPlayed: meeting.practicesPlayed,
    })),
    note,
  }
}

function kindOfPage(
  own: readonly SessionAccount[],
  { kind, child }: { readonly kind: SessionKind; readonly child: ChildInBook },
): FamilyKind {
  const standing = child.standing[kind]
  const sessions = own.filter((account) => account.kind === kind)
  const { held, written, isEnough } = countWritten(sessions, child.policy)
  return {
    kind,
    held,
    written,
    said:
      isEnough && written >= sessionsBeforeSentences
        ? {
            sentences: familySentences({ ...child, kind, roles: standing.roles }),
            did: timesDone(standing, kind),
            minutesThere: aboutMinutes(standing.liveSeconds),
            matches: kind === 'match' ? matchesPlayed(child.matchFigures) : null,
          }
        : null,
    attendance: playerAttendance(sessions, child.player.id).map(({ day, attendance }) => ({
      day,
      attendance,
    })),
  }
}

function timesDone(standing: KindStanding, kind: SessionKind): readonly TimeDone[] {
  const doings =
    kind === 'practice'
      ? (['attack', 'defend', 'keep', 'waiting'] as const)
      : (['played', 'keep', 'waiting'] as const)
  return doings.flatMap((doing) => {
    const { seconds, turns } = doing === 'waiting' ? standing.roles.rest : familyFigure(standing, doing)
    return seconds > 0 ? [{ doing, minutes: aboutMinutes(seconds), turns }] : []
  })
}
