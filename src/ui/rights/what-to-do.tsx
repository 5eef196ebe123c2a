import type { RequestKind } from '#rights/child-request'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'

type WhatToDoProps = {
  readonly request: {
    readonly kind: RequestKind
    readonly playerId: string
    readonly askedById: string | null
  }
  readonly guardians: readonly { readonly id: string; readonly name: string }[]
  readonly squadIds: readonly string[]
}

/** The steps that answer a request, with links to where they are done. */
export function WhatToDo({ request, guardians, squadIds }: WhatToDoProps) {
  const { kind, playerId, askedById } = request
  const child = paths.clubChild(playerId)
  const asker = guardians.find(({ id }) => id === askedById)
  return (
    <section className="max-w-prose">
      <SectionTitle>What to do</SectionTitle>
      <ol className="list-decimal space-y-1 pl-6">
        <li>
          Be sure who asks.{' '}
          {asker
            ? `${asker.name} is written down as a guardian and asked with their own sign-in.`
            : 'Nobody who is written down asked it here: see that it is a parent or carer.'}
        </li>
        {kind === 'copy' ? (
          <>
            <li>
              Read <PageLink href={child}>all that is kept</PageLink>. Texts that people wrote may speak of
              another child in other words than its name.
            </li>
            <li>
              {askedById ? (
                <>
                  Take <a href={paths.clubChildCopy(playerId, askedById)}>the copy for this guardian</a>.
                </>
              ) : (
                <>
                  Take the copy for the guardian who asked; it stands on{' '}
                  <PageLink href={child}>the same page</PageLink>.
                </>
              )}{' '}
              It leaves out who the other guardians are. Hand it over safely, not by open mail.
            </li>
          </>
        ) : null}
        {kind === 'correction' ? (
          <>
            <li>
              Look at <PageLink href={child}>what is kept</PageLink>.
            </li>
            {squadIds.map((squadId) => (
              <li key={squadId}>
                Name, goal and days in the squad are set right on{' '}
                <PageLink href={paths.player(squadId, { playerId })}>the player’s page</PageLink>.
              </li>
            ))}
            <li>
              Turns and times are set right at their practice or match, by the coach. Guardians, under{' '}
              <PageLink href={paths.clubPeople()}>people</PageLink>.
            </li>
          </>
        ) : null}
        {kind === 'erasure' ? (
          <li>
            <PageLink href={`${child}#erase`}>Erase the child</PageLink> on its page. What goes and what stays
            is said there. It answers this request too.
          </li>
        ) : null}
        {kind === 'objection' ? (
          <li>
            See what it is about. Consents are taken back on{' '}
            <PageLink href={child}>the child’s page</PageLink>; what is shown of the next practices is set
            with the guardian.
          </li>
        ) : null}
        {kind === 'question' ? (
          <li>
            See <PageLink href={child}>what is kept</PageLink> before you answer.
          </li>
        ) : null}
        <li>Answer below, in plain words.</li>
      </ol>
    </section>
  )
}
