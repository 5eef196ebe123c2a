import { type AskBrowser, PasskeyForm } from '#ui/account/passkey-form'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { Field } from '#ui/page/field'
import { ReplyForm } from '#ui/page/reply-form'

type PasskeysPartProps = {
  readonly passkeys: readonly { readonly id: string; readonly name: string; readonly used: string | null }[]
  readonly offer: AskBrowser
  readonly keep: SendForm
  readonly remove: SendForm
}

/** Ways in without a password, kept by one's own devices. */
export function PasskeysPart({ passkeys, offer, keep, remove }: PasskeysPartProps) {
  return (
    <section className="space-y-3 pt-4">
      <h2 className="text-lg font-semibold">Passkeys</h2>
      <p>
        A passkey signs you in by your finger, your face or the code of your phone. It stays on your own
        devices, and no false page can ask it from you.
      </p>
      {passkeys.length > 0 ? (
        <ul className="space-y-3">
          {passkeys.map(({ id, name, used }) => (
            <li
              key={id}
              className="flex flex-wrap items-center justify-between gap-3 border-rule border-b pb-3"
            >
              <span className="break-words">
                {name}
                <span className="block text-sm text-soft">{used ? `Used ${used}` : 'Not used yet'}</span>
              </span>
              <ReplyForm send={remove} refusedTitle="It is still there" waiting="Taking it away…">
                <input type="hidden" name="passkeyId" value={id} />
                <Button weight="plain" aria-label={`Take away the passkey ${name}`}>
                  Take away
                </Button>
              </ReplyForm>
            </li>
          ))}
        </ul>
      ) : null}
      <PasskeyForm
        kind="make"
        ask={offer}
        send={keep}
        button="Add a passkey"
        refusedTitle="No passkey was added"
      >
        <Field
          name="name"
          id="passkey-name"
          label="What you call it"
          hint="For yourself, such as: my phone"
          defaultValue="My device"
          maxLength={80}
        />
      </PasskeyForm>
    </section>
  )
}
