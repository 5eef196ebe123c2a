import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import { causeOf } from '#fairness/cause'
import type { FlagRule } from '#fairness/flags/flag-rule'
import { nextStepOf } from '#fairness/flags/short-answers'
import type { Figures } from '#fairness/session-figures'
import { playedFigure, type SessionKind } from '#fairness/standing'
import { dueGapSeconds, type StandingFigure } from '#fairness/standing-figure'
import { dueStatusOf } from '#fairness/status'
import { toleranceSeconds } from '#fairness/tolerance'
import type { Player } from '#squad/player'
import type { Policy } from '#squad/policy'

/** What a family is told about: turns in practices by role, in matches time played and goal. */
export type FamilyTopic = 'attack' | 'defend' | 'keep' | 'played'

/** The only three things a family is ever told of a topic. */
export type FamilySentence =
  | { readonly says: 'even'; readonly topic: FamilyTopic; readonly isPartMissed: boolean }
  | {
      readonly says: 'fewer'
      readonly topic: FamilyTopic
      readonly isPartMissed: boolean
      /** Null: the coach has said none yet. */
      readonly nextStep: string | null
      /** Not to be read before this day, which leaves the coach time to say what comes next; null: to be read at once. */
      readonly waitsUntil: Day | null
    }
  | {
      readonly says: 'more'
      readonly topic: FamilyTopic
      /** What there will be more of instead; null where nothing else is behind. */
      readonly moreOf: FamilyTopic | null
    }

/** A flag as far as its player's family is concerned. */
export type FlagForFamily = {
  readonly rule: FlagRule['name']
  readonly scope: SessionKind
  readonly status: 'open' | 'acknowledged' | 'cleared'
  readonly since: Day
  readonly acknowledged: { readonly reason: string } | null
}

export type FamilyInput = {
  readonly kind: SessionKind
  /** The player's own, over the season. */
  readonly roles: Figures['roles']
  readonly player: Pick<Player, 'keeps' | 'wantsToKeep'>
  readonly policy: Policy
  /** The player's own. */
  readonly flags: readonly FlagForFamily[]
  readonly today: Day
}

/** How long "fewer" waits for the coach's next step. */
export const daysForNextStep = 14

/** Written sessions of a kind before a family is told anything of it but attendance and themes. */
export const sessionsBeforeSentences = 4

const topics: Readonly<Record<SessionKind, readonly FamilyTopic[]>> = {
  practice: ['attack', 'defend', 'keep'],
  match: ['played', 'keep'],
}

const ruleOfFewer: Readonly<Record<FamilyTopic, FlagRule['name']>> = {
  attack: 'attackShort',
  defend: 'defendShort',
  keep: 'keepShort',
  played: 'matchMinutesShort',
}

/**
 * What a family is told, a sentence for each topic that can be spoken of. Fewer turns than due wait until the coach has
 * said what comes next, or has had the days to: see `sentencesOn`.
 */
export function familySentences(input: FamilyInput): readonly FamilySentence[] {
  const spoken = topics[input.kind].flatMap((topic) => {
    const figure = familyFigure(input, topic)
    const isNone = figure.seconds === 0 && figure.dueSeconds === 0
    return isNone ? [] : [{ topic, figure, status: dueStatusOf(figure, input.policy) }]
  })
  const fewer = spoken
    .filter(({ status }) => status === 'short')
    .flatMap(({ topic, figure }) => fewerSentence(input, { topic, figure }))
  return spoken.flatMap(({ topic, figure, status }): readonly FamilySentence[] => {
    if (status === 'within') return [{ says: 'even', topic, isPartMissed: hasMissed(figure, input.policy) }]
    if (status === 'short') return fewer.filter((sentence) => sentence.topic === topic)
    // What still waits is not hinted at here.
    const moreOf = fewer.find(({ waitsUntil }) => waitsUntil === null)?.topic ?? furthestBehind(input, topic)
    return [{ says: 'more', topic, moreOf }]
  })
}

export function familyFigure({ roles }: Pick<FamilyInput, 'roles'>, topic: FamilyTopic): StandingFigure {
  return topic === 'played' ? playedFigure({ roles }) : roles[topic]
}

function fewerSentence(
  { player, policy, flags, kind, today }: FamilyInput,
  { topic, figure }: { readonly topic: FamilyTopic; readonly figure: StandingFigure },
): readonly Extract<FamilySentence, { says: 'fewer' }>[] {
  // Little time in goal is no loss to one who did not ask for it.
  if (topic === 'keep' && !player.wantsToKeep) return []
  const flag = flagOfFewer(flags, { topic, kind })
  if (!flag) return []
  const isAnswered = flag.status === 'acknowledged' && flag.acknowledged !== null
  const lastDay = daysLater(flag.since, daysForNextStep)
  return [
    {
      says: 'fewer',
      topic,
      isPartMissed: hasMissed(figure, policy),
      nextStep: isAnswered ? nextStepOf(flag.acknowledged?.reason ?? '') : null,
      waitsUntil: isAnswered || lastDay <= today ? null : lastDay,
    },
  ]
}

/** The flag whose answer is the next step of "fewer". */
export function flagOfFewer<Flag extends FlagForFamily>(
  flags: readonly Flag[],
  { topic, kind }: { readonly topic: FamilyTopic; readonly kind: SessionKind },
): Flag | null {
  const rule = ruleOfFewer[topic]
  return flags.find((flag) => flag.rule === rule && flag.scope === kind && flag.status !== 'cleared') ?? null
}

/** What was missed is a difference by the club's own measure. */
function hasMissed(figure: StandingFigure, policy: Policy): boolean {
  return causeOf(figure).missed < -toleranceSeconds(policy, figure.dueSeconds)
}

/** Of the other topics inside the band and on its lower side, the one furthest from even; goal only where it is asked for. */
function furthestBehind(input: FamilyInput, topic: FamilyTopic): FamilyTopic | null {
  const others = topics[input.kind]
    .filter(
      (other) => other !== topic && other !== 'played' && (other !== 'keep' || input.player.wantsToKeep),
    )
    .map((other) => ({ other, figure: familyFigure(input, other) }))
    .filter(({ figure }) => dueStatusOf(figure, input.policy) === 'within' && dueGapSeconds(figure) < 0)
    .sort((a, b) => dueGapSeconds(a.figure) - dueGapSeconds(b.figure))
  return others[0]?.other ?? null
}
