import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

type ComingFormProps = { readonly squadId: string; readonly showsComing: boolean; readonly send: SendForm }

/** Whether families read time and place of the next practice. Off until somebody switches it on. */
export function ComingForm({ squadId, showsComing, send }: ComingFormProps) {
  return (
    <ReplyForm send={send} refusedTitle="Nothing was changed" waiting="Saving…">
      <input type="hidden" name="squadId" value={squadId} />
      <p className="max-w-prose">
        {showsComing
          ? 'Families read when and where the next practice is. The club can keep it from single guardians.'
          : 'Families read what the next practice is about, but not when and where it is.'}
      </p>
      <Button weight="plain" name="showsComing" value={showsComing ? 'no' : 'yes'} className="mt-2">
        {showsComing ? 'No longer show time and place' : 'Show time and place'}
      </Button>
    </ReplyForm>
  )
}
