import type { ReactNode } from 'react'
import type { Day } from '#common/time'
import type { ChildCopy } from '#rights/child-copy'
import type { Consent } from '#rights/consent'
import type { SendForm } from '#ui/entry/send-form'
import { LinkButton } from '#ui/page/button'
import { Notice } from '#ui/page/notice'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { ConsentsPart } from '#ui/rights/consents-part'
import { CopyPart } from '#ui/rights/copy-part'
import { ErasePart } from '#ui/rights/erase-part'

type Named = { readonly id: string; readonly name: string }

export type ChildBodyProps = {
  readonly copy: ChildCopy
  readonly today: Day
  readonly locale: string
  readonly guardians: readonly Named[]
  readonly consents: readonly (Consent & { readonly givenByName: string | null })[]
  readonly squadIds: readonly string[]
  readonly sends: { readonly erase: SendForm; readonly consent: SendForm; readonly withdraw: SendForm }
}

/** Everything that is kept about one child, and what the administrator can do about it. */
export function ChildBody(props: ChildBodyProps) {
  const { copy, guardians, squadIds, sends } = props
  const { id, name, erasedAt } = copy.child
  if (erasedAt !== null)
    return (
      <>
        <p className="max-w-prose">
          This child was erased on {erasedAt.slice(0, 10)}. Nothing is kept that names it. Times and turns
          stay as a column without a name, so that the sums of the others stay true.
        </p>
        <Mentions copy={copy} />
      </>
    )
  return (
    <>
      <section className="no-print flex flex-wrap gap-3">
        {guardians.map((guardian) => (
          <FileLink key={guardian.id} href={paths.clubChildCopy(id, guardian.id)}>
            Copy for {guardian.name}
          </FileLink>
        ))}
        <FileLink href={paths.clubChildCopy(id, null)}>Copy for the club</FileLink>
        {squadIds.map((squadId) => (
          <LinkButton key={squadId} href={paths.player(squadId, { playerId: id })}>
            Put something right
          </LinkButton>
        ))}
      </section>
      <Notice>
        A copy is one file that programs and people can read. The copy for a guardian leaves out who the
        others are. Names of other children are taken out of what people wrote; read it before you hand it
        over all the same. Be sure who asks.
      </Notice>
      <CopyPart copy={copy} />
      <ConsentsPart {...props} playerId={id} sends={sends} />
      <Mentions copy={copy} />
      <ErasePart child={{ id, name }} send={sends.erase} />
    </>
  )
}

/** A file is no page: the browser takes it and stays where it is. */
function FileLink({ href, children }: { readonly href: string; readonly children: ReactNode }) {
  return (
    <a
      href={href}
      className="tap inline-flex items-center border border-rule-strong bg-leaf px-4 py-2 font-medium text-ink no-underline hover:border-ink"
    >
      {children}
    </a>
  )
}

function Mentions({ copy }: { readonly copy: ChildCopy }) {
  if (copy.mentions.length === 0) return null
  return (
    <section>
      <SectionTitle note="An erasure does not change them: a program cannot tell who is meant. Put them right by hand.">
        Other texts with this name
      </SectionTitle>
      <ul className="max-w-prose list-disc space-y-1 pl-6">
        {copy.mentions.map(({ where, text }) => (
          <li key={`${where} ${text}`}>
            {where}
            {text ? `: ${text}` : ''}
          </li>
        ))}
      </ul>
    </section>
  )
}
