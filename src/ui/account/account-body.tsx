import type { ComponentProps } from 'react'
import { AddressForm } from '#ui/account/address-form'
import { ChangePasswordForm } from '#ui/account/change-password-form'
import { OtherAddressForm } from '#ui/account/other-address-form'
import { PasskeysPart } from '#ui/account/passkeys-part'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { PageLink } from '#ui/page/page-link'

type Session = {
  readonly id: string
  readonly device: string
  readonly since: string
  readonly used: string
  readonly isThis: boolean
}
type SendPlain = (form: FormData) => Promise<void>

type AccountBodyProps = {
  readonly account: {
    readonly name: string
    readonly email: string
    readonly isEmailVerified: boolean
    readonly sessions: readonly Session[]
    readonly passkeys: ComponentProps<typeof PasskeysPart>['passkeys']
  }
  readonly changePassword: SendForm
  readonly changeAddress: SendForm
  readonly passkeyForms: Omit<ComponentProps<typeof PasskeysPart>, 'passkeys'>
  readonly confirmAddress: SendForm
  readonly endOne: SendPlain
  readonly endOthers: SendPlain
}

const heading = 'text-lg font-semibold'

/** One's own sign-in. */
export function AccountBody({
  account,
  changePassword,
  changeAddress,
  passkeyForms,
  confirmAddress,
  endOne,
  endOthers,
}: AccountBodyProps) {
  const { name, email, isEmailVerified, sessions, passkeys } = account
  return (
    <>
      <p>
        {name}, <span className="break-all">{email}</span>. <PageLink href="/">Back to the book</PageLink>
      </p>
      <section className="space-y-3 pt-4">
        <h2 className={heading}>Your address</h2>
        {isEmailVerified ? (
          <p>Your address is confirmed. Links to sign in, or to a new password, can be sent to it.</p>
        ) : (
          <AddressForm send={confirmAddress} />
        )}
        <OtherAddressForm send={changeAddress} />
      </section>
      <section className="space-y-3 pt-4">
        <h2 className={heading}>Where you are signed in</h2>
        <ul className="space-y-3">
          {sessions.map((session) => (
            <li
              key={session.id}
              className="flex flex-wrap items-center justify-between gap-3 border-rule border-b pb-3"
            >
              <span>
                {session.device}
                {session.isThis ? ', this browser' : ''}
                <span className="block text-sm text-soft">
                  Signed in {session.since}, used {session.used}
                </span>
              </span>
              {session.isThis ? null : (
                <form action={endOne}>
                  <input type="hidden" name="sessionId" value={session.id} />
                  <Button
                    weight="plain"
                    aria-label={`Sign out ${session.device}, signed in ${session.since}`}
                  >
                    Sign out there
                  </Button>
                </form>
              )}
            </li>
          ))}
        </ul>
        {sessions.length > 1 ? (
          <form action={endOthers}>
            <Button weight="plain">Sign out everywhere else</Button>
          </form>
        ) : null}
      </section>
      <section className="space-y-3 pt-4">
        <h2 className={heading}>A new password</h2>
        <ChangePasswordForm send={changePassword} />
      </section>
      <PasskeysPart passkeys={passkeys} {...passkeyForms} />
    </>
  )
}
