'use client'

import { daysLater } from '#common/days-later'
import { isSamePair } from '#common/is-same-pair'
import type { Day } from '#common/time'
import { withApart } from '#planning/player-pair'
import type { PlayerId } from '#squad/player'
import type { SendForm } from '#ui/entry/send-form'
import { formatDay } from '#ui/format-day'
import { Button } from '#ui/page/button'
import { CheckBox } from '#ui/page/check-box'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Select } from '#ui/page/select'
import type { NameOf, PlanningPair } from '#ui/planning/planning-types'

/** A pair that nobody looks at again ends by itself. Our own judgement, no source. */
const usualDays = 28

type Two = readonly [PlayerId, PlayerId]

/** What a plan of a practice or of a match says of pairs. */
type Pairs = {
  readonly apart: readonly Two[]
  readonly together: readonly Two[]
  readonly mayMeet?: readonly Two[]
}

type PairsPartProps<Asked extends Pairs> = {
  readonly squadId: string
  readonly day: Day
  readonly request: Asked
  readonly pairs: readonly PlanningPair[]
  readonly players: readonly { readonly id: PlayerId; readonly name: string; readonly isMember: boolean }[]
  readonly nameOf: NameOf
  readonly onAsk: (change: (request: Asked) => Asked) => void
  readonly addPair: SendForm
  readonly endPair: SendForm
  readonly kind?: 'practice' | 'match'
}

const kinds = { apart: 'kept apart', together: 'together where it costs nothing' }

/** Two children kept apart or together for some time. No reason is asked for, and only the squad's coaches see it. */
export function PairsPart<Asked extends Pairs>(props: PairsPartProps<Asked>) {
  const { squadId, day, request, pairs, players, nameOf, onAsk, addPair, endPair, kind = 'practice' } = props
  const toggle = ({ playerIds, kind: how }: PlanningPair, isOn: boolean) =>
    onAsk((own) => {
      if (how === 'apart') return withApart(own, playerIds, isOn)
      const others = own.together.filter((pair) => !isSamePair(pair, playerIds))
      return { ...own, together: isOn ? [...others, playerIds] : others }
    })
  const options = [
    { value: '', label: 'Choose a name' },
    ...players.filter(({ isMember }) => isMember).map(({ id, name }) => ({ value: id, label: name })),
  ]
  return (
    <Details summary={pairs.length === 0 ? 'Pairs: none' : `Pairs: ${pairs.length}`}>
      <p className="max-w-prose text-sm text-soft">
        No reason is asked for or kept. Only coaches of this squad and the head coach see pairs; they are on
        no printed sheet.
      </p>
      <ul className="mt-2">
        {pairs.map((pair) => (
          <li key={pair.id} className="flex flex-wrap items-center gap-x-4 border-b border-rule py-1.5">
            <CheckBox
              label={`${nameOf(pair.playerIds[0])} and ${nameOf(pair.playerIds[1])}: ${kinds[pair.kind]}${pair.lastDay ? `, until ${formatDay(pair.lastDay, 'short')}` : ''}`}
              isTicked={request[pair.kind].some((own) => isSamePair(own, pair.playerIds))}
              onChange={(isOn) => toggle(pair, isOn)}
            />
            <ReplyForm send={endPair} refusedTitle="Not ended" waiting="Ending it …" className="ml-auto">
              <input type="hidden" name="squadId" value={squadId} />
              <input type="hidden" name="pairId" value={pair.id} />
              <input type="hidden" name="lastDay" value={day} />
              <Button weight="plain">End after this {kind}</Button>
            </ReplyForm>
          </li>
        ))}
      </ul>
      <ReplyForm
        send={addPair}
        refusedTitle="Not noted"
        waiting="Noting it …"
        places={{ oneId: 'First', otherId: 'Second', kind: 'How', firstDay: 'From', lastDay: 'Last day' }}
        className="mt-4 grid max-w-2xl gap-3 sm:grid-cols-2"
      >
        <input type="hidden" name="squadId" value={squadId} />
        <input type="hidden" name="firstDay" value={day} />
        <Select name="oneId" label="First" options={options} defaultValue="" required />
        <Select name="otherId" label="Second" options={options} defaultValue="" required />
        <Select
          name="kind"
          label="How"
          options={[
            { value: 'apart', label: 'Keep apart' },
            { value: 'together', label: 'Keep together' },
          ]}
        />
        <Field
          name="lastDay"
          type="date"
          label="Last day"
          hint="Four weeks unless you say otherwise."
          min={day}
          defaultValue={daysLater(day, usualDays)}
          required
        />
        <p>
          <Button weight="plain">Note this pair</Button>
        </p>
      </ReplyForm>
    </Details>
  )
}
