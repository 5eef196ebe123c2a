'use client'

import type { AgreedToday, PlannedPlayer, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { sayFirstPartner, sayOneSide, sayShown } from '#planning/say-agreed'
import { Toggle } from '#ui/entry/toggle'
import { CheckBox } from '#ui/page/check-box'
import { Select } from '#ui/page/select'
import type { NameOf } from '#ui/planning/planning-types'
import { agreedWords } from '#ui/player/agreed-list'

type AgreedPartProps = {
  readonly request: PlanRequest
  /** The plan that was saved, whose places were shown; null: none was. */
  readonly shown: PracticePlan | null
  readonly nameOf: NameOf
  readonly onAsk: (change: (request: PlanRequest) => PlanRequest) => void
}

/** What was agreed with single children and holds on the day, what the plan makes of it, and a way to let it go today. */
export function AgreedPart(props: AgreedPartProps) {
  const players = props.request.players.filter(({ agreed }) => agreed !== undefined)
  if (players.length === 0) return null
  return (
    <section data-part="agreed">
      <h3 className="font-semibold">Agreed with single children</h3>
      <p className="max-w-prose text-sm text-soft">
        For the squad’s coaches only: on no sheet, and not shown to helpers or families. No reason is kept,
        and the plan forgets it once the practice is written into the book.
      </p>
      <ul className="mt-2 grid gap-x-10 sm:grid-cols-2">
        {players.map((player) => (
          <li key={player.playerId} className="border-t border-rule py-2">
            <p className="font-medium">{props.nameOf(player.playerId)}</p>
            <OfPlayer {...props} player={player} agreed={player.agreed ?? {}} />
          </li>
        ))}
      </ul>
    </section>
  )
}

type OfPlayerProps = AgreedPartProps & { readonly player: PlannedPlayer; readonly agreed: AgreedToday }

function OfPlayer({ request, shown, nameOf, onAsk, player, agreed }: OfPlayerProps) {
  const name = nameOf(player.playerId)
  const change = (to: Partial<PlannedPlayer>) =>
    onAsk((own) => ({
      ...own,
      players: own.players.map((one) => (one.playerId === player.playerId ? { ...one, ...to } : one)),
    }))
  const agree = (to: AgreedToday) => change({ agreed: { ...agreed, ...to } })
  const hasBibs = request.design.sides !== null
  return (
    <>
      {agreed.dueShare === undefined ? null : (
        <p>
          {agreedWords.fewerTurns}: {Math.round(agreed.dueShare * 100)} % of an even share is due, and the
          rest is waiting.
        </p>
      )}
      {agreed.sameSide === undefined ? null : (
        <>
          <CheckBox
            label={agreedWords.sameSide}
            hint={agreed.sameSide ? sayOneSide(request, player) : letGo}
            isTicked={agreed.sameSide}
            onChange={(sameSide) => agree({ sameSide })}
          />
          {agreed.sameSide && !hasBibs ? (
            <Toggle
              label={`${name} today`}
              options={[
                { value: '0', label: 'Attacks' },
                { value: '1', label: 'Defends' },
              ]}
              value={player.side === 1 ? '1' : '0'}
              onChange={(value) => change({ side: value === '1' ? 1 : 0 })}
            />
          ) : null}
        </>
      )}
      {agreed.neverWaitsAlone === undefined ? null : (
        <CheckBox
          label={agreedWords.neverWaitsAlone}
          hint={agreed.neverWaitsAlone ? 'In a turn in which only one waits it is somebody else.' : letGo}
          isTicked={agreed.neverWaitsAlone}
          onChange={(neverWaitsAlone) => agree({ neverWaitsAlone })}
        />
      )}
      {agreed.planShownEarly === undefined ? null : (
        <CheckBox
          label={agreedWords.planShownEarly}
          hint={agreed.planShownEarly ? sayShown(request, player, shown).sentence : letGo}
          isTicked={agreed.planShownEarly}
          onChange={(planShownEarly) => agree({ planShownEarly })}
        />
      )}
      {agreed.firstPartner === undefined ? null : (
        <FirstPartner
          request={request}
          player={player}
          nameOf={nameOf}
          onPartner={(firstPartner) => agree({ firstPartner })}
        />
      )}
    </>
  )
}

const letGo = 'Agreed, and let go for this practice.'

function FirstPartner({
  request,
  player,
  nameOf,
  onPartner,
}: Pick<OfPlayerProps, 'request' | 'player' | 'nameOf'> & {
  readonly onPartner: (partnerId: string | null) => void
}) {
  const { playerId, agreed } = player
  const partnerId = agreed?.firstPartner ?? null
  const others = request.players.filter((other) => other.playerId !== playerId)
  const isMissing = partnerId !== null && !others.some((other) => other.playerId === partnerId)
  const said = sayFirstPartner(request, player, nameOf)
  return (
    <div className="space-y-1 py-1">
      <Select
        name={`partner-${playerId}`}
        label={`${agreedWords.sameFirstPartner} of ${nameOf(playerId)}`}
        value={partnerId ?? ''}
        onChange={(event) => onPartner(event.target.value || null)}
        options={[
          { value: '', label: 'Nobody in this practice' },
          ...(isMissing ? [{ value: partnerId, label: nameOf(partnerId) }] : []),
          ...others.map((other) => ({ value: other.playerId, label: nameOf(other.playerId) })),
        ]}
      />
      <p className={said?.isKept === false ? 'text-sm text-warn' : 'text-sm text-soft'}>
        {said?.sentence ?? 'With whom? Named once, it is remembered for the next practices.'}
      </p>
    </div>
  )
}
