import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'

type ErasePartProps = {
  readonly child: { readonly id: string; readonly name: string }
  readonly send: SendForm
}

/** Says what goes, what stays and why, and asks twice. */
export function ErasePart({ child, send }: ErasePartProps) {
  return (
    <section id="erase">
      <SectionTitle>Erase this child</SectionTitle>
      <Details summary="What goes, what stays, and how">
        <div className="max-w-prose space-y-3">
          <p>
            <strong>Goes, for good:</strong> the name, the codes in files, guardians and their links, pages
            and notes for the family, agreements, pairs, flags, consents, and the words of requests. A
            guardian of no other child here goes too, with the sign-in. Plans of coming practices that count
            on the child are to be made anew.
          </p>
          <p>
            <strong>Stays:</strong> times and turns, as “Former player” with a number. Every other child’s
            even share was reckoned with them, and would be wrong without them. That it was done stays
            written, without the name.
          </p>
          <p>
            <strong>Does not go by itself:</strong> copies of the whole book made before, files that somebody
            took away, what stands on a coach’s phone until it fetches anew, and the texts named above. A copy
            of the book that is put back erases the child again. If a file with the name is read in again,
            whoever reads it in is asked who that is.
          </p>
          <p>
            It cannot be undone. Be sure who asked; see whether your law lets you keep something, or makes
            you.
          </p>
          <ReplyForm
            send={send}
            refusedTitle="Nothing was erased"
            waiting="Erasing…"
            places={{ name: 'Name' }}
          >
            <input type="hidden" name="playerId" value={child.id} />
            <div className="space-y-4">
              <Field
                name="name"
                label="The child’s name"
                hint={`Write “${child.name}” to say that you mean this child.`}
                required
                autoComplete="off"
              />
              <Button>Erase for good</Button>
            </div>
          </ReplyForm>
        </div>
      </Details>
    </section>
  )
}
