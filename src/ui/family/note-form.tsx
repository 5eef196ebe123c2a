'use client'

import { longestNote } from '#family/family-page'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { TextArea } from '#ui/page/text-area'

type NoteFormProps = {
  readonly squadId: string
  readonly playerId: string
  readonly note: string
  readonly send: SendForm
}

/** The coach's words to one child's family. A note that names another child is asked about before it is kept. */
export function NoteForm({ squadId, playerId, note, send }: NoteFormProps) {
  return (
    <ReplyForm
      send={send}
      refusedTitle="Not kept yet"
      waiting="Keeping the note…"
      places={{ text: 'Note', saidYesTo: 'Names' }}
    >
      {(reply) => {
        const refused = reply.status === 'refused' ? reply : null
        const question = refused?.problems.find(({ path }) => path === 'saidYesTo')?.message
        return (
          <div className="max-w-prose space-y-2">
            <input type="hidden" name="squadId" value={squadId} />
            <input type="hidden" name="playerId" value={playerId} />
            <TextArea
              name="text"
              id="family-note"
              label="Note for the family"
              hint="In your own words; may stay empty. The family reads it with the page that you confirm next."
              maxLength={longestNote}
              typed={refused?.typed.text ?? note}
            />
            <div className="flex flex-wrap gap-2">
              <Button weight="plain">{question ? 'Keep the changed note' : 'Keep the note'}</Button>
              {question ? (
                <Button weight="plain" name="saidYesTo" value={question}>
                  Yes, keep it with the name
                </Button>
              ) : null}
            </div>
          </div>
        )
      }}
    </ReplyForm>
  )
}
