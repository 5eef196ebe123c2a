import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

type ConfirmFormProps = {
  readonly squadId: string
  /** Whose pages, each with the mark of what the coach sees here. */
  readonly seen: readonly { readonly playerId: string; readonly mark: string }[]
  readonly label: string
  readonly weight?: 'main' | 'plain'
  readonly send: SendForm
}

/** Makes what is seen here what families read. */
export function ConfirmForm({ squadId, seen, label, weight, send }: ConfirmFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not confirmed"
      waiting={seen.length > 1 ? `Confirming ${seen.length} pages…` : 'Confirming…'}
      className="no-print"
    >
      <input type="hidden" name="squadId" value={squadId} />
      <input type="hidden" name="json" value={JSON.stringify({ seen })} />
      <Button weight={weight}>{label}</Button>
    </ReplyForm>
  )
}
