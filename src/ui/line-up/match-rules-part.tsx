'use client'

import type { Problem } from '#common/problem'
import { withDayFormat, withSeason } from '#lineup/draft/change-match-request'
import type { PickablePlayer } from '#lineup/draft/pickable-player'
import type { MatchPlanRequest } from '#lineup/match-plan'
import type { LineUpRules } from '#lineup/problem'
import { Stepper } from '#ui/entry/stepper'
import { BesideField } from '#ui/line-up/beside-field'
import { ChangeTimesPart } from '#ui/line-up/change-times-part'
import { type AskLineUp, problemsAt } from '#ui/line-up/line-up-types'
import { CheckBox } from '#ui/page/check-box'
import { counted } from '#ui/plural'

type MatchRulesPartProps = {
  readonly request: MatchPlanRequest
  readonly players: readonly PickablePlayer[]
  readonly problems: readonly Problem[]
  readonly onAsk: AskLineUp
}

/** What every line-up of this match has to keep, and what it makes up for. */
export function MatchRulesPart({ request, players, problems, onAsk }: MatchRulesPartProps) {
  const { rules, format, leastShare } = request
  const setRules = (change: Partial<LineUpRules>) =>
    onAsk((now) => ({ ...now, rules: { ...now.rules, ...change } }))
  const at = (...begins: readonly string[]) => <BesideField problems={problemsAt(problems, ...begins)} />
  return (
    <div className="space-y-3">
      <div className="grid gap-x-10 gap-y-2 sm:grid-cols-2">
        <Limit
          label="Everyone plays at least a part of the time"
          hint={promiseWords(request)}
          unit="Percent of the time they are there"
          value={leastShare === null ? null : Math.round(leastShare * 100)}
          range={{ usual: 50, least: 1, most: 100, step: 5 }}
          onChange={(percent) =>
            onAsk((now) => ({ ...now, leastShare: percent === null ? null : percent / 100 }))
          }
        />
        <CheckBox
          label="Make up for earlier matches"
          hint="Minutes, starts and time in goal that the season’s matches leave somebody due. Otherwise this match is shared as if it were the first."
          isTicked={!(request.isAfresh ?? false)}
          onChange={(isOn) => onAsk((now) => withSeason(now, { players, isAfresh: !isOn }))}
        />
        <div>
          <CheckBox
            label="The goalkeeper stays for the whole period"
            isTicked={rules.keeperForPeriod}
            onChange={(keeperForPeriod) => setRules({ keeperForPeriod })}
          />
          {at('rules.keeperForPeriod')}
        </div>
        <div>
          <Limit
            label="In goal for only so many periods"
            unit="Periods for one player at most"
            value={rules.mostKeeperPeriods}
            range={{ usual: 1, least: 1, most: format.periodSeconds.length, step: 1 }}
            onChange={(mostKeeperPeriods) => setRules({ mostKeeperPeriods })}
          />
          {at('rules.mostKeeperPeriods')}
        </div>
        <div>
          <Limit
            label="Nobody comes on for a moment only"
            unit="Minutes on at least"
            value={rules.leastSpellSeconds === 0 ? null : Math.round(rules.leastSpellSeconds / 60)}
            range={{ usual: 6, least: 1, most: 60, step: 1 }}
            onChange={(minutes) => setRules({ leastSpellSeconds: (minutes ?? 0) * 60 })}
          />
          {at('rules.leastSpellSeconds')}
        </div>
        <div>
          <Limit
            label="Nobody is off for long"
            unit="Minutes off at a stretch at most"
            value={rules.longestOffSeconds === null ? null : Math.round(rules.longestOffSeconds / 60)}
            range={{ usual: 12, least: 1, most: 60, step: 1 }}
            onChange={(minutes) => setRules({ longestOffSeconds: minutes === null ? null : minutes * 60 })}
          />
          {at('rules.longestOffSeconds', 'rules.longestSpellSeconds')}
        </div>
        <CheckBox
          label="Changes at breaks only"
          isTicked={format.changesAtBreaksOnly}
          onChange={(changesAtBreaksOnly) => onAsk((now) => withDayFormat(now, { changesAtBreaksOnly }))}
        />
        {format.changesAtBreaksOnly ? null : (
          <div>
            <Limit
              label="Only so many changes"
              hint="One player coming on during a period is one change."
              unit="Changes I will bear"
              value={rules.mostChanges}
              range={{ usual: 6, least: 0, most: 99, step: 1 }}
              onChange={(mostChanges) => setRules({ mostChanges })}
            />
            {at('rules.mostChanges')}
          </div>
        )}
      </div>
      {format.changesAtBreaksOnly ? null : <ChangeTimesPart request={request} onAsk={onAsk} />}
      <p className="max-w-prose text-sm text-soft">{formatWords(request)}</p>
      {at('rules.mostSubstitutions', 'rules.mayReturn', 'format')}
      <BesideField problems={problems.filter(({ path }) => path === 'rules')} />
    </div>
  )
}

type LimitProps = {
  readonly label: string
  readonly hint?: string
  readonly unit: string
  /** Null: no such rule. */
  readonly value: number | null
  readonly range: {
    readonly usual: number
    readonly least: number
    readonly most: number
    readonly step: number
  }
  readonly onChange: (value: number | null) => void
}

/** A rule that is either there, with its number, or not. */
function Limit({ label, hint, unit, value, range, onChange }: LimitProps) {
  const { usual, least, most, step } = range
  return (
    <div>
      <CheckBox
        label={label}
        {...(hint ? { hint } : {})}
        isTicked={value !== null}
        onChange={(isOn) => onChange(isOn ? Math.min(usual, most) : null)}
      />
      {value === null ? null : (
        <div className="pl-9">
          <Stepper label={unit} value={value} least={least} most={most} step={step} onChange={onChange} />
        </div>
      )}
    </div>
  )
}

/** What the format promises besides. */
function promiseWords({ format }: MatchPlanRequest): string {
  const { periods, late, wherePossible } = format.leastTime
  const parts = [
    periods === null
      ? ''
      : `The format also asks for ${counted(periods, 'whole period')} for who is there throughout`,
    late.length > 0 ? 'it has its own rule for who comes late' : '',
    wherePossible ? 'where the numbers allow it' : '',
  ].filter(Boolean)
  return parts.length === 0
    ? 'A promise of the club or of the format; the plan keeps it first.'
    : `${parts.join('; ')}.`
}

function formatWords({ format, rules }: MatchPlanRequest): string {
  const parts = [
    rules.mostSubstitutions === null
      ? 'as many players may come on as you like'
      : `${counted(rules.mostSubstitutions, 'player')} may come on in the match`,
    rules.mayReturn ? 'who came off may come on again' : 'who came off stays off',
    format.mostSecondsADay === null
      ? ''
      : `nobody plays more than ${Math.round(format.mostSecondsADay / 60)} minutes on one day, other matches counted`,
  ].filter(Boolean)
  return `By this format: ${parts.join('; ')}.`
}
