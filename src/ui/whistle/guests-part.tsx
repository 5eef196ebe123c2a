import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { Select } from '#ui/page/select'
import { words } from '#ui/words'

type Named = { readonly id: string; readonly name: string }

type GuestsPartProps = {
  readonly squadId: string
  readonly sessionId: string
  readonly guests: readonly (Named & { readonly joinedToId: string | null })[]
  readonly joinable: readonly Named[]
  readonly nameOf: (playerId: string) => string
  readonly send: SendForm
}

/** New faces, and whom of the club they turn out to be. */
export function GuestsPart({ squadId, sessionId, guests, joinable, nameOf, send }: GuestsPartProps) {
  const options = [
    { value: '', label: 'choose a player' },
    ...joinable.map(({ id, name }) => ({ value: id, label: name })),
  ]
  if (guests.length === 0) return null
  return (
    <section>
      <SectionTitle note="A new face counts for nobody until it is joined to a player of the club, and loses its name after 28 days.">
        {words.guests}
      </SectionTitle>
      <ul>
        {guests.map(({ id, name, joinedToId }) => (
          <li key={id} className="border-b border-rule py-3 last:border-b-0">
            {joinedToId ? (
              <p>
                <span className="font-medium">{name}</span> is {nameOf(joinedToId)}.
              </p>
            ) : (
              <ReplyForm
                send={send}
                refusedTitle="Not joined"
                places={{ guestId: 'The guest', playerId: 'The player' }}
                waiting="Writing it anew …"
                className="flex flex-wrap items-end gap-3"
              >
                <input type="hidden" name="squadId" value={squadId} />
                <input type="hidden" name="sessionId" value={sessionId} />
                <input type="hidden" name="guestId" value={id} />
                <Select
                  name="playerId"
                  id={`join-${id}`}
                  label={`${name} is a player of the club:`}
                  options={options}
                />
                <Button weight="plain">Join the two</Button>
              </ReplyForm>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
