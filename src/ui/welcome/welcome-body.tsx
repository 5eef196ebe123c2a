import type { ReactNode } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Button, LinkButton } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'
import { SectionTitle } from '#ui/page/section-title'
import { newPasswordHint, PasswordField } from '#ui/sign-in/password-field'
import { PasswordForm } from '#ui/sign-in/password-form'
import { NewSignInForm } from '#ui/welcome/new-sign-in-form'

type WelcomeBodyProps = {
  readonly clubName: string
  readonly kind: 'join' | 'family' | 'recover'
  readonly signedInAs: string | null
  /** The person has a sign-in already, or says so. */
  readonly hasSignIn: boolean
  readonly takeAsSignedIn: SendForm
  readonly takeWithNewSignIn: SendForm
  readonly signInOnTheWay: SendForm
  readonly chooseNewPassword: SendForm
  /** The way out, for who is signed in as somebody else. */
  readonly signOut: ReactNode
}

const buttonText = { join: 'Join the club', family: 'Open my child’s page' } as const

/** What a link is for, and the one thing to do. Nothing happens before a button is pressed. */
export function WelcomeBody(props: WelcomeBodyProps) {
  const { clubName, kind } = props
  if (kind === 'recover') return <NewPassword clubName={clubName} send={props.chooseNewPassword} />
  return (
    <>
      <p className="text-lg">
        <strong>{clubName}</strong>{' '}
        {kind === 'family'
          ? 'lets you read one page about your child: how turns were shared in practices and matches.'
          : 'asks you to join. You can then sign in and see what your part in the club needs.'}
      </p>
      <Taking {...props} button={buttonText[kind]} />
    </>
  )
}

function Taking(props: WelcomeBodyProps & { readonly button: string }) {
  const { signedInAs, hasSignIn, button } = props
  if (signedInAs)
    return (
      <section className="space-y-3">
        <p>You are signed in as {signedInAs}.</p>
        <ReplyForm send={props.takeAsSignedIn} refusedTitle="This did not work" waiting="One moment …">
          <Button className="w-full text-lg">{button}</Button>
        </ReplyForm>
        <p className="text-soft">Not you? Sign out, and open the link again.</p>
        {props.signOut}
      </section>
    )
  if (hasSignIn)
    return (
      <section>
        <SectionTitle note="Then this page comes back with the button.">Sign in first</SectionTitle>
        <PasswordForm send={props.signInOnTheWay} />
      </section>
    )
  return (
    <>
      <section>
        <SectionTitle note="With these you sign in from now on.">Choose how you sign in</SectionTitle>
        <NewSignInForm button={button} send={props.takeWithNewSignIn} />
      </section>
      <p>
        <LinkButton href="/welcome?with=sign-in">I have a sign-in already</LinkButton>
      </p>
    </>
  )
}

function NewPassword({ clubName, send }: { readonly clubName: string; readonly send: SendForm }) {
  return (
    <>
      <p className="text-lg">
        <strong>{clubName}</strong> lets you choose a new password. You are then signed out everywhere, and
        sign in with the new one.
      </p>
      <ReplyForm
        send={send}
        refusedTitle="Your password is the old one still"
        waiting="One moment …"
        places={{ password: 'New password' }}
      >
        <div className="space-y-5">
          <PasswordField label="New password" autoComplete="new-password" hint={newPasswordHint} />
          <Button className="w-full text-lg">Take this password</Button>
        </div>
      </ReplyForm>
    </>
  )
}
