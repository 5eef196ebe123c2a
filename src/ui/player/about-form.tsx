import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { Tick } from '#ui/page/tick'

export type OfPlayer = { readonly squadId: string; readonly playerId: string }

/** Says whose form it is. */
export function PlayerKeys({ squadId, playerId }: OfPlayer) {
  return (
    <>
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="playerId" value={playerId} />
    </>
  )
}

type AboutFormProps = {
  readonly of: OfPlayer
  readonly name: string
  readonly wantsToKeep: boolean
  readonly send: SendForm
}

/** The name, and whether being short of goal is worth a flag. */
export function AboutForm({ of, name, wantsToKeep, send }: AboutFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…" places={{ name: 'Name' }}>
      <PlayerKeys {...of} />
      <div className="max-w-md space-y-4">
        <Field name="name" label="Name" required maxLength={80} autoComplete="off" defaultValue={name} />
        <Tick
          name="wantsToKeep"
          label="Asks to keep goal"
          hint="Little time in goal is then worth a flag."
          isTicked={wantsToKeep}
        />
        <Button weight="plain">Save name and wish</Button>
      </div>
    </ReplyForm>
  )
}
