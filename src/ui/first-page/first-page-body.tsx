import type { ReactNode } from 'react'
import type { ViewerRole } from '#access/viewer'
import type { Day } from '#common/time'
import { SignInButton, type SignInPerson } from '#ui/first-page/sign-in-button'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Details } from '#ui/page/details'
import { Notice } from '#ui/page/notice'
import { PageLink } from '#ui/page/page-link'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

type FirstPageBodyProps = {
  readonly demo:
    | readonly {
        readonly clubName: string
        readonly calendarDay: Day | null
        readonly main: readonly SignInPerson[]
        readonly others: readonly SignInPerson[]
      }[]
    | null
  readonly canFound: boolean
  /** As whom of which clubs whoever is signed in could look at the book. */
  readonly choices: readonly (Omit<SignInPerson, 'squadNames'> & { readonly clubName: string })[]
  readonly choose: (form: FormData) => Promise<void>
  readonly signedIn: {
    readonly name: string
    readonly role: ViewerRole
    readonly home: string | null
    readonly children: readonly { readonly id: string; readonly name: string }[]
  } | null
  readonly signIn: (form: FormData) => Promise<void>
  /** The way out. */
  readonly signOut: ReactNode
}

export function FirstPageBody(props: FirstPageBodyProps) {
  const { demo, canFound, choices, choose, signedIn, signIn, signOut } = props
  return (
    <>
      <p className="text-lg">
        The squad’s book of turns: who attacked, who defended, who kept goal and who waited, in every practice
        and match of a season, and whether that was fair.
      </p>
      {signedIn ? <SignedIn {...signedIn} signOut={signOut} /> : null}
      {choices.length > 0 ? (
        <section aria-label="As whom" className="space-y-3">
          <h2 className="text-lg font-semibold">
            {signedIn ? 'Look at the book as' : 'As whom do you look at the book?'}
          </h2>
          <div className="grid gap-3 sm:grid-cols-3">
            {choices.map((person) => (
              <SignInButton
                key={person.personId}
                person={{ ...person, squadNames: [person.clubName] }}
                signIn={choose}
                isMain={false}
              />
            ))}
          </div>
        </section>
      ) : null}
      {canFound && !signedIn ? (
        <p>
          <LinkButton href={paths.setUp()} weight="main">
            Set up your club
          </LinkButton>
        </p>
      ) : null}
      {demo?.length === 0 ? <Notice>There is no demo club in this book.</Notice> : null}
      {demo?.map(({ clubName, calendarDay, main, others }) => (
        <section key={clubName} aria-label={clubName} className="space-y-3 pt-4">
          <h2 className="text-lg font-semibold">Look into {clubName}, an invented club</h2>
          <div className="grid gap-3 sm:grid-cols-3">
            {main.map((person) => (
              <SignInButton key={person.personId} person={person} signIn={signIn} isMain />
            ))}
          </div>
          {calendarDay ? (
            <p className="text-sm text-soft">
              The calendar of this club stands still on {formatDay(calendarDay)}.
            </p>
          ) : null}
          {others.length > 0 ? (
            <Details summary="Others of this club">
              <div className="grid gap-3 sm:grid-cols-3">
                {others.map((person) => (
                  <SignInButton key={person.personId} person={person} signIn={signIn} isMain={false} />
                ))}
              </div>
            </Details>
          ) : null}
        </section>
      ))}
      {signedIn || choices.length > 0 || canFound ? null : (
        <p>
          <LinkButton href={paths.signIn()} weight={demo ? 'plain' : 'main'}>
            {demo ? 'Sign in with an address' : 'Sign in'}
          </LinkButton>
        </p>
      )}
    </>
  )
}

type SignedInProps = NonNullable<FirstPageBodyProps['signedIn']> & Pick<FirstPageBodyProps, 'signOut'>

function SignedIn({ name, role, home, children, signOut }: SignedInProps) {
  const isNowhere = home === null && children.length === 0
  const child = children.find(({ id }) => paths.family(id) === home)
  return (
    <section aria-label="Signed in" className="space-y-3 border border-rule-strong bg-leaf p-4">
      <p>
        You are signed in as {name}, {words.viewerRole[role]}.
      </p>
      {isNowhere ? <p>You have no squad at the moment. Ask the head coach of the club.</p> : null}
      {children.some(({ id }) => paths.family(id) !== home) ? (
        <ul aria-label="Pages of your children">
          {children.map((child) => (
            <li key={child.id}>
              <PageLink href={paths.family(child.id)} className="tap inline-flex items-center">
                {child.name}
              </PageLink>
            </li>
          ))}
        </ul>
      ) : null}
      <div className="flex flex-wrap gap-3">
        {home ? (
          <LinkButton href={home} weight="main">
            {child ? `Open the page of ${child.name}` : 'Open the book'}
          </LinkButton>
        ) : null}
        {signOut}
      </div>
    </section>
  )
}
