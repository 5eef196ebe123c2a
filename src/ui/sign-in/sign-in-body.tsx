import type { ReactNode } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Details } from '#ui/page/details'
import { PageLink } from '#ui/page/page-link'
import { MailForm } from '#ui/sign-in/mail-form'
import { PasswordForm } from '#ui/sign-in/password-form'

type SignInBodyProps = {
  readonly send: SendForm
  readonly askForLink: SendForm
  readonly askForNewPassword: SendForm
  /** A passkey, where there is room for one. */
  readonly passkey?: ReactNode
}

export function SignInBody({ send, askForLink, askForNewPassword, passkey }: SignInBodyProps) {
  return (
    <>
      <PasswordForm send={send} />
      {passkey}
      <Details summary="Sign in by a link in a mail">
        <MailForm send={askForLink} button="Send me a link">
          You get a mail with a link that signs you in. It works once, for 15 minutes.
        </MailForm>
      </Details>
      <Details summary="I have forgotten my password">
        <MailForm send={askForNewPassword} button="Send me a link to a new password">
          You get a mail with a link to choose a new one. Does no mail come? Then your address was never
          confirmed: the administrator of your club can give you a link.
        </MailForm>
      </Details>
      <p className="text-sm text-soft">
        There is no signing up here: the club invites coaches, and coaches invite families.{' '}
        <PageLink href="/">To the first page</PageLink>
      </p>
    </>
  )
}
