import type { Role, Situation } from '#exposure/column'
import type { KindStanding, SessionKind } from '#fairness/standing'
import type { KeepsChange } from '#squad/keeps-change'
import type { Player } from '#squad/player'
import type { Policy } from '#squad/policy'
import type { Term, TermId } from '#squad/squad'
import type { ThemeId } from '#themes/theme'

/** What a coach would do about it: flags of one group can be answered together. */
export const cureGroups = [
  'attack',
  'defend',
  'situation',
  'theme',
  'waiting',
  'goal',
  'match',
  'note',
] as const
export type CureGroup = (typeof cureGroups)[number]

/** A place a player could be given in a practice. */
export type PlaceToGive = { readonly role: Exclude<Role, 'rest'>; readonly situation: Situation | null }

/** What a rule found about one player. */
export type Finding = {
  /** The theme, situation or term it is about; empty when none. What is found of another is another flag, answered apart. */
  readonly subject: string
  /** Negative is short. Zero where nothing is measured in time. */
  readonly gapSeconds: number
  readonly toleranceSeconds: number
  /** How bad: it grows when things get worse. Seconds, or a count of times where the rule says so. */
  readonly size: number
  /** Share less due in practice turns, where turns can be counted. */
  readonly turnGap?: number
  /** Part of a turn's length by which one turn more (or fewer) narrows the gap; 1 when left out. */
  readonly gainPerTurn?: number
  /** The sessions it happened in, where single sessions are meant. */
  readonly sessionIds?: readonly string[]
}

export type JudgeContext = {
  readonly policy: Policy
  /** As it stands on the day that is judged. */
  readonly player: Player
  /** The player's own: whether it might be put in goal in a session is for the session's day. */
  readonly keepsChanges: readonly KeepsChange[]
  readonly scope: SessionKind
  /** The term of the last session judged; null outside every term. */
  readonly term: Term | null
}

/** Names for the words of a rule. */
export type SubjectNames = {
  readonly themeName: (id: ThemeId) => string
  readonly termName: (id: TermId) => string
}

/** One reason for a flag. A rule owns its words, which are for coaches: families never see them. */
export type FlagRule = {
  /** Kept in the database: never changed once in use. */
  readonly name: string
  readonly scopes: readonly SessionKind[]
  readonly title: string
  /** What it says of a player, without its name: one plain sentence. */
  readonly sentence: (finding: Finding, names: SubjectNames) => string
  readonly cureGroup: CureGroup
  /** What to do where turns or minutes are not the cure. */
  readonly advice?: string
  /** Goal-keeping and safety need not wait for the policy's number of written sessions. */
  readonly speaksEarly: boolean
  /** In matches it waits for as many of the player's as the policy wants before attack and defence are looked at. */
  readonly waitsForMatches?: boolean
  /** A note for the coach's page only: not in any count, not on the first page. */
  readonly isQuiet?: boolean
  readonly sizeIn: 'seconds' | 'times'
  /** Names of rules that say less about the same subject, and then keep silent. */
  readonly replaces?: readonly string[]
  /** True when a turn in such a place narrows the gap. Left out: no turn does. */
  readonly isHelpedBy?: (place: PlaceToGive, finding: Pick<Finding, 'subject'>) => boolean
  /** Every finding about one player in the sessions of one kind; when it may speak is not its business. */
  readonly judge: (standing: KindStanding, context: JudgeContext) => readonly Finding[]
}
