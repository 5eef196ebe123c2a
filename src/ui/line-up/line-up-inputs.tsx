'use client'

import type { Problem } from '#common/problem'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlan, MatchPlanRequest } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import { placesInAll } from '#match/format/places-in-all'
import type { RegisterLine } from '#squad/register'
import type { SendForm } from '#ui/entry/send-form'
import { wholeMinutes } from '#ui/figures/minutes'
import { BesideField } from '#ui/line-up/beside-field'
import { DetailsThatOpen } from '#ui/line-up/details-that-open'
import { FormatPart } from '#ui/line-up/format-part'
import { type AskLineUp, type LineUpPolicy, type NameOf, problemsAt } from '#ui/line-up/line-up-types'
import { MatchRulesPart } from '#ui/line-up/match-rules-part'
import { WhoComesPart } from '#ui/line-up/who-comes-part'
import { LinkButton } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { PairsPart } from '#ui/planning/pairs-part'
import type { PlanningPair } from '#ui/planning/planning-types'
import { useNewPairs } from '#ui/planning/use-new-pairs'
import { counted } from '#ui/plural'

export type LineUpInputsProps = {
  readonly squadId: string
  readonly session: { readonly day: string }
  readonly request: MatchPlanRequest
  /** The line-up that was saved; null: none was. */
  readonly plan: MatchPlan | null
  readonly players: readonly PickablePlayer[]
  readonly register: readonly RegisterLine[]
  readonly formats: readonly MatchFormat[]
  /** How the squad plays; null: nobody has said. */
  readonly squadFormat: MatchFormat | null
  readonly mayArrangeFormats: boolean
  readonly pairs: readonly PlanningPair[]
  readonly policy: LineUpPolicy
  readonly problems: readonly Problem[]
  readonly nameOf: NameOf
  readonly addPair: SendForm
  readonly endPair: SendForm
  readonly onAsk: AskLineUp
}

/** What a line-up is asked for: who comes, how the match is played, the rules and the pairs. */
export function LineUpInputs(props: LineUpInputsProps) {
  const { request, players, pairs, register, problems, onAsk } = props
  useNewPairs(pairs, onAsk)
  const ofFormat = problemsAt(problems, 'places')
  const ofRules = problemsAt(problems, 'rules', 'format')
  return (
    <>
      <section>
        <SectionTitle
          note={
            register.length > 0
              ? 'As the register has it so far; change it as you know better. New faces are added beside the pitch.'
              : 'Everybody of the squad, until you say otherwise. New faces are added beside the pitch.'
          }
        >
          Who comes: {request.players.length}
        </SectionTitle>
        <WhoComesPart
          request={request}
          players={players}
          problems={problemsAt(problems, 'players')}
          onAsk={onAsk}
        />
      </section>
      <section className="space-y-3">
        {props.squadFormat ? null : (
          <Notice>
            Nobody has said yet how this squad plays its matches. The line-up begins with a plain seven a
            side; choose here what is right for this match.
            {props.mayArrangeFormats ? (
              <span className="mt-2 block">
                <LinkButton href={paths.clubFormats()}>Say it once for all matches</LinkButton>
              </span>
            ) : null}
          </Notice>
        )}
        <DetailsThatOpen
          summary={`How it is played: ${formatSummary(request)}`}
          mustOpen={ofFormat.length > 0}
        >
          <FormatPart
            request={request}
            formats={props.formats}
            policyShare={props.policy.leastMatchShare}
            problems={ofFormat}
            onAsk={onAsk}
          />
        </DetailsThatOpen>
      </section>
      <section className="space-y-4">
        <DetailsThatOpen summary={`Rules: ${rulesWords(request)}`} mustOpen={ofRules.length > 0}>
          <MatchRulesPart request={request} players={players} problems={ofRules} onAsk={onAsk} />
        </DetailsThatOpen>
        <PairsPart
          squadId={props.squadId}
          day={props.session.day}
          request={request}
          pairs={pairs}
          players={players}
          nameOf={props.nameOf}
          addPair={props.addPair}
          endPair={props.endPair}
          kind="match"
          onAsk={onAsk}
        />
        <BesideField problems={problemsAt(problems, 'apart', 'together')} />
      </section>
    </>
  )
}

/** The rules that are set, short. */
function rulesWords({ leastShare, rules, format, isAfresh }: MatchPlanRequest): string {
  const { leastSpellSeconds, longestOffSeconds, mostChanges, mostKeeperPeriods } = rules
  const minutes = (seconds: number) => `${wholeMinutes(seconds)} min`
  return [
    leastShare === null
      ? 'no promise of time'
      : `at least ${Math.round(leastShare * 100)} % of the time for everyone`,
    rules.keeperForPeriod ? 'the keeper stays for the period' : '',
    mostKeeperPeriods === null ? '' : `in goal for ${counted(mostKeeperPeriods, 'period')} at most`,
    leastSpellSeconds === 0 ? '' : `on for ${minutes(leastSpellSeconds)} at least`,
    longestOffSeconds === null ? '' : `off for ${minutes(longestOffSeconds)} at most`,
    format.changesAtBreaksOnly ? 'changes at breaks only' : '',
    mostChanges === null || format.changesAtBreaksOnly ? '' : `at most ${counted(mostChanges, 'change')}`,
    isAfresh ? 'earlier matches left out' : 'made up for earlier matches',
  ]
    .filter(Boolean)
    .join(', ')
}

/** "Seven a side · 7 a side · 2 × 25 min". */
function formatSummary({ format, places }: MatchPlanRequest): string {
  const [first = 0] = format.periodSeconds
  return `${format.name}, ${placesInAll(places)} on, ${format.periodSeconds.length} × ${wholeMinutes(first)} min`
}
